package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.answer.Sentence;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultRule;
import liftwright.review.remedy.Candidate;
import liftwright.review.remedy.Candidates;
import liftwright.rig.Change;
import liftwright.rig.Rig;

/** Where the remedies of failures begin: at what ends a flight by itself. */
final class FailureCandidates {

    private FailureCandidates() {}

    static List<Candidate> of(Rig rig, List<FaultView> views) {
        List<FaultView> ending = views.stream().filter(FaultView::isSinglePoint).toList();
        List<Candidate> all = new ArrayList<>();
        if (ending.stream().anyMatch(view -> view.group().rule() == FaultRule.MOVES)) {
            List<Change> pairing = PairingSearch.better(rig);
            if (!pairing.isEmpty()) {
                all.add(
                        new Candidate(
                                1,
                                _ ->
                                        Sentence.words(
                                                "feed the fans of "
                                                        + pairing.size()
                                                        + " packs in other sets"),
                                Sentence.words("one other pairing"),
                                _ -> pairing));
            }
        }
        all.addAll(
                Candidates.forFailures(
                        rig, rules(ending), ending.stream().anyMatch(FailureCandidates::lands)));
        return all;
    }

    private static Set<FaultRule> rules(List<FaultView> views) {
        return views.stream().map(view -> view.group().rule()).collect(Collectors.toSet());
    }

    /** Whether it comes down upright, only too fast. */
    private static boolean lands(FaultView view) {
        FaultFate fate = view.found().fate();
        return switch (fate.outcome()) {
            case SINKS, FALLS -> true;
            case NO_EFFECT, FLIES_ON, TURNS, STARTS_BY_ITSELF, UNSTEERED, TIPS, CLIMBS -> false;
        };
    }
}
