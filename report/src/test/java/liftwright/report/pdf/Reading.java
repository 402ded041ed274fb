package liftwright.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import liftwright.report.pdf.Expected.Cell;
import liftwright.report.pdf.Expected.Item;
import liftwright.report.pdf.Printed.Letter;
import liftwright.report.pdf.Printed.Page;
import liftwright.report.pdf.Printed.Said;

/**
 * Reads what stands on printed pages against what must, letter by letter, and what a page may not
 * take apart on the way.
 */
final class Reading {

    /** Of 11 pt, as the page setter rounds. */
    private static final double BODY_PT = 10.95;

    private static final double ABORT_PT = 14;

    private final List<Letter> letters = new ArrayList<>();
    private final List<Page> pageOf = new ArrayList<>();
    private final List<Integer> pageNumber = new ArrayList<>();
    private final List<String> headsAgain;
    private final StringBuilder text = new StringBuilder();
    private final Set<Integer> pageStarts = new HashSet<>();
    private int at;

    private Reading(Printed printed, double topPt, double footPt) {
        headsAgain = printed.headsAgain();
        int number = -1;
        for (Said said : printed.said()) {
            Page page = printed.pages().get(said.page());
            double foot = said.letter().foot();
            if (foot > topPt && foot < page.height() - footPt) {
                if (said.page() > number) {
                    pageStarts.add(text.length());
                    number = said.page();
                }
                for (int k = 0; k < said.letter().text().length(); k++) {
                    letters.add(said.letter());
                    pageNumber.add(said.page());
                    pageOf.add(page);
                }
                text.append(said.letter().text());
            }
        }
    }

    /** Fails at the first text that is not where it must be. */
    static void of(Printed printed, List<Item> items, double topPt, double footPt) {
        var reading = new Reading(printed, topPt, footPt);
        for (int k = 0; k < items.size(); k++) {
            reading.item(items.get(k));
        }
        assertThat(reading.text.substring(reading.at)).as("more than was to be said").isEmpty();
    }

    private void item(Item item) {
        switch (item) {
            case Item.Title(String title) -> {
                take(title);
                if (at < text.length()) {
                    assertThat(pageStarts).as("a heading alone: %s", title).doesNotContain(at);
                }
            }
            case Item.Text(String said) -> take(said);
            case Item.Write(String label) -> {
                int from = at;
                take(label);
                whole(from, label);
                ruled(from, label);
            }
            case Item.Grid grid -> {
                if (text.indexOf(grid.head(), at) == at) {
                    grid(grid);
                } else {
                    rows(grid);
                }
            }
        }
    }

    private void take(String wanted) {
        String found = text.substring(at, Math.min(text.length(), at + wanted.length()));
        assertThat(found)
                .as("after …%s", text.substring(Math.max(0, at - 60), at))
                .isEqualTo(wanted);
        at += wanted.length();
    }

    private void grid(Item.Grid grid) {
        take(grid.head());
        assertThat(pageStarts).as("a head alone: %s", grid.head()).doesNotContain(at);
        for (List<Cell> row : grid.rows()) {
            if (pageStarts.contains(at)) {
                assertThat(headsAgain.get(pageNumber.get(at)))
                        .as("the head on the next page")
                        .isEqualTo(grid.head());
            }
            int from = at;
            row.forEach(this::cell);
            whole(from, "row");
        }
    }

    /** Each row as a block of its own: head and value in turn. */
    private void rows(Item.Grid grid) {
        for (List<Cell> row : grid.rows()) {
            int from = at;
            take(grid.named() ? "" : grid.heads().getFirst());
            take(row.getFirst().text());
            for (int k = 1; k < row.size(); k++) {
                take(grid.heads().get(k));
                cell(row.get(k));
            }
            whole(from, "row");
        }
    }

    private void cell(Cell cell) {
        int from = at;
        take(cell.text());
        double least = cell.large() ? ABORT_PT : BODY_PT;
        for (Letter letter : letters.subList(from, at)) {
            assertThat(letter.size()).as(cell.text()).isGreaterThanOrEqualTo(least);
            assertThat(letter.bold()).as(cell.text()).isIn(true, cell.large());
        }
    }

    private void whole(int from, String what) {
        for (int k = from + 1; k < at; k++) {
            assertThat(pageStarts).as("cut by the page's end: %s", what).doesNotContain(k);
        }
    }

    /** The rule begins behind the label and lies about the foot of its last line. */
    private void ruled(int from, String label) {
        Letter last = letters.get(at - 1);
        double right =
                letters.subList(from, at).stream()
                        .mapToDouble(l -> l.left() + l.width())
                        .max()
                        .orElseThrow();
        assertThat(pageOf.get(at - 1).rules())
                .as("a rule for %s", label)
                .anySatisfy(
                        (Rectangle2D rule) -> {
                            assertThat(rule.getMinX()).isGreaterThan(right);
                            assertThat(rule.getMinY() - last.foot()).isBetween(-1.0, 12.0);
                        });
    }
}
