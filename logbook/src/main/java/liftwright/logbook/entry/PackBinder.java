package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.logbook.entry.PackSheet.Retire;
import liftwright.logbook.entry.PackSheet.Row;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.text.Node;

/** Makes a life sheet of the tree of its file, or tells everything that is wrong with it. */
final class PackBinder {

    private final Problems problems;
    private final Stating stating;

    PackBinder(Problems problems) {
        this.problems = problems;
        this.stating = new Stating(problems);
    }

    Optional<PackSheet> read(Node root) {
        return PackKeys.SECTION.read(root, Spot.top(root.span()), problems).flatMap(this::sheet);
    }

    private Optional<PackSheet> sheet(Fields fields) {
        Optional<String> pack = stating.words(fields, PackKeys.PACK);
        List<Row> rows =
                Stating.sections(fields, PackKeys.ROWS).stream()
                        .flatMap(row -> row(row).stream())
                        .toList();
        Optional<Quantity> coefficient = fields.get(PackKeys.COEFFICIENT);
        if (problems.hasErrors() || pack.isEmpty() || coefficient.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new PackSheet(
                        pack.get(),
                        fields.get(PackKeys.SERIAL).orElse(""),
                        coefficient.get(),
                        fields.get(PackKeys.NEW_RESISTANCE),
                        fields.get(PackKeys.NEW_CAPACITY),
                        fields.get(PackKeys.RETIRE).map(PackBinder::retire).orElse(Retire.USUAL),
                        rows));
    }

    private static Retire retire(Fields fields) {
        return new Retire(
                share(fields, PackKeys.RETIRE_RESISTANCE, Retire.USUAL.resistance()),
                share(fields, PackKeys.RETIRE_CAPACITY, Retire.USUAL.capacity()),
                share(fields, PackKeys.RETIRE_SWELLING, Retire.USUAL.swelling()),
                fields.get(PackKeys.QUARANTINE).orElse(Retire.USUAL.quarantineDays()),
                true);
    }

    private static double share(Fields fields, Key<Quantity> key, double without) {
        return fields.get(key).map(Quantity::si).orElse(without);
    }

    private Optional<Row> row(Fields fields) {
        Optional<LocalDate> date = stating.date(fields, PackKeys.DATE);
        together(fields, PackKeys.RESISTANCE, PackKeys.AT);
        together(fields, PackKeys.STORED, PackKeys.CHARGE);
        if (problems.hasErrors() || date.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Row(
                        date.get(),
                        fields.get(PackKeys.RESISTANCE),
                        fields.get(PackKeys.AT),
                        fields.get(PackKeys.CAPACITY),
                        fields.get(PackKeys.SWELLING),
                        fields.get(PackKeys.STORED),
                        fields.get(PackKeys.CHARGE),
                        fields.get(PackKeys.CRASH).orElse(""),
                        fields.get(PackKeys.BY).orElse(""),
                        fields.get(PackKeys.NOTE).orElse("")));
    }

    /** Two numbers that mean nothing without each other. */
    private void together(Fields fields, Key<?> one, Key<?> other) {
        if (fields.has(one) != fields.has(other)) {
            Key<?> there = fields.has(one) ? one : other;
            Key<?> missing = fields.has(one) ? other : one;
            problems.add(
                    Code.MISSING_KEY,
                    fields.spot().missing(missing.name()),
                    "“" + there.name() + "” without “" + missing.name() + "”",
                    "both, or neither",
                    "");
        }
    }
}
