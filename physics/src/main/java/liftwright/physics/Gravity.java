package liftwright.physics;

/** Standard gravity. */
public final class Gravity {

    /** Standard acceleration of free fall, m/s², exact by convention (3rd CGPM 1901) [SP811]. */
    public static final double STANDARD_MPS2 = 9.80665;

    private Gravity() {}
}
