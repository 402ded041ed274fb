package liftwright.flight.sense;

import liftwright.numerics.CounterStream;
import liftwright.rig.Control.Measures;

/** Where the random numbers of a sensor come from: each has an address of its own. */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Draws(long seed, int number, Measures measures, long[] noise, long dropout) {

    private static final String NAME = "flight: ";

    static Draws of(long seed, int number, Measures measures) {
        String name = NAME + measures.usualName();
        long[] noise = new long[SensorNumbers.axes(measures)];
        for (int k = 0; k < noise.length; k++) {
            noise[k] = CounterStream.channel(name + " noise " + k);
        }
        return new Draws(seed, number, measures, noise, CounterStream.channel(name + " dropout"));
    }

    double noise(int axis, long reading) {
        return CounterStream.normal(seed, noise[axis], number, (int) reading);
    }

    boolean isLost(double share, long reading) {
        return share > 0 && CounterStream.uniform(seed, dropout, number, (int) reading) < share;
    }

    /** Turn about an axis by which it is mounted, in standard deviations. */
    double misalignment(int axis) {
        return own("misalignment", axis);
    }

    private double own(String what, int axis) {
        return number == 0
                ? 0
                : CounterStream.normal(
                        seed,
                        CounterStream.channel(NAME + measures.usualName() + " " + what),
                        number,
                        axis);
    }
}
