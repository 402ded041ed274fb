package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.PZ;
import static liftwright.flight.motion.BodyState.VX;
import static liftwright.flight.motion.BodyState.WX;

import liftwright.flight.motion.BodyState;
import liftwright.rig.Control.Measures;

/**
 * All sensors of a flight: each reads at its own rate, and what it reads arrives late. Every random
 * number is a pure function of seed, number of the flight, sensor and reading. For one flight;
 * {@link #read} allocates nothing.
 *
 * <p>Between two ticks the rig is taken as moving evenly: a reading that falls between them sees
 * what a straight line tells. Noise is white up to half the rate of reading; the filter of a sensor
 * acts on its readings, so that a vibration above half that rate is read at a wrong frequency
 * before anything filters it.
 */
public final class Sensors {

    private static final Measures[] ALL = Measures.values();

    /** Ticks from the one before now to the next, with something for rounding. */
    private static final double LOOK_BACK = 2.5;

    private final double dtS;
    private final Vibration vibration;
    private final Channel[] channels = new Channel[ALL.length];

    /** What there is to be read at the last tick and at this one, a row for each sensor. */
    private final double[] before = new double[3 * ALL.length];

    private final double[] now = new double[3 * ALL.length];
    private double tS;

    /**
     * @param suite their numbers
     * @param vibration what shakes them
     * @param biases how far off their offsets are in this flight
     * @param seed of all random numbers
     * @param number of the flight; in flight 0 no sensor is mounted askew
     * @param dtS length of a tick, s
     */
    public Sensors(
            Suite suite, Vibration vibration, Biases biases, long seed, int number, double dtS) {
        this.dtS = dtS;
        this.vibration = vibration;
        for (Measures one : ALL) {
            channels[row(one) / 3] =
                    new Channel(suite.of(one), Draws.of(seed, number, one), biases, dtS);
        }
        vibration.begin(seed, number);
    }

    /** All have read this state for ever, and read it again at tick 0. */
    public void begin(BodyState state, double[] specificForceMps2) {
        tS = 0;
        truths(state, specificForceMps2);
        now[row(Measures.HEADING)] = state.headingRad();
        for (Channel channel : channels) {
            fill(channel, 1);
            channel.settle();
            channel.take();
            channel.arrive(0);
        }
        System.arraycopy(now, 0, before, 0, now.length);
    }

    /**
     * Goes on to a tick.
     *
     * @param tick one more than the last
     * @param state at that tick
     * @param specificForceMps2 in: all forces but gravity over mass, mean since the last tick, body
     *     axes
     * @param rotorRadps in: speed of every rotor at that tick
     */
    public void read(long tick, BodyState state, double[] specificForceMps2, double[] rotorRadps) {
        System.arraycopy(now, 0, before, 0, now.length);
        truths(state, specificForceMps2);
        // An angle is dear: told where one is read at this tick or at the next, which looks back.
        if (channel(Measures.HEADING).dueS() <= tS + LOOK_BACK * dtS) {
            now[row(Measures.HEADING)] = state.headingRad();
        }
        vibration.advance(dtS, rotorRadps);
        tS = tick * dtS;
        for (Channel channel : channels) {
            while (channel.isDue(tS)) {
                fill(channel, Math.clamp(1 - (tS - channel.dueS()) / dtS, 0, 1));
                channel.take();
            }
            channel.arrive(tS);
        }
    }

    /**
     * The last reading that has arrived; axes forward, right, down, or north of the start first.
     */
    public double value(Measures measures, int axis) {
        return channel(measures).value[axis];
    }

    /** Whether a reading arrived in this tick. */
    public boolean isFresh(Measures measures) {
        return channel(measures).isFresh();
    }

    /** Whether the last reading stood at the end of the sensor's range. */
    public boolean isCut(Measures measures) {
        return channel(measures).isCut();
    }

    /** How long ago the last reading arrived, s. */
    public double ageS(Measures measures) {
        return tS - channel(measures).arrivedAtS();
    }

    /** How many readings were cut at the end of the sensor's range so far. */
    public long cuts(Measures measures) {
        return channel(measures).cuts();
    }

    /** How many readings were lost so far. */
    public long losses(Measures measures) {
        return channel(measures).losses();
    }

    /** How many readings were made so far, lost ones too. */
    public long readings(Measures measures) {
        return channel(measures).taken();
    }

    /** From now on it says nothing. */
    public void lose(Measures measures) {
        channel(measures).die();
    }

    /** Whether it was lost for good. */
    public boolean isLost(Measures measures) {
        return channel(measures).isDead();
    }

    /** Length of a tick, s. */
    public double tickS() {
        return dtS;
    }

    SensorNumbers numbers(Measures measures) {
        return channel(measures).n;
    }

    private Channel channel(Measures measures) {
        return channels[row(measures) / 3];
    }

    private void truths(BodyState state, double[] specificForceMps2) {
        double[] y = state.y;
        for (int k = 0; k < 3; k++) {
            now[row(Measures.TURN_RATE) + k] = y[WX + k];
            now[row(Measures.ACCELERATION) + k] = specificForceMps2[k];
            now[row(Measures.VELOCITY) + k] = y[VX + k];
        }
        now[row(Measures.POSITION)] = y[PX];
        now[row(Measures.POSITION) + 1] = y[PX + 1];
        now[row(Measures.HEIGHT)] = -y[PZ];
    }

    private static int row(Measures measures) {
        return switch (measures) {
            case TURN_RATE -> 0;
            case ACCELERATION -> 3;
            case HEIGHT -> 6;
            case POSITION -> 9;
            case VELOCITY -> 12;
            case HEADING -> 15;
        };
    }

    /** What there is to be read a share of the way from the last tick to this. */
    private void fill(Channel channel, double share) {
        Measures measures = channel.n.measures();
        int row = row(measures);
        boolean mean = measures == Measures.ACCELERATION; // that of the whole tick
        for (int k = 0; k < channel.axes; k++) {
            double change = now[row + k] - before[row + k];
            if (measures == Measures.HEADING) {
                change = Math.IEEEremainder(change, 2 * Math.PI);
            }
            channel.truth[k] = mean ? now[row + k] : before[row + k] + share * change;
        }
        if (mean || measures == Measures.TURN_RATE) {
            vibration.add(dtS, share, !mean, channel.truth);
        }
    }
}
