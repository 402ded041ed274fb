package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.physics.Gravity;
import liftwright.physics.Tether;
import liftwright.plant.hold.Ask.What;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Vec3;

/**
 * What is asked of a tether: what a runaway under it, and the fall that follows, do to lines,
 * anchor, harness and gantry, and where the rig and a slack line can get.
 */
public final class TetherHold {

    private TetherHold() {}

    /**
     * What happened in a runaway under the tether with nothing overhead, or in a fall from where it
     * began, whichever was worse.
     *
     * @param startM height of the soles when it began, m
     * @param apexM greatest height of the soles, m
     * @param linePeakN greatest pull of the overhead line
     * @param lineStretchM greatest stretch of it
     * @param downPeakN greatest upward pull of all down-lines together
     * @param landingMps speed on the ground, ≥ 0; 0 where it did not come down
     */
    public record Ran(
            double startM,
            double apexM,
            double linePeakN,
            double lineStretchM,
            double downPeakN,
            double landingMps) {}

    /**
     * A fan whose intake nothing covers.
     *
     * @param at its place in rig axes, m
     * @param radiusM of its tip
     */
    public record OpenIntake(int fan, Vec3 at, double radiusM) {}

    /**
     * The rig on the line.
     *
     * @param massKg of all that hangs
     * @param thrustN of all fans at full throttle together, whatever way they point
     * @param intakes those that a line can get into
     */
    public record Hung(double massKg, double thrustN, Extent extent, List<OpenIntake> intakes) {}

    /** All that is asked. */
    public static List<Ask> of(TetherNumbers line, Hung rig, Ran ran, Limits limits) {
        double factor = limits.si(LimitName.RESTRAINT_FACTOR);
        List<Ask> asks = new ArrayList<>();
        asks.add(
                Ask.of(
                        What.HEADROOM,
                        ran.apexM,
                        OptionalDouble.of(line.overheadM() - rig.extent.heightM()),
                        1));
        double pullN = Math.max(ran.linePeakN, rig.thrustN);
        asks.add(anchor(line, pullN, limits));
        asks.add(Ask.of(What.LINE, pullN, line.lineStrengthN(), factor));
        asks.add(
                Ask.of(
                        What.ARREST,
                        ran.linePeakN,
                        OptionalDouble.of(
                                Math.min(
                                        limits.si(LimitName.ARREST_FORCE),
                                        line.harnessLimitN().orElse(Double.POSITIVE_INFINITY))),
                        1));
        if (ran.apexM > line.straightM()) {
            asks.add(
                    Ask.of(
                            What.FREE_FALL,
                            freeFallM(line, ran),
                            OptionalDouble.of(limits.si(LimitName.FREE_FALL)),
                            1));
        }
        double belowM = line.straightM() - line.matsM();
        if (belowM > 0) {
            asks.add(
                    Ask.of(What.CLEARANCE, stretchM(line, rig, ran), OptionalDouble.of(belowM), 1));
        }
        asks.add(
                Ask.of(
                        What.LANDING,
                        ran.landingMps,
                        OptionalDouble.of(limits.si(LimitName.IMPACT_SPEED)),
                        1));
        line.down().ifPresent(down -> asks.add(downLine(down, ran, factor)));
        ingestion(line, rig, ran.startM, asks);
        if (line.sideReachM().isPresent() || line.wallM().isPresent()) {
            asks.add(
                    Ask.of(
                            What.SIDE_REACH,
                            reachM(line, rig) + rig.extent.sideM(),
                            OptionalDouble.of(
                                    Math.min(
                                            line.sideReachM().orElse(Double.POSITIVE_INFINITY),
                                            line.wallM().orElse(Double.POSITIVE_INFINITY))),
                            1));
        }
        line.gantry().ifPresent(gantry -> gantry(line, gantry, rig, factor, asks));
        return asks;
    }

    /** Lines too short to reach the ground hold nothing. */
    private static Ask downLine(TetherNumbers.Down down, Ran ran, double factor) {
        double up = down.upShare();
        return up > 0
                ? Ask.of(
                        What.DOWN_LINE, ran.downPeakN / down.count() / up, down.strengthN(), factor)
                : Ask.of(What.DOWN_LINE, ran.downPeakN, OptionalDouble.of(0), factor);
    }

