package liftwright.plant.body;

import java.util.EnumMap;
import java.util.Map;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Exertion;
import liftwright.rig.RigPath;
import liftwright.rig.Wearer;

/**
 * Moments that a wearer's arms can hold briefly: measured ones, else means of published people.
 *
 * <p>A table of its own: what an arm can hold decides no verdict, and is drawn beside the rig's
 * numbers.
 */
public final class ArmStrength {

    /**
     * Half-width between bounds, over the mean: a standard deviation of 26 %; people vary by 20 %
     * to 30 % (Benfica et al., Braz. J. Phys. Ther. 22, 2018, 355–369, abstract).
     */
    private static final double BETWEEN_PEOPLE = 0.45;

    /** For men, elbow flexion and extension over body mass, N·m/kg; see {@link #source}. */
    private static final double ELBOW_FLEXION_NMPKG = 0.78;

    private static final double ELBOW_EXTENSION_NMPKG = 0.67;

    /** Strength of women over that of men per kilogram, elbow; from memory. */
    private static final double ELBOW_OF_WOMEN = 0.6;

    private final ParameterTable table;
    private final Map<Exertion, Integer> rows = new EnumMap<>(Exertion.class);
    private final Map<Exertion, String> sources = new EnumMap<>(Exertion.class);

    private ArmStrength(Wearer wearer) {
        ParameterRows declared = new ParameterRows();
        for (Exertion exertion : Exertion.values()) {
            var measured = wearer.strength().of(exertion);
            Quantity value = measured.orElseGet(() -> published(exertion, wearer));
            rows.put(
                    exertion,
                    declared.row(
                            RigPath.of("wearer", "strength", exertion.key()),
                            exertion.key(),
                            value,
                            Range.POSITIVE));
            sources.put(
                    exertion,
                    measured.isPresent() ? "measured, in the rig file" : source(exertion));
        }
        table = declared.table();
    }

    /** The strength of one wearer. */
    public static ArmStrength of(Wearer wearer) {
        return new ArmStrength(wearer);
    }

    /** All numbers with their doubt. */
    public ParameterTable table() {
        return table;
    }

    /** What can be held, N·m, at a vector of {@link #table}. */
    public double nm(double[] p, Exertion exertion) {
        return p[row(exertion)];
    }

    private int row(Exertion exertion) {
        Integer row = rows.get(exertion);
        if (row == null) {
            throw new IllegalStateException("no strength of " + exertion.key());
        }
        return row;
    }

    /** Where the number comes from, in words. */
    public String origin(Exertion exertion) {
        return sources.getOrDefault(exertion, "");
    }

    private static Quantity published(Exertion exertion, Wearer wearer) {
        double nm =
                switch (wearer.body()) {
                    case MALE -> menNm(exertion, wearer.mass().si());
                    case FEMALE -> womenNm(exertion, wearer.mass().si());
                };
        double half = BETWEEN_PEOPLE * nm;
        return new Quantity(
                nm,
                new Dimension(2, 1, -2, 0, 0, 0),
                new Tolerance(half, half, Tolerance.Form.BOUND, Tolerance.Scope.SHARED));
    }

    private static double menNm(Exertion exertion, double massKg) {
        return switch (exertion) {
            case SHOULDER_FLEXION -> 68.6;
            case SHOULDER_EXTENSION -> 68.6 * 5 / 4;
            case SHOULDER_ADDUCTION -> 48.0;
            case SHOULDER_ABDUCTION -> 48.0 / 2;
            case SHOULDER_INWARD -> 20;
            case SHOULDER_OUTWARD -> 20 * 2 / 3.0;
            case ELBOW_FLEXION -> ELBOW_FLEXION_NMPKG * massKg;
            case ELBOW_EXTENSION -> ELBOW_EXTENSION_NMPKG * massKg;
        };
    }

    private static double womenNm(Exertion exertion, double massKg) {
        return switch (exertion) {
            case SHOULDER_FLEXION -> 68.6 / 2;
            case SHOULDER_EXTENSION -> 68.6 / 2 * 5 / 4;
            case SHOULDER_ADDUCTION -> 28.8;
            case SHOULDER_ABDUCTION -> 28.8 / 2;
            case SHOULDER_INWARD -> 12;
            case SHOULDER_OUTWARD -> 12 * 2 / 3.0;
            case ELBOW_FLEXION -> ELBOW_OF_WOMEN * ELBOW_FLEXION_NMPKG * massKg;
            case ELBOW_EXTENSION -> ELBOW_OF_WOMEN * ELBOW_EXTENSION_NMPKG * massKg;
        };
    }

    /** Abstracts were read, not papers. */
    private static String source(Exertion exertion) {
        String ratios = "Arch. Phys. Med. Rehabil. 66, 1985, 384–386";
        return switch (exertion) {
            case SHOULDER_FLEXION ->
                    "26 men, static, 45°, women half: occupational study, abstract";
            case SHOULDER_EXTENSION -> "5/4 of flexion: " + ratios + ", abstract";
            case SHOULDER_ADDUCTION ->
                    "40 fit adults, moving: Clin. Biomech. 1989, 10.1016/0268-0033(89)90046-6, abstract";
            case SHOULDER_ABDUCTION -> "half of adduction: " + ratios + ", abstract";
            case SHOULDER_INWARD -> "memory only, below abduction as in " + ratios + ", abstract";
            case SHOULDER_OUTWARD -> "2/3 of inward: " + ratios + ", abstract";
            case ELBOW_FLEXION, ELBOW_EXTENSION ->
                    "199 young men, moving, per body mass: Lategan and Krüger 2003, abstract; women 0.6 of it, from memory";
        };
    }
}
