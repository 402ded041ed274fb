package liftwright.report.pdf;

import java.util.List;

/**
 * How a class of a picture is drawn on paper: what {@code pictures.css} says in print, in greys.
 *
 * @param fill of its inside
 * @param line grey of its outline, 0 black to 255 white
 * @param widthPx of its outline, units of the picture; 0 for none
 * @param dash lengths drawn and left out in turn, units of the picture; empty for a whole line
 */
record Ink(Fill fill, int line, double widthPx, List<Double> dash) {

    private static final int SOFT = 0x3d;
    private static final int RULE = 0xb5;
    private static final int BODY = 0xd8;
    private static final int PAPER = 255;

    /** Of an inside. */
    sealed interface Fill {
        record None() implements Fill {}

        /**
         * @param level 0 black to 255 white
         */
        record Grey(int level) implements Fill {}

        /**
         * @param step between lines, units of the picture
         * @param slanted from below left to above right, or else level
         * @param dots dash of each line
         */
        record Hatch(double step, boolean slanted, double widthPx, List<Double> dots)
                implements Fill {}
    }

    private static final Fill SLANTED = new Fill.Hatch(6, true, 1.1, List.of());
    private static final Fill LEVEL = new Fill.Hatch(6, false, 1.1, List.of());
    private static final Fill DOTTED = new Fill.Hatch(5, false, 2.4, List.of(2.4, 2.6));

    static Ink of(String classes) {
        return switch (classes) {
            case "hair" -> line(RULE, 1);
            case "axis" -> line(0, 1.3);
            case "edge" -> line(0, 2);
            case "reach" -> line(SOFT, 1.6, 10, 3, 2, 3);
            case "dashes" -> line(SOFT, 1.6, 7, 4);
            case "thrust" -> line(0, 1.8);
            case "tip", "anchor", "quarter" -> new Ink(new Fill.Grey(0), 0, 0, List.of());
            case "taken" -> new Ink(SLANTED, 0, 1, List.of());
            case "added" -> new Ink(DOTTED, 0, 1, List.of());
            case "pack" -> new Ink(LEVEL, 0, 1, List.of());
            case "made" -> new Ink(new Fill.Grey(PAPER), 0, 1.8, List.of());
            case "other" -> new Ink(new Fill.Grey(PAPER), 0, 1, List.of());
            case "dot" -> new Ink(new Fill.Grey(PAPER), 0, 1.6, List.of());
            case "person" -> new Ink(new Fill.Grey(BODY), 0, 1, List.of());
            default -> throw new IllegalStateException("a picture drawn with " + classes);
        };
    }

    private static Ink line(int grey, double widthPx, double... dash) {
        List<Double> lengths = java.util.Arrays.stream(dash).boxed().toList();
        return new Ink(new Fill.None(), grey, widthPx, lengths);
    }
}
