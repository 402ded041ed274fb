package liftwright.flight.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.Give;
import liftwright.flight.profile.Profile;
import liftwright.plant.Drive;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ParameterTable;

/**
 * Flies one rig, one flight after the other; for one thread. Every tick the body moves over what
 * rotors, air, ground and lines do; every few ticks the computer looks at what the sensors told and
 * sends a command, which arrives after its delay. The supply is solved at least every 5 ms, heat
 * moves every 0.1 s; the same case gives the same bits.
 */
public final class FlightRun {

    /** By this name goes the module of whose flight an outcome tells. */
    public static final String FIRST = "the first";

    /** Seeds of other modules lie so far apart that none meets another flight's; odd. */
    private static final long APART_SEEDS = 0x9E3779B97F4A7C15L;

    private final Plant plant;
    private final Crew crew;
    private final int finer;
    private final Drive drive;
    private final Airframes frames;

    /**
     * @param plant a rig in numbers; where it is heated, temperatures take part
     * @param crew who flies
     */
    public FlightRun(Plant plant, Crew crew) {
        this(plant, crew, 1);
    }

    /**
     * @param finer how many times shorter a step shall be than usual, to see what it owes to them
     */
    public FlightRun(Plant plant, Crew crew, int finer) {
        this.plant = plant;
        this.crew = crew;
        this.finer = finer;
        drive = plant.drive();
        frames = new Airframes(plant);
    }

    /**
     * Flies one flight from its first step to its end.
     *
     * @param flight of this plant
     */
    public FlightOutcome fly(FlightCase flight) {
        if (flight.plant() != plant) {
            throw new IllegalArgumentException("a flight of another plant");
        }
        FlightOutcome own = alone(flight);
        return flight.profile().together().map(told -> together(flight, own, told)).orElse(own);
    }

    /** The other modules one by one, with tolerances, sensors and air of their own. */
    private FlightOutcome together(
            FlightCase flight, FlightOutcome own, Profile.Together together) {
        Shell shell = shell();
        List<Nearness.Member> members = new ArrayList<>();
        members.add(new Nearness.Member(FIRST, own.path(), 0, 0, 0));
        List<FlightOutcome> others = new ArrayList<>();
        for (int k = 0; k < together.modules().size(); k++) {
            Profile.Module module = together.modules().get(k);
            long seed = flight.seed() + (k + 1) * APART_SEEDS;
            FlightOutcome one =
                    alone(FlightCase.of(plant, flight.profile().of(module), seed, flight.number()));
            others.add(one);
            members.add(
                    new Nearness.Member(
                            module.name(),
                            one.path(),
                            module.forwardM(),
                            module.rightM(),
                            module.afterS()));
        }
        return own.among(new Nearness(shell).of(members), others, together);
    }

    private Shell shell() {
        Airframe frame = frames.of(plant.parameters().nominal(), Give.USUAL);
        return Shell.of(plant, frame, frames.centre());
    }

    private FlightOutcome alone(FlightCase flight) {
        load(flight);
        Rates rates = Rates.of(plant.rig().control(), finer);
        return new Flying(flight, Scene.of(flight, frames), drive, crew, rates).fly();
    }

    private void load(FlightCase flight) {
        ParameterTable table = drive.inertia().table();
        double[] turning = table.nominal();
        if (flight.number() > 0) {
            table.draw(flight.seed(), flight.number(), turning);
        }
        double slower = 1 + Deviate.SPOOL_LAG.of(flight.seed(), flight.number());
        Arrays.setAll(turning, k -> turning[k] * slower);
        drive.load(flight.p(), flight.cells(), turning);
        Charged.start(drive, flight);
    }
}
