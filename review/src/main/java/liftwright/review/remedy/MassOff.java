package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Change;
import liftwright.rig.OtherPart;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Carry less: a lighter wearer, or less of the heaviest part that is not fan, pack or wearer. */
final class MassOff {

    private static final double STEP_KG = 0.1;

    /** Beyond this share of a part, "less of it" is another part. */
    private static final double MOST_OF_A_PART = 0.6;

    /**
     * A lighter wearer is another person: crews are chosen within about so much; common practice.
     */
    private static final double MOST_OF_THE_WEARER = 0.15;

    private MassOff() {}

    static List<Candidate> of(Rig rig) {
        List<Candidate> candidates = new ArrayList<>();
        rig.wearer()
                .ifPresent(
                        wearer ->
                                candidates.add(
                                        less(
                                                rig,
                                                RigPath.of("wearer", "mass"),
                                                "the wearer",
                                                wearer.mass(),
                                                MOST_OF_THE_WEARER)));
        heaviest(rig)
                .ifPresent(
                        part ->
                                candidates.add(
                                        less(
                                                rig,
                                                part.declaredAt().child("mass"),
                                                part.id().text(),
                                                part.mass(),
                                                MOST_OF_A_PART)));
        return candidates;
    }

    private static Optional<OtherPart> heaviest(Rig rig) {
        return rig.otherParts().stream()
                .max(
                        Comparator.comparingDouble((OtherPart part) -> part.mass().si())
                                .thenComparing(OtherPart::id, Comparator.reverseOrder()));
    }

    private static Candidate less(
            Rig rig, RigPath at, String what, Quantity mass, double mostShare) {
        return new Candidate(
                (int) (mostShare * mass.si() / STEP_KG),
                steps ->
                        Sentence.words("take ")
                                .then(Measure.MASS, STEP_KG * steps)
                                .then(" off " + what + ", which leaves ")
                                .then(Measure.MASS, mass.si() - STEP_KG * steps),
                Sentence.start().then(Measure.MASS, STEP_KG),
                steps ->
                        List.of(
                                new Change.Set(
                                        at,
                                        Written.like(
                                                rig,
                                                at,
                                                mass,
                                                Written.decimal(mass.si() - STEP_KG * steps)))));
    }
}
