package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawsTest {

    private static double[] sample(int threads, int count) {
        double[] out = new double[count];
        int complete =
                Draws.forEach(
                        Work.quiet(),
                        threads,
                        count,
                        () -> new double[3],
                        (scratch, draw) -> {
                            double sum = 0;
                            for (int i = 0; i < scratch.length; i++) {
                                scratch[i] = CounterStream.normal(9, 1, draw, i);
                                sum += scratch[i] * scratch[i];
                            }
                            out[draw] = sum;
                        });
        assertThat(complete).isEqualTo(count);
        return out;
    }

    @Test
    void hasTheSameBitsOnAnyNumberOfThreadsAndDrawsAreNested() {
        double[] one = sample(1, 2000);
        for (int threads : new int[] {2, 3, 8}) {
            assertThat(sample(threads, 2000)).containsExactly(one);
        }
        assertThat(sample(2, 500)).containsExactly(java.util.Arrays.copyOf(one, 500));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void eachDrawRunsOnceWithAScratchOfItsOwnThread(int threads) {
        AtomicInteger[] runs = new AtomicInteger[777];
        java.util.Arrays.setAll(runs, _ -> new AtomicInteger());
        Set<Thread> owners = ConcurrentHashMap.newKeySet();
        Draws.forEach(
                Work.quiet(),
                threads,
                runs.length,
                () -> {
                    owners.add(Thread.currentThread());
                    return Thread.currentThread();
                },
                (owner, draw) -> {
                    assertThat(owner).isSameAs(Thread.currentThread());
                    runs[draw].incrementAndGet();
                });
        assertThat(runs).allMatch(count -> count.get() == 1);
        assertThat(owners).contains(Thread.currentThread()).hasSizeLessThanOrEqualTo(threads);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void stoppedWorkIsACompletePrefixThatCanBeResumed(int threads) {
        AtomicInteger left = new AtomicInteger(100);
        AtomicLong told = new AtomicLong();
        Work impatient =
                new Work() {
                    @Override
                    public void stage(String name, long total) {}

                    @Override
                    public void done(long units) {
                        told.addAndGet(units);
                    }

                    @Override
                    public boolean stopped() {
                        return left.decrementAndGet() < 0;
                    }
                };
        boolean[] ran = new boolean[1000];
        int complete =
                Draws.forEach(impatient, threads, 1000, () -> "", (_, draw) -> ran[draw] = true);
        assertThat(complete).isBetween(90, 100);
        assertThat(told.get()).isEqualTo(complete);
        for (int draw = 0; draw < 1000; draw++) {
            assertThat(ran[draw]).isEqualTo(draw < complete);
        }
        int all =
                Draws.forEach(
                        Work.quiet(),
                        threads,
                        complete,
                        1000,
                        () -> "",
                        (_, draw) -> {
                            assertThat(ran[draw]).isFalse();
                            ran[draw] = true;
                        });
        assertThat(all).isEqualTo(1000);
        assertThat(ran).doesNotContain(false);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void theFailureOfTheLowestDrawIsTheOneReported(int threads) {
        for (int repeat = 0; repeat < 30; repeat++) {
            assertThatThrownBy(
                            () ->
                                    Draws.forEach(
                                            Work.quiet(),
                                            threads,
                                            300,
                                            () -> "",
                                            (_, draw) -> {
                                                if (draw == 41) {
                                                    Thread.onSpinWait();
                                                }
                                                if (draw >= 41) {
                                                    throw new IllegalStateException("draw " + draw);
                                                }
                                            }))
                    .hasMessage("draw 41");
        }
    }

    @Test
    void anErrorAndAFailingScratchGetThrough() {
        assertThatThrownBy(
                        () ->
                                Draws.forEach(
                                        Work.quiet(),
                                        2,
                                        5,
                                        () -> "",
                                        (_, _) -> {
                                            throw new AssertionError("mine");
                                        }))
                .isInstanceOf(AssertionError.class)
                .hasMessage("mine");
        assertThatThrownBy(
                        () ->
                                Draws.forEach(
                                        Work.quiet(),
                                        1,
                                        5,
                                        () -> {
                                            throw new IllegalStateException("scratch");
                                        },
                                        (_, _) -> {}))
                .hasMessage("scratch");
    }

    @Test
    void noDrawsIsNoWork() {
        assertThat(Draws.forEach(Work.quiet(), 3, 0, () -> "", (_, _) -> {})).isZero();
        assertThat(Draws.forEach(Work.quiet(), 3, 7, 7, () -> "", (_, _) -> {})).isEqualTo(7);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Draws.forEach(Work.quiet(), 0, 1, () -> "", (_, _) -> {}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Draws.forEach(Work.quiet(), 1, -1, 1, () -> "", (_, _) -> {}));
    }

    @Test
    void waitsForItsHelpersEvenIfInterruptedAndPassesTheInterruptionOn() {
        Thread caller = Thread.currentThread();
        AtomicInteger finished = new AtomicInteger();
        caller.interrupt();
        int complete =
                Draws.forEach(
                        Work.quiet(),
                        2,
                        3,
                        () -> "",
                        (_, _) -> {
                            if (Thread.currentThread() != caller) {
                                LockSupport.parkNanos(30_000_000);
                            }
                            finished.incrementAndGet();
                        });
        assertThat(Thread.interrupted()).isTrue();
        assertThat(complete).isEqualTo(3);
        assertThat(finished).hasValue(3);
    }

    /** Keeps parts in memory, across computations. */
    private static final class Remembered implements Kept {
        private final Map<String, double[]> all = new ConcurrentHashMap<>();
        private int batches;

        @Override
        public Batch batch(int parts) {
            String batch = batches++ + " of " + parts;
            return new Batch() {
                @Override
                public Optional<double[]> of(int part) {
                    return Optional.ofNullable(all.get(batch + ", " + part));
                }

                @Override
                public void keep(int part, double[] numbers) {
                    all.put(batch + ", " + part, numbers);
                }
            };
        }
    }

    private record Kepts(Kept kept, AtomicInteger left, AtomicLong told, AtomicLong before)
            implements Work {

        @Override
        public void stage(String name, long total) {}

        @Override
        public void done(long units) {
            told.addAndGet(units);
        }

        @Override
        public void already(long units) {
            before.addAndGet(units);
        }

        @Override
        public boolean stopped() {
            return left.decrementAndGet() < 0;
        }

        @Override
        public Kept kept() {
            return kept;
        }
    }

    @Test
    void whatWasKeptIsPutBackAndNeverMadeAgainHoweverOftenItStops() {
        Seeded.check(
                60,
                random -> {
                    int count = 1 + random.nextInt(200);
                    int threads = 1 + random.nextInt(4);
                    double[] plain = new double[count];
                    java.util.Arrays.setAll(plain, draw -> CounterStream.normal(3, 5, draw));
                    var kept = new Remembered();
                    AtomicInteger made = new AtomicInteger();
                    int complete = -1;
                    double[] out = new double[0];
                    for (int tries = 0; complete < count; tries++) {
                        assertThat(tries).isLessThan(1000);
                        double[] fresh = new double[count];
                        out = fresh;
                        kept.batches = 0; // the computation begins anew
                        int patience = 1 + random.nextInt(40);
                        var work =
                                new Kepts(
                                        kept,
                                        new AtomicInteger(patience + threads),
                                        new AtomicLong(),
                                        new AtomicLong());
                        int known = kept.all.size();
                        complete =
                                Draws.forEachKept(
                                        work,
                                        threads,
                                        0,
                                        count,
                                        () -> "",
                                        (_, draw) -> {
                                            made.incrementAndGet();
                                            fresh[draw] = plain[draw];
                                        },
                                        new Kept.Form() {
                                            @Override
                                            public double[] numbers(int draw) {
                                                return new double[] {fresh[draw]};
                                            }

                                            @Override
                                            public void putBack(int draw, double[] numbers) {
                                                fresh[draw] = numbers[0];
                                            }
                                        });
                        assertThat(work.before.get()).isEqualTo(known);
                        assertThat(work.told.get()).isEqualTo(kept.all.size() - known);
                        assertThat(java.util.Arrays.copyOf(out, complete))
                                .containsExactly(java.util.Arrays.copyOf(plain, complete));
                        // Parts are lost as well, wherever they stand.
                        if (complete < count && random.nextInt(4) == 0) {
                            int lost = random.nextInt(count);
                            if (kept.all.remove("0 of " + count + ", " + lost) != null) {
                                made.decrementAndGet();
                            }
                        }
                    }
                    assertThat(out).containsExactly(plain);
                    assertThat(made.get()).isEqualTo(count);
                });
    }

    @Test
    void rowsAreMadeOneAndBackBitForBit() {
        double[][] rows = {{}, {Double.MIN_VALUE, -0.0, 1e300}, {Math.PI}};
        assertThat(Kept.rows(Kept.flat(rows))).isDeepEqualTo(rows);
        assertThat(Kept.rows(Kept.flat())).isEmpty();
    }
}
