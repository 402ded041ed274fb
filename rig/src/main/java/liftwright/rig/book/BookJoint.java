package liftwright.rig.book;

import java.util.List;

/**
 * A generic connector, lug or splice.
 *
 * @param name as written after {@code joint}
 * @param resistanceOhm out and back together, new and clean, Ω
 * @param doubtShare how far the resistance may be off either way, share of it
 * @param ratingA continuous current as usually advertised, A
 * @param massG of the metal of both poles together, g
 * @param source where the values come from
 */
public record BookJoint(
        String name,
        double resistanceOhm,
        double doubtShare,
        double ratingA,
        double massG,
        String source) {

    /** Specific heat of copper and its alloys, J/(kg K). */
    private static final double J_PER_KG_K = 385;

    /** How far {@link #poleJpK()} may be off either way, share of it. */
    public static final double MASS_DOUBT_SHARE = 0.5;

    private static final String MEMORY = "from memory, measure yours";

    /** In the order of the page. */
    static final List<BookJoint> ALL =
            List.of(
                    new BookJoint("bullet 3.5 mm", 0.60e-3, 0.5, 45, 6, MEMORY),
                    new BookJoint("bullet 4 mm", 0.50e-3, 0.5, 70, 8, MEMORY),
                    new BookJoint("bullet 5 mm", 0.40e-3, 0.5, 100, 12, MEMORY),
                    new BookJoint("bullet 6 mm", 0.30e-3, 0.5, 130, 18, MEMORY),
                    new BookJoint("bullet 8 mm", 0.20e-3, 0.5, 250, 40, MEMORY),
                    new BookJoint("lug M5", 0.16e-3, 0.5, 160, 16, MEMORY),
                    new BookJoint("lug M6", 0.10e-3, 0.5, 250, 30, MEMORY),
                    new BookJoint("lug M8", 0.08e-3, 0.5, 350, 50, MEMORY),
                    new BookJoint("blade 6.3 mm", 1.2e-3, 0.6, 20, 4, MEMORY),
                    new BookJoint("screw terminal", 0.40e-3, 0.6, 100, 30, MEMORY),
                    new BookJoint("crimp splice", 0.15e-3, 0.6, 150, 8, MEMORY),
                    new BookJoint("solder splice", 0.08e-3, 0.6, 150, 6, MEMORY));

    /** Heat capacity of one pole, J/K. */
    public double poleJpK() {
        return J_PER_KG_K * 1e-3 * massG / 2;
    }
}
