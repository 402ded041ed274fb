package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** The curves of a flight. */
class EndurancePlotsTest {

    private static final Rig RIG = ExampleRigs.edited("mudlark");
    private static final EnduranceRun RUN = EnduranceRun.of(Plant.assemble(RIG), new Task.Hover());

    private static Plot plot(String id) {
        for (Section section : EndurancePlots.of(RIG, RUN)) {
            if (section instanceof Plot plot && plot.id().equals(id)) {
                return plot;
            }
        }
        throw new AssertionError("no plot " + id);
    }

    private static Plot.Series series(Plot plot, Plot.Mark mark) {
        return plot.series().stream()
                .filter(series -> series.mark() == mark)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void chargeFallsFromFullToNothingAndTheCrossStandsWhereTheReserveIsReached() {
        Plot plot = plot("charge-over-time");
        List<Plot.Point> curve = series(plot, Plot.Mark.LINE).points();
        assertThat(curve).hasSizeBetween(5, 121);
        assertThat(curve.getFirst().x()).isZero();
        assertThat(curve.getFirst().y()).isCloseTo(1, within(1e-9));
        assertThat(curve.getLast().y()).isCloseTo(0, within(1e-6)); // an empty cell ends the run
        for (int k = 1; k < curve.size(); k++) {
            assertThat(curve.get(k).x()).isGreaterThanOrEqualTo(curve.get(k - 1).x());
            assertThat(curve.get(k).y()).isLessThanOrEqualTo(curve.get(k - 1).y());
        }
        Discharge.End end = RUN.end().orElseThrow();
        assertThat(end.cause()).isEqualTo(Cause.RESERVE);
        Plot.Point cross = series(plot, Plot.Mark.CROSS).points().getFirst();
        assertThat(cross.x()).isEqualTo(end.timeS());
        double reserve = RIG.demands().reserve().si();
        assertThat(cross.y()).isCloseTo(reserve, within(0.002)); // a straight line between steps
        assertThat(series(plot, Plot.Mark.DASHES).points()).allMatch(point -> point.y() == reserve);
    }

    /** The table was noted in a second run that stops at the first end. */
    @Test
    void theVoltageIsThatOfTheTableAtTheSameMoments() {
        List<Plot.Point> curve = series(plot("voltage-over-time"), Plot.Mark.LINE).points();
        int met = 0;
        for (EnduranceRun.Moment at : RUN.moments()) {
            for (Plot.Point point : curve) {
                if (Math.abs(point.x() - at.timeS()) < 1e-9) {
                    assertThat(point.y()).isCloseTo(at.leastCellV(), within(1e-6));
                    met++;
                }
            }
        }
        assertThat(met).isGreaterThanOrEqualTo(3);
    }
}
