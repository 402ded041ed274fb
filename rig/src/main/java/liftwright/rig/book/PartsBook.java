package liftwright.rig.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.FuseOpening;
import liftwright.rig.Insulation;
import liftwright.rig.RiskMatrix;

/** The generic parts: what stands in, with its doubt, until the builder measures their own. */
public final class PartsBook {

    private static final Map<String, OpenCircuitCurve> CURVES = curves();
    private static final Map<String, BookJoint> JOINTS = joints();

    /**
     * Voltage across a fuse at its rating when cold, V: 40 A × 1.4 mΩ, the cold resistance that a
     * data sheet prints for a large blade fuse of 40 A. Other ratings lie near it (from memory).
     */
    private static final double FUSE_COLD_V = 0.056;

    private static final double FUSE_DOUBT_SHARE = 0.5;

    private PartsBook() {}

    public static Optional<OpenCircuitCurve> openCircuit(String name) {
        return Optional.ofNullable(CURVES.get(name));
    }

    public static Set<String> openCircuitNames() {
        return CURVES.keySet();
    }

    public static Optional<BookJoint> joint(String name) {
        return Optional.ofNullable(JOINTS.get(name));
    }

    public static Set<String> jointNames() {
        return JOINTS.keySet();
    }

    /** Cold resistance of a fuse, Ω, from its rating in A, above 0. */
    public static double fuseResistanceOhm(double ratingA) {
        return FUSE_COLD_V / ratingA;
    }

    /** How far {@link #fuseResistanceOhm} may be off either way, share of it. */
    public static double fuseDoubtShare() {
        return FUSE_DOUBT_SHARE;
    }

    /** Where {@link #fuseResistanceOhm} comes from. */
    public static String fuseSource() {
        return "56 mV at rating, as a large blade fuse of 40 A and 1.4 mΩ; measure yours";
    }

    /** What a material of insulation bears and conducts. */
    public static BookInsulation insulation(Insulation material) {
        return BookInsulation.ALL.stream()
                .filter(book -> book.material() == material)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(material + " is not in the book"));
    }

    /**
     * The form of fuse that is usual for a rating in A: blades open fast, the larger forms slowly.
     */
    public static FuseOpening.Speed fuseSpeed(double ratingA) {
        return ratingA <= FuseSeries.BLADE.greatestA()
                ? FuseOpening.Speed.FAST
                : FuseOpening.Speed.SLOW;
    }

    /** Where the usual curve of a form of fuse comes from. */
    public static String fuseCurveSource(FuseOpening.Speed speed) {
        return switch (speed) {
            case VERY_FAST ->
                    "middle of the windows of IEC 60127-2, fast; from memory beyond 400 %";
            case FAST -> "middle of the windows of ISO 8820-3 for blades; in part from memory";
            case SLOW -> "middle of the windows of ISO 8820-3 for a large blade of 40 A";
        };
    }

    /**
     * Which risk a severity with a likelihood makes, until the builder declares their own matrix.
     * Copies of the table that it follows disagree ({@link RiskMatrix#USUAL}).
     */
    public static RiskMatrix riskMatrix() {
        return RiskMatrix.USUAL;
    }

    private static Map<String, OpenCircuitCurve> curves() {
        var curves = new LinkedHashMap<String, OpenCircuitCurve>();
        OpenCircuitCurves.ALL.forEach(curve -> curves.put(curve.name(), curve));
        return Collections.unmodifiableMap(curves);
    }

    private static Map<String, BookJoint> joints() {
        var joints = new LinkedHashMap<String, BookJoint>();
        BookJoint.ALL.forEach(joint -> joints.put(joint.name(), joint));
        return Collections.unmodifiableMap(joints);
    }
}
