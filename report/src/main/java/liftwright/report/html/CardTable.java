package liftwright.report.html;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import liftwright.answer.Fields;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;
import liftwright.report.Figures;
import liftwright.report.LongName;

/**
 * A table on a card. Its columns are as wide as their words ask, on the width of the paper; where
 * the longest words have no room beside each other, each row is set as a block of its own. Rows are
 * never cut, and the head stands again on each page.
 */
final class CardTable {

    /** Of a table, pt. */
    private static final double LETTER_PT = 11;

    /** Of a value at which a run is stopped, pt. */
    private static final double ABORT_PT = 15;

    /** Beside the words of a cell, both sides and the rounding of widths to per cents, pt. */
    private static final double BESIDE_PT = 10.5;

    /** For what is written by hand, pt. */
    private static final double TO_WRITE_PT = 100;

    private static final double LEAST_TO_WRITE_PT = 60;

    /** A longer word goes on in the next line, pt. */
    private static final double LONGEST_WORD_PT = 100;

    private static final int SHORT_TABLE = 6;

    private static final double LINE_PT = 15;

    /** For a heading with the gaps about it, pt. */
    private static final double HEADING_PT = 60;

    /** Of the width of the paper, for each value of a row that is a block of its own. */
    private static final double PAIR_SHARE = 0.28;

    /** Fields of cells that are ticked by hand. */
    private static final Set<String> TO_TICK = Set.of("done");

    /** How the id of a table ends that says where a run is stopped. */
    private static final String ABORTS = "aborts";

    /** The value in it at which it is stopped: in large letters. */
    private static final String ABORT = "abort-value";

    private final Markup page;
    private final Table table;
    private final List<String> heads;
    private final List<List<Cell>> rows;
    private final boolean[] numbers;
    private final boolean[] aborts;
    private final boolean named;
    private final boolean beside;
    private final double roomPt;

    CardTable(
            Markup page,
            Figures figures,
            UnaryOperator<String> letters,
            double roomPt,
            Table table) {
        this.page = page;
        this.table = table;
        this.roomPt = roomPt;
        heads = table.columns().stream().map(field -> Fields.of(field).label()).toList();
        rows =
                table.rows().stream()
                        .map(row -> row.stream().map(cell -> cell(cell, figures, letters)).toList())
                        .toList();
        numbers = new boolean[heads.size()];
        aborts = new boolean[heads.size()];
        boolean anyAbort = table.columns().contains(ABORT);
        for (int k = 0; k < heads.size(); k++) {
            numbers[k] = isNumber(k);
            aborts[k] =
                    isAborts() && (anyAbort ? table.columns().get(k).equals(ABORT) : numbers[k]);
        }
        named =
                !rows.isEmpty()
                        && !TO_TICK.contains(table.columns().getFirst())
                        && table.rows().stream()
                                .allMatch(
                                        row ->
                                                row.getFirst().figure()
                                                                instanceof
                                                                Value.Figure.Words(String text)
                                                        && !text.isBlank());
        beside = Arrays.stream(wantedPt(true)).sum() <= roomPt;
    }

    /**
     * @param text of it, or its number alone
     * @param band of the number on a line of its own; empty where it has none
     */
    private record Cell(String text, String band) {

        /** What is said of both, together. */
        double of(ToDoubleFunction<String> said) {
            return said.applyAsDouble(text) + said.applyAsDouble(band);
        }

        double widest(boolean beside) {
            return beside && !band.isEmpty()
                    ? Breadth.of(text + " " + band)
                    : Math.max(Breadth.of(text), Breadth.of(band));
        }

        double widestWord() {
            return Math.max(Breadth.ofWidestWord(text), Breadth.ofWidestWord(band));
        }

        /** The band beside the number, or on a line of its own. */
        void write(Markup page, boolean beside) {
            words(page, text);
            if (!band.isEmpty()) {
                if (beside) {
                    page.own(" ");
                } else {
                    page.empty("br");
                }
                words(page, band);
            }
        }

