package liftwright.flight.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;

/** What an answer says of a wearer who steers: two tables and what was found. */
public final class SteeredSections {

    private static final String NEVER = "never";

    private final Steered steered;

    public SteeredSections(Steered steered) {
        this.steered = steered;
    }

    /** How the rig moves by itself, and each axis in the hands of a person. */
    public List<Section> sections() {
        return List.of(motions(), axes());
    }

    private Section motions() {
        return new Section.Table(
                "pilot-motions",
                "What the rig does when nobody steers",
                List.of("pilot-motion", "pilot-doubles", "pilot-period", "pilot-level"),
                steered.modes().stream().map(SteeredSections::motion).toList());
    }

    private static List<Value> motion(Mode mode) {
        String words =
                (mode.swings() ? "a swing that " : "a drift that ")
                        + (mode.grows() ? "grows" : "fades");
        return List.of(
                Value.words("pilot-motion", words),
                time("pilot-doubles", mode.doublesInS()),
                time("pilot-period", mode.periodS()),
                Value.words("pilot-level", level(Level.of(List.of(mode)))));
    }

    private static String level(Level level) {
        return switch (level) {
            case ONE -> "1";
            case TWO -> "2";
            case THREE -> "3";
            case WORSE -> "worse than 3";
        };
    }

    private static Value time(String field, double seconds) {
        return seconds < Double.POSITIVE_INFINITY
                ? Value.of(field, seconds)
                : Value.words(field, NEVER);
    }

    private Section axes() {
        List<List<Value>> rows = new ArrayList<>();
        for (Steered.AboutAxis one : steered.axes()) {
            rows.add(row(one));
        }
        return new Section.Table(
                "pilot-axes",
                "Whether a person can hold it",
                List.of(
                        "pilot-axis",
                        "pilot-means",
                        "pilot-acceleration",
                        "pilot-published-rate",
                        "pilot-first",
                        "pilot-phase-usual",
                        "pilot-phase-practised",
                        "pilot-holds"),
                rows);
    }

    private static List<Value> row(Steered.AboutAxis one) {
        String axis = one.axis().word();
        if (one.best().isEmpty()) {
            String none = "–";
            return List.of(
                    Value.words("pilot-axis", axis),
                    Value.words("pilot-means", "nothing"),
                    Value.words("pilot-acceleration", none),
                    Value.words("pilot-published-rate", NEVER),
                    Value.words("pilot-first", none),
                    Value.words("pilot-phase-usual", none),
                    Value.words("pilot-phase-practised", none),
                    Value.words("pilot-holds", one.holds().words()));
        }
        Means best = one.best().get();
        return List.of(
                Value.words("pilot-axis", axis),
                Value.words("pilot-means", best.what()),
                Value.of("pilot-acceleration", best.mostRadps2()),
                time("pilot-published-rate", one.toPublishedRateS()),
                Value.words("pilot-first", first(best)),
                Value.of("pilot-phase-usual", one.usualPhaseRad()),
                Value.of("pilot-phase-practised", one.practisedPhaseRad()),
                Value.words("pilot-holds", one.holds().words()));
    }

    private static String first(Means means) {
        return means.isInverse()
                ? String.format(Locale.ROOT, "the wrong way for %.2f s", means.wrongForS())
                : "the right way at once";
    }

    /** What makes it hard. */
    public List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        Mode fastest = steered.modes().getFirst();
        if (fastest.grows()) {
            found.add(
                    Finding.of(
                            Severity.NOTES,
                            "pilot-grows",
                            Sentence.words("left alone it ")
                                    .then(fastest.swings() ? "swings up" : "drifts off")
                                    .then(" and doubles that in ")
                                    .then(Measure.TIME, fastest.doublesInS()),
                            "air that the fans bring to their own speed pulls at their intakes"));
        }
        return found;
    }
}
