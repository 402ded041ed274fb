package liftwright.plant.heat;

import java.util.Arrays;

/**
 * What is watched of the heat of a run: how warm each part is, when it was hottest, when it first
 * reached its limit, what it loses and lost. Between the ends of a step temperatures run as the
 * cubic with their values and slopes there, so that a crest within a step is not missed. For one
 * thread.
 */
public final class HeatWatch {

    /** A moment within a step is found to this share of the step. */
    private static final double SHARE = 1e-7;

    private final HeatParts parts;
    private final HeatNumbers n;
    private final double[] hottestK;
    private final double[] hottestAtS;
    private final double[] lossW;
    private final double[] energyJ;
    private double givenW;
    private double shaftW;
    private double givenJ;
    private double shaftJ;

    public HeatWatch(HeatBank bank, HeatNumbers n) {
        this.n = n;
        parts = bank.index();
        int count = parts.list.size();
        hottestK = new double[count];
        hottestAtS = new double[count];
        lossW = new double[count];
        energyJ = new double[count];
    }

    /** A run starts at a state; what it loses there is not known yet. */
    public void start(HeatState at, double timeS) {
        for (int part = 0; part < hottestK.length; part++) {
            hottestK[part] = nowK(at, part);
        }
        Arrays.fill(hottestAtS, timeS);
        Arrays.fill(energyJ, 0);
        Arrays.fill(lossW, 0);
        givenW = 0;
        shaftW = 0;
        givenJ = 0;
        shaftJ = 0;
    }

    /** Something else flows from now on. */
    public void settle(HeatState at, HeatLoad load) {
        for (int part = 0; part < lossW.length; part++) {
            lossW[part] = lossW(at, load, part);
        }
        givenW = load.givenW;
        shaftW = load.shaftW;
    }

    /**
     * A step, or what is left of one that was cut, is over.
     *
     * @param from settled at its start
     * @param to settled at its end
     * @param load what flows there
     * @param reachedS first time of each part at its limit; infinite ones are found
     */
    public void step(
            HeatState from,
            HeatState to,
            double fromS,
            double toS,
            HeatLoad load,
            double[] reachedS) {
        double h = toS - fromS;
        if (!(h > 0)) {
            return;
        }
        for (int part = 0; part < hottestK.length; part++) {
            double limitK = parts.list.get(part).limitK();
            double atEnd = nowK(to, part);
            double top = crest(from, to, h, part);
            double most = atEnd;
            double mostAt = 1;
            if (top > 0) {
                double crestK = within(from, to, h, part, top);
                if (crestK > atEnd) {
                    most = crestK;
                    mostAt = top;
                }
            }
            if (most > hottestK[part]) {
                hottestK[part] = most;
                hottestAtS[part] = fromS + mostAt * h;
            }
            if (reachedS[part] == Double.POSITIVE_INFINITY && most >= limitK) {
                reachedS[part] = fromS + h * crossing(from, to, h, part, limitK, mostAt);
            }
            double lost = lossW(to, load, part);
            energyJ[part] += h / 2 * (lossW[part] + lost);
            lossW[part] = lost;
        }
        givenJ += h / 2 * (givenW + load.givenW);
        shaftJ += h / 2 * (shaftW + load.shaftW);
        givenW = load.givenW;
        shaftW = load.shaftW;
    }

    /** Share of the step at which the part is hottest within it; 0 where that is at an end. */
    private double crest(HeatState from, HeatState to, double h, int part) {
        double best = 0;
        double bestK = Double.NEGATIVE_INFINITY;
        for (int place : parts.places[part]) {
            // Signs alone tell of nearly all that there is none.
            if (from.keptW[place] > 0 && to.keptW[place] < 0) {
                double c = n.capacityJpK[place];
                double rise = h * from.keptW[place] / c;
                double fall = h * to.keptW[place] / c;
                double share = top(to.kelvin[place] - from.kelvin[place], rise, fall);
                double kelvin = cubic(from, to, h, place, share);
                if (kelvin > bestK) {
                    bestK = kelvin;
                    best = share;
                }
            }
        }
        return best;
    }

