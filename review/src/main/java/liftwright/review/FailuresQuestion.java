package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.review.failures.FaultFate;
import liftwright.review.kill.KillChains;
import liftwright.review.remedy.Candidate;
import liftwright.review.runaway.RunawayReview;
import liftwright.rig.Rig;

/**
 * "What does a failure do?": every single fault of every part, what is left of lift and steering
 * with it and what becomes of the rig; every two at once; and what goes next.
 */
public final class FailuresQuestion implements Staged {

    private final Rig rig;
    private final String rigDigest;
    private final FailureCase asked;
    private final Settings settings;
    private final FailuresJudge judge;
    private final Plant plant;
    private final FailuresSample sample;

    private FailuresQuestion(Rig rig, String rigDigest, FailureCase asked, Settings settings) {
        this(rig, rigDigest, asked, settings, Plant.assembleHeated(rig));
    }

    private FailuresQuestion(
            Rig rig, String rigDigest, FailureCase asked, Settings settings, Plant plant) {
        this.plant = plant;
        this.rig = rig;
        this.rigDigest = rigDigest;
        this.asked = asked;
        judge = FailuresJudge.of(settings);
        this.settings = judge.settings();
        sample = judge.telling(plant);
    }

    /**
     * To be answered in stages. Pairs and what goes next belong to the whole answer alone.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param asked what is looked at beside single faults
     */
    public static Staged staged(Rig rig, String rigDigest, FailureCase asked, Settings settings) {
        return new FailuresQuestion(rig, rigDigest, asked, settings);
    }