        /** A line may end within a long name. */
        private static void words(Markup page, String text) {
            String gap = "";
            for (String word : text.split(" ", -1)) {
                page.own(gap);
                List<String> pieces = LongName.pieces(word);
                for (int k = 0; k < pieces.size(); k++) {
                    page.own(k == 0 ? "" : "<wbr/>").own(Markup.entities(pieces.get(k)));
                }
                gap = " ";
            }
        }
    }

    private static Cell cell(Value value, Figures figures, UnaryOperator<String> letters) {
        String text = value.band().isPresent() ? figures.bare(value) : figures.value(value);
        return new Cell(letters.apply(Markup.plain(text)), letters.apply(figures.band(value)));
    }

    private boolean isNumber(int column) {
        return table.rows().stream()
                .anyMatch(row -> row.get(column).figure() instanceof Value.Figure.Amount);
    }

    private boolean isAborts() {
        return table.id().endsWith(ABORTS);
    }

    /** Whether it is small enough to stand on one page with its heading. */
    boolean isShort() {
        return rows.size() <= SHORT_TABLE;
    }

    /** What its head and first row take with the heading above, about and rather more, pt. */
    double beginsPt() {
        double[] widths = widthsPt();
        boolean blocks = !fits(widths);
        double head = 1;
        double first = 1;
        double inBlocks = 2;
        for (int k = 0; k < heads.size(); k++) {
            head = Math.max(head, lines(Breadth.of(heads.get(k)), LETTER_PT, widths[k]));
            if (!rows.isEmpty()) {
                double size = sizePt(0, k);
                double wide = rows.getFirst().get(k).of(Breadth::of);
                first = Math.max(first, lines(wide, size, widths[k]));
                inBlocks += lines(wide, size, PAIR_SHARE * roomPt) / 2;
            }
        }
        return HEADING_PT + LINE_PT * (blocks ? inBlocks : head + first);
    }

    /** Lines of letters of a size on a width, with the gaps that long words leave. */
    private static double lines(double breadth, double sizePt, double widthPt) {
        double room = Math.max(sizePt, widthPt - BESIDE_PT);
        return Math.ceil(1.3 * breadth * sizePt / room) * sizePt / LETTER_PT + 0.5;
    }

    private boolean fits(double[] widths) {
        return IntStream.range(0, widths.length).mapToDouble(k -> widths[k]).sum() <= roomPt + 0.5;
    }

    private double sizePt(int row, int column) {
        return aborts[column] && isAmount(row, column) ? ABORT_PT : LETTER_PT;
    }

    /**
     * @param heading id of the heading that names it
     */
    void write(String heading) {
        double[] widths = widthsPt();
        if (!fits(widths)) {
            for (int k = 0; k < rows.size(); k++) {
                block(k);
            }
            return;
        }
        page.element(
                "table",
                () -> {
                    page.element("thead", () -> page.element("tr", () -> heads(widths)));
                    page.element(
                            "tbody",
                            () -> {
                                for (int k = 0; k < rows.size(); k++) {
                                    row(k);
                                }
                            });
                },
                "class",
                isAborts() ? "grid aborts" : "grid",
                "aria-labelledby",
                heading);
    }

    private void heads(double[] widths) {
        for (int k = 0; k < heads.size(); k++) {
            long percent = Math.max(1, Math.round(100 * widths[k] / roomPt));
            page.element(
                    "th",
                    heads.get(k),
                    "scope",
                    "col",
                    "class",
                    (numbers[k] ? "number w" : "w") + percent);
        }
    }

    private void row(int number) {
        page.element(
                "tr",
                () -> {
                    for (int k = 0; k < heads.size(); k++) {
                        cell(number, k);
                    }
                });
    }

    private void cell(int row, int column) {
        Cell cell = rows.get(row).get(column);
        if (TO_TICK.contains(table.columns().get(column))) {
            page.element("td", () -> CardHtml.box(page), "class", "tick");
        } else if (column == 0 && named) {
            page.element("th", () -> cell.write(page, beside), "scope", "row");
        } else {
            String style = style(row, column);
            if (style.isEmpty()) {
                page.element("td", () -> cell.write(page, beside));
            } else {
                page.element("td", () -> cell.write(page, beside), "class", style);
            }
        }
    }

