package liftwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.loops.Standing;
import liftwright.flight.loops.Wanted;
import liftwright.flight.motion.BodyState;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightRun;
import liftwright.flight.run.Lookout;
import liftwright.flight.run.Steersman;
import liftwright.physics.Gravity;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A whole flight of an example with everything on, and what its computer takes of a second: a
 * thousand looks of its sensors and its estimator, a thousand steps of its loops. Rotors, supply
 * and heat have {@link DriveOfMudlark}, the body {@link FlightSteps}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FlightOfCurlew {

    private static final int STEPS = 1000;
    private static final double STEP_S = 0.001;

    private final Rig rig = Examples.rig(Examples.bytes("curlew"));
    private final Plant plant = Plant.assembleHeated(rig);
    private final FlightCase flight = FlightCase.of(plant, profile(rig), 1, 0);
    private final ComputerCrew crew = crew(rig, plant);
    private final FlightRun run = new FlightRun(plant, crew);
    private final Lookout lookout = crew.lookout(flight, STEP_S);
    private final Steersman steersman = crew.steersman();
    private final BodyState state = new BodyState();
    private final Wanted wanted = new Wanted();
    private final double[] force = {0, 0, -Gravity.STANDARD_MPS2};
    private final double[] speeds = new double[rig.fans().size()];
    private final double[] volts = new double[rig.fans().size()];
    private final double[] duty = new double[rig.fans().size()];
    private long tick;

    public FlightOfCurlew() {
        state.rest(0, 0, 2, 0);
        wanted.position(0.1, 0, 2, 0);
        Arrays.fill(speeds, 2500);
        Arrays.fill(volts, 46);
        lookout.begin(state, force);
        steersman.begin();
    }

    private static Profile profile(Rig rig) {
        try {
            byte[] text = Files.readAllBytes(Examples.at("curlew/profiles/to-the-wearer.yaml"));
            return ProfileReading.read("profile.yaml", text, rig).profile().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ComputerCrew crew(Rig rig, Plant plant) {
        if (new RigLoops(plant.balancing()).design() instanceof LoopDesign.Granted granted) {
            return new ComputerCrew(rig, granted);
        }
        throw new IllegalStateException("no loops are granted");
    }

    /** From the ground to the wearer, some 37 s. */
    @Benchmark
    public double whole() {
        FlightOutcome flown = run.fly(flight);
        if (flown.end() != FlightOutcome.End.LANDED) {
            throw new IllegalStateException("not the flight to measure: " + flown.end());
        }
        return flown.durationS();
    }

    /** What sensors tell of a still rig and an estimator makes of it, for a second. */
    @Benchmark
    public double sensed() {
        for (int k = 0; k < STEPS; k++) {
            tick++;
            lookout.look(tick, state, force, speeds);
        }
        return speeds[0];
    }

    /** Loops and mixer for a second. */
    @Benchmark
    public double steered() {
        for (int k = 0; k < STEPS; k++) {
            steersman.steer(STEP_S, state.y, Standing.FREE, wanted, volts, duty);
        }
        return duty[0];
    }
}
