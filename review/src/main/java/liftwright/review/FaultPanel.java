package liftwright.review;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.numerics.Zonotope;
import liftwright.plant.Effects;
import liftwright.plant.LossPoint;
import liftwright.plant.Losses;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.Workspace;
import liftwright.plant.balance.Allocation.Axis;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.Fault;
import liftwright.plant.fault.Faults;
import liftwright.review.failures.Asked;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultFigures;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultOutcome;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * All single faults of a rig, those that come to the same together, and what becomes of the rig
 * with each. Immutable; each thread brings its own {@link Worker}.
 */
final class FaultPanel {

    private final Plant plant;
    private final Losses losses;
    private final Asked asked;
    private final List<FaultGroup> groups;
    private final ArmSlopes slopes;
    private final Steering steering;

    FaultPanel(Plant plant) {
        this.plant = plant;
        Rig rig = plant.rig();
        losses = plant.losses(Losses.Charge.FULL);
        asked = Asked.of(rig);
        groups = FaultGroup.of(rig, Faults.of(rig));
        steering = Steering.of(plant.balancing());
        slopes = ArmSlopes.of(plant.balancing(), steering);
    }

    Asked asked() {
        return asked;
    }

    List<FaultGroup> groups() {
        return groups;
    }

    Steering steering() {
        return steering;
    }

    /**
     * What was found of one fault.
     *
     * @param converged whether there was an operating point; the rest means nothing without
     * @param fate what becomes of the rig
     * @param figures lift and steering left; empty where the harm is not in them
     * @param point the survivors at work; empty as well
     */
    record Found(
            boolean converged,
            FaultFate fate,
            Optional<FaultFigures> figures,
            Optional<LossPoint> point) {

        private static Found of(FaultFate fate) {
            return of(true, fate);
        }

        static Found of(boolean converged, FaultFate fate) {
            return new Found(converged, fate, Optional.empty(), Optional.empty());
        }
    }

    Worker worker() {
        return new Worker();
    }

    /** With scratch of its own. */
    final class Worker {

        private final Losses.Worker worker = losses.worker();
        private final Workspace workspace = plant.workspace();
        private final SteadyState full = plant.state();

        /** What becomes of the rig with one fault, told in full: for tables. */
        Found told(double[] p, FaultGroup group) {
            return switch (group.rule()) {
                case MOVES -> told(p, group.effect());
                case CUTS, LOWERS, HELD_THEN_CUT, HELD, UNSTEERED, STARTS, DISAGREES, NOTHING ->
                        found(p, group);
            };
        }

        /** The same with an effect. */
        Found told(double[] p, Effect effect) {
            FaultFigures figures = figures(p, effect, true);
            LossPoint point = worker.at(p, effect);
            return new Found(
                    point.converged(),
                    FaultFate.of(figures, asked),
                    Optional.of(figures),
                    Optional.of(point));
        }

        /**
         * What becomes of it, no more than that: for loops. A computer that holds yaw is not asked
         * what it could do without.
         */
        Found found(double[] p, FaultGroup group) {
            return switch (group.rule()) {
                case MOVES -> found(p, group.effect());
                case LOWERS ->
                        Found.of(
                                FaultFate.comingDown(plant.rig().control().lowering().si(), asked));
                case CUTS, HELD_THEN_CUT -> Found.of(FaultFate.comingDown(0, asked));
                case HELD -> Found.of(FaultFate.lost(FaultOutcome.CLIMBS, asked));
                case UNSTEERED -> Found.of(FaultFate.lost(FaultOutcome.UNSTEERED, asked));
                case STARTS -> starts(p, group.first());
                case DISAGREES, NOTHING -> Found.of(FaultFate.NONE);
            };
        }

        /** The same with an effect. */
        Found found(double[] p, Effect effect) {
            FaultFigures figures = figures(p, effect, false);
            return new Found(
                    worker.converged(),
                    FaultFate.of(figures, asked),
                    Optional.of(figures),
                    Optional.empty());
        }

