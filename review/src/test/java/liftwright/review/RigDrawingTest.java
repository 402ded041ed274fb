package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.MassItem;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a picture of the rig is drawn from. */
class RigDrawingTest {

    private record Drawn(HoverPoint point, Map<String, Section.Table> layers) {
        List<Map<String, Value>> rows(String layer) {
            Section.Table table = named(layers, layer);
            List<Map<String, Value>> rows = new ArrayList<>();
            for (List<Value> row : table.rows()) {
                assertThat(row).hasSameSizeAs(table.columns());
                Map<String, Value> named = new LinkedHashMap<>();
                for (int k = 0; k < row.size(); k++) {
                    assertThat(row.get(k).field()).isEqualTo(table.columns().get(k));
                    named.put(row.get(k).field(), row.get(k));
                }
                rows.add(named);
            }
            return rows;
        }
    }

    private static Drawn drawn(String example) {
        Rig rig = ExampleRigs.edited(example);
        Balancing balancing = Balancing.of(rig);
        double[] p = balancing.parameters().nominal();
        HoverPoint point = balancing.worker().liftOff(p);
        Section.Drawing drawing = (Section.Drawing) RigDrawing.of(rig, point, balancing.limbs(p));
        Map<String, Section.Table> layers = new LinkedHashMap<>();
        drawing.layers().forEach(layer -> layers.put(layer.id(), layer));
        return new Drawn(point, layers);
    }

    private static <T> T named(Map<String, T> all, String name) {
        T found = all.get(name);
        if (found == null) {
            throw new AssertionError("no " + name + " in " + all.keySet());
        }
        return found;
    }

    private static String words(Map<String, Value> row, String field) {
        return ((Value.Figure.Words) named(row, field).figure()).text();
    }

    private static double si(Map<String, Value> row, String field) {
        return ((Value.Figure.Amount) named(row, field).figure()).si();
    }

    /** In inside axes. */
    private static Vec3 vector(Map<String, Value> row, String kind) {
        return new Vec3(
                si(row, kind + "-forward"), si(row, kind + "-right"), -si(row, kind + "-up"));
    }

    /** The four corner fans of the stretcher stand as its file says, and blow down. */
    @Test
    void placesAreThoseOfTheFile() {
        List<Map<String, Value>> fans = drawn("sandpiper").rows("drawn-fans");
        assertThat(fans).hasSize(4);
        assertThat(fans)
                .allSatisfy(
                        fan -> {
                            assertThat(words(fan, "spin")).isIn("left-hand", "right-hand");
                            assertThat(si(fan, "push-up")).isGreaterThan(0.9);
                            assertThat(vector(fan, "push").length()).isCloseTo(1, within(1e-12));
                        });
        assertThat(fans.stream().map(fan -> words(fan, "spin")).distinct()).hasSize(2);
        // A cross of two mirror planes: the places of all corners cancel about their middle.
        Vec3 sum = Vec3.ZERO;
        for (Map<String, Value> fan : fans) {
            sum = sum.plus(vector(fan, "place"));
        }
        double middle = sum.x() / 4;
        assertThat(sum.y()).isCloseTo(0, within(1e-9));
        assertThat(fans)
                .allSatisfy(
                        fan -> {
                            assertThat(Math.abs(si(fan, "place-right"))).isGreaterThan(0.1);
                            assertThat(Math.abs(si(fan, "place-forward") - middle))
                                    .isGreaterThan(0.1);
                        });
    }

    /**
     * Two rows of four, 150 mm from fan to fan, 170 mm from row to row; every second turns back.
     */
    @Test
    void aRowOfFansIsSpacedAsDeclared() {
        List<Map<String, Value>> fans = drawn("curlew").rows("drawn-fans");
        assertThat(fans).hasSize(8);
        for (int k = 0; k < 4; k++) {
            Vec3 across = vector(fans.get(k + 4), "place").minus(vector(fans.get(k), "place"));
            assertThat(across.length()).isCloseTo(0.170, within(1e-9));
            if (k < 3) {
                Vec3 next = vector(fans.get(k + 1), "place").minus(vector(fans.get(k), "place"));
                assertThat(next.length()).isCloseTo(0.150, within(1e-9));
                assertThat(words(fans.get(k), "spin")).isNotEqualTo(words(fans.get(k + 1), "spin"));
            }
            assertThat(si(fans.get(k), "tip-diameter")).isCloseTo(0.140, within(1e-12));
        }
    }