    /** Where the slope of the cubic is 0: it falls from {@code rise} to {@code fall}. */
    private static double top(double change, double rise, double fall) {
        double a = 3 * (rise + fall - 2 * change);
        double b = 2 * (3 * change - 2 * rise - fall);
        double root = Math.sqrt(Math.max(0, b * b - 4 * a * rise));
        // The root at which the slope falls, in its form without cancellation.
        double share = b <= 0 ? 2 * rise / (root - b) : (b + root) / (-2 * a);
        return share > 0 && share < 1 ? share : 0;
    }

    private double cubic(HeatState from, HeatState to, double h, int place, double s) {
        double c = n.capacityJpK[place];
        double near = from.kelvin[place];
        double far = to.kelvin[place];
        double rise = h * from.keptW[place] / c;
        double fall = h * to.keptW[place] / c;
        double left = 1 - s;
        return near + (far - near) * s * s * (3 - 2 * s) + s * left * (rise * left - fall * s);
    }

    private double within(HeatState from, HeatState to, double h, int part, double s) {
        double most = Double.NEGATIVE_INFINITY;
        for (int place : parts.places[part]) {
            most = Math.max(most, cubic(from, to, h, place, s));
        }
        return most;
    }

    private double crossing(
            HeatState from, HeatState to, double h, int part, double limitK, double upTo) {
        double low = 0;
        double high = upTo;
        while (high - low > SHARE) {
            double middle = (low + high) / 2;
            if (within(from, to, h, part, middle) < limitK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Temperature of a part, K: its hottest place. */
    public double nowK(HeatState at, int part) {
        double most = Double.NEGATIVE_INFINITY;
        for (int place : parts.places[part]) {
            most = Math.max(most, at.kelvin[place]);
        }
        return most;
    }

    private double lossW(HeatState at, HeatLoad load, int part) {
        int[] nodes = parts.nodes[part];
        if (nodes.length > 0) {
            double current = load.chainA[n.lines.chainOf[nodes[0]]];
            double ohm = 0;
            for (int node : nodes) {
                ohm += n.ways[node] * n.nodeOhm(at, node);
            }
            return current * current * ohm;
        }
        int body = parts.body[part];
        if (body < 0) {
            return load.packW[parts.list.get(part).owner()];
        }
        return parts.inner[part] ? load.innerW[body] : load.outerW[body];
    }

    public double hottestK(int part) {
        return hottestK[part];
    }

    public double hottestAtS(int part) {
        return hottestAtS[part];
    }

    /** Heat made in a part now, of wires and joints out and back, W. */
    public double lossW(int part) {
        return lossW[part];
    }

    /** Heat made in a part since the start, J. */
    public double energyJ(int part) {
        return energyJ[part];
    }

    /** What the cells give up now, their own heat included, W. */
    public double givenW() {
        return givenW;
    }

    public double shaftW() {
        return shaftW;
    }

    public double givenJ() {
        return givenJ;
    }

    public double shaftJ() {
        return shaftJ;
    }

    /** State of a part's fuse, 0 to 1; 0 for a part that is none. */
    public double fuseShare(HeatState at, int part) {
        int fuse = parts.fuse[part];
        return fuse < 0 ? 0 : 1 - at.fuseRoom[fuse];
    }

    /**
     * How far a part that is a fuse is from opening, over the excess that opens it where that is
     * less than 1: of a plain size however slowly it opens.
     */
    public double fuseRoom(HeatState at, HeatLoad load, int part) {
        int fuse = parts.fuse[part];
        double excess = load.excess[fuse];
        double room = at.fuseRoom[fuse];
        return excess > 0 && excess < 1 ? room / excess : room;
    }

    /** Soonest that a fuse opens if currents stay as they are, s; infinite where none does. */
    public double opensInS(HeatState at, HeatLoad load) {
        double soonest = Double.POSITIVE_INFINITY;
        for (int fuse = 0; fuse < at.fuseRoom.length; fuse++) {
            double room = at.fuseRoom[fuse];
            double excess = load.excess[fuse];
            if (room > 0 && excess > 0) {
                soonest = Math.min(soonest, n.fuseS[fuse] * Math.log1p(room / excess));
            }
        }
        return soonest;
    }

    /** Whether a part is a fuse. */
    public boolean isFuse(int part) {
        return parts.fuse[part] >= 0;
    }

    public double limitK(int part) {
        return parts.list.get(part).limitK();
    }

    public int parts() {
        return hottestK.length;
    }
}