        private Found starts(double[] p, Fault fault) {
            plant.solve(p, Effects.ALL, workspace, full);
            double liftN = 0;
            for (int fan = 0; fan < plant.rig().fans().size(); fan++) {
                if (plant.rig().fans().get(fan).id().equals(fault.part())) {
                    liftN = full.fanFed(fan) ? full.fanUpwardThrustN(fan) : 0;
                }
            }
            return new Found(
                    full.converged(),
                    FaultFate.starting(liftN / plant.weightN(p), asked),
                    Optional.empty(),
                    Optional.empty());
        }

        private FaultFigures figures(double[] p, Effect effect, boolean whole) {
            worker.load(p);
            worker.lose(effect);
            double liftN = worker.liftN();
            FaultFigures.Held held =
                    switch (steering) {
                        case ARMS -> arms(worker.shared(worker.weightN()));
                        case NOTHING -> nothing(worker.shared(worker.weightN()));
                        case COMPUTER -> computer(whole);
                    };
            return new FaultFigures(worker.weightN(), liftN, held);
        }

        private FaultFigures.Held computer(boolean whole) {
            if (worker.loop() <= NO_LOOP) {
                return new FaultFigures.ByComputer(FaultFigures.Trim.NONE, FaultFigures.Trim.NONE);
            }
            FaultFigures.Trim held = whole || asked.yawHeld() ? trim(true) : FaultFigures.Trim.NONE;
            boolean suffices = asked.yawHeld() && held.atWeight().isSome();
            return new FaultFigures.ByComputer(held, whole || !suffices ? trim(false) : held);
        }

        private FaultFigures.Trim trim(boolean yawHeld) {
            double weightN = worker.weightN();
            LossPoint.Trims at = worker.trims(yawHeld, weightN);
            double liftN = Math.max(0, at.greatestLiftN().orElse(0));
            double comingN = COMING_SHARE * Math.min(weightN, liftN);
            FaultFigures.Reserves coming =
                    comingN > 0
                            ? reserves(worker.trims(yawHeld, comingN))
                            : FaultFigures.Reserves.NONE;
            return new FaultFigures.Trim(liftN, reserves(at), coming, comingN);
        }

        private static FaultFigures.Reserves reserves(LossPoint.Trims trims) {
            return new FaultFigures.Reserves(
                    least(trims, Axis.ROLL), least(trims, Axis.PITCH), least(trims, Axis.YAW));
        }

        private static double least(LossPoint.Trims trims, Axis axis) {
            OptionalDouble least = trims.leastRadps2(axis);
            return least.orElse(Double.NEGATIVE_INFINITY);
        }

        private FaultFigures.Held arms(LossPoint.Shared shared) {
            double[][] reaches = slopes.reaches(worker.thrustN());
            Vec3 turns = shared.ledger().moment();
            double[] moment = {turns.x(), turns.y(), turns.z()};
            double tilting = left(reaches, moment, 2);
            return new FaultFigures.ByArms(Math.min(tilting, left(reaches, moment, 3)), tilting);
        }

        /** What is left of the reach in the first axes of the moment. */
        private static double left(double[][] reaches, double[] moment, int axes) {
            double[][] own = new double[reaches.length][];
            for (int k = 0; k < own.length; k++) {
                own[k] = Arrays.copyOf(reaches[k], axes);
            }
            double factor = Zonotope.factorToHold(own, Arrays.copyOf(moment, axes));
            return Math.max(Steering.WORST, 1 - factor);
        }

        private static FaultFigures.Held nothing(LossPoint.Shared shared) {
            Vec3 rate = shared.ledger().acceleration();
            return new FaultFigures.ByNothing(
                    Math.max(Math.abs(rate.x()), Math.abs(rate.y())), Math.abs(rate.z()));
        }
    }

    /** A loop so weak is none: what rounding leaves of a 0. */
    private static final double NO_LOOP = 1e-9;

    /** A rig that comes down keeps so much of the greatest lift that it can trim; from memory. */
    static final double COMING_SHARE = 0.9;
}
