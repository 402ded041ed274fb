package liftwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
    private final long seed;
    private final double[][] heldNm = new double[2 * PER_STATE][0];
    private final double[][] shares = new double[2 * PER_STATE][0];
    private boolean[] solved = new boolean[0];

    private ArmLoadSample(Balancing balancing, Wearer wearer, long seed) {
        this.balancing = balancing;
        this.seed = seed;
        strength = ArmStrength.of(wearer);
    }

    /** Empty where nobody wears the rig or nothing is strapped to the arms. */
    static Optional<ArmLoadSample> of(Balancing balancing, long seed) {
        return balancing
                .rig()
                .wearer()
                .filter(_ -> armsCarry(balancing))
                .map(wearer -> new ArmLoadSample(balancing, wearer, seed));
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

    /** Makes room for so many draws, those made so far kept. */
    void reserve(int target) {
        int most = Math.min(target, MOST_DRAWS);
        for (int k = 0; k < heldNm.length; k++) {
            heldNm[k] = Arrays.copyOf(heldNm[k], most);
            shares[k] = Arrays.copyOf(shares[k], most);
        }
        solved = Arrays.copyOf(solved, most);
    }

    /**
     * All rows; none where full throttle has no operating point at the declared values.
     *
     * @param drawn how many draws the verdict was made of
     */
    List<Row> rows(int drawn) {
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        double[] strong = strength.table().nominal();
        double[] nominalNm = new double[2 * PER_STATE];
        if (!solve(worker, p, worker.liftOff(p), nominalNm)) {
            return List.of();
        }
        int draws = Math.min(drawn, MOST_DRAWS);
        List<Row> rows = new ArrayList<>();
        for (State state : State.values()) {
            for (int side = 0; side < 2; side++) {
                for (ArmJoint joint : JOINTS) {
                    rows.add(row(state, side, joint, nominalNm, strong, draws));
                }
            }
        }
        return rows;
    }

    private Row row(
            State state, int side, ArmJoint joint, double[] nominalNm, double[] strong, int draws) {
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
                Bands.about(held, kept(heldNm[at], draws)),
                exertion,
                can,
                exertion.map(strength::origin).orElse("no muscle holds it"),
                share,
                Bands.about(share, kept(shares[at], draws)));
    }

    private double[] kept(double[] values, int draws) {
        double[] kept = new double[draws];
        int count = 0;
        for (int i = 0; i < draws; i++) {
            if (solved[i]) {
                kept[count++] = values[i];
            }
        }
        return Arrays.copyOf(kept, count);
    }

    /** One draw to be made: strengths and moments. */
    static final class Scratch {
        private final double[] strong;
        private final double[] nm = new double[2 * PER_STATE];

        private Scratch(int strengths) {
            strong = new double[strengths];
        }
    }

    Scratch scratch() {
        return new Scratch(strength.table().size());
    }

    /**
     * Solves what the arms hold in one draw; nothing from {@link #MOST_DRAWS} on.
     *
     * @param worker that has just found {@code point} at {@code p}; it is at full throttle then
     */
    void draw(Balancing.Worker worker, double[] p, HoverPoint point, Scratch scratch, int draw) {
        if (draw >= MOST_DRAWS) {
            return;
        }
        try {
            strength.table().draw(seed, draw, scratch.strong);
        } catch (ImpossibleValueException beyond) {
            return; // a strength that none has: the others tell
        }
        solved[draw] = solve(worker, p, point, scratch.nm);
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
    private static boolean solve(
            Balancing.Worker worker, double[] p, HoverPoint point, double[] nm) {
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
