package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Referee: every state of the elements is tried, on masks of bits and a walk over the graph. */
class CutSetsTest {

    private static final int ALL = 64;

    /** The classic of the textbooks: two lines of two, with a bridge between their middles. */
    @Test
    void theBridgeOfTheTextbooks() {
        Monotone bridge =
                Monotone.any(all(0, 3), all(1, 4), all(0, 2, 4), all(1, 2, 3)); // 2 is the bridge

        assertThat(CutSets.cuts(bridge, ALL))
                .containsExactly(set(0, 1), set(3, 4), set(0, 2, 4), set(1, 2, 3));
        assertThat(CutSets.paths(bridge, ALL))
                .containsExactly(set(0, 3), set(1, 4), set(0, 2, 4), set(1, 2, 3));
    }

    @Test
    void twoOfThree() {
        Monotone twoOfThree = Monotone.any(all(0, 1), all(0, 2), all(1, 2));

        assertThat(CutSets.cuts(twoOfThree, ALL)).containsExactly(set(0, 1), set(0, 2), set(1, 2));
    }

    @Test
    void whatNeverWorksAndWhatAlwaysDoes() {
        assertThat(CutSets.cuts(Monotone.NEVER, ALL)).containsExactly(set());
        assertThat(CutSets.cuts(Monotone.ALWAYS, ALL)).isEmpty();
        assertThat(CutSets.paths(Monotone.NEVER, ALL)).isEmpty();
        assertThat(CutSets.paths(Monotone.ALWAYS, ALL)).containsExactly(set());
    }

    @Test
    void anElementThatBothNeedIsACutOfItsOwn() {
        Monotone works = Monotone.any(all(0, 1), all(0, 2));

        assertThat(CutSets.cuts(works, ALL)).containsExactly(set(0), set(1, 2));
    }

    @Test
    void randomStructuresAgainstEveryState() {
        Seeded.check(
                400,
                random -> {
                    int elements = 1 + random.nextInt(12);
                    Monotone works = structure(random, elements, 4);

                    assertThat(masks(CutSets.cuts(works, ALL)))
                            .isEqualTo(leastCuts(elements, state -> up(works, state)));
                    assertThat(masks(CutSets.paths(works, ALL)))
                            .isEqualTo(leastPaths(elements, state -> up(works, state)));
                });
    }

    /** A graph that joins two nodes while a way of working edges is left. */
    @Test
    void randomGraphsAgainstEveryState() {
        Seeded.check(
                300,
                random -> {
                    int nodes = 2 + random.nextInt(5);
                    int edges = 1 + random.nextInt(12);
                    int[][] ends = new int[edges][];
                    for (int edge = 0; edge < edges; edge++) {
                        ends[edge] = new int[] {random.nextInt(nodes), random.nextInt(nodes)};
                    }
                    Set<Integer> paths = leastPaths(edges, state -> joined(ends, nodes, state));

                    assertThat(
                                    masks(
                                            CutSets.transversals(
                                                    paths.stream()
                                                            .map(CutSetsTest::ofMask)
                                                            .toList(),
                                                    ALL)))
                            .isEqualTo(leastCuts(edges, state -> joined(ends, nodes, state)));
                });
    }

    @Test
    void aLargestSizeLeavesOutTheLargerOnesAlone() {
        Seeded.check(
                200,
                random -> {
                    int elements = 1 + random.nextInt(10);
                    int largest = random.nextInt(4);
                    Monotone works = structure(random, elements, 4);

                    assertThat(CutSets.cuts(works, largest))
                            .isEqualTo(
                                    CutSets.cuts(works, ALL).stream()
                                            .filter(cut -> cut.cardinality() <= largest)
                                            .toList());
                });
    }

    private static Monotone all(int... elements) {
        return new Monotone.All(IntStream.of(elements).mapToObj(Monotone::element).toList());
    }

    private static BitSet set(int... elements) {
        BitSet set = new BitSet();
        IntStream.of(elements).forEach(set::set);
        return set;
    }

    private static BitSet ofMask(int mask) {
        return BitSet.valueOf(new long[] {mask});
    }

    private static Set<Integer> masks(List<BitSet> sets) {
        Set<Integer> masks = new HashSet<>();
        for (BitSet set : sets) {
            assertThat(masks.add(set.stream().map(at -> 1 << at).sum())).isTrue();
        }
        return masks;
    }

    private static Monotone structure(RandomGenerator random, int elements, int depth) {
        if (depth == 0 || random.nextInt(4) == 0) {
            return Monotone.element(random.nextInt(elements));
        }
        List<Monotone> parts = new ArrayList<>();
        for (int part = 0; part < random.nextInt(4); part++) {
            parts.add(structure(random, elements, depth - 1));
        }
        return random.nextBoolean() ? new Monotone.All(parts) : new Monotone.Any(parts);
    }

    /** Whether it works while the elements of a mask work. */
    private static boolean up(Monotone works, int state) {
        return switch (works) {
            case Monotone.Element(int number) -> (state >> number & 1) == 1;
            case Monotone.All(var parts) -> parts.stream().allMatch(part -> up(part, state));
            case Monotone.Any(var parts) -> parts.stream().anyMatch(part -> up(part, state));
        };
    }

    private static boolean joined(int[][] ends, int nodes, int state) {
        boolean[] seen = new boolean[nodes];
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        seen[0] = true;
        while (!next.isEmpty()) {
            int at = next.remove();
            for (int edge = 0; edge < ends.length; edge++) {
                if ((state >> edge & 1) == 0 || (ends[edge][0] != at && ends[edge][1] != at)) {
                    continue;
                }
                int far = ends[edge][0] + ends[edge][1] - at;
                if (!seen[far]) {
                    seen[far] = true;
                    next.add(far);
                }
            }
        }
        return seen[nodes - 1];
    }

    private static Set<Integer> leastPaths(int elements, IntPredicate works) {
        return least(elements, works);
    }

    private static Set<Integer> leastCuts(int elements, IntPredicate works) {
        int all = (1 << elements) - 1;
        return least(elements, failed -> !works.test(all & ~failed));
    }

    /** Masks that are so, while no mask within them with one element less is. */
    private static Set<Integer> least(int elements, IntPredicate so) {
        Set<Integer> least = new HashSet<>();
        for (int mask = 0; mask < 1 << elements; mask++) {
            if (!so.test(mask)) {
                continue;
            }
            boolean minimal = true;
            for (int element = 0; element < elements; element++) {
                minimal &= (mask >> element & 1) == 0 || !so.test(mask & ~(1 << element));
            }
            if (minimal) {
                least.add(mask);
            }
        }
        return least;
    }
}
