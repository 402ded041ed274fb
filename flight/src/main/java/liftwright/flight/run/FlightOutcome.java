package liftwright.flight.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.flight.profile.Profile;
import liftwright.plant.Discharge;

/**
 * What came of a flight.
 *
 * @param number of the flight
 * @param end how it ended
 * @param durationS from the start of the profile to the end, s
 * @param figures what is held against limits
 * @param first the first limit of supply or heat that was reached; empty where none was
 * @param aborts that acted, in their order
 * @param events in order of time
 * @param series thinned records of it
 * @param path where it was and what pushed it, to be shown as it moves
 * @param near how near modules of the scene come to each other; empty where it flies alone
 * @param pushed which modules of the scene the jets of others push
 * @param converged whether everything in it could be computed
 */
public record FlightOutcome(
        int number,
        End end,
        double durationS,
        Figures figures,
        Optional<Discharge.End> first,
        List<Profile.Abort> aborts,
        List<Event> events,
        FlightSeries series,
        FlightPath path,
        List<Near> near,
        List<Pushed> pushed,
        boolean converged) {

    public FlightOutcome {
        aborts = List.copyOf(aborts);
        events = List.copyOf(events);
        near = List.copyOf(near);
        pushed = List.copyOf(pushed);
    }

    /** The same among others: it is well flown where all of them are, and apart. */
    FlightOutcome among(
            List<Near> pairs,
            List<Pushed> blown,
            List<FlightOutcome> others,
            Profile.Together together) {
        List<Event> all = new ArrayList<>(events);
        End ended = end;
        boolean found = converged;
        for (int k = 0; k < others.size(); k++) {
            FlightOutcome other = others.get(k);
            Profile.Module module = together.modules().get(k);
            found &= other.converged;
            if (!other.isFlown()) {
                ended = isFlown() ? End.LOST : ended;
                all.add(
                        new Event(
                                module.afterS() + other.durationS,
                                "another module is " + other.end.words(),
                                module.name()));
            }
        }
        for (Near pair : pairs) {
            if (!pair.isClear(together.apartM())) {
                ended = ended == End.LANDED || ended == End.REACHED ? End.CLOSE : ended;
                all.add(close(pair, together.apartM()));
            }
        }
        for (Pushed one : blown) {
            all.add(new Event(one.atS(), "jets of others push it hardest", one.name()));
        }
        all.sort(Comparator.comparingDouble(Event::timeS));
        return new FlightOutcome(
                number, ended, durationS, figures, first, aborts, all, series, path, pairs, blown,
                found);
    }

    private static Event close(Near pair, double apartM) {
        boolean touches = pair.leastM() < apartM;
        return new Event(
                touches ? pair.atS() : pair.jetS().orElse(pair.atS()),
                touches
                        ? "it comes too near to " + pair.other()
                        : "a jet reaches between it and " + pair.other(),
                pair.one());
    }

    private boolean isFlown() {
        return end == End.LANDED || end == End.REACHED;
    }

    /** How a flight ends. */
    public enum End {
        /** Every step was flown, and it stands on the ground. */
        LANDED("every step flown, and on the ground again"),
        /** Every step was flown, and it is in the air still. */
        REACHED("every step flown, still in the air"),
        /** An abort or a kill ended it, and it came down within its limits. */
        ABORTED("ended early, and down within its limits"),
        /** It struck the ground, tipped over, or left every bound. */
        LOST("lost"),
        /** The supply ended first. */
        SPENT("the supply ended first"),
        /** Flown to its end, but too near to another module, or in a jet. */
        CLOSE("flown, but too near to another or into a jet");

        private final String words;

        End(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param missM distance from the last held point: the mean over the last second of the last
     *     hold, m
     * @param worstMissM the greatest in that second, m
     * @param heightLostM greatest height below the set point in the air, m
     * @param tiltRad greatest tilt in the air, rad
     * @param driftM greatest level distance from the set point in the air, m
     * @param saturatedShare share of the time in the air with a fan at an end of its range
     * @param energyJ given by all packs, J
     * @param chargeLeft of the emptiest pack at the end, share
     * @param landingMps sink at the last touch-down, m/s; 0 where there was none
     * @param airS time in the air, s
     * @param beyondLawShare what of all thrust in the air came of fans in a stream that their law
     *     does not hold for: falling into their own jet, or so fast across it that the lip stalls;
     *     0 to 1
     */
    public record Figures(
            double missM,
            double worstMissM,
            double heightLostM,
            double tiltRad,
            double driftM,
            double saturatedShare,
            double energyJ,
            double chargeLeft,
            double landingMps,
            double airS,
            double beyondLawShare) {

        /**
         * As much thrust beyond its law leaves a flight untold, of all thrust; as much as is worth
         * telling of a runaway.
         */
        public static final double GREATEST_BEYOND_LAW = 0.05;

        /** Whether the laws of the fans held for nearly all of its thrust. */
        public boolean isWithinLaws() {
            return beyondLawShare <= GREATEST_BEYOND_LAW;
        }
    }

    /**
     * @param timeS since the start of the profile, s
     * @param words what happened
     * @param part to which part; empty where the whole is meant
     */
    public record Event(double timeS, String words, String part) {}

    /** Whether all went as the profile wants it: every step, within every limit. */
    public boolean isWell(Profile.Limits limits) {
        return converged
                && (end == End.LANDED || end == End.REACHED)
                && figures.missM <= limits.missM()
                && figures.heightLostM <= limits.heightLostM()
                && figures.tiltRad <= limits.tiltRad()
                && figures.driftM <= limits.driftM()
                && figures.landingMps <= limits.landingMps();
    }
}