    /** From the apex, or the start, to where the line is straight or the ground is met, m. */
    public static double freeFallM(TetherNumbers line, Ran ran) {
        return Math.max(0, ran.apexM - Math.max(0, line.straightM()));
    }

    /**
     * Stretch in the catch, m: as it ran, or, where the ground cut it short, as a line without
     * damping would have to; at least that at rest.
     */
    private static double stretchM(TetherNumbers line, Hung rig, Ran ran) {
        double restM = rig.massKg * Gravity.STANDARD_MPS2 / line.stiffnessNpm();
        double stretchM =
                ran.landingMps > 0
                        ? Tether.dropPeakN(rig.massKg, freeFallM(line, ran), line.stiffnessNpm())
                                / line.stiffnessNpm()
                        : ran.lineStretchM;
        return Math.max(restM, stretchM);
    }

    /** Either so strong that the rule asks nothing more, or the factor over what was computed. */
    private static Ask anchor(TetherNumbers line, double pullN, Limits limits) {
        double factor = limits.si(LimitName.RESTRAINT_FACTOR);
        double enough = limits.si(LimitName.ANCHOR);
        if (line.anchorStrengthN().isPresent() && factor * pullN > enough) {
            return Ask.of(What.ANCHOR, pullN, line.anchorStrengthN(), Math.max(1, enough / pullN));
        }
        return Ask.of(What.ANCHOR, pullN, line.anchorStrengthN(), factor);
    }

    private static void ingestion(TetherNumbers line, Hung rig, double soleM, List<Ask> asks) {
        Vec3 ring = new Vec3(0, 0, rig.extent.bottomM() - line.ringM());
        Vec3 anchor = new Vec3(0, 0, rig.extent.bottomM() - (line.anchorM() - soleM));
        double least = Double.POSITIVE_INFINITY;
        int nearest = -1;
        for (OpenIntake intake : rig.intakes) {
            double needed = LineReach.neededM(anchor, ring, intake.at, intake.radiusM);
            if (needed < least) {
                least = needed;
                nearest = intake.fan;
            }
        }
        if (nearest >= 0) {
            asks.add(
                    new Ask(
                            What.INGESTION,
                            Optional.empty(),
                            List.of(nearest),
                            line.lengthM(),
                            OptionalDouble.of(least),
                            1));
        }
    }

    /** How far to the side the ring can get, at the greatest height that is left to it, m. */
    public static double reachM(TetherNumbers line, Hung rig) {
        double highest =
                Math.min(line.anchorM(), line.overheadM() - rig.extent.heightM() + line.ringM());
        if (line.down().isPresent()) {
            highest = Math.min(highest, line.ringM() + line.down().get().straightM());
        }
        double below = line.anchorM() - Math.max(highest, line.ringM());
        double square = line.lengthM() * line.lengthM() - below * below;
        return square > 0 ? Math.sqrt(square) : 0;
    }

    private static void gantry(
            TetherNumbers line,
            TetherNumbers.Gantry gantry,
            Hung rig,
            double factor,
            List<Ask> asks) {
        double weightN = rig.massKg * Gravity.STANDARD_MPS2;
        double ownN = gantry.massKg() * Gravity.STANDARD_MPS2;
        double halfM = Math.min(gantry.feet().apartM(), gantry.feet().deepM()) / 2;
        double least = angleRad((line.anchorM() - line.ringM()) / line.lengthM());
        double most =
                line.down()
                        .map(
                                down ->
                                        angleRad(
                                                (line.anchorM() - line.ringM() - down.straightM())
                                                        / line.lengthM()))
                        .orElse(Math.PI / 2);
        double tipping =
                LinePull.greatest(weightN, rig.thrustN, line.anchorM(), halfM, least, most);
        asks.add(Ask.of(What.GANTRY_TIPS, tipping, OptionalDouble.of(ownN * halfM), factor));
        double sliding = LinePull.greatest(weightN, rig.thrustN, 1, gantry.friction(), least, most);
        asks.add(
                Ask.of(
                        What.GANTRY_SLIDES,
                        sliding,
                        OptionalDouble.of(gantry.friction() * ownN),
                        factor));
    }

    /** Angle from the plumb whose cosine is given; none beyond the plumb and the level. */
    private static double angleRad(double cosine) {
        return cosine >= 1 ? 0 : cosine <= 0 ? Math.PI / 2 : Math.acos(cosine);
    }
}
