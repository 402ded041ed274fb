package liftwright.rig.draft;

import liftwright.rig.text.RigText;

/** What an edit is called where it can be taken back. */
final class Words {

    private static final int LONGEST = 200;

    private Words() {}

    /** A label from outside: one line, not long. */
    static String label(String given) {
        var out = new StringBuilder();
        given.codePoints()
                .limit(LONGEST)
                .forEach(c -> out.appendCodePoint(isHarmless(c) ? c : ' '));
        String label = out.toString().strip();
        return label.isEmpty() ? "a change" : label;
    }

    private static boolean isHarmless(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }

    /** Where the text was typed into. */
    static String ofTyping(RigText before, RigText after) {
        String one = before.text();
        String other = after.text();
        int most = Math.min(one.length(), other.length());
        int same = 0;
        while (same < most && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        long line = other.substring(0, same).lines().count();
        boolean begins = same == 0 || other.charAt(same - 1) == '\n';
        return "typing in line " + (begins ? line + 1 : line);
    }
}
