package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.cause.Attribution;
import liftwright.rig.Limits;
import liftwright.rig.Rig;
import liftwright.rig.table.TurningTable;

/**
 * "Is it balanced, and which way will it turn?": the moments of all fans about the centre of mass
 * when lift is weight, why they are there, and what the wearer's arms or the flight computer have
 * left against them.
 */
public final class BalanceQuestion implements Staged {

    private final Rig rig;
    private final String rigDigest;
    private final Settings settings;
    private final Set<Search> searches;
    private final Optional<TurningTable> measured;
    private final Balancing balancing;
    private final Plant plant;
    private final BalanceJudge judge;
    private final BalanceSample sample;

    private BalanceQuestion(
            Rig rig,
            String rigDigest,
            Settings settings,
            Set<Search> searches,
            Optional<TurningTable> measured) {
        this(rig, rigDigest, settings, searches, measured, Plant.assemble(rig));
    }

    private BalanceQuestion(
            Rig rig,
            String rigDigest,
            Settings settings,
            Set<Search> searches,
            Optional<TurningTable> measured,
            Plant plant) {
        this.plant = plant;
        this.rig = rig;
        this.rigDigest = rigDigest;
        this.settings = settings;
        this.searches = Set.copyOf(searches);
        this.measured = measured;
        balancing = plant.balancing();
        judge = new BalanceJudge(Steering.of(balancing), settings);
        sample = judge.telling(plant);
    }

    /**
     * To be answered in stages, without searches.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     */
    public static Staged staged(Rig rig, String rigDigest, Settings settings) {
        return new BalanceQuestion(rig, rigDigest, settings, Set.of(), Optional.empty());
    }

    /**
     * Answers it.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     */
    public static Optional<BalanceAnswer> ask(
            Rig rig, String rigDigest, Settings settings, Work work) {
        return ask(rig, rigDigest, settings, Set.of(), work);
    }

    /**
     * Answers it, and searches for better arrangements.
     *
     * @param searches which; some take seconds
     */
    public static Optional<BalanceAnswer> ask(
            Rig rig, String rigDigest, Settings settings, Set<Search> searches, Work work) {
        return ask(rig, rigDigest, settings, searches, Optional.empty(), work);
    }

    /**
     * Answers it, and tells which causes explain how the rig was measured to turn.
     *
     * @param measured how it turned; empty where nobody measured
     */
    public static Optional<BalanceAnswer> ask(
            Rig rig,
            String rigDigest,
            Settings settings,
            Set<Search> searches,
            Optional<TurningTable> measured,
            Work work) {
        return new BalanceQuestion(rig, rigDigest, settings, searches, measured)
                .answer(Stage.WHOLE, work);
    }

    @Override
    public Optional<Judged> judged(Work work) {
        return judge.told(sample, work);
    }

    @Override
    public Optional<Sensitivities> sensitivities(Work work) {
        return Sensitivities.of(plant, judge, sample, work);
    }

    @Override
    public Optional<? extends Answer> drawn(int draw) {
        return Drawn.answer(
                plant,
                settings.seed(),
                draw,
                one ->
                        new BalanceQuestion(
                                rig, rigDigest, settings, Set.of(), Optional.empty(), one));
    }

