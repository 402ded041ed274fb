package liftwright.logbook.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import liftwright.plant.recording.Samples;

/** Reads columns of a table of samples. */
@FunctionalInterface
public interface SamplesOf {

    /**
     * @param table a Parquet file with a column {@code time} in s
     * @param columns heads, names of channels
     * @param most about as many samples at most of each, thinned evenly where there are more
     * @return by column, on the table's own clock; without those that hold no value
     * @throws IOException when it cannot be read
     */
    Map<String, Samples> read(Path table, List<String> columns, int most) throws IOException;
}
