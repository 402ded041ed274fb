package liftwright.review.failures;

import liftwright.physics.Gravity;
import liftwright.review.failures.FaultFigures.ByArms;
import liftwright.review.failures.FaultFigures.ByComputer;
import liftwright.review.failures.FaultFigures.ByNothing;
import liftwright.review.failures.FaultFigures.Reserves;
import liftwright.review.failures.FaultFigures.Trim;

/**
 * What becomes of a rig whose fans go on, stop or stick as a fault has it, with lift held at weight
 * as long as it can be.
 *
 * <p>The margin is the judged number: at 0 the rig has just what it needs. It may fly on, which
 * takes lift (over what is asked, less 1) and some reserve about every axis (over the reserve that
 * the limits ask of a whole rig, so that 0 is none), or come down upright, which takes reserves on
 * the way and a slow enough landing (speed that may be over speed, less 1). The better of the two
 * counts, since a pilot has the choice.
 *
 * @param outcome what happens
 * @param margin the least of these, from {@link #WORST} to {@link #BEST}
 * @param impactMps speed of a landing right after it from the declared height, m/s; 0 where lift
 *     carries weight
 */
public record FaultFate(FaultOutcome outcome, double margin, double impactMps) {

    /** Less than this is told as this. */
    public static final double WORST = -9;

    /** More than this is told as this. */
    public static final double BEST = 9;

    /** With less lift than this share of its weight a rig falls rather than sinks; from memory. */
    public static final double SINKING_SHARE = 0.5;

    /** Of what is moved by nothing. */
    public static final FaultFate NONE = new FaultFate(FaultOutcome.NO_EFFECT, BEST, 0);

    /** Of what nobody steers, or nothing takes back: of what is asked nothing is left. */
    public static FaultFate lost(FaultOutcome outcome, Asked asked) {
        return new FaultFate(outcome, -1, impactMps(0, asked));
    }

    /** Of what comes down upright with so much of its weight carried. */
    public static FaultFate comingDown(double liftShare, Asked asked) {
        double impact = impactMps(liftShare, asked);
        return new FaultFate(comesDown(liftShare), bounded(landing(impact, asked)), impact);
    }

    /**
     * Of fans that push by themselves while a person stands with or beside the rig: they may, as
     * long as they carry no more than the share of weight with which a person may stand.
     */
    public static FaultFate starting(double liftShare, Asked asked) {
        return new FaultFate(
                FaultOutcome.STARTS_BY_ITSELF,
                liftShare <= 0 ? BEST : bounded(asked.standingShare() / liftShare - 1),
                0);
    }

    /** Fate with these figures. */
    public static FaultFate of(FaultFigures figures, Asked asked) {
        if (figures.fullLiftN() <= 0) {
            return comingDown(0, asked);
        }
        return switch (figures.held()) {
            case ByComputer computer -> computer(figures.weightN(), computer, asked);
            case ByArms arms -> arms(figures, arms, asked);
            case ByNothing nothing -> nothing(figures, nothing, asked);
        };
    }

    private static FaultFate computer(double weightN, ByComputer can, Asked asked) {
        Trim wanted = asked.yawHeld() ? can.yawHeld() : can.yawFree();
        double flying =
                Math.min(
                        wanted.liftN() / weightN / asked.liftShare() - 1,
                        reserve(
                                wanted.atWeight(),
                                wanted.liftN() / weightN,
                                asked,
                                asked.yawHeld()));
        double comingMps = impactMps(wanted.comingN() / weightN, asked);
        double coming =
                Math.min(
                        landing(comingMps, asked),
                        reserve(wanted.coming(), wanted.liftN() / weightN, asked, asked.yawHeld()));
        double margin = bounded(Math.max(flying, coming));
        if (can.yawHeld().atWeight().isSome()) {
            return new FaultFate(FaultOutcome.FLIES_ON, margin, 0);
        }
        if (can.yawFree().atWeight().isTilting()) {
            return new FaultFate(
                    asked.yawHeld() ? FaultOutcome.TURNS : FaultOutcome.FLIES_ON, margin, 0);
        }
        boolean upright = can.yawFree().coming().isTilting();
        double share = can.yawFree().comingN() / weightN;
        if (!upright || share <= 0) {
            return new FaultFate(FaultOutcome.TIPS, Math.min(margin, flying), impactMps(0, asked));
        }
        return new FaultFate(comesDown(share), margin, impactMps(share, asked));
    }

