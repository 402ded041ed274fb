package liftwright.flight.motion;

import java.util.Arrays;
import liftwright.numerics.CounterStream;
import liftwright.numerics.StepStream;
import liftwright.physics.Dryden;

/**
 * The air that a rig flies in: mean wind, turbulence, a gust, its own wash near the floor. One
 * speed for the whole rig at a time: what changes across its width is left out. For one flight.
 *
 * <p>Turbulence is drawn every {@link #NODE_S} by filters that are exact for any step, and runs
 * straight in between. Its filters go by the speed at which the rig moves through the mean wind:
 * the declared wind in a hover.
 */
public final class Air {

    /** From one draw to the next, s. */
    public static final double NODE_S = 0.005;

    private static final long U = CounterStream.channel("turbulence along the wind");
    private static final long V = CounterStream.channel("turbulence across the wind");
    private static final long W = CounterStream.channel("turbulence upright");
    private static final long WASH = CounterStream.channel("turbulence of the own wash");

    private final Wind wind;
    private final GustShare share;

    // Noises of all in the same air: along the mean wind, across it and upright, two filters each.
    private final StepStream[] noiseU;
    private final StepStream[] noiseV;
    private final StepStream[] noiseV2;
    private final StepStream[] noiseW;
    private final StepStream[] noiseW2;

    /** Of the own wash, an axis each. */
    private final StepStream[] noiseWash;

    /** Way of the mean wind, scene axes. */
    private final double[] way;

    private final double[] gustWay;

    // Filters, each of standard deviation 1.
    private double along;
    private final double[] across = new double[2];
    private final double[] upright = new double[2];
    private final double[] wash = new double[3];

    private final double[] from = new double[3];
    private final double[] to = new double[3];
    private double t;
    private double nodeS;
    private int drawn;
    private double throughM;
    private double gustMps;

    /** Wind at the start of the step that was asked last, scene axes, m/s. */
    final double[] start = new double[3];

    /** The same at its end. */
    final double[] end = new double[3];

    /**
     * @param seed of the random numbers
     * @param number of the flight: each has air of its own
     */
    public Air(Wind wind, long seed, int number) {
        this(wind, seed, number, GustShare.alone(seed));
    }

    /**
     * Of one of several that fly in one air.
     *
     * @param seed of its own wash
     * @param share of the turbulence of all that it meets
     */
    public Air(Wind wind, long seed, int number, GustShare share) {
        this.wind = wind;
        this.share = share;
        noiseU = noises(share, number, U);
        noiseV = noises(share, number, V);
        noiseV2 = noises(share, number, V ^ 1);
        noiseW = noises(share, number, W);
        noiseW2 = noises(share, number, W ^ 1);
        noiseWash = new StepStream[3];
        for (int k = 0; k < 3; k++) {
            noiseWash[k] = new StepStream(seed, WASH + k, number);
        }
        way = new double[] {-Math.cos(wind.fromRad()), -Math.sin(wind.fromRad())};
        double gustFrom = wind.gust().map(Wind.Gust::fromRad).orElse(0.0);
        gustWay = new double[] {-Math.cos(gustFrom), -Math.sin(gustFrom)};
        along = shared(share.u(), noiseU);
        Dryden.settled(across, 0, shared(share.v(), noiseV), shared(share.v(), noiseV2));
        Dryden.settled(upright, 0, shared(share.w(), noiseW), shared(share.w(), noiseW2));
        for (int k = 0; k < 3; k++) {
            wash[k] = noiseWash[k].normal(drawn);
        }
        drawn = 1;
        nodeS = Double.NEGATIVE_INFINITY;
    }

    /** Air that does not move. */
    public static Air still() {
        return new Air(Wind.NONE, 0, 0);
    }

    /** Of one's own noise and of the noises of others in the same air. */
    private double shared(double[] parts, StepStream[] noises) {
        double sum = 0;
        for (int k = 0; k < noises.length; k++) {
            if (parts[k] != 0) {
                sum += parts[k] * noises[k].normal(drawn);
            }
        }
        return sum;
    }

