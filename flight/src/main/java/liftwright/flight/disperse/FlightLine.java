package liftwright.flight.disperse;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import liftwright.flight.disperse.FlightReading.BrokenException;
import liftwright.flight.run.FlightOutcome.End;

/** One flight of a file, read strictly: only what the program itself would write there. */
final class FlightLine {

    private static final int FIGURES = FlightFigure.values().length;
    private static final int BEFORE = 4;

    private final String text;
    private final int line;
    private int at;

    private FlightLine(String text, int line) {
        this.text = text;
        this.line = line;
    }

    static Flown read(String text, int line) throws BrokenException {
        return new FlightLine(text, line).flown();
    }

    private Flown flown() throws BrokenException {
        int number = number();
        int start = at;
        String end = cell("how the flight ended");
        if (end.equals(FlightText.NOT_FLOWN)) {
            for (int i = 2; i < BEFORE + FIGURES; i++) {
                int from = at;
                if (!cell("an empty cell").isEmpty()) {
                    throw new BrokenException(line, from + 1, "what was not flown has no numbers");
                }
            }
            return new Flown.NotMade(number, words());
        }
        Optional<End> known =
                Arrays.stream(End.values()).filter(e -> FlightText.word(e).equals(end)).findFirst();
        if (known.isEmpty()) {
            throw new BrokenException(line, start + 1, "no flight ends \"" + shown(end) + "\"");
        }
        boolean well = yes("whether it went well");
        boolean computed = yes("whether it could be computed");
        Map<FlightFigure, Double> figures = new EnumMap<>(FlightFigure.class);
        for (FlightFigure each : FlightFigure.values()) {
            figures.put(each, figure(each));
        }
        return new Flown.Made(
                number,
                known.get(),
                well,
                computed,
                figures.getOrDefault(FlightFigure.DURATION, 0.0),
                FlightFigure.figures(figures),
                words());
    }

    private int number() throws BrokenException {
        String cell = cell("the number of a flight");
        if (!cell.matches("0|[1-9][0-9]{0,5}")) {
            throw new BrokenException(
                    line,
                    1,
                    "the number of a flight is a whole number from 0 to "
                            + FlightRange.MOST
                            + ", not \""
                            + shown(cell)
                            + "\"");
        }
        return Integer.parseInt(cell);
    }

    private boolean yes(String what) throws BrokenException {
        int start = at;
        String cell = cell(what);
        if (!cell.equals(FlightText.YES) && !cell.equals(FlightText.NO)) {
            throw new BrokenException(
                    line, start + 1, what + " is yes or no, not \"" + shown(cell) + "\"");
        }
        return cell.equals(FlightText.YES);
    }

    private double figure(FlightFigure figure) throws BrokenException {
        int start = at;
        String cell = cell(figure.head());
        double value;
        try {
            value = Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            throw notWritten(start, figure, cell);
        }
        // Only the digits that the program writes: so equal sets are equal bytes.
        if (!Double.isFinite(value) || !Double.toString(value).equals(cell)) {
            throw notWritten(start, figure, cell);
        }
        return value;
    }

    private BrokenException notWritten(int start, FlightFigure figure, String cell) {
        return new BrokenException(
                line,
                start + 1,
                figure.head() + " is no number as the program writes it: \"" + shown(cell) + "\"");
    }

    private String cell(String what) throws BrokenException {
        int comma = text.indexOf(',', at);
        if (comma < 0) {
            throw new BrokenException(
                    line, text.length() + 1, "the line ends before \"" + what + "\"");
        }
        String cell = text.substring(at, comma);
        at = comma + 1;
        return cell;
    }

    /** The last cell: text in double quotes, which stand in it twice. */
    private String words() throws BrokenException {
        String cell = text.substring(at);
        boolean quoted = cell.length() >= 2 && cell.startsWith("\"") && cell.endsWith("\"");
        String inner = quoted ? cell.substring(1, cell.length() - 1) : "";
        if (!quoted || inner.replace("\"\"", "").contains("\"")) {
            throw new BrokenException(line, at + 1, "the last cell is words in double quotes");
        }
        return inner.replace("\"\"", "\"");
    }

    private static String shown(String cell) {
        return cell.length() > 40 ? cell.substring(0, 40) + "…" : cell;
    }
}
