package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Run;

/** A random rig that feeds its fans in trees, and a run on it. */
record RandomCard(Rig rig, Run run) {

    /** Larger rigs tell nothing more and take longer. */
    private static final int MOST_FANS = 6;

    static RandomCard draw(RandomGenerator random) {
        while (true) {
            // The truth has no screens of its own: rigs of the test have none.
            String yaml = RandomTrialRig.yaml(random).replaceAll("(?m)^    intake: .*\\R", "");
            Rig rig = RandomTrialRig.rig(yaml);
            if (rig.fans().size() <= MOST_FANS) {
                return new RandomCard(rig, run(rig, random));
            }
        }
    }

    private static Run run(Rig rig, RandomGenerator random) {
        boolean hangs =
                rig.mounts().stream().allMatch(mount -> mount.on() == Mount.Carrier.FRAME)
                        && random.nextBoolean();
        List<Run.Step> steps = new ArrayList<>();
        double top = hangs ? 0.3 + 0.4 * random.nextDouble() : 0.5 + 0.45 * random.nextDouble();
        double rise = 3 + 5 * random.nextDouble();
        double hold = 5 + 15 * random.nextDouble();
        int count = 2 + random.nextInt(2);
        for (int k = 1; k <= count; k++) {
            double share = top * k / count;
            steps.add(
                    new Run.Step(
                            hangs ? new Run.Level.OfWeight(share) : new Run.Level.Throttle(share),
                            rise,
                            hold));
        }
        return new Run(
                fans(rig, hangs || random.nextInt(3) > 0, random),
                hangs ? Run.Held.TETHER : Run.Held.STAND,
                false,
                steps);
    }

    private static List<PartId> fans(Rig rig, boolean all, RandomGenerator random) {
        Mount one = rig.fans().get(random.nextInt(rig.fans().size())).mount();
        return rig.fans().stream()
                .filter(fan -> all || fan.mount().equals(one))
                .map(Fan::id)
                .toList();
    }

    /** Duty of each fan at full throttle. */
    static double[] groupShares(Rig rig) {
        double[] shares = new double[rig.fans().size()];
        Arrays.fill(shares, 1);
        for (Control.Group group : rig.control().groups()) {
            for (int k = 0; k < shares.length; k++) {
                if (group.fans().contains(rig.fans().get(k).id())) {
                    shares[k] = group.share().si();
                }
            }
        }
        return shares;
    }
}
