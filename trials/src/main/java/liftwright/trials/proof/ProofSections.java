package liftwright.trials.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section.Table;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.review.runaway.AllowedHeight;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** A proof of the kills, and what follows from it, as an answer shows them. */
public final class ProofSections {

    private static final double COVERAGE = 0.95;

    private ProofSections() {}

    /** One sentence that opens an answer. */
    public static Sentence sentence(KillProof proof) {
        long held = proof.paths().stream().filter(path -> path.outcome() == Outcome.HOLDS).count();
        Sentence start =
                Sentence.words(
                                held
                                        + " of "
                                        + proof.paths().size()
                                        + " declared ways to stop leave no more than a tenth of the"
                                        + " thrust within ")
                        .then(Measure.TIME, proof.limitS());
        return start.then(
                " of the press, on " + proof.date() + "; the day after it proves nothing");
    }

    /** Times of each way to stop. */
    public static Table times(KillProof proof) {
        List<List<Value>> rows = new ArrayList<>();
        for (PathProof path : proof.paths()) {
            rows.add(
                    List.of(
                            Value.words("proof-path", path.path()),
                            Value.of("proof-presses", path.presses()),
                            late("proof-half", path.half(), path.presses()),
                            late("proof-tenth", path.tenth(), path.presses()),
                            Value.words("proof-outcome", path.outcome().label()),
                            Value.words("proof-note", String.join("; ", path.reasons()))));
        }
        return new Table(
                "kill-proof",
                "From the press: " + Proving.method(proof.signal()),
                List.of(
                        "proof-path",
                        "proof-presses",
                        "proof-half",
                        "proof-tenth",
                        "proof-outcome",
                        "proof-note"),
                rows);
    }

    private static Value late(String field, Optional<Span> span, int presses) {
        return span.map(at -> Value.of(field, at.highS(), band(at, presses)))
                .orElseGet(
                        () -> new Value(field, new Value.Figure.NotComputed("no press was timed")));
    }

    private static Band band(Span span, int presses) {
        return new Band(
                span.lowS(),
                span.highS(),
                COVERAGE,
                "between the rows of the log, widened by smoothing and noise; the worst of the presses",
                presses,
                0);
    }

    /** How high a rig may go with these times. */
    public static Table heights(Heights heights) {
        List<List<Value>> rows = new ArrayList<>();
        for (Heights.OfPath path : heights.paths()) {
            rows.add(
                    List.of(
                            Value.words("proof-path", path.path()),
                            Value.of(
                                    "proof-reaction",
                                    path.kill().detectionS() + path.kill().reactionS()),
                            allowed(path.allowed()),
                            Value.of("proof-apex", path.apexM()),
                            Value.of("proof-impact", path.impactMps())));
        }
        return new Table(
                "kill-heights",
                "Every fan at full from a hover, untied, with the worst measured times",
                List.of(
                        "proof-path",
                        "proof-reaction",
                        "proof-height",
                        "proof-apex",
                        "proof-impact"),
                rows);
    }

    private static Value allowed(AllowedHeight height) {
        return switch (height) {
            case AllowedHeight.UpTo(double heightM, var _) -> Value.of("proof-height", heightM);
            case AllowedHeight.None _ ->
                    new Value(
                            "proof-height",
                            new Value.Figure.NotComputed(
                                    "none: even from the ground it ends harder"));
            case AllowedHeight.Endless _ ->
                    new Value(
                            "proof-height",
                            new Value.Figure.NotComputed("none: nothing ends the climb"));
        };
    }

    /** What is to be said of it, worst first. */
    public static List<Finding> findings(Rig rig, KillProof proof, Heights heights) {
        List<Finding> findings = new ArrayList<>();
        for (PathProof path : proof.paths()) {
            if (!path.holds()) {
                findings.add(notProved(rig, path));
            }
        }
        if (proof.paths().isEmpty()) {
            findings.add(
                    Finding.of(
                            Severity.STOPS,
                            "no-way-to-stop",
                            Sentence.words(
                                    "the rig declares no way to stop that takes thrust away"),
                            "what cannot be stopped is not run"));
        }
        heights.worst().map(worst -> tooHigh(rig, heights, worst)).ifPresent(findings::add);
        heights.keepOutM().map(metres -> keepOut(rig, metres)).ifPresent(findings::add);
        return findings;
    }

    private static Finding notProved(Rig rig, PathProof path) {
        Sentence said =
                Sentence.words(
                        path.path()
                                + ": "
                                + path.outcome().label()
                                + (path.reasons().isEmpty()
                                        ? ""
                                        : "; " + String.join("; ", path.reasons())));
        Finding finding =
                Finding.of(
                                Severity.STOPS,
                                path.outcome() == Outcome.DOES_NOT_HOLD
                                        ? "kill-too-slow"
                                        : "kill-not-proved",
                                said,
                                "each way to stop is the last one when the others fail")
                        .about(path.path());
        return path.tenth()
                .map(
                        span ->
                                finding.against(
                                        Value.of(
                                                "proof-tenth",
                                                span.highS(),
                                                band(span, path.presses())),
                                        new Finding.Limit(
                                                Value.of(
                                                        "proof-tenth",
                                                        rig.limits().si(LimitName.KILL_TIME)),
                                                LimitName.KILL_TIME.key()
                                                        + ": "
                                                        + rig.limits()
                                                                .origin(LimitName.KILL_TIME))))
                .orElse(finding);
    }

    private static Finding tooHigh(Rig rig, Heights heights, Heights.OfPath worst) {
        Optional<Double> allowed = heights.allowedM();
        boolean within = allowed.filter(most -> most >= heights.demandedM()).isPresent();
        Sentence said =
                Sentence.words("a runaway from ")
                        .then(Measure.LENGTH, heights.demandedM())
                        .then(
                                ", as high as is asked, that "
                                        + worst.path()
                                        + " stops as measured, comes to ")
                        .then(Measure.LENGTH, worst.apexM())
                        .then(" and strikes the ground at ")
                        .then(Measure.SPEED, worst.impactMps());
        said =
                allowed.isPresent()
                        ? said.then("; begun below ")
                                .then(Measure.LENGTH, allowed.get())
                                .then(" it ends within the limit")
                        : said.then(
                                "; begun at the ground it already ends harder than the limit: untied, no height is allowed");
        return Finding.of(
                        within ? Severity.NOTES : Severity.WARNS,
                        within ? "height-with-measured-kills" : "too-high-for-measured-kills",
                        said,
                        "reaction counts as declared, or as usual where nobody measured it; lines to the"
                                + " floor stop the climb and the fall")
                .against(
                        Value.of("proof-impact", worst.impactMps()),
                        new Finding.Limit(
                                Value.of("proof-impact", heights.impactLimitMps()),
                                LimitName.IMPACT_SPEED.key()
                                        + ": "
                                        + rig.limits().origin(LimitName.IMPACT_SPEED)));
    }

    private static Finding keepOut(Rig rig, double metres) {
        return Finding.of(
                Severity.NOTES,
                "keep-out-with-measured-kills",
                Sentence.words("nobody but the crew nearer than ")
                        .then(Measure.LENGTH, metres)
                        .then(": a fan may break at the top of such a runaway"),
                "the larger of “bystanders” ("
                        + rig.limits().origin(LimitName.KEEP_OUT)
                        + ") and the farthest piece, thrown from there");
    }
}
