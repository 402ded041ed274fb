package liftwright.rig.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The generic parts: what stands in, with its doubt, until the builder measures their own. */
public final class PartsBook {

    private static final String MEMORY = "from memory, measure yours";

    private static final Map<String, OpenCircuitCurve> CURVES = curves();
    private static final Map<String, BookJoint> JOINTS = joints();

    /**
     * Voltage across a fuse at its rating when cold, V: 40 A × 1.4 mΩ of a common blade fuse.
     * Larger links lie near it.
     */
    static final double FUSE_COLD_V = 0.056;

    /** How far a fuse's resistance may be off either way, share of it. */
    static final double FUSE_DOUBT_SHARE = 0.5;

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

    public static double fuseDoubtShare() {
        return FUSE_DOUBT_SHARE;
    }

    /** Where {@link #fuseResistanceOhm} comes from. */
    public static String fuseSource() {
        return "56 mV at rating, as a 40 A blade fuse of 1.4 mΩ; measure yours";
    }

    private static Map<String, OpenCircuitCurve> curves() {
        var curves = new LinkedHashMap<String, OpenCircuitCurve>();
        curves.put(
                "LiPo",
                OpenCircuitCurve.of(
                        "LiPo",
                        List.of(0.0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0),
                        List.of(
                                3.27, 3.61, 3.69, 3.73, 3.77, 3.80, 3.84, 3.87, 3.95, 4.02, 4.11,
                                4.20),
                        0.03,
                        MEMORY));
        return Collections.unmodifiableMap(curves);
    }

    private static Map<String, BookJoint> joints() {
        var joints = new LinkedHashMap<String, BookJoint>();
        for (BookJoint joint :
                List.of(
                        new BookJoint("bullet 4 mm", 0.50e-3, 0.5, 70, MEMORY),
                        new BookJoint("bullet 6 mm", 0.30e-3, 0.5, 130, MEMORY),
                        new BookJoint("bullet 8 mm", 0.20e-3, 0.5, 250, MEMORY),
                        new BookJoint("lug M6", 0.10e-3, 0.5, 250, MEMORY),
                        new BookJoint("lug M8", 0.08e-3, 0.5, 350, MEMORY))) {
            joints.put(joint.name(), joint);
        }
        return Collections.unmodifiableMap(joints);
    }
}
