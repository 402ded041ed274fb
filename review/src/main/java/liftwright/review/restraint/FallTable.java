package liftwright.review.restraint;

import java.util.List;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.physics.Tether;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.TetherHold;
import liftwright.plant.hold.TetherNumbers;
import liftwright.plant.motion.Body;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Spring;
import liftwright.plant.motion.Surroundings;
import liftwright.plant.motion.TetherRun;

/** What a fall into the line pulls: in closed form without damping, and as it runs. */
public final class FallTable {

    /** Through the fall and the first bounce, s. */
    private static final double HORIZON_S = 4;

    private FallTable() {}

    /** The table of a tether. */
    public static Section of(Held.OnTether on, double airKgpm3) {
        TetherNumbers line = on.line();
        double startM = on.ran().startM();
        return new Section.Table(
                "tether-falls",
                "What a fall into the line pulls",
                List.of("what", "fall-height", "catch-undamped", "catch-run"),
                List.of(
                        List.of(
                                Value.words("what", "all thrust lost at the height that is asked"),
                                Value.of("fall-height", slackM(line, startM)),
                                Value.of("catch-undamped", undampedN(on, startM)),
                                caught(dropN(line, on.rig().massKg(), startM, airKgpm3))),
                        List.of(
                                Value.words("what", "after the runaway"),
                                Value.of("fall-height", TetherHold.freeFallM(line, on.ran())),
                                Value.of("catch-undamped", undampedN(on, on.ran().apexM())),
                                caught(on.path().peaks().getFirst().forceN()))));
    }

    private static double slackM(TetherNumbers line, double fromM) {
        return Math.max(0, fromM - Math.max(0, line.straightM()));
    }

    /** Were there no ground: what the line alone would have to do. */
    private static double undampedN(Held.OnTether on, double fromM) {
        return Tether.dropPeakN(
                on.rig().massKg(),
                Math.max(0, fromM - on.line().straightM()),
                on.line().stiffnessNpm());
    }

    private static Value caught(double newton) {
        return newton > 0
                ? Value.of("catch-run", newton)
                : Value.words("catch-run", "the ground comes first");
    }

    /** Greatest pull as a body falls from rest, N; 0 where the ground comes first. */
    static double dropN(TetherNumbers line, double massKg, double fromM, double airKgpm3) {
        RunawayPath path =
                TetherRun.fall(
                        new Body(massKg, Body.USUAL_DRAG_AREA_M2, airKgpm3),
                        fromM,
                        0,
                        new Surroundings(
                                List.of(
                                        new Spring(
                                                "line",
                                                Spring.Way.LIFTS,
                                                line.straightM(),
                                                line.stiffnessNpm(),
                                                line.dampingNspm())),
                                OptionalDouble.empty()),
                        HORIZON_S);
        return path.peaks().getFirst().forceN();
    }
}
