package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Sentence;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Ask.What;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Tether;

/**
 * Ways to a tether that holds: down-lines, a shorter or softer line, a stronger anchor, ballast.
 */
final class TetherMoves {

    private static final double STEP_M = 0.1;
    private static final double STRENGTH_STEP_N = 1000;
    private static final int MOST_STRENGTH = 30;
    private static final double BALLAST_STEP_KG = 20;
    private static final int MOST_BALLAST = 40;
    private static final int LINES = 4;
    private static final double MOST_HIGHER_M = 1.5;

    private final Rig rig;
    private final Tether tether;
    private final Set<What> lacking;

    private TetherMoves(Rig rig, Tether tether, Set<What> lacking) {
        this.rig = rig;
        this.tether = tether;
        this.lacking = lacking;
    }

    /**
     * All of a rig.
     *
     * @param lacking what has no margin left
     * @param roomM height of the soles at which a climb strikes, m
     * @param ringM height of the ring above the soles, m
     */
    static List<Candidate> of(Rig rig, Set<What> lacking, double roomM, double ringM) {
        return rig.restraint()
                .tether()
                .map(tether -> new TetherMoves(rig, tether, lacking).candidates(roomM, ringM))
                .orElse(List.of());
    }

    private List<Candidate> candidates(double roomM, double ringM) {
        List<Candidate> all = new ArrayList<>();
        boolean climbs = isAny(What.HEADROOM, What.FREE_FALL, What.LANDING, What.SIDE_REACH);
        if (climbs) {
            downLines(roomM, ringM).ifPresent(all::add);
        }
        if (climbs || isAny(What.ARREST, What.ANCHOR, What.LINE, What.CLEARANCE, What.INGESTION)) {
            shorter(tether.length(), "length", "the line").ifPresent(all::add);
        }
        if (climbs || isAny(What.CLEARANCE)) {
            higher().ifPresent(all::add);
        }
        if (isAny(What.ARREST, What.ANCHOR, What.LINE)) {
            all.add(softer());
        }
        if (isAny(What.ANCHOR)) {
            stronger(tether.anchorStrength(), "anchor strength", "an anchor").ifPresent(all::add);
        }
        if (isAny(What.LINE)) {
            stronger(tether.lineStrength(), "line strength", "a line").ifPresent(all::add);
        }
        if (isAny(What.DOWN_LINE)) {
            tether.downLines()
                    .ifPresent(
                            down -> {
                                stronger(down.strength(), "down-line strength", "down-lines")
                                        .ifPresent(all::add);
                                all.add(more(down));
                            });
        }
        if (isAny(What.GANTRY_TIPS, What.GANTRY_SLIDES)) {
            tether.gantry().map(this::ballast).ifPresent(all::add);
        }
        return all;
    }

    private boolean isAny(What... of) {
        for (Ask.What what : of) {
            if (lacking.contains(what)) {
                return true;
            }
        }
        return false;
    }

    /** As long as the head room leaves, then shorter, down to the height that is asked. */
    private Optional<Candidate> downLines(double roomM, double ringM) {
        double leastM = rig.demands().height().si();
        if (tether.downLines().isPresent()) {
            return shorter(tether.downLines().get().length(), "down-line length", "the down-lines");
        }
        int most = (int) Math.floor((roomM - leastM) / STEP_M);
        RigPath at = tether.declaredAt();
        return most < 1
                ? Optional.empty()
                : Optional.of(
                        new Candidate(
                                most,
                                steps ->
                                        Sentence.words(
                                                        "hold it down with "
                                                                + LINES
                                                                + " lines from the ring to the ground, each ")
                                                .then(
                                                        Measure.LENGTH,
                                                        ringM + roomM - STEP_M * steps)
                                                .then(" long"),
                                Sentence.start().then(Measure.LENGTH, STEP_M),
                                steps ->
                                        List.of(
                                                new Change.Set(
                                                        at.child("down-lines"),
                                                        Integer.toString(LINES)),
                                                new Change.Set(
                                                        at.child("down-line length"),
                                                        metres(ringM + roomM - STEP_M * steps)),
                                                new Change.Set(
                                                        at.child("down-line strength"), "10 kN"))));
    }

