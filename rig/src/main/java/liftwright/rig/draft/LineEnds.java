package liftwright.rig.draft;

/** Line ends that an editor in a web page cannot show. */
final class LineEnds {

    private LineEnds() {}

    /**
     * {@code typed} with the line ends of {@code before}, where every one of those was carriage
     * return and line feed and {@code typed} has no carriage return at all.
     */
    static String kept(String before, String typed) {
        return typed.indexOf('\r') < 0 && areAllPairs(before) ? typed.replace("\n", "\r\n") : typed;
    }

    private static boolean areAllPairs(String text) {
        int feeds = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c == '\r' && !text.startsWith("\n", i + 1))
                    || (c == '\n' && (i == 0 || text.charAt(i - 1) != '\r'))) {
                return false;
            }
            feeds += c == '\n' ? 1 : 0;
        }
        return feeds > 0;
    }
}
