package liftwright.learning.explain;

/** Kinds of causes that what was measured is held against. */
public enum CauseKind {
    WEAK_FAN("a fan weaker than its share", CauseGroup.FANS),
    WEAK_TYPE("all fans of a type weaker than declared", CauseGroup.FANS),
    HUNGRY_FAN("a rotor that takes more torque than its share", CauseGroup.FANS),
    STOPPED_FAN("a fan that stands still", CauseGroup.FANS),
    REVERSED_FAN("a fan that turns the wrong way round", CauseGroup.FANS),
    LEANING_FAN("a fan that leans", CauseGroup.FANS),
    MOTOR("weaker magnets in a motor", CauseGroup.FANS),
    LIMITED_FAN("a controller that limits its fan", CauseGroup.CONTROL),
    THROTTLE("throttle that does not reach full", CauseGroup.CONTROL),
    BLOCKED_INTAKE("a blocked intake", CauseGroup.INTAKE),
    INSTALLATION("losses by installation and return of jets", CauseGroup.INTAKE),
    JOINT("resistance of a joint risen", CauseGroup.WIRING),
    WIRING("resistance of all joints and wires of a kind risen", CauseGroup.WIRING),
    CELL_RESISTANCE("resistance of the cells of a pack risen", CauseGroup.PACKS),
    CAPACITY("capacity of a pack lost", CauseGroup.PACKS),
    CHARGE("a pack less full than taken for", CauseGroup.PACKS),
    AIR("thinner air than taken for", CauseGroup.AIR),
    SCALE("a scale or load cell that reads wrongly", CauseGroup.WEIGHED),
    HEAVIER("a rig heavier than declared", CauseGroup.WEIGHED),
    /** No cause: what was declared is doubt enough. */
    AS_DECLARED("nothing beyond what was declared", CauseGroup.NOT_EXPLAINED),
    /** A free pattern in the readings. */
    NONE_OF_THESE("none of these", CauseGroup.NOT_EXPLAINED);

    private final String words;
    private final CauseGroup group;

    CauseKind(String words, CauseGroup group) {
        this.words = words;
        this.group = group;
    }

    /** As it is told. */
    public String words() {
        return words;
    }

    /** Where its newtons belong. */
    public CauseGroup group() {
        return group;
    }

    /** Whether it names a thing on the rig, in the air or on the scale. */
    public boolean isNamed() {
        return this != AS_DECLARED && this != NONE_OF_THESE;
    }
}
