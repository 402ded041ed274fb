package liftwright.report.pdf;

import com.openhtmltopdf.extend.FSTextBreaker;
import liftwright.report.LongName;

/**
 * Lines end at spaces, and within a long name where {@link LongName} says, so that no id, number or
 * unit is taken apart while it has room.
 */
final class AtSpaces implements FSTextBreaker {

    private static final int DONE = -1;

    private String text = "";
    private int at;

    @Override
    public void setText(String text) {
        this.text = text;
        at = 0;
    }

    /** After the next space or piece of a long name, or the end; less than 0 after that. */
    @Override
    public int next() {
        if (at >= text.length()) {
            return DONE;
        }
        int space = text.indexOf(' ', at);
        int end = space < 0 ? text.length() : space + 1;
        int start = text.lastIndexOf(' ', at) + 1;
        int joint = start;
        for (String piece : LongName.pieces(text.substring(start, end).strip())) {
            joint += piece.length();
            if (joint > at && joint < end - 1) {
                at = joint;
                return at;
            }
        }
        at = end;
        return at;
    }
}
