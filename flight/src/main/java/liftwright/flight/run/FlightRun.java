package liftwright.flight.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.Give;
import liftwright.flight.motion.GustShare;
import liftwright.flight.profile.Blowing;
import liftwright.flight.profile.Profile;
import liftwright.plant.Drive;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Vec3;

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
    private final List<Drive> drives = new ArrayList<>();
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
        return flight.profile()
                .together()
                .map(told -> together(flight, told))
                .orElseGet(() -> alone(flight));
    }

    /** All of them in step, in one air, with tolerances and sensors of their own. */
    private FlightOutcome together(FlightCase flight, Profile.Together together) {
        Company company = company(flight, together, true);
        List<FlightOutcome> flown = company.fly();
        List<Nearness.Member> members = new ArrayList<>();
        members.add(new Nearness.Member(FIRST, flown.getFirst().path(), 0, 0, 0));
        for (int k = 0; k < together.modules().size(); k++) {
            Profile.Module module = together.modules().get(k);
            members.add(
                    new Nearness.Member(
                            module.name(),
                            flown.get(k + 1).path(),
                            module.forwardM(),
                            module.rightM(),
                            module.afterS()));
        }
        return flown.getFirst()
                .among(
                        new Nearness(shell()).of(members),
                        company.pushed(),
                        flown.subList(1, flown.size()),
                        together);
    }

    /**
     * Modules at their starts.
     *
     * @param blows whether they push each other
     */
    Company company(FlightCase flight, Profile.Together together, boolean blows) {
        int all = together.modules().size() + 1;
        long[] seeds = new long[all];
        List<Vec3> starts = new ArrayList<>(List.of(Vec3.ZERO));
        seeds[0] = flight.seed();
        for (int k = 1; k < all; k++) {
            Profile.Module module = together.modules().get(k - 1);
            seeds[k] = flight.seed() + k * APART_SEEDS;
            starts.add(new Vec3(module.forwardM(), module.rightM(), 0));
        }
        double fromRad =
                Blowing.of(flight.profile(), plant.rig().site())
                        .map(Profile.Wind::fromRad)
                        .orElse(0.0);
        List<GustShare> shares = GustShare.among(seeds, starts, fromRad);
        double[] exitM2 =
                plant.rig().fans().stream()
                        .mapToDouble(fan -> fan.type().exitArea().si())
                        .toArray();
        Company company = new Company(exitM2, rates().tickS(), blows);
        for (int k = 0; k < all; k++) {
            FlightCase own =
                    k == 0
                            ? flight
                            : FlightCase.of(
                                    plant,
                                    flight.profile().of(together.modules().get(k - 1)),
                                    seeds[k],
                                    flight.number());
            Scene scene = Scene.of(own, frames, flight.seed(), shares.get(k));
            company.add(
                    k == 0 ? FIRST : together.modules().get(k - 1).name(),
                    flying(own, scene, drive(k)),
                    starts.get(k),
                    k == 0 ? 0 : together.modules().get(k - 1).afterS());
        }
        return company;
    }

    /** One for each module of a scene. */
    private Drive drive(int module) {
        while (drives.size() <= module) {
            drives.add(plant.drive());
        }
        return drives.get(module);
    }

    private Rates rates() {
        return Rates.of(plant.rig().control(), finer);
    }

    private Shell shell() {
        Airframe frame = frames.of(plant.parameters().nominal(), Give.USUAL);
        return Shell.of(plant, frame, frames.centre());
    }

    private FlightOutcome alone(FlightCase flight) {
        return flying(flight, Scene.of(flight, frames), drive(0)).fly();
    }

    private Flying flying(FlightCase flight, Scene scene, Drive drive) {
        load(flight, drive);
        return new Flying(flight, scene, drive, crew, rates());
    }

    private static void load(FlightCase flight, Drive drive) {
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
