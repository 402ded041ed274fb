package liftwright.trials.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Outcome;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;

/** Makes a proof of what its file states, and takes none that contradicts itself. */
final class ProofBinder {

    private final Problems problems;
    private final Set<String> taken = new HashSet<>();

    ProofBinder(Problems problems) {
        this.problems = problems;
    }

    Optional<KillProof> read(Node root) {
        return ProofKeys.SECTION.read(root, Spot.top(root.span()), problems).flatMap(this::proof);
    }

    private Optional<KillProof> proof(Fields fields) {
        Optional<LocalDate> date = WrittenDate.read(fields, ProofKeys.DATE, problems);
        digest(fields, ProofKeys.RIG);
        digest(fields, ProofKeys.LOG_DIGEST);
        Optional<Quantity> limit = fields.get(ProofKeys.LIMIT);
        List<PathProof> paths = new ArrayList<>();
        for (Stated<Fields> path : fields.get(ProofKeys.PATHS).orElse(List.of())) {
            path(path.value(), limit.map(Quantity::si).orElse(Double.MAX_VALUE))
                    .ifPresent(paths::add);
        }
        if (problems.hasErrors() || date.isEmpty() || limit.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new KillProof(
                        date.get(),
                        fields.get(ProofKeys.RIG).orElseThrow(),
                        fields.get(ProofKeys.LOG).orElseThrow(),
                        fields.get(ProofKeys.LOG_DIGEST).orElseThrow(),
                        fields.get(ProofKeys.SIGNAL).orElseThrow(),
                        limit.get().si(),
                        paths));
    }

    private void digest(Fields fields, Key<String> key) {
        fields.stated(key)
                .filter(told -> !told.value().matches("(sha256:)?[0-9a-f]{64}"))
                .ifPresent(
                        told ->
                                problems.add(
                                        Code.WRONG_KIND,
                                        told.spot(),
                                        Problems.quote(told.value()),
                                        "sha256: and 64 digits from 0 to 9 and a to f",
                                        ""));
    }

    private Optional<PathProof> path(Fields fields, double limitS) {
        Optional<Span> half = span(fields, ProofKeys.HALF);
        Optional<Span> tenth = span(fields, ProofKeys.TENTH);
        Optional<String> name = fields.get(ProofKeys.PATH);
        Optional<Integer> presses = fields.get(ProofKeys.PRESSES);
        Optional<Outcome> outcome = fields.get(ProofKeys.OUTCOME);
        if (name.isPresent() && !taken.add(name.get())) {
            problems.add(
                    Code.DUPLICATE_ID,
                    fields.spotOf(ProofKeys.PATH),
                    Problems.quote(name.get()) + " again",
                    "each way to stop once",
                    "");
        }
        if (problems.hasErrors() || name.isEmpty() || presses.isEmpty() || outcome.isEmpty()) {
            return Optional.empty();
        }
        if (presses.get() > 0 != half.isPresent() || half.isPresent() != tenth.isPresent()) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(ProofKeys.PRESSES),
                    presses.get()
                            + " presses "
                            + (half.isPresent() ? "with" : "without")
                            + " times",
                    "“half” and “tenth” where a press was timed, and only there",
                    "");
            return Optional.empty();
        }
        if (half.isPresent() && half.get().highS() > tenth.orElseThrow().highS()) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(ProofKeys.TENTH),
                    "a tenth before a half",
                    "thrust goes through a half first",
                    "");
            return Optional.empty();
        }
        if (outcome.get() == Outcome.HOLDS
                && (presses.get() < Proving.LEAST_PRESSES
                        || tenth.orElseThrow().highS() > limitS)) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(ProofKeys.OUTCOME),
                    "“" + Outcome.HOLDS.label() + "” of times that do not meet it",
                    String.format(
                            Locale.ROOT,
                            "at least %d presses, none later than %s s",
                            Proving.LEAST_PRESSES,
                            limitS),
                    "Make the proof from its log again.");
            return Optional.empty();
        }
        return Optional.of(
                new PathProof(
                        name.get(),
                        presses.get(),
                        half,
                        tenth,
                        outcome.get(),
                        fields.get(ProofKeys.REASONS).orElse(List.of()).stream()
                                .map(Stated::value)
                                .toList()));
    }

    private Optional<Span> span(Fields fields, Key<Fields> key) {
        Optional<Stated<Fields>> told = fields.stated(key);
        Optional<Quantity> from = told.flatMap(one -> one.value().get(ProofKeys.FROM));
        Optional<Quantity> to = told.flatMap(one -> one.value().get(ProofKeys.TO));
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        if (from.get().si() > to.get().si()) {
            problems.add(
                    Code.CONTRADICTION,
                    told.get().spot(),
                    "an earliest time after the latest",
                    "“from” no later than “to”",
                    "");
            return Optional.empty();
        }
        return Optional.of(new Span(from.get().si(), to.get().si()));
    }
}
