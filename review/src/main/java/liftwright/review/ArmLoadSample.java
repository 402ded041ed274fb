package liftwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.ArmJoint;
import liftwright.plant.balance.ArmLoad;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.ArmStrength;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.Band;
import liftwright.rig.Exertion;
import liftwright.rig.Wearer;

/**
 * What the wearer's arms hold at lift-off and at full throttle, and which share of their strength
 * that is, over the same draws as the verdict (no more of them than {@link #MOST_DRAWS}).
 */
final class ArmLoadSample {

    static final int MOST_DRAWS = 1024;

    private static final ArmJoint[] JOINTS = ArmJoint.values();
    private static final int PER_STATE = 2 * JOINTS.length;

    /** The two states that are told. */
    enum State {
        LIFT_OFF("at lift-off"),
        FULL_THROTTLE("at full throttle, held down");

        private final String words;

        State(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * One axis of one joint.
     *
     * @param side 0 left, 1 right
     * @param heldNm as declared; positive towards flexion, abduction and outward rotation
     * @param held its band
     * @param exertion what the wearer pushes; empty where no muscle does
     * @param strengthNm of that, as declared or published
     * @param origin where the strength comes from
     * @param share of the strength
     * @param shares its band
     */
    record Row(
            State state,
            int side,
            ArmJoint joint,
            double heldNm,
            Band held,
            Optional<Exertion> exertion,
            double strengthNm,
            String origin,
            double share,
            Band shares) {}

    private final Balancing balancing;
    private final ArmStrength strength;
    private final Settings settings;
    private final int draws;
    private final double[][] heldNm;
    private final double[][] shares;
    private final boolean[] solved;

    private ArmLoadSample(Balancing balancing, Wearer wearer, Settings settings, int draws) {
        this.balancing = balancing;
        this.settings = settings;
        this.draws = draws;
        strength = ArmStrength.of(wearer);
        heldNm = new double[2 * PER_STATE][draws];
        shares = new double[2 * PER_STATE][draws];
        solved = new boolean[draws];
    }

    /**
     * All rows; none where nobody wears the rig or nothing is strapped to the arms, where full
     * throttle has no operating point, or when stopped.
     *
     * @param drawn how many draws the verdict was made of
     */
    static List<Row> of(Balancing balancing, Settings settings, int drawn, Work work) {
        Optional<Wearer> wearer = balancing.rig().wearer();
        if (wearer.isEmpty() || !armsCarry(balancing)) {
            return List.of();
        }
        var sample =
                new ArmLoadSample(balancing, wearer.get(), settings, Math.min(drawn, MOST_DRAWS));
        return sample.rows(work);
    }

    private static boolean armsCarry(Balancing balancing) {
        return balancing.armsSteer()
                || balancing.rig().otherParts().stream().anyMatch(part -> onArm(part.mount()))
                || balancing.rig().packs().stream().anyMatch(pack -> onArm(pack.mount()));
    }

    private static boolean onArm(liftwright.rig.Mount mount) {
        return switch (mount.on()) {
            case FRAME, TRUNK -> false;
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM, LEFT_FOREARM, RIGHT_FOREARM -> true;
        };
    }

    private List<Row> rows(Work work) {
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        double[] strong = strength.table().nominal();
        double[] nominalNm = new double[2 * PER_STATE];
        if (!solve(worker, p, nominalNm)) {
            return List.of();
        }
        work.stage("arm loads", draws);
        int done =
                Draws.forEach(work, settings.threads(), draws, () -> new Scratch(this), this::draw);
        if (done < draws) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        for (State state : State.values()) {
            for (int side = 0; side < 2; side++) {
                for (ArmJoint joint : JOINTS) {
                    rows.add(row(state, side, joint, nominalNm, strong));
                }
            }
        }
        return rows;
    }

    private Row row(State state, int side, ArmJoint joint, double[] nominalNm, double[] strong) {
        int at = index(state, side, joint);
        double held = nominalNm[at];
        Optional<Exertion> exertion = joint.exertion(held);
        double can = exertion.map(own -> strength.nm(strong, own)).orElse(0.0);
        double share = exertion.isPresent() ? Math.abs(held) / can : 0;
        return new Row(
                state,
                side,
                joint,
                held,
                Bands.about(held, kept(heldNm[at])),
                exertion,
                can,
                exertion.map(strength::origin).orElse("no muscle holds it"),
                share,
                Bands.about(share, kept(shares[at])));
    }

    private double[] kept(double[] values) {
        double[] kept = new double[draws];
        int count = 0;
        for (int i = 0; i < draws; i++) {
            if (solved[i]) {
                kept[count++] = values[i];
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static final class Scratch {
        private final Balancing.Worker worker;
        private final double[] p;
        private final double[] strong;
        private final double[] nm = new double[2 * PER_STATE];

        private Scratch(ArmLoadSample sample) {
            worker = sample.balancing.worker();
            p = new double[sample.balancing.parameters().size()];
            strong = new double[sample.strength.table().size()];
        }
    }

    private void draw(Scratch scratch, int draw) {
        try {
            balancing.parameters().draw(settings.seed(), draw, scratch.p);
            strength.table().draw(settings.seed(), draw, scratch.strong);
            solved[draw] = solve(scratch.worker, scratch.p, scratch.nm);
        } catch (ImpossibleValueException beyond) {
            return; // told by the verdict, which counts it
        }
        for (State state : State.values()) {
            for (int side = 0; side < 2; side++) {
                for (ArmJoint joint : JOINTS) {
                    int at = index(state, side, joint);
                    double held = scratch.nm[at];
                    heldNm[at][draw] = held;
                    shares[at][draw] =
                            joint.exertion(held)
                                    .map(own -> Math.abs(held) / strength.nm(scratch.strong, own))
                                    .orElse(0.0);
                }
            }
        }
    }

    private static int index(State state, int side, ArmJoint joint) {
        int offset =
                switch (state) {
                    case LIFT_OFF -> 0;
                    case FULL_THROTTLE -> PER_STATE;
                };
        return offset + side * JOINTS.length + Arrays.asList(JOINTS).indexOf(joint);
    }

    /** Moments in both states; false where one has no operating point. */
    private static boolean solve(Balancing.Worker worker, double[] p, double[] nm) {
        HoverPoint point = worker.liftOff(p);
        if (!point.converged()) {
            return false;
        }
        fill(State.LIFT_OFF, worker.armLoads(p, point.mass(), point.ledger().fans()), nm);
        Optional<List<FanAtWork>> full = worker.fullThrottle(p, point.mass().centre());
        full.ifPresent(
                work -> fill(State.FULL_THROTTLE, worker.armLoads(p, point.mass(), work), nm));
        return full.isPresent();
    }

    private static void fill(State state, List<ArmLoad> loads, double[] nm) {
        for (int side = 0; side < loads.size(); side++) {
            for (ArmJoint joint : JOINTS) {
                nm[index(state, side, joint)] = loads.get(side).heldNm(joint);
            }
        }
    }
}
