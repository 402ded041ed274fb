package liftwright.flight.run;

import java.util.Arrays;
import liftwright.flight.motion.Airframes;
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
