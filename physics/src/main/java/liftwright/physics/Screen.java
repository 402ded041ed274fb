package liftwright.physics;

/**
 * Pressure loss of grilles and screens before an intake, as ζ = Δp / (½ ρ V₁²) with V₁ on the whole
 * face and f = free area / face area.
 */
public final class Screen {

    private Screen() {}

    /**
     * Perforated plate with sharp thin edges, equal area up- and downstream: ζ = [0.707 (1 −
     * f)^0.375 + 1 − f]² / f² [IDELCHIK, diagram 4-14]. Holds for hole Re &gt; 1e5; hardware
     * scatters by ± 15 %.
     *
     * @param freeShare f, 0 &lt; f ≤ 1
     * @throws IllegalArgumentException for f outside that range
     */
    public static double perforatedPlateLoss(double freeShare) {
        double solid = 1 - checked(freeShare);
        double head = 0.707 * Math.pow(solid, 0.375) + solid;
        return head * head / (freeShare * freeShare);
    }

    /**
     * Wire screen: ζ = 1.3 (1 − f) + (1/f − 1)² [IDELCHIK, diagram 8-6, from memory]. Holds for
     * wire Re above about 1000.
     *
     * @param freeShare f, 0 &lt; f ≤ 1
     * @throws IllegalArgumentException for f outside that range
     */
    public static double wireScreenLoss(double freeShare) {
        double blocked = 1 / checked(freeShare) - 1;
        return 1.3 * (1 - freeShare) + blocked * blocked;
    }

    /**
     * The same loss referred to the dynamic pressure of the fans' exits: K = ζ (A_e / A_in)². A
     * loss on a larger face counts for less.
     *
     * @param loss ζ on the face
     * @param exitM2 summed exit area A_e of all fans that breathe through the face, m²
     * @param faceM2 area A_in of the face, m²
     */
    public static double referredToExit(double loss, double exitM2, double faceM2) {
        double ratio = exitM2 / faceM2;
        return loss * ratio * ratio;
    }

    private static double checked(double freeShare) {
        if (!(freeShare > 0 && freeShare <= 1)) {
            throw new IllegalArgumentException(
                    "a free-area share lies above 0 and up to 1, not " + freeShare);
        }
        return freeShare;
    }
}
