package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.rig.RigPath;
import liftwright.rig.book.WireGauge;

/** What was found about fuses, as a table and as findings. */
final class FuseTable {

    private FuseTable() {}

    static Section.Table table(List<FuseChoice.Found> found) {
        List<List<Value>> rows = new ArrayList<>();
        for (FuseChoice.Found one : found) {
            rows.add(
                    List.of(
                            Value.words("part", one.fuse().id().text()),
                            Value.of("part-rating", one.fuse().rating().si()),
                            Value.of("current-expected", one.expectedA()),
                            Value.of("current-worst", one.worstA()),
                            Value.of("fault-current", one.prospectiveA()),
                            Value.of("fuse-state", one.state()),
                            Value.words("fuse-holds", one.holds() ? "yes" : "may open"),
                            Value.words(
                                    "fuse-protects",
                                    one.harm().map(harm -> "not " + harm.run().id()).orElse("yes")),
                            Value.words("fuse-choice", choice(one))));
        }
        return new Section.Table(
                "fuses",
                "Fuses: what holds and still protects ("
                        + String.format(
                                Locale.ROOT,
                                "each hover, then %.0f s of full throttle; ",
                                FuseLoad.BURST_S)
                        + "holding by the earliest fuse of its standard, protecting by the latest)",
                List.of(
                        "part",
                        "part-rating",
                        "current-expected",
                        "current-worst",
                        "fault-current",
                        "fuse-state",
                        "fuse-holds",
                        "fuse-protects",
                        "fuse-choice"),
                rows);
    }

    /** The sizes that do both, or what is in the way. */
    static String choice(FuseChoice.Found one) {
        if (!one.fitting().isEmpty()) {
            return one.fitting().stream().map(FuseTable::ampere).collect(Collectors.joining(", "));
        }
        if (one.holdsFromA().isEmpty()) {
            return "no standard size holds";
        }
        return "no standard size does both; "
                + ampere(one.holdsFromA().getAsDouble())
                + " would with "
                + (one.thicker().isEmpty()
                        ? "more than the thickest wire, or wire of a hotter class"
                        : thicker(one.thicker()));
    }

    private static String thicker(Map<RigPath, Integer> gauges) {
        return gauges.entrySet().stream()
                .sorted(java.util.Comparator.comparing(entry -> entry.getKey().toString()))
                .map(entry -> new WireGauge(entry.getValue()) + " at " + entry.getKey())
                .collect(Collectors.joining(", "));
    }

    private static String ampere(double si) {
        return (si == Math.rint(si)
                        ? Long.toString(Math.round(si))
                        : String.format(Locale.ROOT, "%.4g", si).replaceAll("0+$", ""))
                + " A";
    }

    static List<Finding> findings(List<FuseChoice.Found> found) {
        List<Finding> findings = new ArrayList<>();
        for (FuseChoice.Found one : found) {
            if (!one.holds()) {
                findings.add(mayOpen(one));
            }
            one.harm().ifPresent(harm -> findings.add(letsBurn(one, harm)));
            if (one.fuse().breaks().isEmpty() && one.prospectiveA() > 0) {
                findings.add(breakingUntold(one));
            }
        }
        return findings;
    }

    private static Finding mayOpen(FuseChoice.Found one) {
        return Finding.of(
                        Severity.WARNS,
                        "fuse-may-open",
                        Sentence.words("fuse " + one.fuse().id() + others(one) + " of ")
                                .then(Measure.CURRENT, one.fuse().rating().si())
                                .then(" may open in the task: hover at ")
                                .then(Measure.CURRENT, one.expectedA())
                                .then(", then ")
                                .then(Measure.TIME, FuseLoad.BURST_S)
                                .then(" at ")
                                .then(Measure.CURRENT, one.worstA())
                                .then("; what does both: " + choice(one)),
                        "fuses of one rating differ; heat of the hover is still in it when the burst comes")
                .about(one.fuse().id().text())
                .at(one.fuse().declaredAt().child("fuse").toString())
                .against(
                        Value.of("fuse-state", one.state()),
                        new Finding.Limit(
                                Value.of("fuse-state", 1),
                                "the earliest fuse that its standard or its declared doubt allows: "
                                        + one.form().source()));
    }

    private static Finding letsBurn(FuseChoice.Found one, FuseChoice.Harm harm) {
        return Finding.of(
                        Severity.WARNS,
                        "fuse-lets-wire-burn",
                        Sentence.words("fuse " + one.fuse().id() + others(one) + " of ")
                                .then(Measure.CURRENT, one.fuse().rating().si())
                                .then(" may open too late for " + harm.run().id() + ", which ")
                                .then(Measure.CURRENT, harm.ampere())
                                .then(" harms first; what does both: " + choice(one)),
                        "by the latest fuse that its standard or its declared doubt allows; a wire is"
                                + " harmed at its short-circuit temperature, or above its steady limit for over"
                                + " 5 s")
                .about(one.fuse().id().text())
                .at(one.fuse().declaredAt().child("fuse").toString())
                .judging(Value.of("part-current", harm.ampere()));
    }

    private static Finding breakingUntold(FuseChoice.Found one) {
        return Finding.of(
                        Severity.NOTES,
                        "fuse-breaking-untold",
                        Sentence.words("a dead short drives ")
                                .then(Measure.CURRENT, one.prospectiveA())
                                .then(
                                        " through fuse "
                                                + one.fuse().id()
                                                + others(one)
                                                + "; what it can break is not declared"),
                        "a fuse that cannot break its current burns on as an arc: write “breaks” and"
                                + " “voltage”")
                .about(one.fuse().id().text())
                .at(one.fuse().declaredAt().toString())
                .judging(Value.of("fault-current", one.prospectiveA()));
    }

    private static String others(FuseChoice.Found one) {
        return Unfused.others(one.number());
    }
}
