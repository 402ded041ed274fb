package liftwright.rig.text;

/** A short piece of a foreign text, fit to stand in a sentence. */
final class Excerpt {

    private static final int MOST = 40;

    private Excerpt() {}

    static String of(String text) {
        int count = text.codePointCount(0, text.length());
        String cut =
                count <= MOST ? text : text.substring(0, text.offsetByCodePoints(0, MOST)) + "…";
        return "`" + cut + "`";
    }
}
