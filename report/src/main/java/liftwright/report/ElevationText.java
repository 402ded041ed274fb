package liftwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Elevation.Kind;
import liftwright.answer.Section.Elevation.Load;
import liftwright.answer.Section.Elevation.Shape;
import liftwright.answer.Section.Elevation.Spot2;
import liftwright.answer.Section.Table;

/**
 * A side view in characters: each kind of thing is drawn with its own letter, each load is a number
 * at its place and an arrow beside it. The tables below have what letters cannot.
 */
final class ElevationText {

    private static final int LINES = 18;
    private static final int WIDEST = 72;
    private static final int INDENT = 2;

    /** A character is about twice as high as it is wide. */
    private static final double TALL = 2;

    private final Paper paper;
    private final TableText tables;

    ElevationText(Paper paper, Figures figures) {
        this.paper = paper;
        this.tables = new TableText(paper, figures);
    }

    void write(Elevation elevation) {
        ElevationFrame frame = ElevationFrame.of(elevation);
        double perLine =
                Math.max(
                        frame.highM() / (LINES - 1),
                        frame.wideM() / (Math.min(WIDEST, paper.columns() - INDENT) - 1) * TALL);
        int columns = (int) Math.round(frame.wideM() / perLine * TALL) + 1;
        int lines = (int) Math.round(frame.highM() / perLine) + 1;
        char[][] grid = new char[lines][columns];
        for (char[] line : grid) {
            Arrays.fill(line, ' ');
        }
        Map<Kind, String> letters = new EnumMap<>(Kind.class);
        for (Shape shape : elevation.shapes()) {
            if (shape.kind() != Kind.KEEP_OUT) {
                outline(grid, shape, frame, perLine);
                letters.merge(shape.kind(), shape.label(), ElevationText::joined);
            }
        }
        Arrays.fill(grid[lines - 1], letter(Kind.GROUND));
        letters.putIfAbsent(Kind.GROUND, "");
        for (int k = 0; k < elevation.loads().size(); k++) {
            load(grid, k, elevation.loads().get(k), frame, perLine);
        }
        paper.heading(elevation.title());
        for (char[] line : grid) {
            paper.set(" ".repeat(INDENT) + new String(line));
        }
        paper.text(INDENT, key(letters));
        keptOut(elevation);
        numbered(elevation).forEach(tables::write);
    }

    private static String joined(String one, String other) {
        return one.isEmpty() || other.isEmpty() || one.contains(other)
                ? one.isEmpty() ? other : one
                : one + ", " + other;
    }

    /** Who may stand where is a matter of words: it mostly reaches beyond the picture. */
    private void keptOut(Elevation elevation) {
        elevation.shapes().stream()
                .filter(shape -> shape.kind() == Kind.KEEP_OUT && !shape.label().isEmpty())
                .forEach(shape -> paper.text(INDENT, "Keep out: " + shape.label()));
    }

    /** The first table with its loads numbered as they are drawn. */
    private static List<Table> numbered(Elevation elevation) {
        List<Load> loads = new ArrayList<>();
        for (int k = 0; k < elevation.loads().size(); k++) {
            Load load = elevation.loads().get(k);
            loads.add(
                    new Load(
                            mark(k) + " " + load.label(),
                            load.at(),
                            load.acrossN(),
                            load.upN(),
                            load.value()));
        }
        return new Elevation(elevation.id(), elevation.title(), elevation.shapes(), loads).tables();
    }

    private static char mark(int load) {
        return load < 9 ? (char) ('1' + load) : (char) ('a' + Math.min(25, load - 9));
    }

    private static void outline(char[][] grid, Shape shape, ElevationFrame frame, double perLine) {
        List<Spot2> spots = shape.outline();
        int last = shape.closed() ? spots.size() : spots.size() - 1;
        mark(grid, spots.getFirst(), letter(shape.kind()), frame, perLine);
        for (int k = 0; k < last; k++) {
            Spot2 from = spots.get(k);
            Spot2 to = spots.get((k + 1) % spots.size());
            int steps = 4 * Math.max(grid.length, grid[0].length);
            for (int i = 0; i <= steps; i++) {
                double share = (double) i / steps;
                mark(
                        grid,
                        new Spot2(
                                from.acrossM() + share * (to.acrossM() - from.acrossM()),
                                from.upM() + share * (to.upM() - from.upM())),
                        letter(shape.kind()),
                        frame,
                        perLine);
            }
        }
    }

    /** An arrow one step off its place, and its number at the arrow's far side. */
    private static void load(
            char[][] grid, int number, Load load, ElevationFrame frame, double perLine) {
        boolean upright = Math.abs(load.upN()) >= Math.abs(load.acrossN());
        int sign = (int) Math.signum(upright ? load.upN() : load.acrossN());
        char arrow = upright ? (sign < 0 ? 'v' : '^') : (sign < 0 ? '<' : '>');
        int line = line(grid, load.at(), frame, perLine) - (upright ? sign : 0);
        int column = column(load.at(), frame, perLine) + (upright ? 0 : sign);
        mark(grid, line, column, arrow);
        mark(grid, line, column + (sign < 0 && !upright ? -1 : 1), mark(number));
    }

    private static void mark(
            char[][] grid, Spot2 spot, char letter, ElevationFrame frame, double perLine) {
        mark(grid, line(grid, spot, frame, perLine), column(spot, frame, perLine), letter);
    }

    private static int column(Spot2 spot, ElevationFrame frame, double perLine) {
        return (int) Math.round((spot.acrossM() - frame.leftM()) / perLine * TALL);
    }

    private static int line(char[][] grid, Spot2 spot, ElevationFrame frame, double perLine) {
        return grid.length - 1 - (int) Math.round((spot.upM() - frame.lowM()) / perLine);
    }

    private static void mark(char[][] grid, int line, int column, char letter) {
        if (line >= 0 && line < grid.length && column >= 0 && column < grid[0].length) {
            grid[line][column] = letter;
        }
    }

    private static char letter(Kind kind) {
        return switch (kind) {
            case GROUND -> '=';
            case STAND -> 'S';
            case RIG -> 'R';
            case PERSON -> 'P';
            case ANCHOR -> 'A';
            case BEAM -> 'B';
            case LINE -> ':';
            case DOWN_LINE -> '/';
            case PLATFORM -> '_';
            case MAT -> 'M';
            case KEEP_OUT -> ' ';
            case REACH -> '.';
            case GANTRY -> 'G';
        };
    }

    private static String key(Map<Kind, String> letters) {
        List<String> words = new ArrayList<>();
        letters.forEach(
                (kind, label) ->
                        words.add(
                                letter(kind)
                                        + " "
                                        + kind.word()
                                        + (label.isEmpty() || label.equals(kind.word())
                                                ? ""
                                                : " (" + label + ")")));
        return String.join(", ", words) + "; numbers: loads, beside the arrow of each";
    }
}
