package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.plant.Balancing;
import liftwright.review.remedy.ArmAngles;
import liftwright.review.remedy.Candidate;
import liftwright.review.remedy.Shift;
import liftwright.rig.Rig;

/**
 * Ways to balance a rig, each no longer than helps: the arm angles that cancel the moments, and one
 * mount, pack or part moved along one axis. How far a move goes on helping is looked for at the
 * declared values; only the few best are judged with their bands.
 */
final class BalanceMoves {

    private static final int BEST = 3;

    private BalanceMoves() {}

    static List<Candidate> of(Rig rig, BalanceJudgement judgement) {
        List<Candidate> candidates = new ArrayList<>();
        switch (judgement.steering()) {
            case ARMS -> arms(rig).ifPresent(candidates::add);
            case NOTHING, COMPUTER -> {}
        }
        record Helped(Candidate candidate, double nominal) {}
        List<Helped> helped = new ArrayList<>();
        for (Candidate whole : Shift.of(rig)) {
            int steps = best(rig, whole, judgement.nominal());
            if (steps > 0) {
                Candidate shorter =
                        new Candidate(steps, whole.name(), whole.step(), whole.changes());
                helped.add(new Helped(shorter, nominal(rig, whole, steps)));
            }
        }
        helped.sort(Comparator.comparingDouble(Helped::nominal).reversed());
        helped.stream().limit(BEST).map(Helped::candidate).forEach(candidates::add);
        return candidates;
    }

    private static Optional<Candidate> arms(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        return ArmTrim.of(worker, p, worker.liftOff(p))
                .flatMap(trim -> rig.wearer().map(wearer -> ArmAngles.of(wearer, trim.turnRad())));
    }

    /**
     * Steps after which more of a move no longer helps; 0 where the first does not. The number
     * rises to its best and falls.
     */
    private static int best(Rig rig, Candidate move, double without) {
        if (!(nominal(rig, move, 1) > without)) {
            return 0;
        }
        int low = 1;
        int high = move.most();
        while (low < high) {
            int middle = (low + high) / 2;
            if (nominal(rig, move, middle + 1) > nominal(rig, move, middle)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double nominal(Rig rig, Candidate move, int steps) {
        return Revised.with(rig, move.changes().apply(steps))
                .map(revised -> BalanceJudge.nominal(Balancing.of(revised)))
                .orElse(Steering.WORST);
    }
}
