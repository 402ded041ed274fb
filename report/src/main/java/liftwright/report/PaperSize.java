package liftwright.report;

/** A sheet of paper that a printer has. */
public enum PaperSize {
    /** 8.5 by 11 inches (ANSI Y14.1, size A). */
    LETTER("letter", 215.9, 279.4),
    /** 210 by 297 mm (ISO 216). */
    A4("A4", 210, 297);

    private final String css;
    private final double widthMm;
    private final double heightMm;

    PaperSize(String css, double widthMm, double heightMm) {
        this.css = css;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** As a style sheet calls it. */
    public String css() {
        return css;
    }

    /** Upright, mm. */
    public double widthMm() {
        return widthMm;
    }

    /** Upright, mm. */
    public double heightMm() {
        return heightMm;
    }
}
