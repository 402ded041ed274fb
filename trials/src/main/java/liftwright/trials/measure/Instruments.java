package liftwright.trials.measure;

import liftwright.quantity.Measure;
import liftwright.trials.Channel.Instrument;

/** Instruments of a workshop, with errors of common practice: put yours in their place. */
final class Instruments {

    private static final String PRACTICE = "common practice";

    static final Instrument PARTS_SCALE = new Instrument("scale for parts", 0.005, 0.002, PRACTICE);
    static final Instrument RIG_SCALE =
            new Instrument("hanging or platform scale", 0.05, 0.003, PRACTICE);
    static final Instrument SUPPORT_SCALE =
            new Instrument("two like scales, one under each support", 0.02, 0.002, PRACTICE);
    static final Instrument STOPWATCH =
            new Instrument("stopwatch, from swing to swing by hand", 0.3, 0, PRACTICE);
    static final Instrument VOLTMETER = new Instrument("voltmeter", 0.01, 0.001, PRACTICE);
    static final Instrument CELL_VOLTMETER =
            new Instrument("voltmeter at the balance lead", 0.002, 0.001, PRACTICE);
    static final Instrument STEP =
            new Instrument("the same voltmeter, one reading less another", 0.015, 0.001, PRACTICE);
    static final Instrument CLAMP = new Instrument("current clamp, zeroed", 0.3, 0.02, PRACTICE);
    static final Instrument TACHOMETER =
            new Instrument("optical or electrical tachometer", 0, 0.003, PRACTICE);
    static final Instrument STAND =
            new Instrument("thrust stand that nobody planned", 0.2, 0.02, PRACTICE);
    static final Instrument LOGGER =
            new Instrument("log of speed or thrust, 1000 rows a second", 0.002, 0.01, PRACTICE);
    static final Instrument TAP =
            new Instrument("accelerometer or microphone, 1 s of ringing", 0.5, 0.01, PRACTICE);

    private Instruments() {}

    /** What an instrument does not say of itself: the unit of its error. */
    record Used(Instrument instrument, Measure measure) {}
}
