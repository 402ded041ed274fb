package liftwright.trials.proof;

import java.util.List;
import liftwright.rig.table.KillLog.Row;

/** Readings that did not drop out, with their times. */
@SuppressWarnings("ArrayRecordComponent") // handed through within the package, never compared
record Samples(double[] timeS, double[] value) {

    /** Those of the rows from one to before another. */
    static Samples of(List<Row> rows, int from, int to) {
        List<Row> read =
                rows.subList(from, to).stream().filter(row -> row.value().isPresent()).toList();
        return new Samples(
                read.stream().mapToDouble(Row::timeS).toArray(),
                read.stream().mapToDouble(row -> row.value().orElseThrow()).toArray());
    }

    int size() {
        return timeS.length;
    }
}
