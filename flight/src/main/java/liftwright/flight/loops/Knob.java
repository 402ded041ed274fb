package liftwright.flight.loops;

import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A number of a craft that could be changed alone, to see whether loops would then be granted.
 *
 * @param reason it stands for
 * @param what it is, in words
 * @param unit of its value
 * @param now its value
 * @param best the end that helps most: 0, or far beyond {@code now}
 * @param craft with another value
 */
record Knob(
        Reason reason,
        String what,
        String unit,
        double now,
        double best,
        DoubleFunction<Craft> craft) {

    /** Beyond any that is built. */
    private static final double FAR = 1e5;

    /** Every number that slows loops down. */
    static List<Knob> of(Craft craft) {
        Lags l = craft.lags();
        Flexible f = craft.flexible();
        return List.of(
                new Knob(
                        Reason.SPOOL_LAG_TOO_LONG,
                        "longest spool lag of the fans at hover",
                        "s",
                        spoolS(craft),
                        0,
                        to -> craft.with(spooled(craft, to / spoolS(craft)))),
                new Knob(
                        Reason.CONTROLLER_DELAY_TOO_LONG,
                        "delay of the motor controllers",
                        "s",
                        l.escS(),
                        0,
                        to -> craft.with(l.escS(to))),
                new Knob(
                        Reason.COMPUTER_DELAY_TOO_LONG,
                        "delay from sensor to command",
                        "s",
                        l.computerS(),
                        0,
                        to -> craft.with(l.computerS(to))),
                new Knob(
                        Reason.SENSOR_DELAY_TOO_LONG,
                        "delay of the gyro",
                        "s",
                        l.gyroS(),
                        0,
                        to -> craft.with(l.gyroS(to))),
                new Knob(
                        Reason.FILTER_TOO_LOW,
                        "corner of the gyro's filter",
                        "Hz",
                        l.filterHz(),
                        FAR,
                        to -> craft.with(l.filterHz(to))),
                new Knob(
                        Reason.RATE_TOO_LOW,
                        "rate at which commands are given",
                        "Hz",
                        l.controlHz(),
                        FAR,
                        to -> craft.with(l.controlHz(to))),
                new Knob(
                        Reason.VELOCITY_ESTIMATE_TOO_LATE,
                        "delay of estimated velocity",
                        "s",
                        l.velocityS(),
                        0,
                        to -> craft.with(l.velocityS(to))),
                new Knob(
                        Reason.HARNESS_MODE_TOO_NEAR,
                        "lowest frequency of the wearer in the harness",
                        "Hz",
                        f.harnessHz(),
                        FAR,
                        to ->
                                craft.with(
                                        new Flexible(
                                                to,
                                                f.harnessDamping(),
                                                f.harnessShare(),
                                                f.massShare(),
                                                f.legsHz()))),
                new Knob(
                        Reason.LEGS_TOO_NEAR,
                        "frequency of swinging legs",
                        "Hz",
                        f.legsHz(),
                        FAR,
                        to ->
                                craft.with(
                                        new Flexible(
                                                f.harnessHz(),
                                                f.harnessDamping(),
                                                f.harnessShare(),
                                                f.massShare(),
                                                to))));
    }

    /** Whether it can be changed for the better at all. */
    boolean moves() {
        return Double.isFinite(now) && now != best && (best == 0 ? now > 0 : now < best);
    }

    private static double spoolS(Craft craft) {
        return craft.fans().stream().mapToDouble(fan -> fan.rotor().lagS()).max().orElse(0);
    }

    private static List<Lifter> spooled(Craft craft, double factor) {
        return craft.fans().stream().map(fan -> fan.spooled(factor)).toList();
    }
}
