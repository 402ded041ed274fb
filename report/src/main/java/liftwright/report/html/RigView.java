package liftwright.report.html;

import liftwright.report.html.RigScene.Point;

/** From where the rig is seen. */
enum RigView {
    /** As someone sees it who stands behind it: right is right. */
    BEHIND("from behind", "left", "right", "up"),
    /** From its right side, forward to the right. */
    SIDE("from its right side", "back", "forward", "up"),
    /** From above, forward up the page. */
    ABOVE("from above", "left", "right", "forward");

    private final String words;
    private final String left;
    private final String right;
    private final String top;

    RigView(String words, String left, String right, String top) {
        this.words = words;
        this.left = left;
        this.right = right;
        this.top = top;
    }

    String words() {
        return words;
    }

    /** Which way the left edge of the page is. */
    String left() {
        return left;
    }

    String right() {
        return right;
    }

    String top() {
        return top;
    }

    /** To the right on the page, m. */
    double across(Point p) {
        return switch (this) {
            case BEHIND, ABOVE -> p.right();
            case SIDE -> p.forward();
        };
    }

    /** Up on the page, m. */
    double upward(Point p) {
        return switch (this) {
            case BEHIND, SIDE -> p.up();
            case ABOVE -> p.forward();
        };
    }

    /** Towards whoever looks, m. */
    double near(Point p) {
        return switch (this) {
            case BEHIND -> -p.forward();
            case ABOVE -> p.up();
            case SIDE -> p.right();
        };
    }
}
