package liftwright.trials;

/** What is done on a card; in the order of a programme. */
public enum CardKind {
    /** Every part weighed. */
    MASS("mass", "weigh the parts", Rung.MEASURED),
    /** Centre of mass of the rig, and of the wearer in it. */
    CENTRE("centre", "find the centre of mass", Rung.MEASURED),
    /** Moments of inertia from a swing. */
    INERTIA("inertia", "swing for the inertia", Rung.MEASURED),
    /** Capacity, rest voltage and resistance of a pack's cells. */
    CELLS("cells", "measure the cells", Rung.MEASURED),
    /** Modes of the frame from a tap. */
    FRAME("frame", "tap the frame", Rung.MEASURED),
    /** End points of the throttle and what its loss does, no rotor turning under load. */
    THROTTLE("throttle", "teach the throttle and lose it", Rung.MEASURED),
    /** Each kill from press to thrust gone. */
    KILL("kill", "prove the kills", Rung.ONE_FAN),
    /** One bare fan turns for the first time. */
    FIRST_SPIN("first-spin", "first spin", Rung.ONE_FAN),
    /** One fan above its top speed behind a barrier. */
    PROOF_SPIN("proof-spin", "proof spin", Rung.ONE_FAN),
    /** Thrust, current and speed on a stand. */
    THRUST("thrust", "thrust on a stand", Rung.ONE_FAN),
    /** How fast thrust follows the throttle. */
    LAG("lag", "spool lag", Rung.ONE_FAN),
    /** The fans of one mount together. */
    POD("pod", "one pod", Rung.ONE_POD),
    /** All fans, on what holds them down; nobody in the rig. */
    ALL_FANS("all-fans", "all fans, held down", Rung.ALL_FANS),
    /** The rig unloads a scale. */
    SCALE("scale", "on the scale", Rung.SCALE),
    /** Hanging in the tether with thrust below weight. */
    HANGING("hanging", "hanging", Rung.HANGING),
    /** A hop on the tether, thrust above weight. */
    HOP("hop", "restrained hop", Rung.HOP),
    /** Free hover of a rig with its wearer in it. */
    FREE_HOVER("free-hover", "free hover", Rung.FREE),
    /** A module holds a point by itself, nobody near. */
    MODULE_HOLD("module-hold", "module holds a point, alone", Rung.FREE),
    /** A module crosses to a point by itself, nobody there. */
    MODULE_CROSS("module-cross", "module crosses, alone", Rung.FREE),
    /** A module comes to its wearer. */
    TO_WEARER("to-wearer", "module comes to the wearer", Rung.FREE);

    private final String id;
    private final String title;
    private final Rung rung;

    CardKind(String id, String title, Rung rung) {
        this.id = id;
        this.title = title;
        this.rung = rung;
    }

    /** As it is named in ids and files. */
    public String id() {
        return id;
    }

    /** For a reader, lower case. */
    public String title() {
        return title;
    }

    public Rung rung() {
        return rung;
    }
}
