package liftwright.logbook.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.logbook.entry.EntryId;

/**
 * Holds every file of a logbook against its digest.
 *
 * @param folder of the logbook
 */
record Checking(Path folder) {

    /**
     * @param others what is wrong with what is no test
     */
    List<Flaw> flaws(Logbook.Listing listing, List<Flaw> others) throws IOException {
        var flaws = new ArrayList<>(listing.flaws());
        folders(Logbook.TESTS, flaws);
        flaws.addAll(others);
        folders(Records.INCIDENTS, flaws);
        return flaws.stream().distinct().toList();
    }

    private void folders(String kind, List<Flaw> flaws) throws IOException {
        Map<String, EntryId> byDigest = new HashMap<>();
        Map<String, Integer> last = new HashMap<>();
        for (var entry : Folders.entries(folder.resolve(kind)).entrySet()) {
            String shown = kind + "/" + entry.getKey().text();
            gap(kind, entry.getKey(), last, flaws);
            Optional<Digests> digests = Digests.of(entry.getValue());
            if (digests.isEmpty()) {
                continue; // told by the listing
            }
            flaws.addAll(digests.get().flaws(entry.getValue(), shown));
            EntryId same = byDigest.putIfAbsent(digests.get().digest(), entry.getKey());
            if (same != null) {
                flaws.add(Flaw.of(Flaw.Kind.TOO_MANY, shown, "is a copy of " + same.text()));
            }
        }
    }

    private static void gap(String kind, EntryId id, Map<String, Integer> last, List<Flaw> flaws) {
        int before = last.getOrDefault(id.date().toString(), 0);
        for (int number = before + 1; number < id.number(); number++) {
            flaws.add(
                    Flaw.of(
                            Flaw.Kind.MISSING,
                            kind + "/" + new EntryId(id.date(), number).text(),
                            "was written, since there is " + id.text() + ", and is gone"));
        }
        last.put(id.date().toString(), id.number());
    }
}
