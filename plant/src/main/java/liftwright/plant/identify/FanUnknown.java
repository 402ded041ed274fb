package liftwright.plant.identify;

import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;

/** What rows of a stand can tell about a fan unit. */
public enum FanUnknown {
    /** k_T at the reference speed, in still air of 1.225 kg/m³, N·s²/rad². */
    THRUST("thrust coefficient", true, Channel.THRUST, new Dimension(1, 1, 0, 0, 0, -2)),
    /** k_Q at the reference speed, in still air of 1.225 kg/m³, N·m·s²/rad². */
    TORQUE("torque coefficient", true, Channel.CURRENT, new Dimension(2, 1, 0, 0, 0, -2)),
    /** K_v, rad/s/V. */
    SPEED_CONSTANT("speed constant", true, Channel.VOLTAGE, new Dimension(-2, -1, 2, 1, 0, 1)),
    /** Winding resistance, the controller's switches left out, Ω. */
    WINDING("winding resistance", true, Channel.VOLTAGE, new Dimension(2, 1, -3, -2, 0, 0)),
    /** I₀, A. */
    NO_LOAD("no-load current", true, Channel.CURRENT, new Dimension(0, 0, 0, 1, 0, 0)),
    /** k_sw of a controller at part duty, 1. */
    SWITCHING("switching loss", true, Channel.CURRENT, Dimension.NONE),
    /** a of T ∝ Ω² (Ω/Ω_ref)^a, 1. */
    THRUST_DRIFT("drift of thrust over speed", false, Channel.THRUST, Dimension.NONE),
    /** b of Q ∝ Ω² (Ω/Ω_ref)^b, 1. */
    TORQUE_DRIFT("drift of torque over speed", false, Channel.CURRENT, Dimension.NONE),
    /** c₁ of T ∝ 1 + c₁ J + c₂ J², J = 2π V_a/(Ω D) the advance ratio, 1. */
    THRUST_INFLOW("thrust by advance ratio", false, Channel.THRUST, Dimension.NONE),
    /** c₂, 1. */
    THRUST_INFLOW_SQUARE("thrust by advance ratio squared", false, Channel.THRUST, Dimension.NONE),
    /** d₁ of Q ∝ 1 + d₁ J + d₂ J², 1. */
    TORQUE_INFLOW("torque by advance ratio", false, Channel.CURRENT, Dimension.NONE),
    /** d₂, 1. */
    TORQUE_INFLOW_SQUARE("torque by advance ratio squared", false, Channel.CURRENT, Dimension.NONE);

    /** What a row measures; each channel scatters by its own share. */
    public enum Channel {
        THRUST,
        CURRENT,
        TORQUE,
        /** Driving voltage against speed: only where duty and speed are told. */
        VOLTAGE
    }

    private final String words;
    private final boolean positive;
    private final Channel channel;
    private final Dimension dimension;

    FanUnknown(String words, boolean positive, Channel channel, Dimension dimension) {
        this.words = words;
        this.positive = positive;
        this.channel = channel;
        this.dimension = dimension;
    }

    /** In words, for labels. */
    public String words() {
        return words;
    }

    /** Whether it is above 0, and fitted and drawn in logarithms. */
    public boolean positive() {
        return positive;
    }

    /** The channel that tells most about it. */
    Channel channel() {
        return channel;
    }

    public Range range() {
        return positive ? Range.POSITIVE : Range.ANY;
    }

    public Dimension dimension() {
        return dimension;
    }
}
