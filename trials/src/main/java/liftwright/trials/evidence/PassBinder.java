package liftwright.trials.evidence;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;
import liftwright.trials.CardId;

/** Makes a pass of the tree of its file, or tells everything that is wrong with it. */
final class PassBinder {

    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");
    private static final String ADVICE =
            "A pass is never edited: put back the file as it was written.";

    private final Problems problems;

    PassBinder(Problems problems) {
        this.problems = problems;
    }

    /** Empty where something that is needed could not be read. */
    Optional<Pass> read(Node root) {
        Spot top = Spot.top(root.span());
        if (root instanceof Node.Entries map && isOfAnotherFormat(map, top)) {
            return Optional.empty();
        }
        Optional<Fields> fields = PassKeys.SECTION.read(withoutInputs(root), top, problems);
        Optional<Inputs> inputs =
                root instanceof Node.Entries map ? inputs(map, top) : Optional.empty();
        if (root instanceof Node.Entries map) {
            PassKeys.QUOTED.forEach(key -> quoted(map.value(key.name()), top, key));
        }
        return fields.flatMap(stated -> inputs.flatMap(read -> pass(stated, read)));
    }

    /** Of a later format only the version is a problem. */
    private boolean isOfAnotherFormat(Node.Entries map, Spot top) {
        if (!(map.value(PassKeys.FORMAT.name()).orElse(null) instanceof Node.Scalar version)
                || !version.value().matches("[1-9][0-9]{0,5}")
                || version.value().equals(String.valueOf(PassText.FORMAT))) {
            return false;
        }
        problems.add(
                Code.UNSUPPORTED_VERSION,
                top.child(PassKeys.FORMAT.name(), version.span()),
                "format " + version.value(),
                "format " + PassText.FORMAT,
                "A newer Liftwright wrote this file: use that one.");
        return true;
    }

    private static Node withoutInputs(Node root) {
        return root instanceof Node.Entries(var entries, var span)
                ? new Node.Entries(
                        entries.stream().filter(e -> !e.key().equals(PassKeys.INPUTS)).toList(),
                        span)
                : root;
    }

