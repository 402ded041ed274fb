package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.logbook.entry.PartSheet.Inspection;
import liftwright.logbook.entry.PartSheet.Measured;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;

/** Makes a sheet of a part of the tree of its file, or tells everything that is wrong with it. */
final class PartBinder {

    private final Problems problems;
    private final Stating stating;

    PartBinder(Problems problems) {
        this.problems = problems;
        this.stating = new Stating(problems);
    }

    Optional<PartSheet> read(Node root) {
        return PartKeys.SECTION.read(root, Spot.top(root.span()), problems).flatMap(this::sheet);
    }

    private Optional<PartSheet> sheet(Fields fields) {
        Optional<String> part = stating.words(fields, PartKeys.PART);
        List<Inspection> inspections =
                Stating.sections(fields, PartKeys.INSPECTIONS).stream()
                        .flatMap(one -> inspection(one).stream())
                        .toList();
        return problems.hasErrors()
                ? Optional.empty()
                : part.map(id -> new PartSheet(id, inspections));
    }

    private Optional<Inspection> inspection(Fields fields) {
        Optional<LocalDate> date = stating.date(fields, PartKeys.DATE);
        Optional<String> by = stating.words(fields, PartKeys.BY);
        List<Measured> measured =
                Stating.sections(fields, PartKeys.MEASURED).stream()
                        .flatMap(one -> measured(one).stream())
                        .toList();
        Optional<Boolean> accepted = fields.get(PartKeys.ACCEPTED);
        if (problems.hasErrors() || date.isEmpty() || by.isEmpty() || accepted.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Inspection(
                        date.get(),
                        fields.get(PartKeys.SERIAL).orElse(""),
                        accepted.get(),
                        by.get(),
                        measured,
                        fields.get(PartKeys.NOTE).orElse("")));
    }

    private Optional<Measured> measured(Fields fields) {
        Optional<String> what = stating.words(fields, PartKeys.WHAT);
        Optional<Quantity> found = amount(fields, PartKeys.FOUND);
        Optional<Quantity> declared = amount(fields, PartKeys.DECLARED);
        if (found.isPresent()
                && declared.isPresent()
                && !found.get().dimension().equals(declared.get().dimension())) {
            problems.add(
                    Code.WRONG_UNIT,
                    fields.spotOf(PartKeys.DECLARED),
                    "another kind of quantity than was found",
                    "two amounts of one kind",
                    "");
            return Optional.empty();
        }
        return what.isEmpty() || found.isEmpty()
                ? Optional.empty()
                : Optional.of(new Measured(what.get(), found.get(), declared));
    }

    private Optional<Quantity> amount(Fields fields, Key<String> key) {
        Optional<Stated<String>> stated = fields.stated(key);
        if (stated.isEmpty()) {
            return Optional.empty();
        }
        return switch (QuantityParser.parse(stated.get().value())) {
            case Reading.Parsed<Quantity>(var quantity) -> Optional.of(quantity);
            case Reading.Refused<Quantity>(var refusal) -> {
                problems.add(
                        Code.NOT_A_QUANTITY,
                        stated.get().spot(),
                        Problems.quote(stated.get().value()) + ": " + refusal.message(),
                        "an amount with its unit such as 0.418 kg ± 1 g",
                        refusal.suggestion().map(s -> "Perhaps “" + s + "” is meant.").orElse(""));
                yield Optional.empty();
            }
        };
    }
}
