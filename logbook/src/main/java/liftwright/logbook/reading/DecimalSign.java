package liftwright.logbook.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Problems;

/** Whether a log writes 1.5 or 1,5. */
final class DecimalSign {

    private static final Pattern POINT = Pattern.compile("[+-]?\\d*\\.\\d+(?:[eE][+-]?\\d+)?");
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d*,\\d+(?:[eE][+-]?\\d+)?");

    /** With more of the other kind than this, no sign is the log's. */
    private static final double MIXED = 0.1;

    private final LogText text;
    private final int head;
    private final char separator;
    private final List<LogColumn> columns;
    private final LogFaults faults;

    private record Seen(int line, LogLine.Cell cell) {}

    DecimalSign(LogText text, int head, char separator, List<LogColumn> columns, LogFaults faults) {
        this.text = text;
        this.head = head;
        this.separator = separator;
        this.columns = columns;
        this.faults = faults;
    }

    /** By what the first rows show, or as told. */
    char find(Optional<Character> told) {
        if (told.isPresent() || separator == ',') {
            return told.orElse('.');
        }
        int points = 0;
        int commas = 0;
        Seen point = new Seen(0, new LogLine.Cell("", 1));
        Seen comma = point;
        for (int line = head + 1; line <= text.first().size(); line++) {
            if (text.isLeft(line)) {
                continue;
            }
            List<LogLine.Cell> cells = LogLine.cut(text.first().get(line - 1), separator);
            for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) {
                LogLine.Cell cell = cells.get(i);
                if (columns.get(i) instanceof LogColumn.Left) {
                    continue;
                }
                if (POINT.matcher(cell.text()).matches()) {
                    point = points++ == 0 ? new Seen(line, cell) : point;
                } else if (COMMA.matcher(cell.text()).matches()) {
                    comma = commas++ == 0 ? new Seen(line, cell) : comma;
                }
            }
        }
        if (Math.min(points, commas) > MIXED * (points + commas)) {
            mixed(point, comma);
        }
        return commas > points ? ',' : '.';
    }

    private void mixed(Seen point, Seen comma) {
        boolean pointFirst = point.line < comma.line;
        Seen first = pointFirst ? point : comma;
        Seen second = pointFirst ? comma : point;
        faults.add(
                Code.CONTRADICTION,
                second.line,
                second.cell.column(),
                "",
                Problems.quote(second.cell.text()),
                "a decimal "
                        + (pointFirst ? "point" : "comma")
                        + " as in "
                        + Problems.quote(first.cell.text())
                        + " in line "
                        + first.line,
                "One log has one decimal sign, and nothing between thousands.");
    }
}