    private String style(int row, int column) {
        if (aborts[column]) {
            return isAmount(row, column) ? "number abort" : "noabort";
        }
        return numbers[column] ? "number" : "";
    }

    private boolean isAmount(int row, int column) {
        return table.rows().get(row).get(column).figure() instanceof Value.Figure.Amount;
    }

    /** Its first cell on a line, then the others as pairs of head and value, two in a line. */
    private void block(int row) {
        page.element(
                "div",
                () -> {
                    page.element(
                            "h3",
                            () -> {
                                page.text(named ? "" : heads.getFirst() + " ");
                                rows.get(row).getFirst().write(page, true);
                            });
                    page.element(
                            "table",
                            () ->
                                    page.element(
                                            "tbody",
                                            () -> {
                                                for (int k = 1; k < heads.size(); k += 2) {
                                                    pairs(row, k);
                                                }
                                            }),
                            "class",
                            "pairs");
                },
                "class",
                "rowblock");
    }

    private void pairs(int row, int column) {
        page.element(
                "tr",
                () -> {
                    pair(row, column);
                    if (column + 1 < heads.size()) {
                        pair(row, column + 1);
                    } else {
                        page.element("td", "", "class", "w22");
                        page.element("td", "", "class", "w28");
                    }
                });
    }

    private void pair(int row, int column) {
        page.element("th", heads.get(column), "scope", "row", "class", "w22");
        String style = aborts[column] && isAmount(row, column) ? "w28 abort" : "w28";
        page.element("td", () -> rows.get(row).get(column).write(page, false), "class", style);
    }

    /** As wide as the words want, and no wider together than the room unless they cannot. */
    private double[] widthsPt() {
        double[] least = new double[heads.size()];
        for (int k = 0; k < heads.size(); k++) {
            least[k] = longest(LETTER_PT * Breadth.ofWidestWord(heads.get(k)));
            for (int row = 0; row < rows.size(); row++) {
                double word = sizePt(row, k) * rows.get(row).get(k).widestWord();
                least[k] = Math.max(least[k], isAmount(row, k) ? word : longest(word));
            }
            least[k] = Math.max(least[k], isToWrite(k) ? LEAST_TO_WRITE_PT : 0) + BESIDE_PT;
        }
        double[] wanted = wantedPt(beside);
        for (int k = 0; k < wanted.length; k++) {
            wanted[k] = Math.max(wanted[k], least[k]);
        }
        return shared(least, wanted);
    }

    /**
     * @param beside whether a band stands beside its number
     */
    private double[] wantedPt(boolean beside) {
        double[] wanted = new double[heads.size()];
        for (int k = 0; k < heads.size(); k++) {
            wanted[k] = LETTER_PT * Breadth.of(heads.get(k));
            for (int row = 0; row < rows.size(); row++) {
                wanted[k] =
                        Math.max(wanted[k], sizePt(row, k) * rows.get(row).get(k).widest(beside));
            }
            wanted[k] = Math.max(wanted[k], isToWrite(k) ? TO_WRITE_PT : 0) + BESIDE_PT;
        }
        return wanted;
    }

    /** Whether a column is empty, to be filled by hand. */
    private boolean isToWrite(int column) {
        return !TO_TICK.contains(table.columns().get(column))
                && !rows.isEmpty()
                && rows.stream().allMatch(row -> row.get(column).text().isBlank());
    }

    private static double longest(double wordPt) {
        return Math.min(LONGEST_WORD_PT, wordPt);
    }

    private double[] shared(double[] least, double[] wanted) {
        double leastSum = 0;
        double wantedSum = 0;
        for (int k = 0; k < least.length; k++) {
            leastSum += least[k];
            wantedSum += wanted[k];
        }
        if (leastSum > roomPt) {
            return least;
        }
        double[] widths = new double[least.length];
        for (int k = 0; k < least.length; k++) {
            widths[k] =
                    wantedSum <= roomPt
                            ? wanted[k] * roomPt / wantedSum
                            : least[k]
                                    + (roomPt - leastSum)
                                            * (wanted[k] - least[k])
                                            / (wantedSum - leastSum);
        }
        return widths;
    }
}
