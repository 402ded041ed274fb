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
                                                        new Value.Figure.NotComputed(part)))))),
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
