package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Section.Elevation.Kind;
import liftwright.answer.Section.Matrix.Standing;
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
                        playback(part),
                        matrix(part),
                        elevation(part),
                        heights(part)),
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

    /** Of two faults one leaves too little, the other enough; one number cannot be told. */
    public static Section.Matrix matrix(String part) {
        return new Section.Matrix(
                "failures",
                "What each failure leaves",
                List.of("thrust-to-weight", "time-to-limit", "lift-usable"),
                List.of(
                        new Section.Matrix.Line(
                                part,
                                "fan stops",
                                List.of("fuse of " + part, "controller of " + part),
                                List.of(
                                        cell("thrust-to-weight", 0.93, Standing.SHORT),
                                        new Section.Matrix.Cell(
                                                new Value(
                                                        "time-to-limit",
                                                        new Value.Figure.NotComputed("it falls")),
                                                Standing.UNTOLD),
                                        new Section.Matrix.Cell(
                                                Value.of("lift-usable", 900, band(900)),
                                                Standing.TOLD))),
                        new Section.Matrix.Line(
                                "back.1",
                                part,
                                List.of(),
                                List.of(
                                        cell("thrust-to-weight", 1.08, Standing.HOLDS),
                                        cell("time-to-limit", 40, Standing.TOLD),
                                        cell("lift-usable", 1012, Standing.TOLD)))));
    }

    private static Section.Matrix.Cell cell(String field, double si, Standing standing) {
        return new Section.Matrix.Cell(Value.of(field, si), standing);
    }

    /** A stand of 1 m by 2 m, a line to the ground, 4 m to each side to keep out of. */
    public static Section.Elevation elevation(String part) {
        return new Section.Elevation(
                "restraint-elevation",
                "The stand from the side",
                List.of(
                        shape(Kind.KEEP_OUT, "4 m from " + part, true, -4, 0, 4, 0, 4, 3, -4, 3),
                        shape(Kind.STAND, part, true, -0.5, 0, 0.5, 0, 0.5, 2, -0.5, 2),
                        shape(Kind.DOWN_LINE, "line of " + part, false, 0.5, 2, 1.5, 0),
                        shape(Kind.ANCHOR, "", false, 1.5, 0)),
                List.of(
                        new Section.Elevation.Load(
                                "lift of " + part,
                                new Section.Elevation.Spot2(0, 2),
                                0,
                                900,
                                Value.of("lift-usable", 900, band(900))),
                        new Section.Elevation.Load(
                                "push",
                                new Section.Elevation.Spot2(0, 2),
                                225,
                                0,
                                Value.of("lift-usable", 225))));
    }

    private static Section.Elevation.Shape shape(
            Kind kind, String label, boolean closed, double... places) {
        List<Section.Elevation.Spot2> outline = new ArrayList<>();
        for (int k = 0; k < places.length; k += 2) {
            outline.add(new Section.Elevation.Spot2(places[k], places[k + 1]));
        }
        return new Section.Elevation.Shape(kind, label, outline, closed);
    }

    /** From 0 to 10 m in 5 s, and between 2 and 6 m nothing helps. */
    public static Section.Plot heights(String part) {
        return new Section.Plot(
                "heights",
                "Heights with no way out",
                "height-above-ground",
                "time",
                List.of(
                        new Section.Plot.Series(
                                "fall of " + part,
                                Section.Plot.Mark.LINE,
                                List.of(
                                        new Section.Plot.Point(0, 0),
                                        new Section.Plot.Point(10, 5)))),
                List.of(new Section.Plot.Zone("nothing helps " + part, 2, 6)));
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
        return Finding.of(
                        severity,
                        "sample",
                        Sentence.words("something about " + part),
                        "because of " + part)
                .about(part)
                .at("fans/" + part)
                .against(
                        Value.of("lift-usable", 900, band(900)),
                        new Finding.Limit(Value.of("weight", 950), "common practice"))
                .mendedBy(remedies);
    }

    private static Band band(double si) {
        return new Band(si - 13, si + 17, 0.95, "sampled", 1024, 0.01);
    }
}