    /** The back frame of Mudlark is on its trunk, 180 mm behind the origin and 60 mm above it. */
    @Test
    void mountsStandWhereTheFileSays() {
        Map<String, Vec3> mounts = new LinkedHashMap<>();
        drawn("mudlark")
                .rows("drawn-mounts")
                .forEach(row -> mounts.put(words(row, "part"), vector(row, "place")));
        assertThat(mounts).containsOnlyKeys("mounts/back", "mounts/left pod", "mounts/right pod");
        Vec3 back = named(mounts, "mounts/back");
        assertThat(back.minus(new Vec3(-0.18, 0, -0.06)).length()).isLessThan(1e-9);
        Vec3 left = named(mounts, "mounts/left pod");
        assertThat(named(mounts, "mounts/right pod").mirrored().minus(left).length())
                .isLessThan(1e-9);
        assertThat(left.y()).isLessThan(-0.2);
    }

    @Test
    void limbsJoinAndHoldTheirCentres() {
        Drawn drawn = drawn("mudlark");
        Map<String, Map<String, Value>> limbs = new LinkedHashMap<>();
        drawn.rows("drawn-wearer").forEach(row -> limbs.put(words(row, "segment"), row));
        assertThat(limbs).hasSize(14); // head, trunk and six pairs
        for (String side : new String[] {"left ", "right "}) {
            joins(limbs, side + "upper arm", side + "forearm");
            joins(limbs, side + "forearm", side + "hand");
            joins(limbs, side + "thigh", side + "shank");
        }
        int seen = 0;
        for (MassItem item : drawn.point.mass().items()) {
            if (item.kind() == MassItem.Kind.WEARER) {
                Vec3 from = vector(named(limbs, item.name()), "place");
                Vec3 to = vector(named(limbs, item.name()), "end");
                // Between the ends, on the line: the ways to both add up to the length.
                double way = item.at().minus(from).length() + to.minus(item.at()).length();
                if (!item.name().equals("trunk")) { // moved to where the scales say
                    assertThat(way).isCloseTo(to.minus(from).length(), within(1e-9));
                }
                seen++;
            }
        }
        assertThat(seen).isEqualTo(14);
    }

    private static void joins(Map<String, Map<String, Value>> limbs, String upper, String lower) {
        Vec3 gap = vector(named(limbs, upper), "end").minus(vector(named(limbs, lower), "place"));
        assertThat(gap.length()).as(upper + " to " + lower).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void theLineOfLiftLeavesNoMomentAcrossIt(String example) {
        Drawn drawn = drawn(example);
        Map<String, Value> line = drawn.rows("drawn-lift").getFirst();
        Vec3 at = vector(line, "place");
        Vec3 along = vector(line, "push");
        Vec3 force = Vec3.ZERO;
        Vec3 moment = Vec3.ZERO;
        for (FanAtWork fan : drawn.point.ledger().fans()) {
            Vec3 place = fan.arm().plus(drawn.point.mass().centre());
            force = force.plus(fan.force());
            moment =
                    moment.plus(place.minus(at).cross(fan.push()))
                            .plus(fan.actual().times(fan.swirlNm()))
                            .plus(fan.strike().turn().times(fan.thrustN()))
                            .plus(
                                    drawn.point
                                            .mass()
                                            .centre()
                                            .minus(at)
                                            .cross(fan.strike().force())
                                            .times(fan.thrustN()));
        }
        assertThat(si(line, "lift-at-lift-off")).isCloseTo(force.length(), within(1e-9));
        assertThat(along.cross(force).length()).isCloseTo(0, within(1e-9));
        // What is left turns about the line itself, which no place of it could take away.
        assertThat(moment.cross(along).length()).isCloseTo(0, within(1e-6));
    }

    @Test
    void theCentreIsThatOfTheParts() {
        Drawn drawn = drawn("curlew");
        Map<String, Value> centre = drawn.rows("drawn-centre").getFirst();
        assertThat(vector(centre, "place").minus(drawn.point.mass().centre()).length())
                .isCloseTo(0, within(1e-9));
        assertThat(drawn.rows("drawn-parts"))
                .isNotEmpty()
                .allSatisfy(
                        part -> {
                            assertThat(words(part, "part-kind")).isIn("pack", "other part");
                            assertThat(si(part, "part-mass")).isNotNegative();
                        });
    }
}
