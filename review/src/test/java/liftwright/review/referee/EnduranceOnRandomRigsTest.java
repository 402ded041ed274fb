package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * How long rigs drawn at random hover and what ends it, held against the referee, whose steps,
 * solver and cells are its own.
 */
class EnduranceOnRandomRigsTest {

    private static final int RIGS = 400;

    /** Endurance and end, to 0.5 %; another reason must come within that time too. */
    private static final double TIME = 0.005;

    @Test
    void declaredRigsEndWhenAndWhyTheRefereeSays() {
        Map<RefereeEndurance.Why, Integer> seen = new EnumMap<>(RefereeEndurance.Why.class);
        int[] rigs = {0};
        Seeded.check(
                RIGS,
                random -> {
                    rigs[0]++;
                    RefereeHover hover = RefereeHover.draw(random, RefereeHover.Unlike.IN_ONE_WAY);
                    RefereeEndurance.End says = RefereeEndurance.declared(hover);
                    Discharge.End end = hover(hover.text(), random.nextBoolean()).orElseThrow();
                    assertThat(Math.abs(end.timeS() - says.timeS()))
                            .as("%s against %s in%n%s", end, says, hover.text())
                            .isLessThanOrEqualTo(TIME * says.timeS() + 1e-3);
                    RefereeEndurance.Why why = why(end.cause());
                    if (!says.whys().contains(why)) {
                        double alone = RefereeEndurance.declared(hover, EnumSet.of(why)).timeS();
                        assertThat(alone)
                                .as("%s against %s in%n%s", end, says, hover.text())
                                .isLessThanOrEqualTo((1 + TIME) * says.timeS() + 1e-3);
                    }
                    if (says.timeS() > 0) {
                        says.whys().forEach(one -> seen.merge(one, 1, Integer::sum));
                    }
                });
        if (rigs[0] >= RIGS) {
            for (RefereeEndurance.Why why :
                    EnumSet.complementOf(EnumSet.of(RefereeEndurance.Why.EMPTY))) {
                assertThat(seen.getOrDefault(why, 0)).as("%s in %s", why, seen).isPositive();
            }
        }
    }

    private static RefereeEndurance.Why why(Cause cause) {
        return switch (cause) {
            case RESERVE -> RefereeEndurance.Why.RESERVE;
            case CELL_VOLTAGE -> RefereeEndurance.Why.CELL_VOLTAGE;
            case CELL_CURRENT -> RefereeEndurance.Why.CELL_CURRENT;
            case CUT_OFF -> RefereeEndurance.Why.CUT_OFF;
            case FULL_THROTTLE -> RefereeEndurance.Why.FULL_THROTTLE;
            case EMPTY -> RefereeEndurance.Why.EMPTY;
        };
    }

    private static Optional<Discharge.End> hover(String yaml, boolean stopsAtFirst) {
        Plant plant = Plant.assemble(read(yaml));
        double[] p = plant.parameters().nominal();
        Discharge run = plant.discharge();
        run.load(p, new CellDraw.Expected());
        run.stopAtFirst(stopsAtFirst);
        run.start();
        run.follow(new Order.Lift(plant.weightN(p)), 1e5, _ -> {});
        assertThat(run.failed()).as(yaml).isFalse();
        return run.ended();
    }

    private static Rig read(String yaml) {
        RigReading file = RigReading.read("drawn.yaml", yaml.getBytes(StandardCharsets.UTF_8));
        return file.rig().orElseThrow(() -> new AssertionError(file.problems() + "\n" + yaml));
    }
}
