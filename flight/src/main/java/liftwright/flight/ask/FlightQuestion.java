package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Checks;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Verdict;
import liftwright.flight.FlightAnswer;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.losses.LossFlights;
import liftwright.flight.losses.LossTable;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.Give;
import liftwright.flight.pilot.Steered;
import liftwright.flight.pilot.SteeredSections;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightRun;
import liftwright.flight.sense.Suite;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import org.jspecify.annotations.Nullable;

/**
 * "Will the flight computer hold it?" At first the loops alone, then the flight at the declared
 * values, then some flights with every tolerance drawn, and the first again at half the step.
 */
public final class FlightQuestion implements Staged {

    /** Drawn flights of a whole answer; many more are the work of dispersions. */
    public static final int DRAWN = 12;

    private final Rig rig;
    private final String rigDigest;
    private final Profile profile;
    private final Settings settings;
    private final int number;
    private final Plant plant;
    private @Nullable LoopDesign design;
    private @Nullable FlightOutcome shown;

    private FlightQuestion(
            Rig rig, String rigDigest, Profile profile, Settings settings, int number) {
        this.rig = rig;
        this.rigDigest = rigDigest;
        this.profile = profile;
        this.settings = settings;
        this.number = number;
        plant = Plant.assembleHeated(rig);
    }

    /**
     * The question as a page asks it.
     *
     * @param rigDigest digest of the file the rig was read from, passed through into the evidence
     */
    public static FlightQuestion staged(
            Rig rig, String rigDigest, Profile profile, Settings settings) {
        return new FlightQuestion(rig, rigDigest, profile, settings, 0);
    }

    /** The same of one drawn flight alone, by its number. */
    public static FlightQuestion ofNumber(
            Rig rig, String rigDigest, Profile profile, Settings settings, int number) {
        return new FlightQuestion(rig, rigDigest, profile, settings, number);
    }

    /** The flight that the last answer showed; empty where none was flown. */
    public Optional<FlightOutcome> shown() {
        return Optional.ofNullable(shown);
    }

    /** The loops that the rig is granted; empty where they are refused. */
    public Optional<LoopDesign.Granted> granted() {
        return design() instanceof LoopDesign.Granted granted
                ? Optional.of(granted)
                : Optional.empty();
    }

    @Override
    public Optional<FlightAnswer> answer(Stage stage, Work work) {
        work.stage("loops", 1);
        LoopDesign loops = design();
        if (work.stopped()) {
            return Optional.empty();
        }
        Optional<FlightAnswer> refusal = refusal();
        return refusal.isPresent() ? refusal : flown((LoopDesign.Granted) loops, stage, work);
    }

    /** Why nothing can be flown, as an answer; empty where something can. */
    public Optional<FlightAnswer> refusal() {
        return switch (design()) {
            case LoopDesign.Refused refused -> Optional.of(refused(refused));
            case LoopDesign.Granted granted ->
                    Suite.of(rig.control()).refusal().map(why -> blind(granted, why));
        };
    }

    private LoopDesign design() {
        LoopDesign made = design;
        if (made == null) {
            made = new RigLoops(plant.balancing()).design();
            design = made;
        }
        return made;
    }

    /** Nobody but the wearer steadies it: told is whether a person can. */
    private FlightAnswer refused(LoopDesign.Refused refused) {
        boolean person = rig.control().kind() == Control.Kind.SHARED_THROTTLE;
        Optional<Steered> steered =
                person && rig.wearer().isPresent()
                        ? Steered.of(plant, plant.parameters().nominal())
                        : Optional.empty();
        List<Finding> findings = new ArrayList<>();
        steered.ifPresent(
                wearer -> {
                    findings.addAll(FlightFindings.person(wearer));
                    findings.addAll(new SteeredSections(wearer).findings());
                });
        return answer(
                person
                        ? FlightVerdict.person(steered.map(Steered::holds))
                        : FlightVerdict.refused(refused),
                person ? findings : FlightFindings.refused(refused),
                steered.map(wearer -> new SteeredSections(wearer).sections()).orElse(List.of()),
                FlightEvidence.of(rig, rigDigest, profile, settings, List.of(), 0, List.of()));
    }

    private FlightAnswer blind(LoopDesign.Granted granted, String why) {
        return answer(
                FlightVerdict.blind(why),
                List.of(),
                List.of(FlightTables.loops(granted)),
                FlightEvidence.of(rig, rigDigest, profile, settings, List.of(), 0, List.of()));
    }

