package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * How a part was found when it came in, and whenever it was looked at again.
 *
 * @param part its id in the rig
 * @param inspections in the order in which they were written
 */
public record PartSheet(String part, List<Inspection> inspections) {

    public PartSheet {
        inspections = List.copyOf(inspections);
    }

    /**
     * @param serial of the very part that was looked at; may be empty
     * @param accepted whether it may be built in
     * @param by who decided
     * @param measured what was measured; may be empty
     * @param note may be empty
     */
    public record Inspection(
            LocalDate date,
            String serial,
            boolean accepted,
            String by,
            List<Measured> measured,
            String note) {
        public Inspection {
            measured = List.copyOf(measured);
        }
    }

    /**
     * @param what in a word or two: {@code mass}
     * @param found with its doubt
     * @param declared what it should be, of the same kind; empty where nothing is declared
     */
    public record Measured(String what, Quantity found, Optional<Quantity> declared) {}
}
