package liftwright.bench;

import java.util.concurrent.TimeUnit;
import liftwright.plant.Drive;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A second of the rotors of Mudlark on their supply: 1000 steps of 24 fans that are told something
 * else at each, with the air that meets them, asked for all that moves a body as a flight asks: of
 * all fans at once. What a part takes is the difference of two rows.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class DriveOfMudlark {

    private static final int STEPS = 1000;
    private static final double STEP_S = 0.001;
    private static final double NETWORK_S = 0.005;
    private static final int TOLD = 1024;

    private final double[] told = new double[TOLD];
    private final Drive cold;
    private final Drive warm;
    private final double[] duty;
    private final double[] alongMps;
    private final double[] acrossMps;
    private final double[] thrustN;
    private final double[] reactionNm;
    private final double[] spinNms;
    private final double[] flowKgps;

    public DriveOfMudlark() {
        Rig rig = Examples.rig(Examples.bytes("mudlark"));
        cold = drive(Plant.assemble(rig));
        warm = drive(Plant.assembleHeated(rig));
        int fans = cold.fans();
        duty = new double[fans];
        alongMps = new double[fans];
        acrossMps = new double[fans];
        thrustN = new double[3 * fans];
        reactionNm = new double[fans];
        spinNms = new double[fans];
        flowKgps = new double[fans];
        for (int fan = 0; fan < fans; fan++) {
            alongMps[fan] = 0.3 + 0.01 * fan;
            acrossMps[fan] = 0.5;
        }
        for (int k = 0; k < TOLD; k++) {
            told[k] = 0.7 + 0.02 * Math.sin(2 * Math.PI * k / TOLD);
        }
    }

    private static Drive drive(Plant plant) {
        Drive drive = plant.drive();
        drive.load(plant.parameters().nominal(), new CellDraw.Expected());
        drive.start();
        return drive;
    }

    private double second(Drive drive, double networkS, boolean asked) {
        if (drive.chargeLeft(0) < 0.3) {
            drive.start();
        }
        drive.networkEvery(networkS);
        double sum = 0;
        int fans = drive.fans();
        for (int step = 0; step < STEPS; step++) {
            for (int fan = 0; fan < fans; fan++) {
                duty[fan] = told[(step + 31 * fan) & (TOLD - 1)];
            }
            drive.duties(duty);
            drive.inflow(alongMps, acrossMps);
            drive.step(STEP_S);
            if (asked) {
                drive.loads(thrustN, reactionNm, spinNms, flowKgps);
                sum += thrustN[fans] + flowKgps[0] + reactionNm[0] + spinNms[0];
            }
        }
        return sum + drive.speedRadps(0);
    }

    /** Everything: network in full 200 times, temperatures 10 times. */
    @Benchmark
    public double heated() {
        return second(warm, NETWORK_S, true);
    }

    /** Without temperatures. */
    @Benchmark
    public double supplied() {
        return second(cold, NETWORK_S, true);
    }

    /** Without full solutions, charge and limits either: voltages follow by the last slopes. */
    @Benchmark
    public double following() {
        return second(cold, 1e9, true);
    }

    /** The same without thrust and air flow. */
    @Benchmark
    public double turning() {
        return second(cold, 1e9, false);
    }

    /** Everything, with the network in full at each step. */
    @Benchmark
    public double solvedAtEachStep() {
        return second(cold, STEP_S, true);
    }
}
