package liftwright.trials.predict;

import java.util.List;
import liftwright.physics.Gravity;
import liftwright.plant.Discharge;

/** Takes the true value of every reading at a moment of a run; for one run after the other. */
final class Reader {

    private final List<Watch> watches;
    private double weightN;
    private double scaleN;
    private double hiddenShare;
    private double energyJ;
    private double lastW;
    private double lastS;

    Reader(List<Watch> watches) {
        this.watches = watches;
    }

    /**
     * A run begins.
     *
     * @param weightN of what is lifted, N
     * @param scaleN what the scale carries with no thrust, N
     * @param hiddenShare of the lift that jets push back onto the scale
     */
    void begin(double weightN, double scaleN, double hiddenShare) {
        this.weightN = weightN;
        this.scaleN = scaleN;
        this.hiddenShare = hiddenShare;
        energyJ = 0;
        lastW = 0;
        lastS = 0;
    }

    /**
     * @param out takes the value of each watch
     */
    void read(Discharge run, double[] out) {
        count(run);
        for (int k = 0; k < out.length; k++) {
            out[k] = value(run, watches.get(k));
        }
    }

    private void count(Discharge run) {
        double watt = 0;
        for (int pack = 0; pack < run.network().emfV.length; pack++) {
            watt += run.network().packTerminalV(pack) * run.packA(pack);
        }
        energyJ += (run.timeS() - lastS) * (watt + lastW) / 2;
        lastW = watt;
        lastS = run.timeS();
    }

    private double value(Discharge run, Watch watch) {
        int[] of = watch.members();
        return switch (watch.gauge()) {
            case THRUST, MOUNT_THRUST -> {
                double sum = 0;
                for (int fan : of) {
                    sum += run.fans().units().thrustAtPointN(fan);
                }
                yield sum;
            }
            case SCALE ->
                    Math.max(0, scaleN - (1 - hiddenShare) * run.fans().liftN())
                            / Gravity.STANDARD_MPS2;
            case TETHER -> Math.max(0, weightN - run.fans().liftN());
            case PACK_CURRENT -> {
                double most = 0;
                for (int pack : of) {
                    most = Math.max(most, run.packA(pack));
                }
                yield most;
            }
            case CELL_VOLTAGE -> {
                double least = Double.POSITIVE_INFINITY;
                for (int pack : of) {
                    least = Math.min(least, run.leastCellV(pack));
                }
                yield least;
            }
            case CHARGE -> {
                double least = 1;
                for (int pack : of) {
                    least = Math.min(least, run.leastChargeLeft(pack));
                }
                yield least;
            }
            case SPEED -> {
                double most = 0;
                for (int fan : of) {
                    most = Math.max(most, run.fans().units().speedRadps(fan));
                }
                yield most;
            }
            case WINDING_CURRENT -> {
                double most = 0;
                for (int fan : of) {
                    most = Math.max(most, run.fans().units().windingA(fan));
                }
                yield most;
            }
            case WIRE, JOINT, CONTROLLER, WINDING, MAGNETS, CELLS -> {
                double most = 0;
                for (int part : of) {
                    most = Math.max(most, run.nowK(part));
                }
                yield most;
            }
            case ENERGY -> energyJ;
            case HEIGHT, CLOCK -> throw new IllegalStateException("not read off the supply");
        };
    }
}
