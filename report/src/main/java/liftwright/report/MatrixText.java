package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import liftwright.answer.Fields;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Matrix.Cell;
import liftwright.answer.Section.Matrix.Line;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Value;

/**
 * A matrix of failures in columns: how each number stands against what is asked is a mark before it
 * and a word for the line. Bands stand where they have room.
 */
final class MatrixText {

    private static final int INDENT = 2;

    /** A rig can fail in hundreds of ways: a terminal shows those that matter most. */
    private static final int MOST_LINES = 20;

    /** From the one that matters most. */
    private static final List<Standing> WORST_FIRST =
            List.of(Standing.SHORT, Standing.UNTOLD, Standing.HOLDS, Standing.TOLD);

    private final Paper paper;
    private final Figures figures;
    private final TableText tables;

    MatrixText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
        this.tables = new TableText(paper, figures);
    }

    void write(Matrix matrix) {
        paper.heading(matrix.title());
        int all = matrix.lines().size();
        lines(
                new Matrix(
                        matrix.id(),
                        matrix.title(),
                        matrix.columns(),
                        matrix.lines().subList(0, Math.min(MOST_LINES, all))));
        if (all > MOST_LINES) {
            paper.text(
                    INDENT,
                    "and "
                            + (all - MOST_LINES)
                            + " more failures: all of them with --html or --json");
        }
    }

    private void lines(Matrix matrix) {
        List<String> heads = new ArrayList<>(List.of("what fails", "stands"));
        matrix.columns().forEach(field -> heads.add(paper.plain(Fields.of(field).label())));
        boolean[] right = rightAligned(matrix);
        List<List<String>> banded = rows(matrix, figures::value);
        boolean roomy = tables.fits(heads, banded, right);
        tables.write(heads, roomy ? banded : rows(matrix, figures::bare), right);
        paper.text(INDENT, key(matrix, !roomy && hasBands(matrix)));
        for (Line line : matrix.lines()) {
            if (!line.members().isEmpty()) {
                paper.block(
                        INDENT,
                        INDENT + 2,
                        Paper.Ink.PLAIN,
                        "The same as " + line.label() + ": " + String.join(", ", line.members()));
            }
        }
    }

    private List<List<String>> rows(Matrix matrix, Function<Value, String> words) {
        return matrix.lines().stream()
                .map(
                        line -> {
                            List<String> row = new ArrayList<>();
                            row.add(paper.plain(line.label()));
                            row.add(worst(line).word());
                            line.cells().forEach(cell -> row.add(cell(cell, words)));
                            return row;
                        })
                .toList();
    }

    private String cell(Cell cell, Function<Value, String> words) {
        String shown = paper.plain(words.apply(cell.value()));
        return mark(cell.standing()).map(mark -> mark + Door.NO_BREAK_SPACE + shown).orElse(shown);
    }

    /** The standing of a line is that of the cell that matters most. */
    static Standing worst(Line line) {
        return WORST_FIRST.stream()
                .filter(standing -> line.cells().stream().anyMatch(c -> c.standing() == standing))
                .findFirst()
                .orElse(Standing.TOLD);
    }

    private static Optional<String> mark(Standing standing) {
        return switch (standing) {
            case HOLDS -> Optional.of("+");
            case SHORT -> Optional.of("!");
            case UNTOLD -> Optional.of("?");
            case TOLD -> Optional.empty();
        };
    }

    private static boolean[] rightAligned(Matrix matrix) {
        boolean[] right = new boolean[2 + matrix.columns().size()];
        for (Line line : matrix.lines()) {
            for (int k = 0; k < line.cells().size(); k++) {
                right[2 + k] |= line.cells().get(k).value().figure() instanceof Value.Figure.Amount;
            }
        }
        return right;
    }

    private static boolean hasBands(Matrix matrix) {
        return matrix.lines().stream()
                .flatMap(line -> line.cells().stream())
                .anyMatch(cell -> cell.value().band().isPresent());
    }

    private static String key(Matrix matrix, boolean withoutBands) {
        List<String> words = new ArrayList<>();
        for (Standing standing : WORST_FIRST) {
            boolean occurs =
                    matrix.lines().stream()
                            .flatMap(line -> line.cells().stream())
                            .anyMatch(cell -> cell.standing() == standing);
            mark(standing)
                    .filter(_ -> occurs)
                    .ifPresent(m -> words.add(m + " " + meaning(standing)));
        }
        String key = String.join("; ", words);
        String bands = "bands stand in --html and --json";
        return key.isEmpty() || !withoutBands
                ? key + (withoutBands ? bands : "")
                : key + "; " + bands;
    }

    private static String meaning(Standing standing) {
        return switch (standing) {
            case HOLDS -> "holds what is asked";
            case SHORT -> "short of what is asked";
            case UNTOLD -> "cannot be told";
            case TOLD -> "nothing is asked";
        };
    }
}
