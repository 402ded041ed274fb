package liftwright.review;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Held;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.review.people.People;
import liftwright.review.remedy.Candidate;
import liftwright.review.remedy.Candidates;
import liftwright.review.restraint.FallTable;
import liftwright.review.restraint.HoldFindings;
import liftwright.review.restraint.HoldPicture;
import liftwright.review.restraint.HoldTables;
import liftwright.review.restraint.HoldWords;
import liftwright.review.restraint.NothingHeld;
import liftwright.review.restraint.ScaleReading;
import liftwright.review.restraint.StandingWearer;
import liftwright.review.runaway.RunawayReview;
import liftwright.rig.Rig;

/**
 * "Does what holds the rig hold it?": stand and tether under whichever fans load them most, through
 * a runaway, and who stands in it.
 */
public final class RestraintQuestion implements Staged {

    /** A margin that rises by less than this mends something else. */
    private static final double LEAST_GAIN = 0.01;

    /** A line that fewer draws ask for has no band. */
    private static final int LEAST_DRAWS = 128;

    /** What of a runaway belongs to what holds the rig; the rest is told with failures. */
    private static final Set<String> HEIGHTS = Set.of("runaways", "runaway-heights", "no-way-out");

    private final Rig rig;
    private final String rigDigest;
    private final Settings settings;
    private final RestraintJudge judge;
    private final Plant plant;
    private final Optional<Held> held;
    private final RestraintSample sample;
    private List<Section> heights = List.of();
    private final Map<Stage, People> near = new EnumMap<>(Stage.class);

    private RestraintQuestion(Rig rig, String rigDigest, Settings settings) {
        this(rig, rigDigest, settings, Plant.assembleHeld(rig));
    }

    private RestraintQuestion(Rig rig, String rigDigest, Settings settings, Plant plant) {
        this.plant = plant;
        this.rig = rig;
        this.rigDigest = rigDigest;
        judge = RestraintJudge.of(rig, settings);
        this.settings = judge.settings();
        held = judge.declared(plant, true);
        sample = judge.telling(plant, held.map(Held::asks).orElse(List.of()));
    }

    /**
     * To be answered in stages.
     *
     * @param rigDigest digest of the file the rig was read from, passed through into the evidence
     */
    public static Staged staged(Rig rig, String rigDigest, Settings settings) {
        return new RestraintQuestion(rig, rigDigest, settings);
    }

    /**
     * Answers it.
     *
     * @param rigDigest digest of the file the rig was read from, passed through into the evidence
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     */
    public static Optional<RestraintAnswer> ask(
            Rig rig, String rigDigest, Settings settings, Work work) {
        return new RestraintQuestion(rig, rigDigest, settings).answer(Stage.WHOLE, work);
    }

    @Override
    public Optional<Judged> judged(Work work) {
        return held.map(found -> found.asks().isEmpty()).orElse(false)
                ? Optional.empty()
                : judge.told(sample, work);
    }

    @Override
    public Optional<Sensitivities> sensitivities(Work work) {
        return held.map(found -> found.asks().isEmpty()).orElse(false)
                ? Optional.empty()
                : Sensitivities.of(plant, judge, sample, work);
    }

    @Override
    public Optional<? extends Answer> drawn(int draw) {
        return Drawn.answer(
                plant,
                settings.seed(),
                draw,
                one -> new RestraintQuestion(rig, rigDigest, settings, one));
    }

