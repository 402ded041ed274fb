package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;

/** Places words on a picture so that none lies on another: the first free place is taken. */
final class Labels {

    private record Box(double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right
                    && other.left < right
                    && top < other.bottom
                    && other.top < bottom;
        }
    }

    private static final double GAP = 1.5;

    private final Canvas canvas;
    private final double width;
    private final double height;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> avoided = new ArrayList<>();

    Labels(Canvas canvas, double width, double height) {
        this.canvas = canvas;
        this.width = width;
        this.height = height;
    }

    /**
     * Writes words about a point if there is room.
     *
     * @return whether they were written
     */
    boolean centred(double x, double y, String words, String style) {
        return at(x - Canvas.widthOf(words) / 2, y + 0.36 * Canvas.LETTER, words, style, false);
    }

    /** Writes words beside a thing: right, left, above, below, then further off. */
    boolean beside(double x, double y, double halfWidth, double halfHeight, String words) {
        return beside(x, y, halfWidth, halfHeight, words, true)
                || beside(x, y, halfWidth, halfHeight, words, false);
    }

    private boolean beside(
            double x,
            double y,
            double halfWidth,
            double halfHeight,
            String words,
            boolean avoiding) {
        double wide = Canvas.widthOf(words);
        double base = y + 0.36 * Canvas.LETTER;
        for (double off = 4; off < 60; off += 7) {
            double[][] places = {
                {x + halfWidth + off, base},
                {x - halfWidth - off - wide, base},
                {x - wide / 2, y - halfHeight - off},
                {x - wide / 2, y + halfHeight + off + 0.8 * Canvas.LETTER},
                {x + halfWidth + off, y - halfHeight - off},
                {x - halfWidth - off - wide, y - halfHeight - off},
                {x + halfWidth + off, y + halfHeight + off + Canvas.LETTER},
                {x - halfWidth - off - wide, y + halfHeight + off + Canvas.LETTER}
            };
            for (double[] place : places) {
                if (at(place[0], place[1], words, "name", avoiding)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Keeps words off a piece of the picture. */
    void reserve(double left, double top, double right, double bottom) {
        taken.add(new Box(left, top, right, bottom));
    }

    /** Keeps names off a thing as long as there is room elsewhere. */
    void avoid(double left, double top, double right, double bottom) {
        avoided.add(new Box(left, top, right, bottom));
    }

    private boolean at(double left, double base, String words, String style, boolean avoiding) {
        Box box =
                new Box(
                        left - GAP,
                        base - 0.95 * Canvas.LETTER,
                        left + Canvas.widthOf(words) + GAP,
                        base + 0.3 * Canvas.LETTER);
        boolean inside =
                box.left >= 0 && box.top >= 0 && box.right <= width && box.bottom <= height;
        if (!inside
                || taken.stream().anyMatch(box::meets)
                || (avoiding && avoided.stream().anyMatch(box::meets))) {
            return false;
        }
        taken.add(box);
        canvas.text(left + Canvas.widthOf(words) / 2, base, "middle", words, style);
        return true;
    }
}
