package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** Stand and tether as a picture in space is drawn from them: against what the file declares. */
class HoldSpaceTest {

    private static final String BOTH =
            """

            restraint:
              stand: {height: 1.2 m, mass: 80 kg ± 2 kg, feet apart: 1.4 m, feet deep: 1.1 m, thrust: forward}
              tether: {anchor height: 4 m, length: 2 m, anchor strength: 25 kN, line strength: 22 kN}
              room: {ceiling: 5 m, beam: 4.2 m}
            """;

    private static final Rig RIG = RestraintQuestionTest.mudlark(BOTH);
    private static final RestraintAnswer ANSWER =
            RestraintQuestion.ask(
                            RIG,
                            "digest",
                            new Settings(20260101L, 256, 256, 1, true).withoutRemedies(),
                            Work.quiet())
                    .orElseThrow();

    private static Section.Table table(String id) {
        return ANSWER.sections().stream()
                .filter(Section.Elevation.class::isInstance)
                .flatMap(section -> ((Section.Elevation) section).space().stream())
                .filter(table -> table.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double si(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    private static Optional<List<Value>> row(String id, String label) {
        return table(id).rows().stream()
                .filter(row -> row.get(1).figure().equals(new Value.Figure.Words(label)))
                .findFirst();
    }

    /** Forward, right, up. */
    private static Vec3 from(String id, String label) {
        List<Value> row = row(id, label).orElseThrow();
        return new Vec3(si(row.get(2)), si(row.get(3)), si(row.get(4)));
    }

    private static Vec3 to(String id, String label) {
        List<Value> row = row(id, label).orElseThrow();
        return new Vec3(si(row.get(5)), si(row.get(6)), si(row.get(7)));
    }

    private static void assertNear(Vec3 found, double forward, double right, double up) {
        assertThat(found.minus(new Vec3(forward, right, up)).length()).isCloseTo(0, within(1e-9));
    }

    @Test
    void whatHoldsStandsWhereItWasDeclared() {
        assertNear(from("tether-space", "line"), 0, 0, 4);
        assertNear(from("tether-space", "anchor"), 0, 0, 4);
        assertThat(from("tether-space", "overhead").z()).isCloseTo(4.2, within(1e-9));
        assertThat(to("tether-space", "line").z()).isBetween(1.0, 4.0);
        assertNear(from("stand-space", "stand"), -0.55, -0.7, 0);
        assertNear(to("stand-space", "stand"), 0.55, 0.7, 0.08);
        assertNear(to("stand-space", "post"), 0, 0, 1.2);
        double out = RIG.limits().si(LimitName.KEEP_OUT);
        assertNear(to("stand-space", "nobody within"), out, 0, 0);
        assertNear(to("tether-space", "nobody within"), out, 0, 0);
    }

    @Test
    void theRigStandsInItAsItIsHeld() {
        Vec3 hangs = from("tether-space", "its up");
        assertNear(to("tether-space", "its up").minus(hangs), 0, 0, 1);
        assertNear(to("tether-space", "its forward").minus(hangs), 1, 0, 0);
        Vec3 on = from("stand-space", "its up");
        Vec3 up = to("stand-space", "its up").minus(on);
        Vec3 forward = to("stand-space", "its forward").minus(on);
        assertNear(up, 1, 0, 0); // what lifts when worn pushes forward here
        assertThat(forward.length()).isCloseTo(1, within(1e-12));
        assertThat(forward.cross(up).length()).isCloseTo(1, within(1e-12));
        assertNear(forward, 0, 0, -1); // bent over the front
    }
}
