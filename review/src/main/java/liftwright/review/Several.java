package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.numerics.Work;
import liftwright.plant.LossPoint;
import liftwright.plant.Plant;

/** What takes its time: two failures at once, and what goes next after one or two. */
final class Several {

    /** Pairs that are followed by a heated run, of those that pass a limit at once. */
    private static final int FOLLOWED_PAIRS = 8;

    /** Pairs that are looked at for such limits, the worst first. */
    private static final int SCREENED_PAIRS = 200;

    private final Plant plant;
    private final FailuresJudgement judgement;
    private final List<FaultView> views;
    private final Survivors survivors;
    private final FailureCase asked;
    private final Settings settings;
    private Optional<GoesNext> next = Optional.empty();

    Several(
            Plant plant,
            FailuresJudgement judgement,
            List<FaultView> views,
            Survivors survivors,
            FailureCase asked,
            Settings settings) {
        this.plant = plant;
        this.judgement = judgement;
        this.views = views;
        this.survivors = survivors;
        this.asked = asked;
        this.settings = settings;
    }

    /** Works it out. */
    List<Section> sections(Work work) {
        FailurePairs pairs =
                FailurePairs.of(plant, judgement.sample().panel(), settings.threads(), work);
        List<Section> sections = new ArrayList<>();
        sections.add(pairs.counts());
        sections.add(pairs.worst(asked.pairsShown()));
        OtherPairing.of(plant, judgement.sample().panel()).ifPresent(sections::add);
        if (asked.triples() && !work.stopped()) {
            sections.addAll(
                    FanTriples.of(
                            plant,
                            judgement.sample().panel(),
                            asked.pairsShown(),
                            settings.threads(),
                            work));
        }
        if (asked.timelines() && !work.stopped()) {
            GoesNext found = GoesNext.of(plant, followed(pairs), settings.threads(), work);
            next = Optional.of(found);
            sections.add(found.table());
        }
        return sections;
    }

    /** What went next; empty before, and where nobody asked. */
    Optional<GoesNext> next() {
        return next;
    }

    /** Singles that stay in the air, and pairs of which the survivors pass a limit at once. */
    private List<GoesNext.Followed> followed(FailurePairs pairs) {
        List<GoesNext.Followed> all = new ArrayList<>();
        for (FaultView view : views) {
            view.found()
                    .point()
                    .filter(point -> isFollowed(view.found()))
                    .ifPresent(
                            point ->
                                    all.add(
                                            new GoesNext.Followed(
                                                    view.part(),
                                                    view.how(),
                                                    point.effect(),
                                                    point)));
        }
        pairs(pairs, all);
        return all;
    }

    /** The worst that stay in the air, as long as some are looked for. */
    private void pairs(FailurePairs pairs, List<GoesNext.Followed> all) {
        FaultPanel.Worker worker = judgement.sample().panel().worker();
        double[] p = plant.parameters().nominal();
        int followed = 0;
        int screened = 0;
        for (FailurePairs.Pair pair : pairs.all()) {
            if (followed == FOLLOWED_PAIRS || screened == SCREENED_PAIRS) {
                return;
            }
            if (isFollowed(pair.found())) {
                screened++;
                LossPoint point = worker.told(p, pair.effect()).point().orElseThrow();
                if (passes(point)) {
                    followed++;
                    all.add(
                            new GoesNext.Followed(
                                    pairs.one(pair),
                                    "and " + pairs.other(pair),
                                    pair.effect(),
                                    point));
                }
            }
        }
    }

    private boolean passes(LossPoint point) {
        return !survivors.newly(point).isEmpty();
    }

    private static boolean isFollowed(FaultPanel.Found found) {
        return switch (found.fate().outcome()) {
            case FLIES_ON, TURNS -> found.converged();
            case NO_EFFECT, SINKS, FALLS, STARTS_BY_ITSELF, UNSTEERED, TIPS, CLIMBS -> false;
        };
    }
}
