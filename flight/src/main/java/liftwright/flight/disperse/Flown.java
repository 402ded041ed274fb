package liftwright.flight.disperse;

import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.Untold;

/** What is kept of one flight: all that is judged, and its number, by which it flies again. */
public sealed interface Flown {

    int number();

    /** Why it cannot be told; empty where it can. */
    Optional<Untold> untold();

    /**
     * A flight that was flown.
     *
     * @param well whether it kept every limit of the profile
     * @param computed whether everything in it could be computed
     * @param durationS from the start of the profile to the end, s
     * @param endedBy aborts that acted, in words; empty where none did
     */
    record Made(
            int number,
            FlightOutcome.End end,
            boolean well,
            boolean computed,
            double durationS,
            FlightOutcome.Figures figures,
            String endedBy)
            implements Flown {

        public Made {
            for (FlightFigure each : FlightFigure.values()) {
                if (!Double.isFinite(each.of(durationS, figures))) {
                    throw new IllegalArgumentException(
                            "flight " + number + ": " + each.head() + " is no number");
                }
            }
            endedBy = oneLine(endedBy);
        }

        @Override
        public Optional<Untold> untold() {
            if (!computed) {
                return Optional.of(Untold.NOT_FOUND);
            }
            return figures.isWithinLaws() ? Optional.empty() : Optional.of(Untold.BEYOND_LAWS);
        }
    }

    /**
     * A flight of which a drawn number cannot be: it tells nothing, and counts as what is worse.
     *
     * @param reason in words
     */
    record NotMade(int number, String reason) implements Flown {
        public NotMade {
            reason = oneLine(reason);
        }

        @Override
        public Optional<Untold> untold() {
            return Optional.of(Untold.NOT_DRAWN);
        }
    }

    /** What is kept of an outcome. */
    static Flown of(FlightOutcome outcome, Profile.Limits limits) {
        return new Made(
                outcome.number(),
                outcome.end(),
                outcome.isWell(limits),
                outcome.converged(),
                outcome.durationS(),
                outcome.figures(),
                outcome.aborts().stream().map(Flown::words).collect(Collectors.joining("; ")));
    }

    private static String words(Profile.Abort abort) {
        String watch =
                switch (abort.watch()) {
                    case TILT -> "tilt";
                    case DRIFT -> "drift";
                    case HEIGHT -> "height";
                    case SINK -> "sink";
                    case CHARGE -> "charge";
                    case CELL -> "cell voltage";
                };
        return watch
                + switch (abort.then()) {
                    case LAND -> ": land";
                    case MAKE_DEAD -> ": make dead";
                };
    }

    /** As it stands in a file: what is no printed character becomes a space. */
    private static String oneLine(String text) {
        String line =
                text.codePoints()
                        .limit(300)
                        .collect(
                                StringBuilder::new,
                                (out, c) -> out.appendCodePoint(printed(c) ? c : ' '),
                                StringBuilder::append)
                        .toString();
        return line.strip();
    }

    private static boolean printed(int c) {
        return !Character.isISOControl(c)
                && Character.getType(c) != Character.LINE_SEPARATOR
                && Character.getType(c) != Character.PARAGRAPH_SEPARATOR
                && Character.getType(c) != Character.SURROGATE
                && c != 0xFFFD;
    }
}
