package liftwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.RigPath;

/** One of everything that an answer can carry. The numbers mean nothing. */
record SampleAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    @Override
    public String question() {
        return "lift";
    }

    static final Evidence.Check PASSED = new Evidence.Check("power closes", 3e-12, 1e-9);

    static Answer of(Outcome outcome, String name, Evidence.Check... checks) {
        return new SampleAnswer(
                new Verdict(
                        outcome,
                        Sentence.words("lift over weight of " + name + " is ")
                                .then(Measure.RATIO, 1.04, band(1.04))
                                .then(" at ")
                                .then(Measure.TEMPERATURE, 285.15),
                        Optional.of(
                                new Verdict.WouldTell(
                                        "fan types/F1/mass", Sentence.words("weigh it"), 0.8)),
                        List.of("draw 7 found no operating point")),
                List.of(
                        Finding.of(
                                        Finding.Severity.STOPS,
                                        "lift-short",
                                        Sentence.words(name + " is short of lift"),
                                        "the supply sags")
                                .about(name)
                                .at("demands/thrust to weight")
                                .against(
                                        amount("thrust-to-weight", 1.04),
                                        new Finding.Limit(
                                                Value.of("thrust-to-weight-demand", 1.15),
                                                "common practice"))
                                .mendedBy(
                                        List.of(
                                                new Remedy(
                                                        Sentence.words("carry less"),
                                                        changes(),
                                                        clears()),
                                                new Remedy(
                                                        Sentence.words("add a fan"),
                                                        changes(),
                                                        helps()),
                                                new Remedy(
                                                        Sentence.words("add a cell"),
                                                        changes(),
                                                        new Remedy.Effect.Refused(
                                                                Sentence.words("too fast"))))),
                        note(Finding.Severity.WARNS, name),
                        note(Finding.Severity.NOTES, name)),
                sections(name),
                new Evidence(
                        "sha256:0",
                        "none",
                        7,
                        1024,
                        Sentence.words("20 % of charge"),
                        List.of(new Evidence.Law("motor", "textbook", "any speed", true)),
                        List.of(new Evidence.Assumption("site/humidity", "50 %", "from memory")),
                        List.of(checks)));
    }

    private static List<Section> sections(String name) {
        var sections = new ArrayList<Section>();
        sections.addAll(
                List.of(
                        new Section.Waterfall(
                                "lift",
                                "Where the lift goes",
                                step("rated", "thrust-rated", 100),
                                List.of(
                                        step("air", "step-density", -2),
                                        step("sag", "step-supply-sag", -8)),
                                step("usable", "lift-usable", 90),
                                step("weight", "weight", 86)),
                        new Section.Table(
                                "fans",
                                "Fans",
                                List.of("part", "fan-voltage", "fan-speed", "winding-current"),
                                List.of(
                                        List.of(
                                                Value.words("part", name),
                                                amount("fan-voltage", 48),
                                                new Value("fan-speed", new Value.Figure.Never()),
                                                new Value(
                                                        "winding-current",
                                                        new Value.Figure.NotComputed(
                                                                "no supply")))))));
        sections.addAll(SampleHeat.all(name));
        sections.addAll(SampleFaults.all(name));
        return sections;
    }

    private static List<Change> changes() {
        var at = RigPath.of("packs", "p");
        return List.of(
                new Change.Set(at.child("series"), "15"),
                new Change.Add(at, "note", "one more"),
                new Change.Remove(at.child("note")),
                new Change.Replace(at.child("at"), "{mount: back}"),
                new Change.Move(at, 0));
    }

    private static Remedy.Effect clears() {
        return new Remedy.Effect.Clears(
                amount("thrust-to-weight", 1.2),
                amount("thrust-to-weight-gain", 0.16),
                Sentence.start().then(Measure.MASS, 0.1));
    }

    private static Remedy.Effect helps() {
        return new Remedy.Effect.Helps(
                amount("thrust-to-weight", 1.1), amount("thrust-to-weight-gain", 0.06));
    }

    private static Finding note(Finding.Severity severity, String name) {
        return Finding.of(severity, "hint", Sentence.words(name), "");
    }

    private static Section.Waterfall.Step step(String label, String field, double si) {
        return new Section.Waterfall.Step(label, amount(field, si), "");
    }

    private static Value amount(String field, double si) {
        return Value.of(field, si, band(si));
    }

    private static Band band(double si) {
        return new Band(si - 1, si + 1, 0.95, "sampled", 1024, 0.01);
    }
}
