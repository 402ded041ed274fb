package liftwright.logbook.reading;

import java.util.List;

/**
 * Logs that were read in.
 *
 * @param tables one for each source, in their order
 * @param rejected one for each source that has any
 * @param notes in the order of the sources
 */
public record Imported(List<Clocked> tables, List<Rejected> rejected, List<Note> notes) {

    public Imported {
        tables = List.copyOf(tables);
        rejected = List.copyOf(rejected);
        notes = List.copyOf(notes);
    }
}
