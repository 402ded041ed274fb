package liftwright.logbook.store;

import java.nio.file.Path;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.TestEntry;

/**
 * A test in the logbook, its {@code test.yaml} as it was written.
 *
 * @param id its name
 * @param entry what is known of it
 * @param digest names all of its files
 * @param folder where they are
 */
public record StoredTest(EntryId id, TestEntry entry, String digest, Path folder) {}
