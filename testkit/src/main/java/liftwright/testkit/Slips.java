package liftwright.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Slips of a single token in a text such as YAML: it is left out, written twice, swapped with the
 * next, cut at its front, or junk stands in its place.
 */
public final class Slips {

    private static final Pattern TOKEN =
            Pattern.compile("\\R *|[\\p{L}\\p{N}.°²·µΩ√/+−%-]+|[^\\s]");

    private static final List<String> JUNK =
            List.of(
                    "@",
                    "{",
                    "]",
                    ": ",
                    "- ",
                    "\"",
                    "\t",
                    "#",
                    "|",
                    "99999 kg",
                    "\u0000",
                    "\uFEFF",
                    "\u202E",
                    "&a",
                    "zz",
                    "1e308",
                    "-0",
                    "[]",
                    "{}",
                    "null",
                    "9999999999999999999");

    /** Ways of a slip that put no junk in the token's place come first. */
    public static final int PLAIN = 4;

    /** How many ways a token can slip. */
    public static final int WAYS = PLAIN + JUNK.size();

    private record Token(int from, int to) {}

    private final String text;
    private final List<Token> tokens = new ArrayList<>();

    public Slips(String text) {
        this.text = text;
        var matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            tokens.add(new Token(matcher.start(), matcher.end()));
        }
    }

    /** How many tokens there are. */
    public int tokens() {
        return tokens.size();
    }

    /**
     * The text with one slip in it.
     *
     * @param at which token, from 0
     * @param way of {@link #WAYS}, from 0
     */
    public String slip(int at, int way) {
        Token token = tokens.get(at);
        String own = text.substring(token.from, token.to);
        return switch (way) {
            case 0 -> replaced(token, "");
            case 1 -> replaced(token, own + " " + own);
            case 2 -> swapped(at);
            case 3 -> replaced(token, own.substring(1));
            default -> replaced(token, JUNK.get(way - PLAIN));
        };
    }

    /** Which slip it is, in words. */
    public String words(int at, int way) {
        Token token = tokens.get(at);
        return text.substring(token.from, token.to) + " at " + token.from + " way " + way;
    }

    private String replaced(Token token, String by) {
        return text.substring(0, token.from) + by + text.substring(token.to);
    }

    private String swapped(int at) {
        if (at + 1 == tokens.size()) {
            return text;
        }
        Token token = tokens.get(at);
        Token next = tokens.get(at + 1);
        return text.substring(0, token.from)
                + text.substring(next.from, next.to)
                + text.substring(token.to, next.from)
                + text.substring(token.from, token.to)
                + text.substring(next.to);
    }
}
