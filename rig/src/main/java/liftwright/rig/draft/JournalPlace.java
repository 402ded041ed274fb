package liftwright.rig.draft;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import liftwright.rig.file.RigReading;

/** Where the journal of a rig file stands: {@code .liftwright/journal} of the opened folder. */
final class JournalPlace {

    /** What is kept of the file's own name, so that a person finds it. */
    private static final int LONGEST = 40;

    private static final int HASH = 16;

    private JournalPlace() {}

    /** A name of harmless letters; the digest in it tells apart what they make alike. */
    static Path of(Path folder, String rig) {
        var name = new StringBuilder();
        rig.codePoints()
                .limit(LONGEST)
                .forEach(c -> name.append(isHarmless(c) ? Character.toString(c) : "_"));
        String digest = RigReading.digest(rig.getBytes(StandardCharsets.UTF_8));
        int from = digest.indexOf(':') + 1;
        return folder.resolve(".liftwright")
                .resolve("journal")
                .resolve(name + "-" + digest.substring(from, from + HASH));
    }

    private static boolean isHarmless(int c) {
        return (c >= 'a' && c <= 'z')
                || (c >= 'A' && c <= 'Z')
                || (c >= '0' && c <= '9')
                || c == '-';
    }
}
