package liftwright.trials.predict;

import java.util.EnumMap;
import java.util.Map;
import java.util.random.RandomGenerator;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Rig;

/** The same rig with limits so near to what a run comes to that a fault can reach them. */
final class NearLimits {

    /** Distance of a limit from the start over what the run comes to. */
    private static final double NEAREST = 1.25;

    private static final double FARTHEST = 3.2;

    private NearLimits() {}

    static RandomCard of(RandomCard card, RandomGenerator random) {
        Prediction far =
                new Prediction(card.rig(), card.run(), Conditions.DECLARED, random.nextLong());
        Map<LimitName, Double> limits = new EnumMap<>(LimitName.class);
        limits.putAll(card.rig().limits().declared());
        Trace trace = far.trace();
        for (int k = 0; k < far.watches().size() && trace.steps() > 0; k++) {
            Watch watch = far.watches().get(k);
            double start = trace.atStart(k);
            double end = trace.atEnd(trace.steps() - 1, k);
            double way =
                    NEAREST * Math.pow(FARTHEST / NEAREST, random.nextDouble()) * (end - start);
            // Nearer than this no instrument tells it.
            double limit = start + Math.signum(way) * Math.max(Math.abs(way), least(watch));
            double before = watch.limit().map(Watch.Limit::si).orElse(0.0);
            switch (watch.gauge()) {
                case CELL_VOLTAGE -> limits.put(LimitName.CELL_UNDER_LOAD, limit);
                case JOINT -> limits.put(LimitName.JOINT_TEMPERATURE, limit);
                case CONTROLLER -> limits.put(LimitName.CONTROLLER_TEMPERATURE, limit);
                case WINDING -> limits.put(LimitName.WINDING_TEMPERATURE, limit);
                case MAGNETS -> limits.put(LimitName.MAGNET_TEMPERATURE, limit);
                case CELLS -> limits.put(LimitName.CELL_TEMPERATURE, limit);
                case WIRE -> {
                    double below = card.rig().limits().si(LimitName.WIRE_BELOW_CLASS);
                    limits.put(LimitName.WIRE_BELOW_CLASS, before + below - limit);
                }
                case SPEED ->
                        share(limits, LimitName.ROTOR_SPEED_SHARE, card.rig(), limit / before);
                case WINDING_CURRENT ->
                        share(
                                limits,
                                LimitName.CONTROLLER_CURRENT_SHARE,
                                card.rig(),
                                limit / before);
                case THRUST, MOUNT_THRUST, SCALE, TETHER, PACK_CURRENT, CHARGE, ENERGY -> {}
                case HEIGHT, CLOCK -> {}
            }
        }
        return new RandomCard(card.rig().within(new Limits(limits)), card.run());
    }

    private static double least(Watch watch) {
        return watch.gauge().isHeat() ? 12 : 0;
    }

    private static void share(
            Map<LimitName, Double> limits, LimitName name, Rig rig, double times) {
        limits.put(name, Math.min(1, rig.limits().si(name) * times));
    }
}
