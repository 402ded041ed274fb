package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Intake;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * A more open grille before every intake. What it then lets through is for the guard question to
 * judge.
 */
final class OpenGrille {

    private static final double STEP = 0.01;

    /** A grille has bars. */
    private static final double MOST_FREE = 0.95;

    private OpenGrille() {}

    static List<Candidate> of(Rig rig) {
        Map<RigPath, Intake> intakes = new LinkedHashMap<>();
        rig.fans().stream()
                .flatMap(fan -> fan.intake().stream())
                .filter(intake -> intake.freeArea().si() < MOST_FREE)
                .forEach(intake -> intakes.putIfAbsent(intake.declaredAt(), intake));
        double least =
                intakes.values().stream()
                        .flatMapToDouble(
                                intake -> Stream.of(intake).mapToDouble(i -> i.freeArea().si()))
                        .min()
                        .orElse(MOST_FREE);
        int steps = (int) Math.ceil((MOST_FREE - least) / STEP - 1e-9);
        if (steps == 0) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        steps,
                        count ->
                                Sentence.words("open the grilles by ")
                                        .then(Measure.PERCENT, count * STEP)
                                        .then(" of their face, none beyond ")
                                        .then(Measure.PERCENT, MOST_FREE),
                        Sentence.start().then(Measure.PERCENT, STEP),
                        count -> changes(rig, intakes, count)));
    }

    private static List<Change> changes(Rig rig, Map<RigPath, Intake> intakes, int count) {
        List<Change> changes = new ArrayList<>();
        intakes.forEach(
                (at, intake) ->
                        changes.add(
                                new Change.Set(
                                        at.child("free area"),
                                        Written.like(
                                                rig,
                                                intake.declaredAt().child("free area"),
                                                intake.freeArea(),
                                                Math.min(
                                                        MOST_FREE,
                                                        intake.freeArea().si() + count * STEP)))));
        return changes;
    }
}
