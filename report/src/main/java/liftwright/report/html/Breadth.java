package liftwright.report.html;

import liftwright.report.LongName;

/**
 * How wide words are on paper, before anything is set: by the letters of DejaVu Sans Condensed
 * Bold, which is wider than most.
 */
final class Breadth {

    private static final int FIRST = ' ';

    /** Of the letters of ASCII from the space on, thousandths of the size; read from the font. */
    private static final int[] ASCII = {
        313, 410, 469, 754, 626, 901, 785, 275, 411, 411, 470, 754, 342, 374, 342, 329, 626, 626,
        626, 626, 626, 626, 626, 626, 626, 626, 360, 360, 754, 754, 754, 522, 900, 696, 686, 660,
        747, 615, 615, 738, 753, 334, 334, 697, 573, 896, 753, 765, 659, 765, 693, 648, 614, 730,
        696, 993, 694, 651, 652, 411, 329, 411, 754, 450, 450, 607, 644, 533, 644, 610, 391, 644,
        641, 308, 308, 598, 308, 938, 641, 618, 644, 644, 444, 536, 430, 641, 586, 831, 580, 586,
        523, 641, 329, 641, 754
    };

    /** Of any other: as wide as it is high. */
    private static final int OTHER = 1000;

    private Breadth() {}

    /** Of a text on one line, in units of its size. */
    static double of(String text) {
        return text.codePoints().map(Breadth::thousandths).sum() / 1000.0;
    }

    /** Of the widest word or piece of a long name, in units of its size. */
    static double ofWidestWord(String text) {
        double widest = 0;
        for (String word : text.split(" ", -1)) {
            for (String piece : LongName.pieces(word)) {
                widest = Math.max(widest, of(piece));
            }
        }
        return widest;
    }

    private static int thousandths(int letter) {
        int index = letter == '\u00a0' ? 0 : letter - FIRST;
        return index >= 0 && index < ASCII.length ? ASCII[index] : OTHER;
    }
}