    private static FaultFate arms(FaultFigures figures, ByArms arms, Asked asked) {
        double left = asked.yawHeld() ? arms.left() : arms.leftYawFree();
        double steering = left / asked.armLeft();
        return shared(
                figures,
                asked,
                steering,
                arms.left() > 0 || (!asked.yawHeld() && arms.leftYawFree() > 0),
                arms.leftYawFree() > 0);
    }

    private static FaultFate nothing(FaultFigures figures, ByNothing nothing, Asked asked) {
        double worst =
                asked.yawHeld()
                        ? Math.max(nothing.tiltRadps2(), nothing.yawRadps2())
                        : nothing.tiltRadps2();
        return shared(
                figures,
                asked,
                1 - worst / asked.driftRadps2(),
                worst <= asked.driftRadps2(),
                nothing.tiltRadps2() <= asked.driftRadps2());
    }

    /** One throttle for all: moments and reach go down with it alike, so that steering is one. */
    private static FaultFate shared(
            FaultFigures figures, Asked asked, double steering, boolean held, boolean upright) {
        double share = figures.fullLiftN() / figures.weightN();
        double impact = impactMps(share, asked);
        double margin =
                bounded(
                        Math.min(
                                steering,
                                Math.max(share / asked.liftShare() - 1, landing(impact, asked))));
        if (!upright) {
            return new FaultFate(FaultOutcome.TIPS, margin, impactMps(0, asked));
        }
        if (share < 1) {
            return new FaultFate(comesDown(share), margin, impact);
        }
        return new FaultFate(held ? FaultOutcome.FLIES_ON : FaultOutcome.TURNS, margin, 0);
    }

    private static FaultOutcome comesDown(double share) {
        return share < SINKING_SHARE ? FaultOutcome.FALLS : FaultOutcome.SINKS;
    }

    /**
     * Least reserve over what the limits ask of a whole rig. Where nothing holds the other axes
     * there is no reserve to tell; −1 and less, by the lift that can still be trimmed, tells how
     * far it is.
     */
    private static double reserve(Reserves reserves, double liftShare, Asked asked, boolean yaw) {
        double least = Double.POSITIVE_INFINITY;
        for (int axis = 0; axis < (yaw ? 3 : 2); axis++) {
            double own = reserves.of(axis);
            least =
                    Math.min(
                            least,
                            own == Double.NEGATIVE_INFINITY
                                    ? Math.min(0, liftShare - 1) - 1
                                    : (own <= Reserves.NOTHING_RADPS2
                                                    ? own - 2 * Reserves.NOTHING_RADPS2
                                                    : own)
                                            / asked.reserveRadps2(axis));
        }
        return least;
    }

    private static double landing(double impactMps, Asked asked) {
        return impactMps == 0 ? BEST : asked.impactMps() / impactMps - 1;
    }

    /**
     * Speed at the ground from rest at the declared height with so much of the weight carried, m/s:
     * √(2 g h (1 − share)); the air's drag is left out.
     */
    static double impactMps(double liftShare, Asked asked) {
        double heavier = Math.max(0, 1 - Math.max(0, liftShare));
        return Math.sqrt(2 * Gravity.STANDARD_MPS2 * asked.heightM() * heavier);
    }

    static double bounded(double margin) {
        return Math.max(WORST, Math.min(BEST, margin));
    }
}
