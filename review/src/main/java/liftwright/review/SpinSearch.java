package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.SignChoice;
import liftwright.numerics.Work;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Fan;
import liftwright.rig.Rig;

/**
 * The spins that turn a rig least over its throttle band and the doubt of its swirl, all fans at
 * one throttle; of equal ones those that reverse the fewest fans. Spins change nothing else, so the
 * search is over signs of known moments ({@link SignChoice}); what it finds is made a rig and
 * computed anew.
 */
final class SpinSearch {

    /** Less than this is as good as none: a hundredth of drift, rad/s². */
    static final double ENOUGH_RADPS2 = 0.001;

    /** Branches after which the proof is given up; some seconds. */
    private static final long MOST_STEPS = 30_000_000L;

    /** Names of fans said in a sentence; the changes name all. */
    private static final int MOST_NAMES = 8;

    private SpinSearch() {}

    static Searched of(Rig rig, Work work) {
        work.stage("search for spins", 1);
        YawOverThrottle yaw = YawOverThrottle.of(rig);
        if (!yaw.spinsMatter()) {
            return new Searched(
                    List.of(
                            Finding.of(
                                    Finding.Severity.NOTES,
                                    "spins-do-nothing",
                                    Sentence.words("spins turn nothing: no jet keeps swirl"),
                                    "the share of swirl is declared as nought")),
                    List.of());
        }
        SignChoice.Found found =
                SignChoice.of(
                        yaw.other(),
                        yaw.bySpin(),
                        yaw.rightHand(),
                        ENOUGH_RADPS2 * yaw.inertiaKgm2(),
                        MOST_STEPS);
        work.done(1);
        double before = told(yaw.worstRadps2(yaw.rightHand()));
        double bound = told(found.bound() / yaw.inertiaKgm2());
        List<Change> changes = changes(rig, found.plus());
        Optional<Rig> revised = changes.isEmpty() ? Optional.of(rig) : Revised.with(rig, changes);
        if (revised.isEmpty()) {
            return new Searched(
                    List.of(
                            Finding.of(
                                    Finding.Severity.NOTES,
                                    "spins-not-written",
                                    Sentence.words(
                                            "spins that turn it less are known but cannot be written into this file"),
                                    "the exceptions that would say them do not read")),
                    List.of());
        }
        YawOverThrottle again = YawOverThrottle.of(revised.get());
        double after = told(again.worstRadps2(again.rightHand()));
        List<List<Value>> rows =
                List.of(
                        row("as declared", before, 0, bound, "–"),
                        row("best found", after, found.changes(), bound, proof(found)));
        Section table =
                new Section.Table(
                        "spin-search",
                        "Greatest yaw over the throttle band, by spins",
                        List.of(
                                "spin-pattern",
                                "worst-yaw",
                                "worst-yaw-bound",
                                "reversed-fans",
                                "search-proof"),
                        rows);
        return new Searched(
                List.of(finding(rig, yaw, found, before, after, changes)), List.of(table));
    }

    private static double told(double radps2) {
        return Rounding.off(radps2, Rounding.RADPS2);
    }

    private static List<Value> row(
            String name, double worst, int reversed, double bound, String proof) {
        return List.of(
                Value.words("spin-pattern", name),
                Value.of("worst-yaw", worst),
                Value.of("worst-yaw-bound", bound),
                Value.of("reversed-fans", reversed),
                Value.words("search-proof", proof));
    }

    private static String proof(SignChoice.Found found) {
        if (found.exact()) {
            return String.format(Locale.ROOT, "proven best, %,d branches", found.steps());
        }
        return "the bound stands; fewer reversed fans may do";
    }

    private static Finding finding(
            Rig rig,
            YawOverThrottle yaw,
            SignChoice.Found found,
            double before,
            double after,
            List<Change> changes) {
        if (found.changes() == 0) {
            return Finding.of(
                            Finding.Severity.NOTES,
                            "spins-best",
                            Sentence.words(
                                            "no other spins turn it less over the throttle band than ")
                                    .then(Measure.ANGULAR_ACCELERATION, before),
                            found.exact() ? "proven by a bound" : "none was found; not proven")
                    .judging(Value.of("worst-yaw", before));
        }
        Sentence name =
                Sentence.words(
                        String.format(
                                Locale.ROOT,
                                "build %d %s with the other spin: %s",
                                found.changes(),
                                found.changes() == 1 ? "fan" : "fans",
                                names(rig, yaw.rightHand(), found.plus())));
        return Finding.of(
                        Finding.Severity.NOTES,
                        "spins-better",
                        Sentence.words("other spins turn it with no more than ")
                                .then(Measure.ANGULAR_ACCELERATION, after)
                                .then(" over the throttle band, in place of ")
                                .then(Measure.ANGULAR_ACCELERATION, before),
                        "spins that cancel one another leave less swirl; a fan of the other spin has other blades")
                .judging(Value.of("worst-yaw", before))
                .mendedBy(
                        List.of(
                                new Remedy(
                                        name,
                                        changes,
                                        new Remedy.Effect.Helps(
                                                Value.of("worst-yaw", after),
                                                Value.of("worst-yaw-gain", after - before)))));
    }

    private static String names(Rig rig, boolean[] before, boolean[] after) {
        List<String> names = new ArrayList<>();
        for (int k = 0; k < before.length; k++) {
            if (before[k] != after[k]) {
                names.add(rig.fans().get(k).id().text());
            }
        }
        int more = names.size() - MOST_NAMES;
        return more > 0
                ? String.join(", ", names.subList(0, MOST_NAMES)) + " and " + more + " more"
                : String.join(", ", names);
    }

    /**
     * Exceptions for the fans that change, and for their twins, which would mirror them otherwise.
     */
    static List<Change> changes(Rig rig, boolean[] rightHand) {
        List<Fan> fans = rig.fans();
        Set<String> touched = new TreeSet<>();
        for (int k = 0; k < rightHand.length; k++) {
            if (rightHand[k] != (fans.get(k).spin() == Fan.Spin.RIGHT_HAND)) {
                touched.add(place(fans.get(k)));
            }
        }
        List<Change> changes = new ArrayList<>();
        for (int k = 0; k < rightHand.length; k++) {
            Fan fan = fans.get(k);
            if (touched.contains(place(fan))) {
                changes.add(
                        new Change.Set(
                                fan.declaredAt()
                                        .child("except")
                                        .child(fan.id().text())
                                        .child("spin"),
                                rightHand[k] ? "right-hand" : "left-hand"));
            }
        }
        return changes;
    }

    /** A fan and its twin have the same. */
    private static String place(Fan fan) {
        String id = fan.id().text();
        return fan.declaredAt() + "\n" + id.substring(id.lastIndexOf('.') + 1);
    }
}
