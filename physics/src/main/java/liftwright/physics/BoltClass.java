package liftwright.physics;

/** Property classes of steel bolts up to M16: proof and tensile stress [ISO898]. */
public enum BoltClass {
    /** 4.6; from memory. */
    SOFT("4.6", 225, 400),
    /** 5.8; from memory. */
    PLAIN("5.8", 380, 520),
    /** 8.8. */
    STRONG("8.8", 580, 800),
    /** 10.9; tensile from memory. */
    HARD("10.9", 830, 1040),
    /** 12.9; from memory. */
    HARDEST("12.9", 970, 1220);

    private final String mark;
    private final double proofPa;
    private final double tensilePa;

    BoltClass(String mark, double proofMpa, double tensileMpa) {
        this.mark = mark;
        this.proofPa = proofMpa * 1e6;
        this.tensilePa = tensileMpa * 1e6;
    }

    /** What is stamped on the head. */
    public String mark() {
        return mark;
    }

    /** Stress that leaves no stretch, Pa. */
    public double proofPa() {
        return proofPa;
    }

    /** Stress at which it tears, Pa. */
    public double tensilePa() {
        return tensilePa;
    }
}
