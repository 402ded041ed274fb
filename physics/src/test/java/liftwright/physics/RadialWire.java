package liftwright.physics;

/**
 * A metre of wire in time, for tests: a conductor, rings of insulation, and the laws of the
 * surface. Two-stage implicit steps (SDIRK2) that grow with time.
 */
final class RadialWire {

    private static final double GAMMA = 1 - Math.sqrt(0.5);

    private final double[] capacity;
    private final double[] outward;
    private final double outerM;
    private final double ohmpm;
    private final double airK;

    private double[] nodeK;
    private double surfaceK;

    /**
     * @param capacity of conductor and rings, J/(m·K)
     * @param outward conductance from each to the next, the last to the surface, W/(m·K)
     */
    RadialWire(double[] capacity, double[] outward, double outerM, double ohmpm, double airK) {
        this.capacity = capacity;
        this.outward = outward;
        this.outerM = outerM;
        this.ohmpm = ohmpm;
        this.airK = airK;
        this.nodeK = new double[capacity.length];
        java.util.Arrays.fill(nodeK, airK);
        this.surfaceK = airK;
    }

    static RadialWire of(WireHeat heat, double ohmpm, double airK) {
        int shells = heat.shells();
        double[] capacity = new double[shells + 1];
        double[] outward = new double[shells + 1];
        capacity[0] = heat.conductorJpmK();
        for (int shell = 0; shell < shells; shell++) {
            capacity[shell + 1] = heat.shellJpmK(shell);
            outward[shell] = heat.inwardWpmK(shell);
        }
        outward[shells] = heat.toSurfaceWpmK();
        return new RadialWire(capacity, outward, heat.outerM(), ohmpm, airK);
    }

    /** Rings a little thicker each than the one within, nodes at half their thickness. */
    static RadialWire fine(
            int rings,
            double copperM2,
            double conductorM,
            double wallM,
            double wallWpmK,
            double wallJpm3K,
            double ohmpm,
            double airK) {
        double growth = Math.pow(200, 1.0 / rings);
        double[] capacity = new double[rings + 1];
        double[] outward = new double[rings + 1];
        capacity[0] = 3.45e6 * copperM2;
        double thin = wallM * (growth - 1) / (Math.pow(growth, rings) - 1);
        double edge = conductorM / 2;
        double node = edge;
        for (int ring = 0; ring < rings; ring++) {
            double thick = thin * Math.pow(growth, ring);
            double middle = edge + thick / 2;
            outward[ring] = 2 * Math.PI * wallWpmK / Math.log(middle / node);
            capacity[ring + 1] = wallJpm3K * 2 * Math.PI * middle * thick;
            node = middle;
            edge += thick;
        }
        outward[rings] = 2 * Math.PI * wallWpmK / Math.log((conductorM / 2 + wallM) / node);
        return new RadialWire(capacity, outward, conductorM + 2 * wallM, ohmpm, airK);
    }

    double conductorK() {
        return nodeK[0];
    }

    /** Carries a current for a time, from steps of a millionth of it upwards. */
    void carry(double currentA, double forS) {
        double now = 0;
        double step = forS * 1e-6;
        while (now < forS) {
            double taken = Math.min(step, forS - now);
            step(currentA, taken);
            now += taken;
            step = Math.max(step, now * 0.03);
        }
    }

    /** Time until the conductor is at a limit, s. */
    double timeToS(double limitK, double currentA, double guessS) {
        double now = 0;
        double step = guessS * 1e-5;
        while (now < 1e6) {
            double before = nodeK[0];
            step(currentA, step);
            if (nodeK[0] >= limitK) {
                return now + step * (limitK - before) / (nodeK[0] - before);
            }
            now += step;
            step = Math.max(step, now * 0.01);
        }
        return Double.POSITIVE_INFINITY;
    }

    private void step(double currentA, double stepS) {
        double cold = currentA * currentA * ohmpm;
        double perK = cold * 0.00393;
        int last = nodeK.length - 1;
        double surface = 0;
        for (int pass = 0; pass < 3; pass++) {
            surface = SurfaceExchange.wireWpmK(outerM, surfaceK, airK, 101_325, 0, 0.9);
            surfaceK = (outward[last] * nodeK[last] + surface * airK) / (outward[last] + surface);
        }
        double toAir = 1 / (1 / outward[last] + 1 / surface);
        double[] first = slopes(nodeK, cold, perK, toAir, stepS);
        double[] between = nodeK.clone();
        for (int node = 0; node <= last; node++) {
            between[node] += (1 - GAMMA) * stepS * first[node];
        }
        double[] second = slopes(between, cold, perK, toAir, stepS);
        double[] next = nodeK.clone();
        for (int node = 0; node <= last; node++) {
            next[node] += stepS * ((1 - GAMMA) * first[node] + GAMMA * second[node]);
        }
        nodeK = next;
    }

    /** Slope k with k = f(from + γ h k), by elimination along the radius. */
    private double[] slopes(double[] from, double cold, double perK, double toAir, double stepS) {
        int count = from.length;
        double[] slope = new double[count];
        double[] diagonal = new double[count];
        double part = GAMMA * stepS;
        for (int node = 0; node < count; node++) {
            double out = node + 1 < count ? outward[node] : toAir;
            double far = node + 1 < count ? from[node + 1] : airK;
            double heat = -out * (from[node] - far);
            double loss = out;
            if (node > 0) {
                heat += outward[node - 1] * (from[node - 1] - from[node]);
                loss += outward[node - 1];
            } else {
                heat += cold + perK * (from[0] - 293.15);
                loss -= perK;
            }
            slope[node] = heat;
            diagonal[node] = capacity[node] + part * loss;
        }
        for (int node = 1; node < count; node++) {
            double couple = -part * outward[node - 1];
            double share = couple / diagonal[node - 1];
            diagonal[node] -= share * couple;
            slope[node] -= share * slope[node - 1];
        }
        slope[count - 1] /= diagonal[count - 1];
        for (int node = count - 2; node >= 0; node--) {
            slope[node] = (slope[node] + part * outward[node] * slope[node + 1]) / diagonal[node];
        }
        return slope;
    }
}
