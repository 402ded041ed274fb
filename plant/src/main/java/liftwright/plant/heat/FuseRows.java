package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.FuseCurve;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Element;

/** When the fuses of a rig open: where they take their numbers from the parameter vector. */
final class FuseRows {

    @SuppressWarnings("ArrayRecordComponent") // read by this class alone
    private record Row(
            int element,
            double[] currentA,
            double[] timeS,
            double holdsA,
            int timeDoubt,
            int timeConstant) {}

    private final List<Row> rows = new ArrayList<>();

    /**
     * @param element its number, counted through the rig
     */
    void declare(int element, Element.Fuse fuse, ParameterRows table) {
        String place = fuse.declaredAt().toString();
        rows.add(
                new Row(
                        element,
                        fuse.points().stream().mapToDouble(point -> point.current().si()).toArray(),
                        fuse.points().stream().mapToDouble(point -> point.time().si()).toArray(),
                        fuse.rating().si(),
                        table.row(
                                fuse.declaredAt().child("time doubt"),
                                "opening times of the fuse at " + place,
                                fuse.id(),
                                fuse.timeDoubt(),
                                Range.POSITIVE),
                        table.row(
                                fuse.declaredAt().child("time constant"),
                                "time constant of the fuse at " + place,
                                fuse.id(),
                                fuse.timeConstant(),
                                Range.POSITIVE)));
    }

    /** Elements that are fuses, in order. */
    int[] elements() {
        return rows.stream().mapToInt(Row::element).toArray();
    }

    /** Number of the fuse that an element is; −1 if it is none. */
    int of(int element) {
        for (int k = 0; k < rows.size(); k++) {
            if (rows.get(k).element == element) {
                return k;
            }
        }
        return -1;
    }

    void load(double[] p, HeatNumbers n) {
        for (int k = 0; k < rows.size(); k++) {
            Row row = rows.get(k);
            double[] times = row.timeS.clone();
            for (int point = 0; point < times.length; point++) {
                times[point] *= p[row.timeDoubt];
            }
            n.fuseS[k] = p[row.timeConstant];
            n.curve[k] = new FuseCurve(row.currentA, times, n.fuseS[k], row.holdsA);
        }
    }
}
