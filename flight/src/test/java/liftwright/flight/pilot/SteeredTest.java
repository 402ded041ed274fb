package liftwright.flight.pilot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.flight.Examples;
import liftwright.flight.pilot.HoverMotion.Axis;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.plant.body.MassItem;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What is said of the examples, against sums made here. */
class SteeredTest {

    private static Steered steered(Plant plant) {
        return Steered.of(plant, plant.parameters().nominal()).orElseThrow();
    }

    @Test
    void theWearerOfMudlarkHoldsItInPracticeAlone() {
        Steered steered = steered(Plant.assemble(Examples.rig("mudlark")));
        assertThat(steered.modes().getFirst().grows()).isTrue();
        assertThat(steered.modes().getFirst().swings()).isTrue();
        assertThat(steered.level()).isEqualTo(Level.WORSE);
        assertThat(steered.holds()).isEqualTo(Person.Holds.HARDLY);
        for (Steered.AboutAxis one : steered.axes()) {
            assertThat(one.practisedPhaseRad()).isGreaterThan(one.usualPhaseRad());
            assertThat(one.means()).isNotEmpty();
        }
        assertThat(steered.axes().getLast().holds())
                .as("yaw does not grow")
                .isEqualTo(Person.Holds.EASILY);
    }

    /** The legs' weight on their lever under the hips, from masses and places. */
    @Test
    void legsTurnTheRigByTheirWeightOnTheirLever() {
        Rig rig = Examples.rig("mudlark");
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        var balancing = plant.balancing();
        HoverPoint hover = balancing.worker().liftOff(p);
        double hipDown =
                balancing.limbs(p).stream()
                        .filter(limb -> limb.name().equals("left thigh"))
                        .findFirst()
                        .orElseThrow()
                        .from()
                        .z();
        double lever = 0;
        double reaction = 0;
        double centre = hover.mass().centre().z();
        for (MassItem item : hover.mass().items()) {
            if (item.kind() == MassItem.Kind.WEARER
                    && item.name().matches(".*(thigh|shank|foot)")) {
                lever += item.massKg() * (item.at().z() - hipDown);
                reaction += item.massKg() * (item.at().z() - hipDown) * (item.at().z() - centre);
            }
        }
        double up = 0;
        for (var fan : hover.ledger().fans()) {
            up -= fan.force().z();
        }
        for (Axis axis : new Axis[] {Axis.ROLL, Axis.PITCH}) {
            Means legs = steered(plant).axes().get(axis == Axis.ROLL ? 0 : 1).means().getFirst();
            assertThat(legs.momentNm())
                    .as("%s", axis)
                    .isCloseTo(-lever * up / hover.mass().massKg(), within(1.5));
            assertThat(legs.isInverse()).as("they hang under the hips").isFalse();
            assertThat(legs.reactionKgm2())
                    .as("its main part")
                    .isBetween(reaction, 1.35 * reaction);
        }
    }

    @Test
    void nobodySteersARigThatNobodyWears() {
        Steered steered = steered(Plant.assemble(Examples.rig("curlew")));
        assertThat(steered.holds()).isEqualTo(Person.Holds.NOT);
        assertThat(steered.axes()).allSatisfy(one -> assertThat(one.best()).isEmpty());
    }
}
