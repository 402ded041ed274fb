package liftwright.rig.table;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a run begins with, where parts are not as warm as the air: what an earlier run left behind.
 *
 * @param file as it was named
 * @param rows one a part, or one a place within a part; none twice
 */
public record StartState(String file, List<Row> rows) {

    public StartState {
        rows = List.copyOf(rows);
    }

    /**
     * One part.
     *
     * @param line of the file, from 1
     * @param part its lasting name
     * @param place within the part, such as {@code winding}; blank for the whole part
     * @param temperatureK K
     * @param charge share left, 0 to 1; of packs alone
     * @param fuse how near a fuse is to opening, 0 to 1
     */
    public record Row(
            int line,
            String part,
            String place,
            OptionalDouble temperatureK,
            OptionalDouble charge,
            OptionalDouble fuse) {}
}
