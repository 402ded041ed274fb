package liftwright.app.bay;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The rig files of a folder, looked for only so deep and only so many. */
final class RigList {

    /** Folders below the opened one. */
    private static final int MOST_DEPTH = 4;

    private static final int MOST_RIGS = 200;

    /** Entries looked at: a home folder opened by mistake shall not take minutes. */
    private static final int MOST_ENTRIES = 5_000;

    private static final int HEAD_BYTES = 64 << 10;

    /** The key that makes a YAML file one of ours. */
    private static final Pattern IS_RIG = Pattern.compile("(?m)^[\"']?liftwright[\"']?\\s*:");

    private static final Pattern NAME =
            Pattern.compile("(?m)^rig\\s*:[ \\t]+[\"']?([^\\s\"'#][^\"'#\\r\\n]{0,79})");

    /**
     * A rig file.
     *
     * @param path from the folder, parts joined by {@code /}
     * @param name of the rig, or of its file where none is told
     */
    record Found(String path, String name) {}

    private final OpenedFolder folder;
    private final List<Found> found = new ArrayList<>();
    private int entries;

    private RigList(OpenedFolder folder) {
        this.folder = folder;
    }

    /** Ordered by path, those nearer to the top first. */
    static List<Found> of(OpenedFolder folder) {
        var list = new RigList(folder);
        list.look(folder.path(), 0);
        list.found.sort(
                Comparator.comparingInt((Found f) -> f.path().split("/", -1).length)
                        .thenComparing(Found::path));
        return List.copyOf(list.found);
    }

    private void look(Path at, int depth) {
        List<Path> below;
        try (Stream<Path> all = Files.list(at)) {
            below = all.limit(MOST_ENTRIES).sorted().toList();
        } catch (IOException e) {
            return; // a folder that may not be read holds nothing for us
        }
        for (Path each : below) {
            String name = each.getFileName().toString();
            if (found.size() >= MOST_RIGS || ++entries > MOST_ENTRIES) {
                return;
            }
            if (name.startsWith(".")) {
                continue;
            }
            if (Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)) {
                if (depth < MOST_DEPTH) {
                    look(each, depth + 1);
                }
            } else if (OpenedFolder.isRigName(name)) {
                judge(each);
            }
        }
    }

    private void judge(Path file) {
        String path = written(folder.path().relativize(file));
        try {
            Path real = folder.rig(path); // a link that leads out is none of ours
            String head;
            try (var in = Files.newInputStream(real)) {
                head = new String(in.readNBytes(HEAD_BYTES), StandardCharsets.UTF_8);
            }
            if (IS_RIG.matcher(head).find()) {
                found.add(new Found(path, name(head).orElse(path)));
            }
        } catch (FaultException | IOException e) {
            return; // not to be read, so not to be opened
        }
    }

    private static Optional<String> name(String head) {
        return NAME.matcher(head).results().map(m -> m.group(1).strip()).findFirst();
    }

    private static String written(Path path) {
        var parts = new ArrayList<String>();
        path.forEach(part -> parts.add(part.toString()));
        return String.join("/", parts);
    }
}