    private static String metres(double m) {
        return String.format(Locale.ROOT, "%.2f m", m);
    }

    private Optional<Candidate> shorter(Quantity length, String key, String what) {
        int most = (int) Math.floor(0.6 * length.si() / STEP_M);
        RigPath at = tether.declaredAt().child(key);
        return most < 1
                ? Optional.empty()
                : Optional.of(
                        new Candidate(
                                most,
                                steps ->
                                        Sentence.words("shorten " + what + " by ")
                                                .then(Measure.LENGTH, STEP_M * steps)
                                                .then(" to ")
                                                .then(Measure.LENGTH, length.si() - STEP_M * steps),
                                Sentence.start().then(Measure.LENGTH, STEP_M),
                                steps ->
                                        List.of(StandMoves.set(rig, at, length, -STEP_M * steps))));
    }

    /** Up to the ceiling or the beam; a little where neither is declared. */
    private Optional<Candidate> higher() {
        double topM =
                rig.restraint()
                        .room()
                        .flatMap(room -> room.beam().or(room::ceiling))
                        .map(Quantity::si)
                        .orElse(tether.anchorHeight().si() + MOST_HIGHER_M);
        int most = (int) Math.floor((topM - tether.anchorHeight().si()) / STEP_M + 1e-9);
        RigPath at = tether.declaredAt().child("anchor height");
        return most < 1
                ? Optional.empty()
                : Optional.of(
                        new Candidate(
                                most,
                                steps ->
                                        Sentence.words("take an anchor ")
                                                .then(Measure.LENGTH, STEP_M * steps)
                                                .then(" higher"),
                                Sentence.start().then(Measure.LENGTH, STEP_M),
                                steps ->
                                        List.of(
                                                StandMoves.set(
                                                        rig,
                                                        at,
                                                        tether.anchorHeight(),
                                                        STEP_M * steps))));
    }

    private Candidate softer() {
        RigPath at = tether.declaredAt().child("stiffness");
        return new Candidate(
                9,
                steps ->
                        Sentence.words("put something soft into the line, to ")
                                .then(Measure.PERCENT, 1 - 0.1 * steps)
                                .then(" of its stiffness"),
                Sentence.start().then(Measure.PERCENT, 0.1),
                steps ->
                        List.of(
                                StandMoves.set(
                                        rig,
                                        at,
                                        tether.stiffness(),
                                        -0.1 * steps * tether.stiffness().si())));
    }

    private Optional<Candidate> stronger(Optional<Quantity> strength, String key, String what) {
        RigPath at = tether.declaredAt().child(key);
        return strength.map(
                now ->
                        new Candidate(
                                MOST_STRENGTH,
                                steps ->
                                        Sentence.words("take " + what + " that bears ")
                                                .then(
                                                        Measure.THRUST,
                                                        now.si() + STRENGTH_STEP_N * steps),
                                Sentence.start().then(Measure.THRUST, STRENGTH_STEP_N),
                                steps ->
                                        List.of(
                                                StandMoves.set(
                                                        rig, at, now, STRENGTH_STEP_N * steps))));
    }

    private Candidate more(Tether.DownLines down) {
        RigPath at = tether.declaredAt().child("down-lines");
        return new Candidate(
                Math.max(1, 12 - down.count()),
                steps -> Sentence.words(steps + " more down-lines of the same kind"),
                Sentence.words("1 line"),
                steps -> List.of(new Change.Set(at, Integer.toString(down.count() + steps))));
    }

    private Candidate ballast(Tether.Gantry gantry) {
        RigPath at = gantry.declaredAt().child("mass");
        return new Candidate(
                MOST_BALLAST,
                steps ->
                        Sentence.words("put ")
                                .then(Measure.MASS, BALLAST_STEP_KG * steps)
                                .then(" of ballast on the feet of the gantry"),
                Sentence.start().then(Measure.MASS, BALLAST_STEP_KG),
                steps -> List.of(StandMoves.set(rig, at, gantry.mass(), BALLAST_STEP_KG * steps)));
    }
}
