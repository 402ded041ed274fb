package liftwright.trials.measure;

import liftwright.rig.Pack;
import liftwright.trials.Channel.Instrument;

/** How well a pulse tells the resistance of a cell. */
final class PulseResistance {

    private PulseResistance() {}

    /** Two voltages and one current in, the resistance of one cell out. */
    static Instrument instrument(Pack pack, double pulseA) {
        double volt = Math.sqrt(2) * Instruments.CELL_VOLTMETER.errorSi();
        return new Instrument(
                "voltmeter at the balance lead and current clamp",
                volt * pack.parallel() / pulseA,
                Instruments.CLAMP.errorShare(),
                "follows from theirs: √2 times the voltmeter’s over the current, and the clamp’s");
    }
}
