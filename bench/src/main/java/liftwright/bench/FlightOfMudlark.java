package liftwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightRun;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Twenty seconds of Mudlark's 24 fans under a flight computer at 1 kHz, held in a gusty wind with
 * everything on: sensors, estimator, loops, turbulence, supply and temperatures. Before them it
 * stands held for 1.5 s, computed alike. Fans are at the most they can give for 0.6 % of the time:
 * a flight that stands at its bounds is not measured here.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FlightOfMudlark {

    private static final String PROFILE =
            """
            liftwright profile: 1
            name: held in a gusty wind
            start: {on: held, height: 2 m, charge: 100 %}
            steps:
              - hold: 20 s
            wind: {mean: 5 m/s, from: 60°, gust: 4 m/s, gust at: 8 s, gust length: 30 m}
            """;

    private final FlightRun run;
    private final FlightCase flight;

    public FlightOfMudlark() {
        Rig rig = steered();
        Plant plant = Plant.assembleHeated(rig);
        byte[] text = PROFILE.getBytes(StandardCharsets.UTF_8);
        ProfileReading read = ProfileReading.read("profile.yaml", text, rig);
        Profile profile =
                read.profile()
                        .orElseThrow(() -> new IllegalStateException(read.problems().toString()));
        flight = FlightCase.of(plant, profile, 1, 0);
        run = new FlightRun(plant, crew(rig, plant));
    }

    /** Mudlark with a flight computer at 1 kHz in place of its throttle. */
    private static Rig steered() {
        String text = new String(Examples.bytes("mudlark"), StandardCharsets.UTF_8);
        String other =
                text.replace(
                        "kind: shared throttle",
                        "kind: flight computer\n  rate: 1 kHz\n  delay: 3 ms");
        if (other.equals(text)) {
            throw new IllegalStateException("Mudlark has no shared throttle");
        }
        return Examples.rig(other.getBytes(StandardCharsets.UTF_8));
    }

    private static ComputerCrew crew(Rig rig, Plant plant) {
        return switch (new RigLoops(plant.balancing()).design()) {
            case LoopDesign.Granted granted -> new ComputerCrew(rig, granted);
            case LoopDesign.Refused refused ->
                    throw new IllegalStateException("no loops are granted: " + refused);
        };
    }

    /** Twenty seconds. */
    @Benchmark
    public double whole() {
        FlightOutcome flown = run.fly(flight);
        if (!(flown.durationS() > 18.9)) {
            throw new IllegalStateException("not the flight to measure: " + flown);
        }
        return flown.durationS();
    }
}
