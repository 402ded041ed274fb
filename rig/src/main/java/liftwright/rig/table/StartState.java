package liftwright.rig.table;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What a run begins with, where parts are not as warm as the air: what an earlier run left behind.
 *
 * @param file as it was named; empty for a state that no file told
 * @param rows one a part, or one a place within a part; none twice
 */
public record StartState(String file, List<Row> rows) {

    /** All parts as warm as the air, packs as the rig declares them. */
    public static final StartState COLD = new StartState("", List.of());

    public StartState {
        rows = List.copyOf(rows);
        var taken = new HashSet<String>();
        for (Row row : rows) {
            if (!taken.add(row.place() + " " + row.part())) {
                throw new IllegalArgumentException(row.part() + " stands there twice");
            }
        }
    }

    /** Places within a part that are not equally warm. */
    public enum Place {
        /** All of the part. */
        WHOLE,
        /** Switches of the controller of a fan. */
        JUNCTION,
        /** The rest of that controller. */
        SINK,
        /** Winding of the motor of a fan. */
        WINDING,
        /** The rest of that motor, magnets among it. */
        CASE,
        /** Cores of the cells of a pack. */
        CORE,
        /** Surfaces of those cells. */
        SURFACE,
        /** Copper of a run. */
        COPPER,
        /** Insulation of a run. */
        INSULATION;

        /** As a table writes it; empty for the whole part. */
        public String word() {
            return this == WHOLE ? "" : name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One part.
     *
     * @param line of the file, from 1; 0 for a row that no file told
     * @param part its lasting name: a fan, a pack, or an element of the wiring
     * @param place within the part
     * @param temperatureK K
     * @param charge share left, 0 to 1; of packs alone
     * @param fuse how near a fuse is to opening, 0 to 1, which is open; of fuses alone
     */
    public record Row(
            int line,
            String part,
            Place place,
            OptionalDouble temperatureK,
            OptionalDouble charge,
            OptionalDouble fuse) {}
}