    @Override
    public Optional<BalanceAnswer> answer(Stage stage, Work work) {
        Optional<BalanceJudgement> judged = judge.judge(sample, stage, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        BalanceJudgement judgement = judged.get();
        List<Evidence.Assumption> assumed =
                measured.isPresent() ? MeasuredTurning.assumptions() : List.of();
        Evidence evidence = BalanceEvidence.of(rig, rigDigest, plant, settings, judgement, assumed);
        var inquiry = new Inquiry<>(rig, plant, judge, judgement, work);
        Verdict verdict = inquiry.verdict(sentence(judgement, rig.limits()), evidence);
        List<Remedy> remedies =
                stage != Stage.WHOLE
                                || verdict.outcome() == Outcome.HOLDS
                                || !settings.remedies()
                                || !judgement.point().lifts()
                        ? List.of()
                        : inquiry.remedies(stage, verdict, BalanceMoves.of(rig, judgement));
        List<Searched> searched = stage == Stage.WHOLE ? searched(work) : List.of();
        List<ArmLoadSample.Row> armLoads = sample.armLoads(judgement.draws());
        if (work.stopped()) {
            return Optional.empty();
        }
        List<Finding> findings = new ArrayList<>(BalanceFindings.of(rig, judgement));
        findings.addAll(CorrectionWords.findings(rig, plant.corrections()));
        searched.forEach(each -> findings.addAll(each.findings()));
        ArmLoadTables.finding(rig, armLoads).ifPresent(findings::add);
        var jets =
                new JetTables(
                        balancing,
                        judgement.point(),
                        plant.siteDensityKgpm3(plant.parameters().nominal()));
        findings.addAll(jets.findings());
        switch (verdict.outcome()) {
            case HOLDS, NOT_JUDGED -> {}
            case DOES_NOT_HOLD, CANNOT_BE_TOLD ->
                    findings.add(0, shortOfSteering(verdict, judgement, rig.limits(), remedies));
        }
        findings.sort(Comparator.comparing(Finding::severity));
        List<Section> sections = new ArrayList<>(sections(balancing, judgement));
        sections.addAll(ArmLoadTables.of(armLoads));
        jets.section(judgement).ifPresent(sections::add);
        searched.forEach(each -> sections.addAll(each.sections()));
        return Optional.of(new BalanceAnswer(verdict, findings, sections, evidence));
    }

    private List<Searched> searched(Work work) {
        List<Searched> searched = new ArrayList<>();
        for (Search search : Search.values()) {
            if (searches.contains(search) && !work.stopped()) {
                searched.add(searched(search, rig, work));
            }
        }
        if (measured.isPresent() && !work.stopped()) {
            Attribution told = Attribution.of(rig, measured.get(), settings.seed());
            searched.add(
                    new Searched(MeasuredTurning.findings(told), MeasuredTurning.sections(told)));
        }
        return searched;
    }

    private static Searched searched(Search search, Rig rig, Work work) {
        return switch (search) {
            case SPINS -> SpinSearch.of(rig, work);
            case CANT -> CantSearch.of(rig, work);
            case PAIRING -> PairingSearch.of(rig, work);
        };
    }

    private static List<Section> sections(Balancing balancing, BalanceJudgement judgement) {
        HoverPoint point = judgement.point();
        List<Section> sections = new ArrayList<>();
        sections.add(BalanceTables.turning(judgement));
        for (Turn turn : Turn.values()) {
            sections.add(BalanceTables.ledger(turn, judgement));
        }
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint again = worker.liftOff(p);
        switch (judgement.steering()) {
            case ARMS ->
                    ArmTrim.of(worker, p, again)
                            .ifPresent(trim -> sections.add(BalanceTables.arms(trim)));
            case NOTHING -> {}
            case COMPUTER -> {
                Steering.allocation(worker, p, again)
                        .ifPresent(
                                can -> {
                                    sections.add(
                                            BalanceTables.reserves(
                                                    can, again, balancing.rig().limits()));
                                    sections.add(BalanceTables.trims(can, again));
                                });
                sections.addAll(TrimTables.of(worker, p, worker.liftOff(p)));
                Steering.allocation(worker, p, again)
                        .ifPresent(can -> sections.add(BalanceTables.authority(can)));
            }
        }
        sections.add(BalanceTables.mass(point.mass()));
        balancing
                .standingWearer(p)
                .ifPresent(person -> sections.add(BalanceTables.wearer(person, judgement)));
        sections.add(BalanceTables.fans(point));
        BalanceTables.gives(point).ifPresent(sections::add);
        sections.add(RigDrawing.of(balancing.rig(), point, balancing.limbs(p)));
        return sections;
    }

    private static Sentence sentence(BalanceJudgement judgement, Limits limits) {
        HoverPoint point = judgement.point();
        Sentence start =
                switch (judgement.steering()) {
                    case ARMS -> Sentence.words("reach of the arms left ");
                    case NOTHING -> Sentence.words("nothing steers it; room left below drift ");
                    case COMPUTER -> Sentence.words("least control reserve over what is asked ");
                };
        Measure measure =
                switch (judgement.steering()) {
                    case ARMS -> Measure.PERCENT;
                    case NOTHING -> Measure.ANGULAR_ACCELERATION;
                    case COMPUTER -> Measure.RATIO;
                };
        Sentence asked =
                start.then(measure, judgement.nominal(), Bands.shown(judgement.band()))
                        .then(", asked for ")
                        .then(measure, judgement.steering().demand(limits));
        if (!point.lifts()) {
            return asked.then("; full throttle does not lift it");
        }
        Turn worst = worst(point);
        double rate = BalanceTables.rateRadps2(worst, point);
        Sentence turns =
                rate == 0
                        ? asked.then("; hands off nothing turns it as declared")
                        : asked.then("; hands off it " + worst.seen(rate) + " with ")
                                .then(Measure.ANGULAR_ACCELERATION, Math.abs(rate));
        return turns.then(" as it lifts off at ")
                .then(
                        Measure.PERCENT,
                        point.throttle(),
                        Bands.shown(
                                Bands.about(
                                        point.throttle(),
                                        judgement.sample().throttles(judgement.draws()))))
                .then(" throttle");
    }

    private static Turn worst(HoverPoint point) {
        Turn worst = Turn.ROLL;
        for (Turn turn : Turn.values()) {
            if (Math.abs(turn.of(point.ledger().acceleration()))
                    > Math.abs(worst.of(point.ledger().acceleration()))) {
                worst = turn;
            }
        }
        return worst;
    }

    private static Finding shortOfSteering(
            Verdict verdict, BalanceJudgement judgement, Limits limits, List<Remedy> remedies) {
        boolean missed = verdict.outcome() == Outcome.DOES_NOT_HOLD;
        Steering steering = judgement.steering();
        String field = steering.field();
        return Finding.of(
                        Severity.STOPS,
                        missed ? "balance-short" : "balance-undecided",
                        Sentence.words(
                                missed
                                        ? switch (steering) {
                                            case ARMS ->
                                                    "the arms have too little reach left to hold it";
                                            case NOTHING ->
                                                    "it turns faster than drift, and nothing steers";
                                            case COMPUTER ->
                                                    "the flight computer has too little reserve";
                                        }
                                        : "what was declared does not decide whether it can be held"),
                        missed
                                ? "see the ledger for what turns it"
                                : String.join("; ", verdict.downgrades()))
                .against(
                        Value.of(field, judgement.nominal(), Bands.shown(judgement.band())),
                        new Finding.Limit(
                                Value.of(field, steering.demand(limits)), steering.origin(limits)))
                .mendedBy(remedies);
    }
}
