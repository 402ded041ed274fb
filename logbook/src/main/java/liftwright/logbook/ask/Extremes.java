package liftwright.logbook.ask;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.engine.Limits;
import liftwright.logbook.entry.SampleTable;

/** How many values a channel has, and their least, mean and greatest. */
record Extremes(SampleTable.Channel channel, long samples, double least, double mean, double most) {

    /** Those of a table's channels; without channels that have no value. */
    static List<Extremes> of(Engine engine, Path file, List<SampleTable.Channel> channels)
            throws IOException {
        var select = new StringBuilder("SELECT 0");
        for (SampleTable.Channel channel : channels) {
            String name = '"' + channel.name().replace("\"", "\"\"") + '"';
            for (String of : List.of("count", "min", "avg", "max")) {
                select.append(", CAST(").append(of).append('(').append(name).append(") AS DOUBLE)");
            }
        }
        double[][] numbers =
                engine.numbers(
                        select + " FROM read_parquet(" + engine.path(file) + ")", Limits.OF_OURS);
        var found = new ArrayList<Extremes>();
        for (int k = 0; k < channels.size(); k++) {
            int at = 1 + 4 * k;
            if (numbers[at][0] > 0) {
                found.add(
                        new Extremes(
                                channels.get(k),
                                Math.round(numbers[at][0]),
                                numbers[at + 1][0],
                                numbers[at + 2][0],
                                numbers[at + 3][0]));
            }
        }
        return found;
    }
}
