package liftwright.logbook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import liftwright.logbook.entry.EntryId;

/** What lies in a folder of entries that are folders. */
final class Folders {

    private Folders() {}

    /** Entries by their names, none where the folder is not there. Links are none. */
    static SortedMap<EntryId, Path> entries(Path among) throws IOException {
        var entries = new TreeMap<EntryId, Path>();
        for (Path path : all(among)) {
            if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
                EntryId.parse(String.valueOf(path.getFileName()))
                        .ifPresent(id -> entries.put(id, path));
            }
        }
        return entries;
    }

    /** What lies there and is no entry. */
    static List<Flaw> strangers(Path among, String shownAs) throws IOException {
        var flaws = new ArrayList<Flaw>();
        for (Path path : all(among)) {
            String name = String.valueOf(path.getFileName());
            String shown = shownAs + "/" + name;
            if (name.startsWith(FreshFolder.TEMPORARY)) {
                flaws.add(Flaw.of(Flaw.Kind.REMAINS, shown, Remains.WORDS));
            } else if (Files.isSymbolicLink(path)) {
                flaws.add(Digests.told(Flaw.Kind.LINK, shown));
            } else if (EntryId.parse(name).isEmpty() || !Files.isDirectory(path)) {
                flaws.add(Digests.told(Flaw.Kind.TOO_MANY, shown));
            }
        }
        return flaws;
    }

    private static List<Path> all(Path among) throws IOException {
        if (!Files.isDirectory(among, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (var all = Files.list(among)) {
            return all.sorted().toList();
        }
    }
}
