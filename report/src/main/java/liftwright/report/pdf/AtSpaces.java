package liftwright.report.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Lines end at spaces alone, so that no id, number or unit is taken apart while it has room. */
final class AtSpaces implements FSTextBreaker {

    private static final int DONE = -1;

    private String text = "";
    private int at;

    @Override
    public void setText(String text) {
        this.text = text;
        at = 0;
    }

    /** After the next run of spaces, or the end; less than 0 after that. */
    @Override
    public int next() {
        if (at >= text.length()) {
            return DONE;
        }
        int space = text.indexOf(' ', at);
        at = space < 0 ? text.length() : space + 1;
        return at;
    }
}
