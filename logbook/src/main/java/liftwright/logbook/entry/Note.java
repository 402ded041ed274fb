package liftwright.logbook.entry;

import java.time.LocalDate;

/**
 * What was learned of a test or an incident afterwards.
 *
 * @param about which
 * @param date on which it was written down
 * @param by who did; may be empty
 * @param text what was learned
 */
public record Note(EntryId about, LocalDate date, String by, String text) {}
