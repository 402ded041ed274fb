package liftwright.logbook.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.EntryReading;
import liftwright.rig.file.RigFiles;

/**
 * How the folder of an entry is read.
 *
 * @param kind name of the folder of such folders
 * @param file that says what the entry is
 * @param reads that file
 * @param day of an entry, which is that of its folder's name
 */
record EntryFolder<T>(
        String kind,
        String file,
        BiFunction<String, byte[], EntryReading<T>> reads,
        Function<T, LocalDate> day) {

    /**
     * @param digest names all files of the folder
     */
    record Read<T>(T entry, String digest) {}

    /** Empty where it is not as it was written; why goes to {@code flaws}. */
    Optional<Read<T>> read(EntryId id, Path at, List<Flaw> flaws) throws IOException {
        String shown = kind + "/" + id.text();
        Optional<Digests> digests = Digests.of(at);
        if (digests.isEmpty()) {
            flaws.add(
                    Flaw.of(
                            Flaw.Kind.CHANGED,
                            shown + "/" + Digests.FILE,
                            "is not there or no list of digests any more"));
            return Optional.empty();
        }
        Optional<Flaw.Kind> flaw =
                digests.get().byName().containsKey(file)
                        ? digests.get().flaw(at, file)
                        : Optional.of(Flaw.Kind.TOO_MANY);
        if (flaw.isPresent()) {
            flaws.add(Digests.told(flaw.get(), shown + "/" + file));
            return Optional.empty();
        }
        EntryReading<T> reading = reads.apply(shown + "/" + file, RigFiles.read(at.resolve(file)));
        reading.problems().forEach(p -> flaws.add(Flaw.unreadable(shown + "/" + file, p)));
        if (reading.entry().filter(entry -> !day.apply(entry).equals(id.date())).isPresent()) {
            flaws.add(
                    Flaw.of(
                            Flaw.Kind.CHANGED,
                            shown,
                            "is the folder of another day: it was renamed or copied"));
            return Optional.empty();
        }
        return reading.entry().map(entry -> new Read<>(entry, digests.get().digest()));
    }
}
