package liftwright.review.wiring;

import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.physics.SurfaceExchange;
import liftwright.physics.WireHeat;
import liftwright.rig.Element;
import liftwright.rig.Insulation;
import liftwright.rig.book.BookInsulation;
import liftwright.rig.book.PartsBook;

/**
 * What a current does to one conductor of a run: conductor and shells of insulation, far from its
 * ends. A wire is harmed when its conductor reaches the short-circuit temperature of its
 * insulation, or stays above its steady limit for longer than {@link #SHORT_S}: short-circuit
 * temperatures are meant for no longer [IEC60949].
 */
final class WireHarm {

    /** Longest time for which a short-circuit temperature is meant, s. */
    static final double SHORT_S = 5;

    /** Longest overload that is looked at, s; what has not settled by then has. */
    static final double HORIZON_S = 4 * 3600;

    private static final int SHELLS = 3;

    /** Most that the conductor warms in one step, K: so first order is within a hundredth. */
    private static final double STEP_K = 1.5;

    private static final double LONGEST_STEP_S = 20;

    private final WireHeat wire;
    private final double ohmpm;
    private final double free;
    private final double airK;
    private final double pressurePa;
    private final double airMps;
    private final int conductors;
    private final double limitK;
    private final double shortK;

    /**
     * @param gauge that is tried in place of the run's own
     * @param belowClassK kelvin that the steady limit lies below the class
     */
    WireHarm(Element.Run run, int gauge, double airK, double pressurePa, double belowClassK) {
        AircraftWire row = AircraftWire.of(gauge);
        BookInsulation book = PartsBook.insulation(run.covering().material());
        wire =
                WireHeat.of(
                        row.areaM2(),
                        run.covering().wall().si(),
                        book.conductivityWpmK(),
                        book.heatJpm3K(),
                        SHELLS);
        ohmpm = row.ohmpm();
        free = SurfaceExchange.bundleFactor(run.covering().bundle());
        this.airK = airK;
        this.pressurePa = pressurePa;
        airMps = run.covering().air().si();
        conductors = run.conductors();
        limitK = run.covering().classK() - belowClassK;
        shortK = Math.max(shortCircuitK(run.covering().material()), limitK);
    }

    /**
     * Short-circuit temperature of a material, K: PVC 160 °C, XLPE 250 °C, silicone 350 °C
     * [IEC60949]; the fluoropolymers from memory, at or below their melting points.
     */
    static double shortCircuitK(Insulation material) {
        return 273.15
                + switch (material) {
                    case PVC -> 160;
                    case XLPE -> 250;
                    case SILICONE -> 350;
                    case ETFE, FEP -> 250;
                    case PTFE -> 300;
                };
    }

    double limitK() {
        return limitK;
    }

    double shortK() {
        return shortK;
    }

    /** Greatest current of the whole run whose steady temperature is the steady limit, A. */
    double steadyA() {
        if (limitK <= airK) {
            return 0;
        }
        double low = airK;
        double high = limitK;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            double conductor = middle + outWpm(middle) / wire.wallWpmK();
            if (conductor < limitK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return conductors * Math.sqrt(outWpm(low) / (ohmpm * Conductor.copperFactor(limitK)));
    }

    private double outWpm(double surfaceK) {
        return surfaceWpmK(surfaceK) * (surfaceK - airK);
    }

    private double surfaceWpmK(double surfaceK) {
        return free
                * SurfaceExchange.wireWpmK(
                        wire.outerM(),
                        surfaceK,
                        airK,
                        pressurePa,
                        airMps,
                        SurfaceExchange.USUAL_EMISSIVITY);
    }

    /** One conductor on its way, with the time that it has been above its limit. */
    final class Course {
        private final double[] k = new double[SHELLS + 1];
        private final double[] across = new double[SHELLS + 1];
        private final double[] right = new double[SHELLS + 1];
        private final double[] diagonal = new double[SHELLS + 1];
        private double aboveS;
        private double timeS;

        /** From rest at a current that it has carried for long; never above its limit. */
        Course(double settledA) {
            double most = steadyA();
            double ampere = Math.min(settledA, most);
            java.util.Arrays.fill(k, airK);
            for (double before = -1; Math.abs(k[0] - before) > 1e-3; ) {
                before = k[0];
                step(60, ampere);
            }
            timeS = 0;
            aboveS = 0;
        }

        double conductorK() {
            return k[0];
        }

        double timeS() {
            return timeS;
        }

        /**
         * Carries a current for a time.
         *
         * @return whether it was harmed on the way
         */
        boolean carry(double ampere, double forS) {
            double endS = timeS + Math.min(forS, HORIZON_S);
            while (timeS < endS) {
                double watt = heatWpm(ampere) - wire.inwardWpmK(0) * (k[0] - k[1]);
                double rate = Math.abs(watt) / wire.conductorJpmK();
                double h = Math.min(rate > 0 ? STEP_K / rate : LONGEST_STEP_S, LONGEST_STEP_S);
                h = Math.min(h, endS - timeS);
                double before = k[0];
                step(h, ampere);
                timeS += h;
                if (k[0] > limitK) {
                    double share = before >= limitK ? 1 : (k[0] - limitK) / (k[0] - before);
                    aboveS += share * h;
                } else {
                    aboveS = 0;
                }
                if (k[0] >= shortK || aboveS > SHORT_S) {
                    return true;
                }
                if (endS - timeS > 1 && Math.abs(k[0] - before) < 1e-7 * h && k[0] < limitK) {
                    return false; // settled below its limit
                }
            }
            return false;
        }

        private double heatWpm(double ampere) {
            double own = ampere / conductors;
            return own * own * ohmpm * Conductor.copperFactor(k[0]);
        }

        /** One backward step, surface exchange and resistance as they were at its start. */
        private void step(double h, double ampere) {
            double surface = surfaceK();
            double film = surfaceWpmK(surface);
            double out = 1 / (1 / film + 1 / wire.toSurfaceWpmK());
            int last = SHELLS;
            for (int node = 0; node <= last; node++) {
                double capacity = (node == 0 ? wire.conductorJpmK() : wire.shellJpmK(node - 1)) / h;
                across[node] = node == last ? out : wire.inwardWpmK(node);
                diagonal[node] = capacity + across[node] + (node > 0 ? across[node - 1] : 0);
                right[node] = capacity * k[node];
            }
            right[0] += heatWpm(ampere);
            right[last] += out * airK;
            for (int node = 1; node <= last; node++) {
                double share = across[node - 1] / diagonal[node - 1];
                diagonal[node] -= share * across[node - 1];
                right[node] += share * right[node - 1];
            }
            k[last] = right[last] / diagonal[last];
            for (int node = last - 1; node >= 0; node--) {
                k[node] = (right[node] + across[node] * k[node + 1]) / diagonal[node];
            }
        }

        /** Where the last shell's heat leaves: between its node and the air. */
        private double surfaceK() {
            double surface = k[SHELLS];
            for (int round = 0; round < 2; round++) {
                double film = surfaceWpmK(Math.max(surface, airK));
                surface =
                        (wire.toSurfaceWpmK() * k[SHELLS] + film * airK)
                                / (wire.toSurfaceWpmK() + film);
            }
            return Math.max(surface, airK);
        }
    }
}