    private static StepStream[] noises(GustShare share, int number, long channel) {
        return Arrays.stream(share.seeds())
                .mapToObj(seed -> new StepStream(seed, channel, number))
                .toArray(StepStream[]::new);
    }

    /**
     * Moves on by a step.
     *
     * @param state of the rig at its start
     * @param jets speed of its jets over that at which they carry its weight, ≥ 0
     */
    void advance(double dtS, BodyState state, double jets) {
        if (nodeS == Double.NEGATIVE_INFINITY) {
            nodeS = 0;
            turbulence(state, jets, to);
            next(state, jets);
            System.arraycopy(from, 0, end, 0, end.length);
            addSteady(end);
        }
        System.arraycopy(end, 0, start, 0, start.length);
        gust(dtS, state);
        t += dtS;
        while (t > nodeS + 1e-9) {
            next(state, jets);
        }
        double share = Math.clamp((t - nodeS + NODE_S) / NODE_S, 0, 1);
        for (int k = 0; k < 3; k++) {
            end[k] = from[k] + share * (to[k] - from[k]);
        }
        addSteady(end);
    }

    private void addSteady(double[] out) {
        for (int k = 0; k < 2; k++) {
            out[k] += wind.meanMps() * way[k] + gustMps * gustWay[k];
        }
    }

    private void gust(double dtS, BodyState state) {
        if (wind.gust().isEmpty()) {
            return;
        }
        Wind.Gust gust = wind.gust().get();
        if (t + dtS > gust.atS()) {
            // In calm air a gust comes by itself, as fast as it is on the mean.
            double speed = Math.max(airspeedMps(state), gust.fullMps() / 2);
            throughM += Math.min(dtS, t + dtS - gust.atS()) * speed;
            gustMps = liftwright.physics.Gust.windMps(throughM, gust.lengthM(), gust.fullMps());
        }
    }

    /** Speed of the rig through the mean wind, m/s. */
    private double airspeedMps(BodyState state) {
        double x = state.y[BodyState.VX] - wind.meanMps() * way[0];
        double y = state.y[BodyState.VY] - wind.meanMps() * way[1];
        double z = state.y[BodyState.VZ];
        return Math.sqrt(x * x + y * y + z * z);
    }

    private void next(BodyState state, double jets) {
        System.arraycopy(to, 0, from, 0, from.length);
        if (wind.at20FtMps() > 0) {
            double far = NODE_S * airspeedMps(state);
            double level = far / Dryden.levelScaleM(state.heightM());
            along = Dryden.along(along, level, shared(share.u(), noiseU));
            Dryden.across(across, 0, level, shared(share.v(), noiseV), shared(share.v(), noiseV2));
            double up = far / Dryden.uprightScaleM(state.heightM());
            Dryden.across(upright, 0, up, shared(share.w(), noiseW), shared(share.w(), noiseW2));
        }
        if (wind.washMps() > 0) {
            for (int k = 0; k < 3; k++) {
                wash[k] = Dryden.along(wash[k], NODE_S / Wind.WASH_S, noiseWash[k].normal(drawn));
            }
        }
        turbulence(state, jets, to);
        nodeS += NODE_S;
        drawn++;
    }

    private void turbulence(BodyState state, double jets, double[] out) {
        double height = state.heightM();
        double level = Dryden.levelMps(height, wind.at20FtMps());
        double u = level * along;
        double v = level * Dryden.acrossOf(across, 0);
        double near = Math.clamp(1 - height / wind.washReachM(), 0, 1);
        double own = wind.washMps() * near * jets;
        out[0] = u * way[0] - v * way[1] + own * wash[0];
        out[1] = u * way[1] + v * way[0] + own * wash[1];
        out[2] = Dryden.uprightMps(wind.at20FtMps()) * Dryden.acrossOf(upright, 0) + own * wash[2];
    }

    /** Wind at the end of the last step, scene axes, m/s. */
    public void wind(double[] out) {
        System.arraycopy(end, 0, out, 0, end.length);
    }
}
