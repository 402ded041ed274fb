package liftwright.learning.explain;

/** Groups of causes among which missing lift is shared out: no more than eight. */
public enum CauseGroup {
    AIR("air"),
    PACKS("packs"),
    WIRING("wiring and joints"),
    FANS("fans' own constants"),
    INTAKE("intake and installation"),
    CONTROL("controllers, throttle and motor heat"),
    WEIGHED("what is weighed"),
    NOT_EXPLAINED("not explained");

    private final String words;

    CauseGroup(String words) {
        this.words = words;
    }

    /** As it is told. */
    public String words() {
        return words;
    }
}
