package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import liftwright.flight.profile.Profile;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.parameters.ImpossibleValueException;
import org.jspecify.annotations.Nullable;

/**
 * Flies what a range still lacks, on several threads, block by block, so that what is done can be
 * kept on the way. A flight depends on its number alone, and results lie in the order of the
 * numbers: the same on any number of threads, stopped and taken up again or not.
 */
public final class RangeFlying {

    /** Flights of each thread in a block: few enough to keep often, enough to keep all busy. */
    public static final int USUAL_BLOCK = 8;

    private final FlightRange range;
    private final Profile.Limits limits;
    private final Supplier<Flights> flights;
    private final int threads;
    private final int block;

    /**
     * @param limits within which a flight counts as well flown
     * @param flights makes what flies, one for each thread
     * @param threads ≥ 1
     */
    public RangeFlying(
            FlightRange range, Profile.Limits limits, Supplier<Flights> flights, int threads) {
        this(range, limits, flights, threads, USUAL_BLOCK);
    }

    /**
     * The same, kept more often or less.
     *
     * @param block flights of each thread after which what is done may be kept, ≥ 1
     */
    public RangeFlying(
            FlightRange range,
            Profile.Limits limits,
            Supplier<Flights> flights,
            int threads,
            int block) {
        this.range = range;
        this.limits = limits;
        this.flights = flights;
        this.threads = threads;
        this.block = block;
    }

    /**
     * What came of it.
     *
     * @param set all that was there and all that was flown
     * @param whole whether nothing of the range is lacking
     */
    public record Result(FlightSet set, boolean whole) {}

    /**
     * @param kept what was flown before; of the same kind
     * @param keep called after every block with a way to get all that is done so far
     */
    public Result fly(FlightSet kept, Work work, Consumer<Supplier<FlightSet>> keep) {
        if (range.of().unlike(kept.of()).isPresent()) {
            throw new IllegalArgumentException("what was kept is of other flights");
        }
        int[] missing = kept.missing(range);
        @Nullable Flown[] made = new @Nullable Flown[missing.length];
        work.stage("flying", Math.max(1, missing.length));
        // What flies is dear to make, and stays from block to block.
        @Nullable Flights[] crews = new @Nullable Flights[threads];
        int done = 0;
        while (done < missing.length) {
            int to = Math.min(missing.length, done + block * threads);
            AtomicInteger place = new AtomicInteger();
            int reached =
                    Draws.forEach(
                            work,
                            threads,
                            done,
                            to,
                            () -> crew(crews, place.getAndIncrement()),
                            (crew, i) -> made[i] = flown(crew, missing[i]));
            int count = reached;
            keep.accept(() -> together(kept, made, count));
            done = reached;
            if (reached < to) {
                break;
            }
        }
        return new Result(together(kept, made, done), done == missing.length);
    }

    private Flights crew(@Nullable Flights[] crews, int place) {
        Flights there = crews[place];
        if (there == null) {
            there = flights.get();
            crews[place] = there;
        }
        return there;
    }

    private Flown flown(Flights crew, int number) {
        try {
            return Flown.of(crew.fly(number), limits);
        } catch (ImpossibleValueException e) {
            return new Flown.NotMade(number, "a drawn number cannot be: " + e.getMessage());
        }
    }

    private static FlightSet together(FlightSet kept, @Nullable Flown[] made, int count) {
        List<Flown> all = new ArrayList<>(kept.flights());
        for (int i = 0; i < count; i++) {
            Flown one = made[i];
            if (one != null) {
                all.add(one);
            }
        }
        all.sort(Comparator.comparingInt(Flown::number));
        return new FlightSet(kept.of(), all);
    }
}
