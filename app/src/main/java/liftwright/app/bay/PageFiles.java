package liftwright.app.bay;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The page itself, out of the program's own class path. No name leads to a file on a disk. */
final class PageFiles {

    private static final String ROOM = "/liftwright/page/";

    /** Plain names joined by slashes: no dots that lead up, nothing escaped. */
    private static final Pattern PLAIN =
            Pattern.compile(
                    "[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*(/[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*)*");

    private static final int LONGEST_NAME = 200;

    private static final Map<String, String> TYPES =
            Map.of(
                    "html", "text/html; charset=utf-8",
                    "js", "text/javascript; charset=utf-8",
                    "css", "text/css; charset=utf-8",
                    "svg", "image/svg+xml",
                    "png", "image/png",
                    "woff2", "font/woff2");

    /**
     * One file of the page.
     *
     * @param lasting whether its name changes with its content
     */
    @SuppressWarnings("ArrayRecordComponent") // sent once, never compared
    record PageFile(String mediaType, boolean lasting, byte[] bytes) {}

    private PageFiles() {}

    /** Whether the page was built into this program. */
    static boolean present() {
        return PageFiles.class.getResource(ROOM + "index.html") != null;
    }

    /**
     * The file that a request's path means.
     *
     * @param rawPath as it was sent, nothing decoded
     */
    static Optional<PageFile> of(String rawPath) throws IOException {
        String name = rawPath.equals("/") ? "index.html" : rawPath.substring(1);
        if (name.length() > LONGEST_NAME || !PLAIN.matcher(name).matches()) {
            return Optional.empty();
        }
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        if (type == null) {
            return Optional.empty();
        }
        try (InputStream in = PageFiles.class.getResourceAsStream(ROOM + name)) {
            return in == null
                    ? Optional.empty()
                    : Optional.of(
                            new PageFile(type, name.startsWith("assets/"), in.readAllBytes()));
        }
    }
}
