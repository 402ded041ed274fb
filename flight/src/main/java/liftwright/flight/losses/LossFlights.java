package liftwright.flight.losses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.Crew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightRun;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.review.LossFates;
import liftwright.review.failures.Asked;
import org.jspecify.annotations.Nullable;

/**
 * Flies every single loss of a rig: full packs, held at the declared height, let go, and {@value
 * #AFTER_S} s later something is lost. What is lost, and what statics say of it, comes from the
 * review of failures; losses that come to the same are flown once.
 */
public final class LossFlights {

    /** When it happens, after the rig was let go, s: a held start has settled by then. */
    static final double AFTER_S = 2;

    /**
     * How long it is watched after that, s: a fall from the heights of hops is over; from memory.
     */
    static final double WATCHED_S = 5;

    private final Plant plant;
    private final Profile profile;
    private final Asked asked;
    private final long seed;
    private final List<LossFates.Told> told;

    /**
     * @param plant heated: packs start full
     * @param profile whose wind blows and whose height lost counts
     */
    public LossFlights(Plant plant, Profile profile, long seed) {
        this.plant = plant;
        this.profile = profile;
        this.seed = seed;
        asked = LossFates.asked(plant.rig());
        told =
                LossFates.of(plant).stream()
                        .filter(loss -> Called.of(loss) != Called.ON_GROUND)
                        .toList();
    }

    /** All losses that are flown, in the order of review. */
    public List<LossFates.Told> losses() {
        return told;
    }

    /** What is flown with one of them. */
    public Profile with(LossFates.Told loss) {
        return new Profile(
                "a loss",
                new Profile.Start(Profile.Stand.HELD, asked.heightM(), OptionalDouble.of(1)),
                List.of(new Profile.Step.Hold(AFTER_S + WATCHED_S)),
                profile.limits(),
                List.of(),
                Optional.empty(),
                List.of(new Profile.Scripted(AFTER_S, loss.group().first())),
                profile.wind(),
                List.of());
    }

    /**
     * One loss flown.
     *
     * @param number of the flight: 0 at the declared values
     */
    public LossFlown fly(FlightRun run, LossFates.Told loss, int number) {
        FlightOutcome flown = run.fly(FlightCase.of(plant, with(loss), seed, number));
        return new LossFlown(loss, Called.of(loss), Came.of(flown, profile.limits(), asked), flown);
    }

    /** All of them at the declared values; fewer where it was stopped. */
    public List<LossFlown> fly(Crew crew, int threads, Work work) {
        work.stage("losses flown", told.size());
        @Nullable LossFlown[] made = new @Nullable LossFlown[told.size()];
        Draws.forEach(
                work,
                threads,
                told.size(),
                () -> new FlightRun(plant, crew),
                (run, k) -> made[k] = fly(run, told.get(k), 0));
        List<LossFlown> flown = new ArrayList<>();
        for (LossFlown one : made) {
            if (one != null) {
                flown.add(one);
            }
        }
        return flown;
    }
}
