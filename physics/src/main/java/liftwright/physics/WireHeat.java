package liftwright.physics;

/**
 * One metre of insulated wire as bodies of heat from the middle outwards: the conductor at one
 * temperature, then shells of insulation. The conductor has no shell's heat in it, so that a fast
 * overload meets the adiabatic law; one lump of copper and insulation would be late there.
 *
 * <p>A shell stands for the ring between two radii: its capacity is that of the ring, its node lies
 * within, and neighbours exchange heat through 2πk/ln(r₂/r₁) between their nodes (exact for steady
 * heat, so the steady temperature does not depend on their number). Of n shells the edges lie at
 * ((0…n)/n)^2.4 of the wall and the nodes at ((½ + 0.15/n …)/n)^2.4: thin shells where a fast
 * overload soaks in, thick ones where only slow heat comes. Of the placements tried (equal and
 * geometric spacing in radius, its logarithm and area; powers; nodes in the middle of each and
 * before or behind it) this one serves fast and slow overloads about best at n = 3; six numbers
 * free for edges and nodes gain another 1 %. Against 100 fine rings the time to a limit differs by
 * at most 1.9 % where the wall is up to the conductor's radius, 2.7 % up to twice and 5 % up to
 * five times that, either way; 2.4 % in 99 of 100 (4,000 random wires of 26 to 4/0 AWG, 0.2 ms to
 * an hour, from cold and from a load before). Three equal shells are up to 29 % early; one lump of
 * copper and insulation is 16 % late in the middle of them and several times too late where fast.
 *
 * <p>Holds for round walls that touch the conductor; a strand bundle counts as a round bar of its
 * outer diameter.
 */
public final class WireHeat {

    /**
     * Share of the circle around a strand bundle that is copper: 19 equal strands, 1 + 6 + 12, lie
     * in a circle of five strand diameters, 19/25 (geometry). Rope-laid fine strands are looser,
     * 0.65–0.75 (common practice).
     */
    public static final double STRAND_FILL = 19.0 / 25;

    /** Power of the placement: 1 would be equal shells. */
    private static final double POWER = 2.4;

    /** How far nodes lie outward of the middle, in shells, times the number of shells. */
    private static final double LEAD = 0.15;

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
        if (!isPositive(copperM2)
                || !isPositive(conductorM)
                || !isPositive(wallM)
                || !isPositive(wallWpmK)
                || !isPositive(wallJpm3K)
                || shells < 1
                || !(Math.PI / 4 * conductorM * conductorM >= copperM2 * (1 - 1e-9))) {
            throw new IllegalArgumentException(
                    "a wire has copper within its conductor's diameter, a wall and a shell");
        }
        double inner = conductorM / 2;
        double outer = inner + wallM;
        double[] capacity = new double[shells];
        double[] inward = new double[shells];
        double near = inner;
        double from = inner;
        for (int shell = 0; shell < shells; shell++) {
            double far = inner + wallM * Math.pow((shell + 1.0) / shells, POWER);
            double share = (shell + 0.5 + LEAD / shells) / shells;
            double node = inner + wallM * Math.pow(share, POWER);
            capacity[shell] = wallJpm3K * Math.PI * (far * far - near * near);
            inward[shell] = 2 * Math.PI * wallWpmK / Math.log(node / from);
            near = far;
            from = node;
        }
        return new WireHeat(
                conductorM,
                2 * outer,
                Conductor.COPPER_JPM3K * copperM2,
                2 * Math.PI * wallWpmK / Math.log(outer / inner),
                capacity,
                inward,
                2 * Math.PI * wallWpmK / Math.log(outer / from));
    }

    private static boolean isPositive(double value) {
        return value > 0 && value < Double.POSITIVE_INFINITY;
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
