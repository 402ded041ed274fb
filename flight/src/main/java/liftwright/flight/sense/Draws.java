package liftwright.flight.sense;

import java.util.ArrayList;
import java.util.List;
import liftwright.numerics.CounterStream;
import liftwright.numerics.StepStream;
import liftwright.rig.Control.Measures;

/**
 * Where the random numbers of a sensor come from: each has an address of its own. For one thread.
 */
final class Draws {

    private static final String NAME = "flight: ";

    private final long seed;
    private final int number;
    private final String name;
    private final List<StepStream> noise = new ArrayList<>();
    private final StepStream dropout;

    private Draws(long seed, int number, Measures measures) {
        this.seed = seed;
        this.number = number;
        name = NAME + measures.usualName();
        for (int k = 0; k < SensorNumbers.axes(measures); k++) {
            noise.add(stream(" noise " + k));
        }
        dropout = stream(" dropout");
    }

    private StepStream stream(String what) {
        return new StepStream(seed, CounterStream.channel(name + what), number);
    }

    static Draws of(long seed, int number, Measures measures) {
        return new Draws(seed, number, measures);
    }

    double noise(int axis, long reading) {
        return noise.get(axis).normal((int) reading);
    }

    boolean isLost(double share, long reading) {
        return share > 0 && dropout.uniform((int) reading) < share;
    }

    /** Turn about an axis by which it is mounted, in standard deviations. */
    double misalignment(int axis) {
        return number == 0
                ? 0
                : CounterStream.normal(
                        seed, CounterStream.channel(name + " misalignment"), number, axis);
    }
}
