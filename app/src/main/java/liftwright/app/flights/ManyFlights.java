package liftwright.app.flights;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import liftwright.answer.Sentence;
import liftwright.flight.FlightAnswer;
import liftwright.flight.ask.FlightQuestion;
import liftwright.flight.disperse.Dispersion;
import liftwright.flight.disperse.DispersionCase;
import liftwright.flight.disperse.DriverValues;
import liftwright.flight.disperse.FlightRange;
import liftwright.flight.disperse.FlightSet;
import liftwright.flight.disperse.Flights;
import liftwright.flight.disperse.FlightsOf;
import liftwright.flight.disperse.RangeFlying;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightRun;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.review.Settings;
import liftwright.rig.Rig;

/** Flights of one rig and one profile: flown into a file, and read as an answer. */
public final class ManyFlights {

    /** Share of the flights that shall keep every limit, where nobody asks for another. */
    public static final double USUAL_SHARE = 0.95;

    private final Rig rig;
    private final Profile profile;
    private final FlightsOf of;
    private final String replay;
    private final Plant plant;
    private final FlightQuestion question;

    /**
     * @param replay the command that flies one flight again, without its number
     * @throws liftwright.plant.identify.NotToldException where the rig lacks what a flight needs
     * @throws liftwright.plant.parameters.ImpossibleValueException where a number of it cannot be
     */
    public ManyFlights(Rig rig, Profile profile, FlightsOf of, String replay) {
        this.rig = rig;
        this.profile = profile;
        this.of = of;
        this.replay = replay;
        plant = Plant.assembleHeated(rig);
        question = FlightQuestion.staged(rig, of.rig(), profile, Settings.standard());
    }

    /** Why nothing can be flown, as an answer; empty where something can. */
    public Optional<FlightAnswer> refusal() {
        return question.refusal();
    }

    /**
     * How they are flown.
     *
     * @param threads ≥ 1
     * @param block flights of each thread before what is done may be kept, ≥ 1
     * @param pauseNs between two writes of the file, ns
     */
    public record Pace(int threads, int block, long pauseNs) {}

    /**
     * Flies what a range still lacks, and keeps it in the file on the way and at the end.
     *
     * @param kept what the file holds
     * @throws NotKeptException where the file cannot be written; what was there stands
     */
    public RangeFlying.Result fly(
            FlightRange range, FlightSet kept, FlightsFile file, Pace pace, Work work) {
        LoopDesign.Granted loops = question.granted().orElseThrow();
        Supplier<Flights> flights =
                () -> {
                    var run = new FlightRun(plant, new ComputerCrew(rig, loops));
                    return number -> run.fly(FlightCase.of(plant, profile, of.seed(), number));
                };
        long[] written = {System.nanoTime()};
        RangeFlying.Result result =
                new RangeFlying(range, profile.limits(), flights, pace.threads(), pace.block())
                        .fly(
                                kept,
                                work,
                                done -> {
                                    if (System.nanoTime() - written[0] > pace.pauseNs()) {
                                        file.add(done.get());
                                        written[0] = System.nanoTime();
                                    }
                                });
        return new RangeFlying.Result(file.add(result.set()), result.whole());
    }

    /**
     * What flights say.
     *
     * @param share of them that shall keep every limit
     * @param origin where that share comes from
     */
    public FlightAnswer answer(FlightSet flights, double share, String origin) {
        return Dispersion.answer(
                new DispersionCase(
                        flights,
                        profile.limits(),
                        share,
                        origin,
                        Sentence.words(
                                "profile " + profile.name() + ", every declared tolerance drawn"),
                        replay,
                        numbers ->
                                DriverValues.of(
                                        List.of(
                                                plant.parameters(),
                                                plant.drive().inertia().table()),
                                        of.seed(),
                                        numbers)));
    }
}
