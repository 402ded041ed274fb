package liftwright.report.html;

import java.util.Locale;

/**
 * One inline SVG picture. Its colours are those of the sheet, by class, so that it follows a dark
 * screen and the printer; what differs does so by shape or hatch as well.
 */
final class Canvas {

    /** Height of its letters in its own units. */
    static final double LETTER = 12.5;

    /** Width of a letter over its height, rather too much: labels are placed by it. */
    private static final double LETTER_WIDTH = 0.57;

    private final Markup page;

    Canvas(Markup page) {
        this.page = page;
    }

    /**
     * Draws a picture.
     *
     * @param id unique on the sheet
     * @param title what it shows, for who cannot see it
     * @param words what is seen on it; the numbers stand in a table
     */
    void picture(String id, int width, int height, String title, String words, Runnable drawing) {
        page.element(
                "svg",
                () -> {
                    page.element("title", title, "id", id + "-title");
                    page.element("desc", words, "id", id + "-desc");
                    drawing.run();
                },
                "xmlns",
                "http://www.w3.org/2000/svg",
                "width",
                Integer.toString(width),
                "height",
                Integer.toString(height),
                "viewBox",
                "0 0 " + width + " " + height,
                "role",
                "img",
                "aria-labelledby",
                id + "-title",
                "aria-describedby",
                id + "-desc");
    }

    void line(double x1, double y1, double x2, double y2, String style) {
        page.empty("line", "x1", n(x1), "y1", n(y1), "x2", n(x2), "y2", n(y2), "class", style);
    }

    void box(double x, double y, double width, double height, String style) {
        page.empty(
                "rect", "x", n(x), "y", n(y), "width", n(width), "height", n(height), "class",
                style);
    }

    void disk(double x, double y, double radius, String style) {
        page.empty("circle", "cx", n(x), "cy", n(y), "r", n(radius), "class", style);
    }

    /** A path in the language of SVG, made with {@link #n}. */
    void path(String d, String style) {
        page.empty("path", "d", d, "class", style);
    }

    /** A path whose width is a matter of the drawing. */
    void path(String d, double width, String style) {
        page.empty("path", "d", d, "stroke-width", n(width), "class", style);
    }

    /**
     * @param anchor start, middle or end
     */
    void text(double x, double y, String anchor, String words, String style) {
        page.element("text", words, "x", n(x), "y", n(y), "text-anchor", anchor, "class", style);
    }

    /** About how wide words are, rather more than less. */
    static double widthOf(String words) {
        return words.codePointCount(0, words.length()) * LETTER * LETTER_WIDTH;
    }

    /** Words as they are written, or as much of their head as there is room for. */
    static String cut(String words, double room) {
        String plain = Markup.plain(words);
        if (widthOf(plain) <= room) {
            return plain;
        }
        int letters = Math.clamp((long) (room / widthOf("w")) - 1, 1, 1000);
        int end =
                plain.offsetByCodePoints(
                        0, Math.min(letters, plain.codePointCount(0, plain.length())));
        return plain.substring(0, end) + "…";
    }

    /** A number of the drawing: a tenth of a unit is finer than any eye. */
    static String n(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        String whole = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
        return whole.equals("-0") ? "0" : whole;
    }
}
