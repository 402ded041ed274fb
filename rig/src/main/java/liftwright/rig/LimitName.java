package liftwright.rig;

import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;

/**
 * A limit that the builder may set under {@code limits}; otherwise the default holds and is printed
 * with its origin.
 */
public enum LimitName {
    ROTOR_SPEED_SHARE("rotor speed share", 0.95, Dimension.NONE, "common practice"),
    TIP_MACH("tip mach", 0.60, Dimension.NONE, "common practice"),
    ELECTRICAL_SPEED_SHARE("electrical speed share", 0.80, Dimension.NONE, "common practice"),
    CONTROLLER_VOLTAGE_SHARE("controller voltage share", 0.85, Dimension.NONE, "common practice"),
    CAPACITOR_VOLTAGE_SHARE("capacitor voltage share", 0.85, Dimension.NONE, "common practice"),
    CONTROLLER_CURRENT_SHARE("controller current share", 0.75, Dimension.NONE, "common practice"),
    JOINT_CURRENT_SHARE("joint current share", 0.70, Dimension.NONE, "common practice"),
    FUSE_OVER_CURRENT("fuse over current", 1.25, Dimension.NONE, "common practice"),
    FUSE_BREAKING_SHARE("fuse breaking share", 1.2, Dimension.NONE, "common practice"),
    RIPPLE_SHARE("ripple share", 0.05, Dimension.NONE, "common practice"),
    ARM_LOAD_SHARE(
            "arm load share",
            0.30,
            Dimension.NONE,
            "ergonomics practice for over 20 s, from memory"),
    ROLL_RESERVE("roll reserve", 2, new Dimension(0, 0, -2, 0, 0, 1), "from memory"),
    PITCH_RESERVE("pitch reserve", 2, new Dimension(0, 0, -2, 0, 0, 1), "from memory"),
    YAW_RESERVE("yaw reserve", 0.3, new Dimension(0, 0, -2, 0, 0, 1), "from memory"),
    DRIFT("drift", 0.1, new Dimension(0, 0, -2, 0, 0, 1), "from memory"),
    ARM_REACH("arm reach", Math.toRadians(20), new Dimension(0, 0, 0, 0, 0, 1), "from memory"),
    ARM_REACH_LEFT("arm reach left", 0.5, Dimension.NONE, "from memory"),
    KILL_TIME("kill time", 0.5, new Dimension(0, 0, 1, 0, 0, 0), "common practice"),
    CELL_UNDER_LOAD(
            "cell under load",
            3.3,
            new Dimension(2, 1, -3, -1, 0, 0),
            "common practice: LiPo abort value"),
    CELL_AT_START(
            "cell at start",
            288.15,
            new Dimension(0, 0, 0, 0, 1, 0),
            "common practice; makers' sheets differ"),
    CELL_TEMPERATURE(
            "cell temperature",
            333.15,
            new Dimension(0, 0, 0, 0, 1, 0),
            "common practice; makers' sheets differ"),
    JOINT_TEMPERATURE(
            "joint temperature",
            363.15,
            new Dimension(0, 0, 0, 0, 1, 0),
            "EIA-364-70 practice: 30 K of rise at its rating, and as much again"),
    TOUCH_TEMPERATURE(
            "touch temperature",
            333.15,
            new Dimension(0, 0, 0, 0, 1, 0),
            "from memory, ISO 13732-1"),
    CONTROLLER_TEMPERATURE(
            "controller junction", 373.15, new Dimension(0, 0, 0, 0, 1, 0), "common practice"),
    WINDING_TEMPERATURE(
            "motor winding",
            393.15,
            new Dimension(0, 0, 0, 0, 1, 0),
            "common practice, where no class is declared"),
    MAGNET_TEMPERATURE(
            "magnets",
            353.15,
            new Dimension(0, 0, 0, 0, 1, 0),
            "common practice, where no grade is declared"),
    WIRE_BELOW_CLASS(
            "wire below class",
            20,
            new Dimension(0, 0, 0, 0, 1, 0),
            "common practice: lists of classes differ by as much"),
    HAZARDOUS_VOLTAGE(
            "hazardous voltage", 60, new Dimension(2, 1, -3, -1, 0, 0), "UN R100; IEC 62368-1"),
    LIFT_AFTER_LOSS("thrust to weight with one fan lost", 1.05, Dimension.NONE, "common practice"),
    IMPACT_SPEED(
            "impact speed",
            3.2,
            new Dimension(1, 0, -1, 0, 0, 0),
            "common practice: a fall from half a metre"),
    WATCHER_REACTION(
            "watcher reaction",
            1.5,
            new Dimension(0, 0, 1, 0, 0, 0),
            "common practice; Green, Transportation Human Factors 2 (2000): surprised"),
    WEARER_REACTION(
            "wearer reaction",
            2,
            new Dimension(0, 0, 1, 0, 0, 0),
            "common practice; Green, Transportation Human Factors 2 (2000): surprised, and busy"),
    ANCHOR("anchor strength", 22240, new Dimension(1, 1, -2, 0, 0, 0), "29 CFR 1926.502(d)(15)"),
    ARREST_FORCE(
            "arrest force",
            8000,
            new Dimension(1, 1, -2, 0, 0, 0),
            "29 CFR 1926.502(d)(16); EN 355 asks for 6 kN"),
    FREE_FALL("free fall", 1.83, new Dimension(1, 0, 0, 0, 0, 0), "29 CFR 1926.502(d)(16): 6 ft"),
    RESTRAINT_FACTOR("restraint factor", 2, Dimension.NONE, "common practice"),
    DWELL_SHARE("dwell share", 0.6, Dimension.NONE, "common practice"),
    NOISE("noise", 85, Dimensions.SOUND_LEVEL, "NIOSH 98-126, over 8 hours"),
    FRAGMENT_ENERGY(
            "fragment energy", 79, new Dimension(2, 1, -2, 0, 0, 0), "DDESB TP 12: 58 ft·lbf"),
    KEEP_OUT("bystanders", 20, new Dimension(1, 0, 0, 0, 0, 0), "common practice");

    private final String key;
    private final double defaultSi;
    private final Dimension dimension;
    private final String origin;

    LimitName(String key, double defaultSi, Dimension dimension, String origin) {
        this.key = key;
        this.defaultSi = defaultSi;
        this.dimension = dimension;
        this.origin = origin;
    }

    /** The word in the file. */
    public String key() {
        return key;
    }

    public double defaultSi() {
        return defaultSi;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Where the default comes from. */
    public String origin() {
        return origin;
    }
}
