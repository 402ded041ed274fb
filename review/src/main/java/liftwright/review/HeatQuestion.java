package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.Rig;

/**
 * "What gives out first, and when?": a flight with everything in it warming up, until the first
 * limit of any kind, and the rest after it, in which what the stream cooled is warmest.
 */
public final class HeatQuestion implements Staged {

    private final Rig rig;
    private final String rigDigest;
    private final Settings settings;
    private final Plant plant;
    private final HeatCase asked;
    private final HeatJudge judge;
    private final HeatSample sample;
    private final HeatParts parts;
    private final HeatFlight flight;
    private Optional<HeatRun> run = Optional.empty();
    private List<Section> waits = List.of();
    private Optional<HeatWiring> wiring = Optional.empty();

    private HeatQuestion(Rig rig, String rigDigest, HeatCase asked, Settings settings) {
        this(rig, rigDigest, asked, settings, Plant.assembleHeated(rig));
    }

    private HeatQuestion(
            Rig rig, String rigDigest, HeatCase asked, Settings settings, Plant plant) {
        this.asked = asked;
        this.plant = plant;
        this.rig = rig;
        this.rigDigest = rigDigest;
        judge = HeatJudge.of(asked, settings);
        this.settings = judge.settings();
        sample = judge.telling(plant);
        parts = HeatParts.of(plant);
        flight = asked.flight(plant, plant.parameters().nominal());
    }

    /** The flight that a rig's demands ask for: its runs with their pauses. */
    public static Task demanded(Rig rig) {
        return rig.demands().runs() > 1
                ? new Task.Hops(rig.demands().runs(), rig.demands().pause().si())
                : new Task.Hover();
    }

    /**
     * To be answered in stages.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param asked what is flown, and from where
     */
    public static Staged staged(Rig rig, String rigDigest, HeatCase asked, Settings settings) {
        return new HeatQuestion(rig, rigDigest, asked, settings);
    }

    /**
     * Answers it.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param asked what is flown, and from where
     * @param settings draws, seed, threads; of the draws at most 256 to begin with and 4,096 in all
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     */
    public static Optional<HeatAnswer> ask(
            Rig rig, String rigDigest, HeatCase asked, Settings settings, Work work) {
        return new HeatQuestion(rig, rigDigest, asked, settings).answer(Stage.WHOLE, work);
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
                one -> new HeatQuestion(rig, rigDigest, asked, settings, one));
    }

    @Override
    public Optional<HeatAnswer> answer(Stage stage, Work work) {
        HeatRun run = run();
        Optional<HeatJudgement> judged = judge.judge(sample, stage, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        HeatJudgement judgement = judged.get();
        Evidence evidence =
                HeatEvidence.of(rig, rigDigest, plant, flight, settings, judgement, run);
        var inquiry = new Inquiry<>(rig, plant, judge, judgement, work);
        Verdict verdict = inquiry.verdict(sentence(judgement, run), evidence);
        List<Remedy> remedies =
                inquiry
                        .remedies(
                                stage,
                                verdict,
                                HeatCandidates.of(rig, parts, flight, run, judgement))
                        .stream()
                        .filter(this::isWorthSaying)
                        .toList();
        List<Section> waited = waits(run, work);
        if (work.stopped()) {
            return Optional.empty();
        }
        List<Finding> told = new ArrayList<>(HeatFindings.of(rig, parts, flight, run));
        if (stage != Stage.NOMINAL) {
            told.addAll(wiring(run).findings());
        }
        List<Finding> findings =
                inquiry.findings(
                        verdict, shortfall(flight.askedS() - judgement.nominal()), remedies, told);
        List<Section> sections = new ArrayList<>();
        sections.add(new HeatTimeline(parts, run, judgement, flight).section());
        sections.add(HeatTables.hottest(parts, run, judgement));
        sections.addAll(waited);
        sections.add(HeatTables.losses(parts, run));
        sections.addAll(HeatTables.temperatures(parts, run));
        sections.add(HeatTables.playback(plant, parts, run));
        if (stage != Stage.NOMINAL) {
            sections.addAll(wiring(run).sections());
        }
        return Optional.of(new HeatAnswer(verdict, findings, sections, evidence, run.left()));
    }

    /** What gains less than a hundredth of what is asked mends something else. */
    private boolean isWorthSaying(Remedy remedy) {
        return !(remedy.effect() instanceof Remedy.Effect.Helps(var _, var gain))
                || !(gain.figure() instanceof Value.Figure.Amount(var gainS, var _))
                || gainS >= 0.01 * flight.askedS();
    }

    private HeatRun run() {
        if (run.isEmpty()) {
            run = Optional.of(HeatRun.of(plant, flight));
        }
        return run.orElseThrow();
    }

    /** Of no use while something is dragged, and the most work of all that is not drawn. */
    private HeatWiring wiring(HeatRun run) {
        if (wiring.isEmpty()) {
            wiring = Optional.of(HeatWiring.of(plant, parts, run));
        }
        return wiring.orElseThrow();
    }

    private List<Section> waits(HeatRun run, Work work) {
        if (waits.isEmpty()) {
            waits =
                    List.of(
                            HeatWaits.table(plant, parts, flight, run, work),
                            HeatWaits.pauses(plant, parts, flight));
        }
        return waits;
    }

    /** "no limit in 60 s of hover …; the first is … at 143 s". */
    private Sentence sentence(HeatJudgement judgement, HeatRun run) {
        Sentence start =
                Sentence.start()
                        .then(Measure.TIME, judgement.nominal(), Bands.shown(judgement.band()))
                        .then(" of " + flight.task().words() + " within every limit, asked for ")
                        .then(Measure.TIME, flight.askedS());
        boolean inTheRest =
                judgement.nominal() < flight.askedS()
                        && run.first()
                                .map(end -> flight.airS(end.timeS()) >= flight.askedS())
                                .orElse(true);
        Optional<Discharge.End> end = inTheRest ? run.askedFirst() : run.first();
        return end.map(
                        at ->
                                start.then(
                                        (inTheRest ? "; in the rest after it " : "; first comes ")
                                                + CauseWords.told(rig, parts, at)))
                .orElseGet(() -> start.then("; no limit is reached before it ends"));
    }

    private static Inquiry.Shortfall shortfall(double shortS) {
        return new Inquiry.Shortfall(
                "heat",
                Sentence.words("time within every limit is short of what is asked by ")
                        .then(Measure.TIME, shortS),
                "what was declared does not decide whether every limit is kept so long",
                "see the timeline for what gives out first");
    }
}
