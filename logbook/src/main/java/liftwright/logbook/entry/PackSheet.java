package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * The life of a pack, row by row.
 *
 * @param pack its id in the rig
 * @param serial of this very pack; may be empty
 * @param temperatureCoefficient B of its cells, R = R25 · exp(B (1/T − 1/298.15 K)), K
 * @param newResistance of the whole pack at 25 °C when it was new, Ω; without it the first row that
 *     has one
 * @param newCapacity when it was new, A·s; likewise
 * @param retire when it has to go
 * @param rows in the order in which they were written
 */
public record PackSheet(
        String pack,
        String serial,
        Quantity temperatureCoefficient,
        Optional<Quantity> newResistance,
        Optional<Quantity> newCapacity,
        Retire retire,
        List<Row> rows) {

    public PackSheet {
        rows = List.copyOf(rows);
    }

    /** The same with other rows. */
    public PackSheet with(List<Row> others) {
        return new PackSheet(
                pack, serial, temperatureCoefficient, newResistance, newCapacity, retire, others);
    }

    /**
     * When a pack is retired or rests.
     *
     * @param resistance share of that when new at which it goes
     * @param capacity share of that when new below which it goes
     * @param swelling share of its thickness at which it goes
     * @param quarantineDays whole days after the day of a crash on which it is not used
     * @param declared whether somebody chose these, or they are the usual ones
     */
    public record Retire(
            double resistance,
            double capacity,
            double swelling,
            int quarantineDays,
            boolean declared) {

        /** Common practice. */
        public static final Retire USUAL = new Retire(1.5, 0.8, 0.05, 1, false);
    }

    /**
     * What was found on a day.
     *
     * @param resistance of the whole pack, Ω
     * @param at temperature of its cells at that, K; there where a resistance is
     * @param capacity A·s
     * @param swelling growth of its thickness since new, as a share
     * @param storedDays it lay since the row before
     * @param charge at which it lay; there where days are
     * @param crash what hit it; empty without one
     * @param by who wrote it down; may be empty
     * @param note may be empty
     */
    public record Row(
            LocalDate date,
            Optional<Quantity> resistance,
            Optional<Quantity> at,
            Optional<Quantity> capacity,
            Optional<Quantity> swelling,
            Optional<Integer> storedDays,
            Optional<Quantity> charge,
            String crash,
            String by,
            String note) {}
}
