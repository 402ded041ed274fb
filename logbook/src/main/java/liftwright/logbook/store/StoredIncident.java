package liftwright.logbook.store;

import java.nio.file.Path;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.Incident;

/**
 * An incident in the logbook, as it was written.
 *
 * @param id its name
 * @param entry what is known of it
 * @param digest names all of its files
 * @param folder where they are
 */
public record StoredIncident(EntryId id, Incident entry, String digest, Path folder) {}
