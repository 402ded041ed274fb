package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.review.failures.FaultRule;
import liftwright.rig.Change;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** What a rig has once and would need more often, and what a lost throttle should do. */
final class Spares {

    /** Of three that disagree two tell which is wrong. */
    private static final int SENSORS = 3;

    private static final double STEP_M = 0.05;
    private static final RigPath CONTROL = RigPath.of("control");

    private Spares() {}

    static List<Candidate> of(Rig rig, Set<FaultRule> rules) {
        List<Candidate> all = new ArrayList<>();
        if (rules.contains(FaultRule.UNSTEERED) || rules.contains(FaultRule.DISAGREES)) {
            List<Change> changes = new ArrayList<>();
            List<String> names = new ArrayList<>();
            for (Control.Sensor sensor : rig.control().sensors()) {
                if (sensor.count() < SENSORS) {
                    names.add(sensor.name());
                    changes.add(new Change.Set(sensor.declaredAt().child("count"), "" + SENSORS));
                }
            }
            if (!changes.isEmpty()) {
                all.add(one("carry three of each: " + String.join(", ", names), changes));
            }
        }
        if (rules.contains(FaultRule.HELD)) {
            all.add(
                    one(
                            "let a lost or frozen throttle signal cut the fans",
                            List.of(new Change.Set(CONTROL.child("link loss"), "cut"))));
        }
        return all;
    }

    /** A second computer helps where its loss lets the rig drop too hard or leaves it unsteered. */
    static List<Candidate> computer(Rig rig) {
        return rig.control().kind() == Control.Kind.FLIGHT_COMPUTER
                        && rig.control().computers() == 1
                ? List.of(
                        one(
                                "carry a second flight computer that takes over",
                                List.of(new Change.Set(CONTROL.child("computers"), "2"))))
                : List.of();
    }

    private static Candidate one(String words, List<Change> changes) {
        return new Candidate(
                1, _ -> Sentence.words(words), Sentence.words("this one change"), _ -> changes);
    }

    /** Stay lower. */
    static Candidate lower(Rig rig) {
        double heightM = rig.demands().height().si();
        return new Candidate(
                (int) Math.floor((heightM - STEP_M) / STEP_M + 1e-9),
                steps ->
                        Sentence.words("stay lower by ")
                                .then(Measure.LENGTH, STEP_M * steps)
                                .then(", no higher than ")
                                .then(Measure.LENGTH, heightM - STEP_M * steps),
                Sentence.start().then(Measure.LENGTH, STEP_M),
                steps ->
                        List.of(
                                new Change.Set(
                                        RigPath.of("demands", "height"),
                                        String.format(
                                                Locale.ROOT,
                                                "%s m",
                                                Written.decimal(heightM - STEP_M * steps)))));
    }
}