    private Optional<Pass> pass(Fields fields, Inputs inputs) {
        Optional<CardId> card = fields.stated(PassKeys.CARD).flatMap(this::card);
        Optional<LocalDate> on = fields.stated(PassKeys.ON).flatMap(this::date);
        Optional<String> rig = fields.stated(PassKeys.RIG).flatMap(this::digest);
        List<String> by = names(fields);
        count(fields, inputs);
        int runs = fields.get(PassKeys.CLEAN_RUNS).orElse(0);
        if (fields.get(PassKeys.OUTCOME).filter(o -> o == Pass.Outcome.PASSED).isPresent()
                && runs == 0) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(PassKeys.CLEAN_RUNS),
                    "passed without a clean run",
                    "at least one clean run, or another outcome",
                    ADVICE);
        }
        if (problems.hasErrors() || card.isEmpty() || on.isEmpty() || rig.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Pass(
                        fields.get(PassKeys.NUMBER).orElseThrow(),
                        card.get(),
                        on.get(),
                        fields.get(PassKeys.OUTCOME).orElseThrow(),
                        by,
                        runs,
                        rig.get(),
                        fields.get(PassKeys.REVISION).orElseThrow(),
                        fields.get(PassKeys.KILL_PROOF),
                        fields.get(PassKeys.NOTE).orElse(""),
                        inputs));
    }

    private Optional<CardId> card(Stated<String> stated) {
        Optional<CardId> card =
                CardId.parse(stated.value()).filter(id -> id.text().equals(stated.value()));
        if (card.isEmpty()) {
            problems.add(
                    Code.UNKNOWN_WORD,
                    stated.spot(),
                    Problems.quote(stated.value()),
                    "the name of a card such as “hop” or “pod.left pod”",
                    "`liftwright card` lists those of a rig.");
        }
        return card;
    }

    private Optional<LocalDate> date(Stated<String> stated) {
        try {
            if (DATE.matcher(stated.value()).matches()) {
                return Optional.of(LocalDate.parse(stated.value()));
            }
        } catch (DateTimeParseException e) {
            // told below, as whatever is no date
        }
        problems.add(
                Code.NOT_A_QUANTITY,
                stated.spot(),
                Problems.quote(stated.value()),
                "a day of the calendar as in 2026-03-14",
                "");
        return Optional.empty();
    }

    private Optional<String> digest(Stated<String> stated) {
        if (DIGEST.matcher(stated.value()).matches()) {
            return Optional.of(stated.value());
        }
        problems.add(
                Code.NOT_A_QUANTITY,
                stated.spot(),
                Problems.quote(stated.value()),
                "sha256: and 64 digits from 0 to f",
                ADVICE);
        return Optional.empty();
    }

    private List<String> names(Fields fields) {
        List<Stated<String>> stated = fields.get(PassKeys.BY).orElse(List.of());
        for (Stated<String> name : stated) {
            if (name.value().isBlank()) {
                problems.add(Code.WRONG_KIND, name.spot(), "nothing", "a name", "");
            }
        }
        return stated.stream().map(Stated::value).toList();
    }

    private void quoted(Optional<Node> value, Spot top, Key<?> key) {
        if (value.isPresent()
                && value.get() instanceof Node.Scalar scalar
                && !scalar.quoted()
                && !scalar.value().isEmpty()) {
            notQuoted(top.child(key.name(), scalar.span()), scalar);
        }
    }

    private void notQuoted(Spot spot, Node.Scalar scalar) {
        problems.add(
                Code.SYNTAX,
                spot,
                Problems.quote(scalar.value()) + " without quotes",
                "the same text in double quotes",
                "");
    }

    private Optional<Inputs> inputs(Node.Entries map, Spot top) {
        Optional<Node> value = map.value(PassKeys.INPUTS);
        if (value.isEmpty()) {
            problems.add(
                    Code.MISSING_KEY,
                    top.missing(PassKeys.INPUTS),
                    "no “inputs”",
                    "the inputs that the pass rests on",
                    ADVICE);
            return Optional.empty();
        }
        Spot spot = top.child(PassKeys.INPUTS, value.get().span());
        if (!(value.get() instanceof Node.Items(var items, var _))) {
            problems.add(
                    Code.WRONG_KIND, spot, "no list", "a list of the inputs in quotes", ADVICE);
            return Optional.empty();
        }
        SortedMap<String, String> read = new TreeMap<>();
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            input(item, spot.child(Integer.toString(i + 1), item.span()), read);
        }
        return Optional.of(new Inputs(read));
    }

    private void input(Node item, Spot spot, SortedMap<String, String> read) {
        if (!(item instanceof Node.Scalar scalar)) {
            problems.add(Code.WRONG_KIND, spot, "no text", "one text in quotes", ADVICE);
            return;
        }
        int is = scalar.value().indexOf(PassText.IS);
        if (!scalar.quoted()) {
            notQuoted(spot, scalar);
        } else if (is < 1) {
            problems.add(
                    Code.WRONG_KIND,
                    spot,
                    Problems.quote(scalar.value()),
                    "a path and a value as in “packs/p.1/series = 14”",
                    ADVICE);
        } else if (read.put(
                        scalar.value().substring(0, is),
                        scalar.value().substring(is + PassText.IS.length()))
                != null) {
            problems.add(
                    Code.DUPLICATE_KEY,
                    spot,
                    "the input " + Problems.quote(scalar.value().substring(0, is)) + " again",
                    "every input once",
                    ADVICE);
        }
    }

    private void count(Fields fields, Inputs inputs) {
        Optional<Integer> counted = fields.get(PassKeys.COUNT);
        if (counted.isPresent() && counted.get() != inputs.byPath().size()) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(PassKeys.COUNT),
                    inputs.byPath().size() + " inputs",
                    counted.get() + ", as counted when it was written",
                    ADVICE);
        }
    }
}
