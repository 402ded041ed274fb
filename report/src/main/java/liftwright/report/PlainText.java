package liftwright.report;

import liftwright.quantity.UnitSystem;

/** Words of the program itself, for a terminal. */
public final class PlainText {

    private PlainText() {}

    /** A paragraph, wrapped; what it quotes from outside is escaped. */
    public static String of(String paragraph, boolean ascii) {
        var paper = new Paper(look(ascii));
        paper.block(0, 2, Paper.Ink.PLAIN, paragraph);
        return paper.toString();
    }

    /** Lines that were set by whoever wrote them; those too wide are wrapped. */
    public static String ofHelp(String lines, boolean ascii) {
        var paper = new Paper(look(ascii));
        lines.lines().forEach(line -> paper.block(0, 2, Paper.Ink.PLAIN, line));
        return paper.toString();
    }

    private static Look look(boolean ascii) {
        return new Look(Look.WIDEST, ascii, false, UnitSystem.SI);
    }
}
