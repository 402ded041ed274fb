package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.table.KillLog;
import liftwright.rig.table.KillLog.Signal;

/** Logs of pressed kills. */
final class KillRows {

    static final Column TIME = Column.needed("time", Measure.TIME, Range.between(-1e6, 1e7));
    static final Column PRESS = Column.neededText("press");
    static final Column PATH = Column.text("path");
    static final Column THRUST =
            Column.open("thrust", Measure.FORCE, Range.between(-100_000, 100_000));
    static final Column CURRENT =
            Column.open("current", Measure.CURRENT, Range.between(-5000, 5000));
    static final Column SPEED =
            Column.open("speed", Measure.ROTATION, Range.between(0, 200_000 * Math.PI / 30));
    static final Column FILTER = Column.open("filter", Measure.TIME, Range.between(0, 10));
    static final Column NOTE = Column.text("note");

    static final Vocabulary WORDS =
            new Vocabulary(
                    List.of(TIME, PRESS, PATH, THRUST, CURRENT, SPEED, FILTER, NOTE),
                    Map.of(
                            "rpm", "Write “speed [rpm]”.",
                            "throttle",
                                    "Leave it out: what is ordered does not tell when the thrust"
                                            + " went.",
                            "kill", "Write “press”: its cells name what is pressed.",
                            "bus current", "Write “current [A]”.",
                            "winding current", "Write “current [A]”.",
                            "voltage",
                                    "Leave it out: a turning motor holds up the voltage of a dead"
                                            + " supply."));

    /** What a cell of presses may hold in place of a name. */
    private static final Set<String> PRESSED = Set.of("1", "x", "yes", "on");

    private static final Set<String> NOT_PRESSED = Set.of("", "0", "no", "off");

    private record Source(Signal signal, Column column) {}

    private static final List<Source> SOURCES =
            List.of(
                    new Source(Signal.THRUST, THRUST),
                    new Source(Signal.SPEED, SPEED),
                    new Source(Signal.CURRENT, CURRENT));

    private final Tabular table;
    private final List<String> paths;
    private final Faults faults;
    private final Head head;
    private OptionalDouble filterS = OptionalDouble.empty();
    private int filterLine;

    private KillRows(Tabular table, List<String> paths, Faults faults) {
        this.table = table;
        this.paths = paths;
        this.faults = faults;
        this.head = Head.read(table, WORDS, faults);
    }

    /** The table, if nothing is wrong with it. */
    static Optional<KillLog> read(String file, Tabular table, List<String> paths, Faults faults) {
        return new KillRows(table, paths, faults).read(file);
    }

    private Optional<KillLog> read(String file) {
        head.require(WORDS, faults);
        Optional<Source> source = source();
        var numbers = new Numbers(table.separator(), faults);
        var times = new Times(faults);
        var rows = new ArrayList<KillLog.Row>();
        boolean some = false;
        for (Line line : table.rows()) {
            OptionalDouble value = source.map(s -> open(s.column, line, numbers)).orElse(none());
            filter(line, numbers);
            Optional<String> pressed = head.find(PRESS).flatMap(at -> pressed(line, at));
            Optional<Head.Found> at = head.find(TIME);
            OptionalDouble time = at.isPresent() ? numbers.needed(at.get(), line) : none();
            if (time.isPresent()) {
                times.next(time.getAsDouble(), line, at.orElseThrow());
                rows.add(new KillLog.Row(line.number(), time.getAsDouble(), value, pressed));
            }
            some |= pressed.isPresent();
        }
        Times.atLeastTwo(table, faults);
        if (faults.isEmpty()) {
            somethingHappens(some, rows, source.orElseThrow());
        }
        return faults.isEmpty()
                ? Optional.of(new KillLog(file, source.orElseThrow().signal, filterS, rows))
                : Optional.empty();
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private Optional<Source> source() {
        List<Source> there =
                SOURCES.stream().filter(one -> head.find(one.column).isPresent()).toList();
        if (there.isEmpty() && !head.hasUndeclaredCurrent()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    THRUST.name(),
                    "no column that tells of thrust",
                    "“thrust [N]”, “speed [rpm]” or “current [A]”",
                    "");
        }
        for (Source more : there.subList(Math.min(1, there.size()), there.size())) {
            Cell at = table.head().cells().get(head.find(more.column).orElseThrow().index());
            faults.add(
                    Code.CONTRADICTION,
                    at,
                    more.column.name(),
                    "“" + more.column.name() + "” beside “" + there.getFirst().column.name() + "”",
                    "one of thrust, speed and current",
                    "Thrust tells most: leave the others out.");
        }
        return there.stream().findFirst();
    }