    private Optional<FlightAnswer> flown(LoopDesign.Granted granted, Stage stage, Work work) {
        ComputerCrew crew = new ComputerCrew(rig, granted);
        if (stage == Stage.NOMINAL) {
            return Optional.of(
                    answer(
                            FlightVerdict.loopsAlone(),
                            List.of(),
                            List.of(FlightTables.loops(granted)),
                            evidence(crew, 0, List.of())));
        }
        work.stage("the flight", 1);
        FlightOutcome first =
                new FlightRun(plant, crew)
                        .fly(FlightCase.of(plant, profile, settings.seed(), number));
        shown = first;
        work.done(1);
        boolean whole = stage == Stage.WHOLE && number == 0;
        List<FlightOutcome> drawn = whole ? drawn(crew, work) : List.of();
        List<Evidence.Check> checks = whole ? checks(crew, first, work) : List.of();
        Optional<LossTable> losses = whole ? Optional.of(losses(crew, work)) : Optional.empty();
        if (work.stopped()) {
            return Optional.empty();
        }
        List<FlightTables.Held> held = FlightTables.held(first, drawn, profile.limits());
        Evidence evidence = evidence(crew, drawn.size(), checks);
        Verdict verdict = FlightVerdict.flown(profile, first, drawn, number, whole);
        List<Finding> findings = new ArrayList<>(FlightFindings.of(granted, first, held, drawn));
        findings.addAll(onItsFeet(granted));
        findings.sort(Comparator.comparing(Finding::severity));
        List<Section> sections = new ArrayList<>();
        sections.add(FlightTables.limits(held, first));
        sections.add(FlightTables.loops(granted));
        sections.add(FlightStrips.of(first, drawn));
        profile.together().ifPresent(told -> sections.add(ModuleTable.of(told, first, drawn)));
        ModuleTable.pushed(first).ifPresent(sections::add);
        sections.add(FlightTables.events(first));
        losses.ifPresent(
                table -> {
                    findings.addAll(table.findings());
                    findings.sort(Comparator.comparing(Finding::severity));
                    sections.add(table.section());
                });
        return Optional.of(
                answer(Checks.downgrade(verdict, evidence), findings, sections, evidence));
    }

    /** What feet do not hold where the flight begins on both of them, and where it lands. */
    private List<Finding> onItsFeet(LoopDesign.Granted granted) {
        Airframe frame = new Airframes(plant).of(plant.parameters().nominal(), Give.USUAL);
        List<Finding> found = new ArrayList<>();
        boolean stands = profile.start().on() != Profile.Stand.HELD;
        boolean lands = profile.steps().stream().anyMatch(Profile.Step.Land.class::isInstance);
        if (stands || lands) {
            SlopeStand.of(frame, rig.site().ground())
                    .flatMap(SlopeStand::finding)
                    .ifPresent(found::add);
        }
        if (profile.start().on() == Profile.Stand.GROUND) {
            FirstLift.of(frame, granted.craft()).flatMap(FirstLift::finding).ifPresent(found::add);
        }
        if (lands) {
            LandingLean.of(frame, granted.craft())
                    .flatMap(LandingLean::finding)
                    .ifPresent(found::add);
        }
        return found;
    }

    private LossTable losses(ComputerCrew crew, Work work) {
        var flights = new LossFlights(plant, profile, settings.seed());
        return new LossTable(flights.fly(crew, settings.threads(), work));
    }

    private Evidence evidence(ComputerCrew crew, int drawn, List<Evidence.Check> checks) {
        return FlightEvidence.of(
                rig, rigDigest, profile, settings, crew.suite().usual(), drawn, checks);
    }

    private List<FlightOutcome> drawn(ComputerCrew crew, Work work) {
        work.stage("drawn flights", DRAWN);
        @Nullable FlightOutcome[] made = new @Nullable FlightOutcome[DRAWN];
        Draws.forEach(
                work,
                settings.threads(),
                DRAWN,
                () -> new FlightRun(plant, crew),
                (run, k) -> made[k] = drawn(run, k + 1));
        List<FlightOutcome> flown = new ArrayList<>();
        for (FlightOutcome one : made) {
            if (one != null) {
                flown.add(one);
            }
        }
        return flown;
    }

    /** Nothing where a drawn number cannot be. */
    private @Nullable FlightOutcome drawn(FlightRun run, int draw) {
        try {
            return run.fly(FlightCase.of(plant, profile, settings.seed(), draw));
        } catch (ImpossibleValueException e) {
            return null;
        }
    }

    /** The same flight at half the step: what it owes to its steps, over its limits. */
    private List<Evidence.Check> checks(ComputerCrew crew, FlightOutcome first, Work work) {
        work.stage("the flight at half the step", 1);
        FlightOutcome finer =
                new FlightRun(plant, crew, 2)
                        .fly(FlightCase.of(plant, profile, settings.seed(), number));
        work.done(1);
        return FlightEvidence.halved(first, finer, profile.limits());
    }

    private static FlightAnswer answer(
            Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence) {
        return new FlightAnswer(verdict, findings, sections, evidence);
    }
}
