package liftwright.report;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.quantity.UnitSystem;

/** One of everything that an answer can carry, about a part of any name. */
public record Sample(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    @Override
    public String question() {
        return "lift";
    }

    static Look look(int columns) {
        return new Look(columns, false, false, UnitSystem.SI);
    }

    public static Sample of(Outcome outcome, String part) {
        return new Sample(
                new Verdict(
                        outcome,
                        Sentence.words("usable lift of " + part + " is ")
                                .then(Measure.THRUST, 900, band(900)),
                        Optional.of(
                                new Verdict.WouldTell(
                                        "fan types/" + part, Sentence.words("weigh it"), 0.8)),
                        List.of("draw 7 of " + part + " found no operating point")),
                List.of(
                        finding(
                                Finding.Severity.STOPS,
                                part,
                                List.of(
                                        remedy(
                                                "carry less",
                                                new Remedy.Effect.Clears(
                                                        Value.of("thrust-to-weight", 1.2),
                                                        Value.of("thrust-to-weight-gain", 0.16),
                                                        Sentence.start().then(Measure.MASS, 0.1))),
                                        remedy(
                                                "add a fan",
                                                new Remedy.Effect.Helps(
                                                        Value.of("thrust-to-weight", 1.1),
                                                        Value.of("thrust-to-weight-gain", 0.06))))),
                        finding(
                                Finding.Severity.WARNS,
                                part,
                                List.of(
                                        remedy(
                                                "add a cell",
                                                new Remedy.Effect.Refused(
                                                        Sentence.words("too fast"))))),
                        finding(Finding.Severity.NOTES, part, List.of())),
                List.of(
                        waterfall("rated", part, "usable", "weight"),
                        new Section.Table(
                                "fans",
                                "Fans",
                                List.of("part", "fan-voltage", "fan-speed", "winding-current"),
                                List.of(
                                        List.of(
                                                Value.words("part", part),
                                                Value.of("fan-voltage", 48),
                                                new Value("fan-speed", new Value.Figure.Never()),
                                                new Value(
                                                        "winding-current",
                                                        new Value.Figure.NotComputed(part))))),
                        timeline(part),
                        shares(part),
                        playback(part)),
                new Evidence(
                        "sha256:0",
                        "none",
                        7,
                        1024,
                        Sentence.words("charge of " + part),
                        List.of(new Evidence.Law("motor of " + part, "book", "any speed", true)),
                        List.of(new Evidence.Assumption("site/" + part, part, "from memory")),
                        List.of(new Evidence.Check("power closes", 3e-12, 1e-9))));
    }

    /** One that comes to its limit, one that still warms, one that never does, over 200 s. */
    public static Section.Timeline timeline(String part) {
        return new Section.Timeline(
                "first-limits",
                "What gives out first",
                List.of(
                        new Section.Timeline.Bar(
                                part,
                                "insulation",
                                Value.of("time-to-limit", 50, band(50)),
                                Value.of("temperature", 373.15),
                                Value.of("temperature", 323.15),
                                "at the lug of " + part),
                        new Section.Timeline.Bar(
                                "back.1",
                                part,
                                new Value(
                                        "time-to-limit",
                                        new Value.Figure.NotComputed("still warming")),
                                Value.of("temperature", 313.15),
                                Value.of("temperature", 333.15),
                                ""),
                        new Section.Timeline.Bar(
                                "back.2",
                                "reserve",
                                new Value("time-to-limit", new Value.Figure.Never()),
                                Value.of("charge-left", 0.45),
                                Value.of("charge-left", 0.2),
                                "")),
                200);
    }

    public static Section.Shares shares(String part) {
        return new Section.Shares(
                "losses",
                "Where the watts go",
                Value.of("electrical-power", 4000),
                List.of(
                        new Section.Shares.Share(part, Value.of("electrical-power", 3000)),
                        new Section.Shares.Share("wires", Value.of("electrical-power", 1000))));
    }

    public static Section.Playback playback(String part) {
        var place = new Section.Playback.Place(0, 0.2, 0.1);
        return new Section.Playback(
                "heat-playback",
                "Moment by moment",
                List.of(0.0, 1.0),
                "temperature",
                List.of(
                        new Section.Playback.Track(
                                part, "wire", place, place, 323.15, List.of(288.15, 290.0))));
    }

    public static Section.Waterfall waterfall(
            String start, String step, String end, String against) {
        return new Section.Waterfall(
                "lift",
                "Where the lift goes",
                new Section.Waterfall.Step(start, Value.of("thrust-rated", 1000), ""),
                List.of(
                        new Section.Waterfall.Step(step, Value.of("step-density", 100), ""),
                        new Section.Waterfall.Step("sag", Value.of("step-supply-sag", -600), step),
                        new Section.Waterfall.Step("hair", Value.of("step-intake", -1), "")),
                new Section.Waterfall.Step(end, Value.of("lift-usable", 499), ""),
                new Section.Waterfall.Step(against, Value.of("weight", 400), ""));
    }

    private static Remedy remedy(String name, Remedy.Effect effect) {
        return new Remedy(Sentence.words(name), List.of(), effect);
    }

    private static Finding finding(Finding.Severity severity, String part, List<Remedy> remedies) {
        return new Finding(
                severity,
                "sample",
                Optional.of(part),
                Optional.of("fans/" + part),
                Sentence.words("something about " + part),
                Optional.of(Value.of("lift-usable", 900, band(900))),
                Optional.of(new Finding.Limit(Value.of("weight", 950), "common practice")),
                "because of " + part,
                remedies);
    }

    private static Band band(double si) {
        return new Band(si - 13, si + 17, 0.95, "sampled", 1024, 0.01);
    }
}
