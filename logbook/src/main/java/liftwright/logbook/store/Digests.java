package liftwright.logbook.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.rig.text.FolderGuard;

/**
 * The list of what stands in a folder: for each file a line of its SHA-256, two spaces and its
 * name, in the order of the names. Whoever changes a byte of any file, the list included, adds one
 * or takes one away, is found out; who rewrites the list too is not.
 *
 * @param byName hashes, lower case hexadecimal
 */
record Digests(SortedMap<String, String> byName) {

    /** Its own name. */
    static final String FILE = "digests.txt";

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");
    private static final int MOST_BYTES = 1 << 20;
    private static final int CHUNK = 1 << 16;

    Digests {
        byName = new TreeMap<>(byName);
    }

    /** The list as it is written. */
    byte[] text() {
        var text = new StringBuilder();
        byName.forEach((name, hash) -> text.append(hash).append("  ").append(name).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Reads a list strictly: whatever would not be written again the same is none. */
    static Optional<Digests> read(byte[] bytes) {
        var byName = new TreeMap<String, String>();
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (String line : text.split("\n", -1)) {
            Matcher parts = LINE.matcher(line);
            if (parts.matches() && FolderGuard.objection(parts.group(2)).isEmpty()) {
                byName.put(parts.group(2), parts.group(1));
            }
        }
        var read = new Digests(byName);
        return java.util.Arrays.equals(read.text(), bytes) && !byName.isEmpty()
                ? Optional.of(read)
                : Optional.empty();
    }

    /** The list of a folder; empty where there is none or it is none. */
    static Optional<Digests> of(Path folder) throws IOException {
        Path file = folder.resolve(FILE);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in.readNBytes(MOST_BYTES));
        }
    }

    /** Names the whole folder: the digest of its list. */
    String digest() {
        return "sha256:" + HexFormat.of().formatHex(sha256().digest(text()));
    }

    /**
     * What is not as it was written.
     *
     * @param folder whose list this is
     * @param shownAs how the folder is called
     */
    List<Flaw> flaws(Path folder, String shownAs) throws IOException {
        var flaws = new ArrayList<Flaw>();
        SortedMap<String, Path> there = new TreeMap<>();
        try (var all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                String name = name(folder, path);
                if (Files.isSymbolicLink(path)) {
                    flaws.add(
                            Flaw.of(
                                    Flaw.Kind.LINK,
                                    shownAs + "/" + name,
                                    "is a link, and none was written"));
                } else if (!Files.isDirectory(path)) {
                    there.put(name, path);
                }
            }
        }
        there.remove(FILE);
        for (var file : there.entrySet()) {
            if (!byName.containsKey(file.getKey())) {
                flaws.add(
                        Flaw.of(
                                Flaw.Kind.TOO_MANY,
                                shownAs + "/" + file.getKey(),
                                "was not written with the others"));
            }
        }
        for (String name : byName.keySet()) {
            flaw(folder, name).map(kind -> told(kind, shownAs + "/" + name)).ifPresent(flaws::add);
        }
        return flaws;
    }

    /** What is wrong with one file of the list; empty where nothing is. */
    Optional<Flaw.Kind> flaw(Path folder, String name) throws IOException {
        Path file = folder.resolve(name);
        for (Path on = file; on != null && !on.equals(folder); on = on.getParent()) {
            if (Files.isSymbolicLink(on)) {
                return Optional.of(Flaw.Kind.LINK);
            }
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(Flaw.Kind.MISSING);
        }
        return hash(file).equals(byName.get(name))
                ? Optional.empty()
                : Optional.of(Flaw.Kind.CHANGED);
    }

    static Flaw told(Flaw.Kind kind, String file) {
        return Flaw.of(
                kind,
                file,
                switch (kind) {
                    case CHANGED -> "holds other bytes than were written";
                    case MISSING -> "was written and is gone";
                    case LINK -> "is a link, and none was written";
                    case TOO_MANY -> "was not written with the others";
                    case UNREADABLE -> "does not read";
                    case REMAINS -> "is left of an interrupted addition";
                });
    }

    static String name(Path folder, Path path) {
        return folder.relativize(path).toString().replace('\\', '/');
    }

    /** SHA-256 of a file, whatever its size. */
    static String hash(Path file) throws IOException {
        MessageDigest digest = sha256();
        byte[] chunk = new byte[CHUNK];
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(chunk); n > 0; n = in.read(chunk)) {
                digest.update(chunk, 0, n);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
