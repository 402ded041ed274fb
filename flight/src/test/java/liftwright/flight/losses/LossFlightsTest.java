package liftwright.flight.losses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import liftwright.flight.Examples;
import liftwright.flight.FlyingRigs;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.losses.LossFlown.Agreement;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.ComputerCrew;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.fault.Fault;
import liftwright.plant.fault.Faults;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Statics against flight: what the review of failures calls borne is recovered in flight, what it
 * calls not borne is not, and where they disagree the reason is one of those named here.
 */
class LossFlightsTest {

    private static Optional<List<LossFlown>> flown(Rig rig) {
        Plant plant = Plant.assembleHeated(rig);
        if (!(new RigLoops(plant.balancing()).design() instanceof LoopDesign.Granted granted)) {
            return Optional.empty();
        }
        var flights = new LossFlights(plant, Profile.usual(), 1);
        return Optional.of(flights.fly(new ComputerCrew(rig, granted), 2, Work.quiet()));
    }

    private static long count(List<LossFlown> flown, Agreement agreement) {
        return flown.stream().filter(one -> one.agreement() == agreement).count();
    }

    /** What is flown is every single fault that review lists, but those of making live. */
    private static void everyFaultIsFlown(Rig rig, List<LossFlown> flown) {
        List<Fault> all = flown.stream().flatMap(one -> one.group().members().stream()).toList();
        assertThat(all)
                .containsExactlyInAnyOrderElementsOf(
                        Faults.of(rig).stream()
                                .filter(fault -> fault.kind() != Fault.Kind.START_UP_SURGE)
                                .toList());
    }

    private static void disagreementsAreNamed(List<LossFlown> flown) {
        for (LossFlown one : flown) {
            String about =
                    one.group().label() + " " + one.told().fate() + " " + one.flown().events();
            boolean blind = one.group().effect().reversedFans().length > 0;
            double margin = one.told().fate().map(fate -> fate.margin()).orElse(0.0);
            // A fan that blows backwards is known to nobody, and little reserve is soon spent.
            if (one.agreement() == Agreement.WORSE && !blind) {
                assertThat(margin).as(about).isLessThan(0.5);
            }
            assertThat(one.reason()).as(about).isNotEqualTo(Reason.UNEXPLAINED);
            // Where channels are so wrong that loops run away fast, nothing saves it.
            if (one.told().loop() < -0.48) {
                assertThat(one.came()).as(about).isEqualTo(Came.LOST);
            }
        }
    }

    @Test
    void whatReviewCallsBorneIsRecoveredAndWhatItCallsNotIsNot() {
        Rig rig = Examples.rig("curlew");
        List<LossFlown> flown = flown(rig).orElseThrow();
        everyFaultIsFlown(rig, flown);
        disagreementsAreNamed(flown);
        for (LossFlown one : flown) {
            boolean blind = one.group().effect().reversedFans().length > 0;
            // Exchanged so that one way of turning answers to nothing: neither held nor run away.
            boolean edge = Math.abs(one.told().loop()) < 1e-6;
            if (!blind && !edge) {
                assertThat(one.agreement())
                        .as("%s %s", one.group().label(), one.flown().figures())
                        .isEqualTo(Agreement.AGREE);
            }
        }
        // All fans, packs, controllers and stuck channels are borne; contactor and gyro are not.
        assertThat(flown.stream().filter(one -> one.came() == Came.RECOVERED).count())
                .isGreaterThan(30);
        assertThat(flown).anyMatch(one -> one.called() == Called.NOT_BORNE);
        assertThat(flown).anyMatch(one -> one.called() == Called.COMES_DOWN);
    }

    @Test
    void onRandomRigsOfAnyShapeToo() {
        long[] seen = new long[3];
        Seeded.check(
                4,
                random -> {
                    Rig rig = FlyingRigs.draw(random);
                    Optional<List<LossFlown>> flown = flown(rig);
                    flown.ifPresent(
                            all -> {
                                disagreementsAreNamed(all);
                                seen[0] += count(all, Agreement.AGREE);
                                seen[1] += count(all, Agreement.WORSE);
                                seen[2] += count(all, Agreement.BETTER);
                            });
                });
        assertThat(seen[0]).isGreaterThan(50);
        assertThat(seen[1] + seen[2]).as("%s", List.of(seen[1], seen[2])).isLessThan(seen[0]);
    }
}
