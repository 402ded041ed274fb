package liftwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Matrix.Line;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Section.Table;

/** A matrix of failures as a table: what stands how is told in a column of words. */
final class MatrixTable {

    private MatrixTable() {}

    static Table of(Matrix matrix) {
        List<String> columns = new ArrayList<>(List.of("fails", "fails-how", "standing"));
        columns.addAll(matrix.columns());
        columns.add("alike");
        return new Table(
                matrix.id(),
                matrix.title(),
                columns,
                matrix.lines().stream().map(MatrixTable::row).toList());
    }

    private static List<Value> row(Line line) {
        List<Value> row = new ArrayList<>();
        row.add(Value.words("fails", line.part()));
        row.add(Value.words("fails-how", line.what()));
        row.add(Value.words("standing", standing(line)));
        line.cells().forEach(cell -> row.add(cell.value()));
        row.add(
                Value.words(
                        "alike",
                        line.members().isEmpty() ? "\u2013" : String.join(", ", line.members())));
        return row;
    }

    /** What it is short of and what cannot be told; else that it holds, where anything is asked. */
    private static String standing(Line line) {
        String bad =
                Stream.of(Standing.SHORT, Standing.UNTOLD)
                        .map(standing -> labels(line, standing))
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining("; "));
        if (!bad.isEmpty()) {
            return bad;
        }
        boolean asked = line.cells().stream().anyMatch(cell -> cell.standing() == Standing.HOLDS);
        return (asked ? Standing.HOLDS : Standing.TOLD).word();
    }

    private static String labels(Line line, Standing standing) {
        String labels =
                line.cells().stream()
                        .filter(cell -> cell.standing() == standing)
                        .map(cell -> Fields.of(cell.value().field()).label())
                        .collect(Collectors.joining(", "));
        return labels.isEmpty() ? "" : standing.word() + ": " + labels;
    }
}
