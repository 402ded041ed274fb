package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.body.Limb;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a picture of the jets is drawn from. */
class JetLayersTest {

    private record Case(Rig rig, HoverPoint point, List<Limb> limbs, List<Section.Table> layers) {
        static Case of(String example) {
            Rig rig = ExampleRigs.edited(example);
            Balancing balancing = Balancing.of(rig);
            double[] p = balancing.parameters().nominal();
            HoverPoint point = balancing.worker().liftOff(p);
            List<Limb> limbs = balancing.limbs(p);
            return new Case(rig, point, limbs, JetLayers.of(rig, point, limbs));
        }

        List<List<Value>> rows(String id) {
            return layers.stream()
                    .filter(layer -> layer.id().equals(id))
                    .flatMap(layer -> layer.rows().stream())
                    .toList();
        }

        Vec3 at(int fan) {
            return point.ledger().fans().get(fan).arm().plus(point.mass().centre());
        }
    }

    private static double si(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    private static String words(Value value) {
        return ((Value.Figure.Words) value.figure()).text();
    }

    /**
     * Momentum of a Gaussian jet of half-width 0.096 x (from memory) within a radius, as a share of
     * the whole: summed over rings.
     */
    private static double shareWithin(double radiusM, double wayM) {
        double half = 0.096 * wayM;
        double within = 0;
        double whole = 0;
        double step = half / 400;
        for (double r = step / 2; r < 6 * half; r += step) {
            double speed = Math.pow(2, -(r / half) * (r / half));
            double ring = speed * speed * r * step;
            whole += ring;
            within += r < radiusM ? ring : 0;
        }
        return within / whole;
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void jetsAreAsWideAsThreeQuartersOfTheirMomentum(String example) {
        Case drawn = Case.of(example);
        List<List<Value>> jets = drawn.rows("drawn-jets");
        assertThat(jets).hasSize(drawn.rig.fans().size());
        double floor = drawn.limbs.stream().mapToDouble(l -> l.to().z()).max().orElse(9e9);
        for (int k = 0; k < jets.size(); k++) {
            List<Value> jet = jets.get(k);
            double exitM2 = drawn.rig.fans().get(k).type().exitArea().si();
            double exitM = si(jet.get(1));
            assertThat(Math.PI * exitM * exitM / 4).isCloseTo(exitM2, within(1e-12));
            double coreM = si(jet.get(2));
            assertThat(coreM / exitM).isCloseTo(6.1, within(1e-9));
            assertThat(shareWithin(si(jet.get(3)) / 2, coreM)).isCloseTo(0.75, within(0.003));
            double longM = si(jet.get(4));
            Vec3 end = drawn.at(k).plus(drawn.point.ledger().fans().get(k).actual().times(-longM));
            assertThat(end.z()).isLessThanOrEqualTo(floor + 1e-9);
            assertThat(longM).isPositive().isLessThanOrEqualTo(Math.min(2.5, 2 * coreM) + 1e-12);
            if (longM > coreM) {
                assertThat(shareWithin(si(jet.get(5)) / 2, longM)).isCloseTo(0.75, within(0.003));
            } else {
                assertThat(si(jet.get(5)))
                        .isBetween(
                                Math.min(exitM, si(jet.get(3))) - 0.14 * exitM,
                                Math.max(exitM, si(jet.get(3))) + 1e-9);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void strikesAreThoseOfTheLedger(String example) {
        Case drawn = Case.of(example);
        List<List<Value>> strikes = drawn.rows("drawn-strikes");
        List<String> known =
                Stream.concat(
                                drawn.limbs.stream().map(Limb::name),
                                drawn.point.mass().items().stream().map(item -> item.name()))
                        .toList();
        List<List<Value>> left = new ArrayList<>(strikes);
        List<FanAtWork> fans = drawn.point.ledger().fans();
        for (int k = 0; k < fans.size(); k++) {
            FanAtWork fan = fans.get(k);
            double sum = 0;
            for (List<Value> row : strikes) {
                if (words(row.get(0)).equals(fan.id().text())) {
                    left.remove(row);
                    sum += si(row.get(6));
                    assertThat(words(row.get(1))).isIn(known);
                    Vec3 where =
                            new Vec3(si(row.get(2)), si(row.get(3)), -si(row.get(4)))
                                    .minus(drawn.at(k));
                    // On the axis of the jet, and as far as told.
                    assertThat(where.cross(fan.actual()).length()).isCloseTo(0, within(1e-9));
                    assertThat(where.length()).isCloseTo(si(row.get(5)), within(1e-9));
                    assertThat(where.plus(fan.actual().times(si(row.get(5)))).length())
                            .isCloseTo(0, within(1e-9));
                }
            }
            assertThat(sum).isCloseTo(fan.strike().share(), within(1e-12));
            assertThat(fan.strike().hits().stream().map(JetStrike.Hit::distanceM))
                    .allSatisfy(way -> assertThat(way).isLessThanOrEqualTo(2.5));
        }
        assertThat(left).isEmpty();
        if (example.equals("mudlark")) {
            assertThat(strikes).isNotEmpty(); // a wearer stands among his fans
        }
    }
}
