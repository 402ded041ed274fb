package liftwright.physics;

/**
 * One metre of insulated wire as bodies of heat from the middle outwards: the conductor at one
 * temperature, then shells of insulation. The conductor has no shell's heat in it, so that a fast
 * overload meets the adiabatic law; one lump of copper and insulation would be late there.
 *
 * <p>A shell stands for the ring between two radii: its capacity is that of the ring, its node sits
 * within, and neighbours exchange heat through 2πk/ln(r₂/r₁) between their nodes (exact for steady
 * heat). Holds for round walls that touch the conductor; a strand bundle counts as a round bar of
 * its outer diameter.
 */
public final class WireHeat {

    /**
     * Share of the circle around a strand bundle that is copper: 19 equal strands, 1 + 6 + 12, lie
     * in a circle of five strand diameters, 19/25 (geometry). Rope-laid fine strands are looser,
     * 0.65–0.75 (common practice).
     */
    public static final double STRAND_FILL = 19.0 / 25;

    /** Each shell is so much thicker than the one within it. */
    private static final double GROWTH = 2;

    private final double conductorM;
    private final double outerM;
    private final double conductorJpmK;
    private final double wallWpmK;
    private final double[] shellJpmK;
    private final double[] inwardWpmK;
    private final double toSurfaceWpmK;

    private WireHeat(
            double conductorM,
            double outerM,
            double conductorJpmK,
            double wallWpmK,
            double[] shellJpmK,
            double[] inwardWpmK,
            double toSurfaceWpmK) {
        this.conductorM = conductorM;
        this.outerM = outerM;
        this.conductorJpmK = conductorJpmK;
        this.wallWpmK = wallWpmK;
        this.shellJpmK = shellJpmK;
        this.inwardWpmK = inwardWpmK;
        this.toSurfaceWpmK = toSurfaceWpmK;
    }

    /**
     * A stranded copper wire with a wall of insulation.
     *
     * @param copperM2 section of copper, m²
     * @param wallM thickness of the insulation, m
     * @param wallWpmK conductivity k of the insulation, W/(m·K)
     * @param wallJpm3K heat capacity of the insulation per volume, J/(m³·K)
     * @param shells n ≥ 1
     * @throws IllegalArgumentException for a value that is not above 0
     */
    public static WireHeat of(
            double copperM2, double wallM, double wallWpmK, double wallJpm3K, int shells) {
        return round(copperM2, strandDiameterM(copperM2), wallM, wallWpmK, wallJpm3K, shells);
    }

    /**
     * The same with a given diameter over the conductor.
     *
     * @param conductorM diameter over the conductor, m; its circle holds the copper
     */
    public static WireHeat round(
            double copperM2,
            double conductorM,
            double wallM,
            double wallWpmK,
            double wallJpm3K,
            int shells) {
        if (!(copperM2 > 0)
                || !(wallM > 0)
                || !(wallWpmK > 0)
                || !(wallJpm3K > 0)
                || shells < 1
                || !(Math.PI / 4 * conductorM * conductorM >= copperM2 * (1 - 1e-9))) {
            throw new IllegalArgumentException(
                    "a wire has copper within its conductor's diameter, a wall and a shell");
        }
        double inner = conductorM / 2;
        double[] edges = edgesM(inner, inner + wallM, shells);
        double[] capacity = new double[shells];
        double[] inward = new double[shells];
        double from = inner;
        for (int shell = 0; shell < shells; shell++) {
            double near = edges[shell];
            double far = edges[shell + 1];
            double node = Math.sqrt(near * far);
            capacity[shell] = wallJpm3K * Math.PI * (far * far - near * near);
            inward[shell] = 2 * Math.PI * wallWpmK / Math.log(node / from);
            from = node;
        }
        double outer = inner + wallM;
        return new WireHeat(
                conductorM,
                2 * outer,
                Conductor.COPPER_JPM3K * copperM2,
                2 * Math.PI * wallWpmK / Math.log(outer / inner),
                capacity,
                inward,
                2 * Math.PI * wallWpmK / Math.log(outer / from));
    }

    private static double[] edgesM(double inner, double outer, int shells) {
        double[] edges = new double[shells + 1];
        double whole = Math.pow(GROWTH, shells) - 1;
        for (int edge = 0; edge < shells; edge++) {
            double share = (Math.pow(GROWTH, edge) - 1) / whole;
            edges[edge] = inner + share * (outer - inner);
        }
        edges[shells] = outer;
        return edges;
    }

    /**
     * Diameter over a strand bundle, √(4 S/(π · {@link #STRAND_FILL})), m.
     *
     * @param copperM2 S, section of copper, m²
     */
    public static double strandDiameterM(double copperM2) {
        return Math.sqrt(4 * copperM2 / (Math.PI * STRAND_FILL));
    }

    /** Diameter over the conductor, m. */
    public double conductorM() {
        return conductorM;
    }

    /** Outer diameter, m. */
    public double outerM() {
        return outerM;
    }

    /** Heat capacity of the conductor, J/(m·K). */
    public double conductorJpmK() {
        return conductorJpmK;
    }

    /** Conductance of the whole wall, from conductor to surface, W/(m·K). */
    public double wallWpmK() {
        return wallWpmK;
    }

    /** Number of shells. */
    public int shells() {
        return shellJpmK.length;
    }

    /** Heat capacity of a shell, counted from the conductor outwards from 0, J/(m·K). */
    public double shellJpmK(int shell) {
        return shellJpmK[shell];
    }

    /** Conductance from a shell to its inner neighbour, from shell 0 to the conductor, W/(m·K). */
    public double inwardWpmK(int shell) {
        return inwardWpmK[shell];
    }

    /** Conductance from the last shell to the surface, W/(m·K). */
    public double toSurfaceWpmK() {
        return toSurfaceWpmK;
    }
}