    @Override
    public Optional<RestraintAnswer> answer(Stage stage, Work work) {
        if (held.map(found -> found.asks().isEmpty()).orElse(false)) {
            return Optional.of(nothingDeclared(stage));
        }
        Optional<RestraintJudgement> judged = judge.judge(sample, stage, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        RestraintJudgement judgement = judged.get();
        Evidence evidence = evidence(judgement.draws(), judgement.failedDraws());
        var inquiry = new Inquiry<>(rig, plant, judge, judgement, work);
        Verdict verdict = inquiry.verdict(sentence(judgement), evidence);
        List<Remedy> remedies =
                inquiry.remedies(stage, verdict, mends(stage, verdict, judgement)).stream()
                        .filter(RestraintQuestion::isWorthSaying)
                        .toList();
        if (work.stopped()) {
            return Optional.empty();
        }
        List<Finding> findings =
                inquiry.findings(verdict, shortfall(judgement), remedies, findings(stage));
        List<Section> sections = new ArrayList<>();
        held.ifPresent(
                found -> {
                    sections.addAll(HoldTables.of(rig, found, kill(), ask -> band(ask, judgement)));
                    found.tether()
                            .map(on -> FallTable.of(on, plant.siteDensityKgpm3(nominal())))
                            .ifPresent(sections::add);
                    sections.addAll(HoldPicture.of(rig, found));
                });
        sections.addAll(people(stage));
        return Optional.of(new RestraintAnswer(verdict, findings, sections, evidence));
    }

    /** Where something else gives first, more of this is no help. */
    private static boolean isWorthSaying(Remedy remedy) {
        return !(remedy.effect() instanceof Remedy.Effect.Helps(var _, var gain))
                || !(gain.figure() instanceof Value.Figure.Amount(var more, var _))
                || more >= LEAST_GAIN;
    }

    private static Optional<Band> band(Ask ask, RestraintJudgement judgement) {
        double[] margins = judgement.sample().margins(ask, judgement.draws());
        return margins.length < LEAST_DRAWS || ask.margin().isEmpty()
                ? Optional.empty()
                : Optional.of(Bands.about(ask.margin().getAsDouble(), margins));
    }

    private Evidence evidence(int draws, int failed) {
        return RestraintEvidence.of(rig, rigDigest, plant, settings, draws, failed, held);
    }

    private RestraintAnswer nothingDeclared(Stage stage) {
        List<Finding> findings = new ArrayList<>(List.of(NothingHeld.finding()));
        findings.addAll(findings(stage));
        return new RestraintAnswer(NothingHeld.verdict(), findings, people(stage), evidence(0, 0));
    }

    /** Sections of who is near it, whatever holds it. */
    private List<Section> people(Stage stage) {
        List<Section> sections = new ArrayList<>();
        held.ifPresent(
                found -> {
                    standing(found).map(StandingWearer::section).ifPresent(sections::add);
                    ScaleReading.of(rig, found)
                            .map(ScaleReading::sections)
                            .ifPresent(sections::addAll);
                });
        sections.addAll(heights());
        sections.addAll(near(stage).sections());
        return sections;
    }

    /** How high a runaway goes, and from which heights there is no way out; once for all stages. */
    private List<Section> heights() {
        if (heights.isEmpty()) {
            heights =
                    RunawayReview.of(plant, settings.seed(), 0, 1, Work.quiet()).sections().stream()
                            .filter(section -> HEIGHTS.contains(section.id()))
                            .toList();
        }
        return heights;
    }

    /** What people near it meet. */
    private People near(Stage stage) {
        int draws = stage == Stage.NOMINAL ? 0 : Stage.FIRST_DRAWS;
        People known = near.get(stage);
        if (known == null) {
            known = People.of(plant, settings.seed(), draws);
            near.put(stage, known);
        }
        return known;
    }

    private List<Finding> findings(Stage stage) {
        List<Finding> findings = new ArrayList<>();
        held.ifPresent(
                found -> {
                    findings.addAll(
                            HoldFindings.of(
                                    rig,
                                    found,
                                    kill(),
                                    found.tether()
                                            .map(
                                                    on ->
                                                            plant.holding()
                                                                    .struck(
                                                                            nominal(),
                                                                            on,
                                                                            found.extent()))));
                    standing(found).map(own -> own.findings(rig)).ifPresent(findings::addAll);
                    ScaleReading.of(rig, found)
                            .map(ScaleReading::findings)
                            .ifPresent(findings::addAll);
                });
        findings.addAll(near(stage).findings());
        return findings;
    }

    private Optional<StandingWearer> standing(Held found) {
        return rig.wearer().map(_ -> StandingWearer.of(found, plant.mass().centre()));
    }

    private double[] nominal() {
        return plant.parameters().nominal();
    }

    private Optional<String> kill() {
        return plant.holding().slowestKill(nominal());
    }

    /** What has no margin left, at the declared values or in one draw of forty. */
    private Set<Ask.What> lacking(RestraintJudgement judgement) {
        Set<Ask.What> lacking = EnumSet.noneOf(Ask.What.class);
        for (Ask ask : held.map(Held::asks).orElse(List.of())) {
            OptionalDouble margin = ask.margin();
            double[] margins = judgement.sample().margins(ask, judgement.draws());
            int below = 0;
            for (double one : margins) {
                below += one < 0 ? 1 : 0;
            }
            if ((margin.isPresent() && margin.getAsDouble() < 0) || 40 * below > margins.length) {
                lacking.add(ask.what());
            }
        }
        return lacking;
    }

    private List<Candidate> mends(Stage stage, Verdict verdict, RestraintJudgement judgement) {
        return stage != Stage.WHOLE || verdict.outcome() == Outcome.HOLDS
                ? List.of()
                : candidates(judgement);
    }

    /** Ways to mend it that gain anything at the declared values. */
    private List<Candidate> candidates(RestraintJudgement judgement) {
        Optional<Held.OnTether> tether = held.flatMap(Held::tether);
        double ringM = tether.map(on -> on.line().ringM()).orElse(0.0);
        double roomM =
                tether.map(on -> on.line().overheadM() - on.rig().extent().heightM()).orElse(0.0);
        return Candidates.forRestraint(rig, lacking(judgement), roomM, ringM).stream()
                .filter(one -> gains(one, judgement.nominal()))
                .toList();
    }

    private boolean gains(Candidate candidate, double now) {
        for (int steps : new int[] {candidate.most(), (candidate.most() + 1) / 2, 1}) {
            if (Revised.with(rig, candidate.changes().apply(steps))
                    .map(mended -> judge.nominal(judge.assemble(mended)) - now >= LEAST_GAIN)
                    .orElse(false)) {
                return true;
            }
        }
        return false;
    }

    private Sentence sentence(RestraintJudgement judgement) {
        Sentence start =
                Sentence.words("least margin of what holds the rig ")
                        .then(Measure.PERCENT, judgement.nominal(), Bands.shown(judgement.band()))
                        .then(", asked for ")
                        .then(Measure.PERCENT, 0.0);
        return weakest()
                .map(
                        ask ->
                                start.then(
                                                "; weakest: "
                                                        + HoldWords.name(ask)
                                                        + " under "
                                                        + HoldWords.under(rig, ask, kill())
                                                        + ", ")
                                        .then(HoldWords.told(ask)))
                .orElse(start);
    }

    private Optional<Ask> weakest() {
        Ask weakest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Ask ask : held.map(Held::asks).orElse(List.of())) {
            OptionalDouble margin = ask.margin();
            if (margin.isPresent() && margin.getAsDouble() < least) {
                weakest = ask;
                least = margin.getAsDouble();
            }
        }
        return Optional.ofNullable(weakest);
    }

    private static Inquiry.Shortfall shortfall(RestraintJudgement judgement) {
        return new Inquiry.Shortfall(
                "restraint",
                Sentence.words("what holds the rig is short of what is asked of it by ")
                        .then(Measure.PERCENT, -judgement.nominal()),
                "what was declared does not decide whether the rig is held",
                "see the tables of loads for what gives and which fans load it");
    }
}