    /**
     * Answers it.
     *
     * @param rigDigest digest of what the rig was read from, passed through into the evidence
     * @param asked what is looked at beside single faults
     * @param settings draws, seed, threads; of the draws at most 256 to begin with and 1,024 in all
     * @param work told of progress, asked whether to stop
     * @return empty when it was stopped: a stopped answer carries no verdict
     */
    public static Optional<FailuresAnswer> ask(
            Rig rig, String rigDigest, FailureCase asked, Settings settings, Work work) {
        return new FailuresQuestion(rig, rigDigest, asked, settings).answer(Stage.WHOLE, work);
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
                one -> new FailuresQuestion(rig, rigDigest, asked, settings, one));
    }

    @Override
    public Optional<FailuresAnswer> answer(Stage stage, Work work) {
        Optional<FailuresJudgement> judged = judge.judge(sample, stage, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        FailuresJudgement judgement = judged.get();
        List<FaultView> views = FaultView.of(judgement);
        Evidence evidence = FailuresEvidence.of(rig, rigDigest, plant, settings, judgement, views);
        var inquiry = new Inquiry<>(rig, plant, judge, judgement, work);
        Verdict verdict = inquiry.verdict(sentence(judgement, views), evidence);
        List<Remedy> remedies =
                stage == Stage.WHOLE
                        ? inquiry.remedies(
                                stage,
                                verdict,
                                FailureCandidates.of(rig, views).stream()
                                        .filter(this::mayClear)
                                        .toList())
                        : List.of();
        var told = new FailuresFindings(rig, views);
        var tables = new FailuresTables(judgement, views);
        var survivors = new Survivors(views, Survivors.healthy(sample));
        List<Finding> findings = new ArrayList<>(told.singles());
        told.overloaded(survivors).ifPresent(findings::add);
        List<Section> sections = new ArrayList<>();
        sections.add(tables.singlePoints());
        sections.add(tables.matrix());
        tables.yawFree().ifPresent(sections::add);
        sections.add(tables.risks());
        sections.add(survivors.table());
        if (stage == Stage.WHOLE) {
            var several = new Several(plant, judgement, views, survivors, asked, settings);
            sections.addAll(several.sections(work));
            several.next().flatMap(told::next).ifPresent(findings::add);
        }
        if (stage != Stage.NOMINAL) {
            KillChains kills = KillChains.of(plant);
            findings.addAll(kills.findings());
            sections.addAll(kills.sections());
        }
        sections.add(new FailureScenes(plant, views).section());
        if (stage != Stage.NOMINAL) {
            RunawayReview runaways = runaways(stage, work);
            findings.addAll(runaways.findings());
            sections.addAll(runaways.sections());
        }
        if (work.stopped()) {
            return Optional.empty();
        }
        return Optional.of(
                new FailuresAnswer(
                        verdict,
                        inquiry.findings(verdict, shortfall(judgement), remedies, findings).stream()
                                .map(FailuresQuestion::withOrigin)
                                .toList(),
                        sections,
                        evidence));
    }

    /** What a stuck throttle does under each kill; its bands are work of the whole answer. */
    private RunawayReview runaways(Stage stage, Work work) {
        int draws = stage == Stage.WHOLE ? Stage.FIRST_DRAWS : 0;
        return RunawayReview.of(plant, settings.seed(), draws, settings.threads(), work);
    }

    /** Nothing in the file asks for a margin of 0: it is what the rig needs. */
    private static Finding withOrigin(Finding finding) {
        boolean whole =
                finding.code().equals("failures-short")
                        || finding.code().equals("failures-undecided");
        if (!whole || finding.value().isEmpty() || finding.limit().isEmpty()) {
            return finding;
        }
        var needed =
                new Finding.Limit(
                        finding.limit().get().value(), "limits of lift, reserve and landing");
        return finding.at(Optional.empty()).against(finding.value().get(), needed);
    }

    /**
     * Whether the worst failure would be borne with as much of it as there can be. The least of
     * many margins gains nothing from a change that mends another failure, so less is not worth
     * drawing.
     */
    private boolean mayClear(Candidate candidate) {
        return Revised.with(rig, candidate.changes().apply(candidate.most()))
                .map(revised -> judge.nominal(judge.assemble(revised)))
                .filter(margin -> margin >= 0)
                .isPresent();
    }

    /** "17 of 84 single failures are not borne; worst: p.3: it gives nothing, and it tips over". */
    private static Sentence sentence(FailuresJudgement judgement, List<FaultView> views) {
        long faults = count(views, _ -> true);
        long not =
                count(
                        views,
                        view ->
                                view.verdict() == Outcome.DOES_NOT_HOLD
                                        || (view.verdict() == Outcome.NOT_JUDGED
                                                && view.isShort()));
        long untold = count(views, view -> view.verdict() == Outcome.CANNOT_BE_TOLD);
        String counts =
                not + untold == 0
                        ? "all " + faults + " single failures are borne"
                        : not == 0
                                ? "whether they are borne cannot be told of "
                                        + untold
                                        + " of "
                                        + faults
                                        + " single failures"
                                : not
                                        + " of "
                                        + faults
                                        + " single failures are not borne"
                                        + (untold == 0 ? "" : ", " + untold + " cannot be told");
        FaultView worst = views.getFirst();
        Sentence told =
                Sentence.words(
                        counts
                                + "; worst: "
                                + worst.group().label()
                                + ", and it "
                                + worst.found().fate().outcome().words());
        return leavesNothing(judgement)
                ? told
                : told.then("; least margin of all ")
                        .then(Measure.RATIO, judgement.nominal(), Bands.shown(judgement.band()))
                        .then(", asked for ")
                        .then(Measure.RATIO, 0);
    }

    /** The least margin there is says no more than that. */
    private static boolean leavesNothing(FailuresJudgement judgement) {
        return judgement.nominal() <= FaultFate.WORST;
    }

    private static long count(List<FaultView> views, Predicate<FaultView> which) {
        return views.stream().filter(which).mapToLong(view -> view.group().members().size()).sum();
    }

    private static Inquiry.Shortfall shortfall(FailuresJudgement judgement) {
        return new Inquiry.Shortfall(
                "failures",
                leavesNothing(judgement)
                        ? Sentence.words("the worst single failure leaves nothing of what is asked")
                        : Sentence.words("the worst single failure is short of what is asked by ")
                                .then(Measure.RATIO, -judgement.nominal()),
                "what was declared does not decide whether every single failure is borne",
                "see the single points for what ends a flight by itself");
    }
}