    private OptionalDouble open(Column column, Line line, Numbers numbers) {
        Optional<Head.Found> found = head.find(column);
        return found.isPresent() ? numbers.open(found.get(), line) : none();
    }

    /** One instrument has one smoothing. */
    private void filter(Line line, Numbers numbers) {
        OptionalDouble told = open(FILTER, line, numbers);
        if (told.isEmpty()) {
            return;
        }
        if (filterS.isPresent() && filterS.getAsDouble() != told.getAsDouble()) {
            Cell cell = line.cells().get(head.find(FILTER).orElseThrow().index());
            faults.add(
                    Code.CONTRADICTION,
                    cell,
                    FILTER.name(),
                    Problems.quote(cell.text()),
                    "the smoothing told in line " + filterLine,
                    "It belongs to the instrument: say it once, in the first row.");
            return;
        }
        if (filterS.isEmpty()) {
            filterS = told;
            filterLine = line.number();
        }
    }

    private Optional<String> pressed(Line line, Head.Found at) {
        Cell cell = line.cells().get(at.index());
        String text = cell.text();
        String lower = text.toLowerCase(Locale.ROOT);
        Optional<String> named = named(text);
        if (named.isEmpty() && NOT_PRESSED.contains(lower)) {
            return Optional.empty();
        }
        if (named.isEmpty() && PRESSED.contains(lower)) {
            return marked(line, cell);
        }
        if (named.isEmpty()) {
            noPath(cell, PRESS.name());
        }
        return named;
    }

    /** A mark alone does not say what was pressed, unless there is but one thing to press. */
    private Optional<String> marked(Line line, Cell mark) {
        Optional<Cell> cell =
                head.find(PATH)
                        .map(found -> line.cells().get(found.index()))
                        .filter(one -> !one.text().isEmpty());
        if (cell.isEmpty()) {
            if (paths.size() == 1) {
                return Optional.of(paths.getFirst());
            }
            faults.add(
                    Code.MISSING_KEY,
                    mark,
                    PRESS.name(),
                    Problems.quote(mark.text()) + ", which does not say what was pressed",
                    "the name of a way to stop: " + all(),
                    "Or name it under “path” in the same row.");
            return Optional.empty();
        }
        Optional<String> named = named(cell.get().text());
        if (named.isEmpty()) {
            noPath(cell.get(), PATH.name());
        }
        return named;
    }

    private Optional<String> named(String text) {
        return paths.stream().filter(path -> path.equalsIgnoreCase(text)).findFirst();
    }

    private void noPath(Cell cell, String column) {
        faults.add(
                Code.NO_SUCH_PART,
                cell,
                column,
                Problems.quote(cell.text()),
                "a way to stop of this rig: " + all(),
                Nearest.to(cell.text(), paths)
                        .map(near -> "Perhaps “" + near + "” is meant.")
                        .orElse(""));
    }

    private String all() {
        return paths.isEmpty() ? "it declares none" : String.join(", ", paths);
    }

    private void somethingHappens(boolean some, List<KillLog.Row> rows, Source source) {
        if (!some) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().cells().get(head.find(PRESS).orElseThrow().index()),
                    PRESS.name(),
                    "a log in which nothing is pressed",
                    "the name of a way to stop in the row of its press",
                    "The ways are: " + all() + ".");
        }
        if (rows.stream().noneMatch(row -> row.value().orElse(0) > 0)) {
            faults.add(
                    Code.OUT_OF_RANGE,
                    table.head().cells().get(head.find(source.column).orElseThrow().index()),
                    source.column.name(),
                    "nothing above 0 in any row",
                    "more than 0 before the press",
                    "A kill is proved on a running fan.");
        }
    }
}
