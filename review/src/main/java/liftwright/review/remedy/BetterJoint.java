package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.rig.book.BookJoint;
import liftwright.rig.book.PartsBook;

/** New joints in place of damaged ones, or joints of a higher rating in place of hot ones. */
final class BetterJoint {

    private static final int MOST = 5;

    /** What a file may say of a joint that holds for the old one only. */
    private static final List<String> OF_THE_OLD =
            List.of("resistance", "rating", "damage", "growth", "heat capacity", "mass");

    private BetterJoint() {}

    private static Map<RigPath, Element.Joint> joints(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Joint> joints = new LinkedHashMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            for (Element element : chain.elements()) {
                if (element instanceof Element.Joint joint && places.contains(joint.declaredAt())) {
                    joints.putIfAbsent(joint.declaredAt(), joint);
                }
            }
        }
        return joints;
    }

    /** As new. */
    static List<Candidate> asNew(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Joint> damaged = joints(rig, places);
        damaged.values().removeIf(joint -> joint.wear().damage().si() == 1);
        if (damaged.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        1,
                        _ -> Sentence.words("new joints in place of the damaged ones"),
                        Sentence.words("all of them"),
                        _ -> {
                            List<Change> changes = new ArrayList<>();
                            damaged.keySet().forEach(at -> remove(rig, at, "damage", changes));
                            return changes;
                        }));
    }

    /** Of the next higher ratings in the parts book, of the same form where it has any. */
    static List<Candidate> rated(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Joint> joints = joints(rig, places);
        joints.values().removeIf(joint -> higher(joint).isEmpty());
        if (joints.isEmpty()) {
            return List.of();
        }
        int most = joints.values().stream().mapToInt(joint -> higher(joint).size()).max().orElse(0);
        return List.of(
                new Candidate(
                        Math.min(MOST, most),
                        steps ->
                                Sentence.words(
                                        String.join(
                                                        " and ",
                                                        joints.values().stream()
                                                                .map(joint -> step(joint, steps))
                                                                .distinct()
                                                                .toList())
                                                + " in place of "
                                                + String.join(
                                                        " and ",
                                                        joints.values().stream()
                                                                .map(Element.Joint::kind)
                                                                .distinct()
                                                                .toList())),
                        Sentence.words("one size"),
                        steps -> {
                            List<Change> changes = new ArrayList<>();
                            joints.forEach(
                                    (at, joint) -> {
                                        changes.add(
                                                new Change.Set(
                                                        at.child("joint"), step(joint, steps)));
                                        OF_THE_OLD.forEach(key -> remove(rig, at, key, changes));
                                    });
                            return changes;
                        }));
    }

    private static String step(Element.Joint joint, int steps) {
        List<String> names = higher(joint);
        return names.get(Math.min(names.size(), steps) - 1);
    }

    private static List<String> higher(Element.Joint joint) {
        double ratingA =
                joint.rating()
                        .map(rating -> rating.si())
                        .or(() -> PartsBook.joint(joint.kind()).map(BookJoint::ratingA))
                        .orElse(0.0);
        String form = joint.kind().split(" ", 2)[0];
        return PartsBook.jointNames().stream()
                .map(name -> PartsBook.joint(name).orElseThrow())
                .filter(other -> other.ratingA() > ratingA)
                .filter(other -> other.name().split(" ", 2)[0].equals(form))
                .sorted(Comparator.comparingDouble(BookJoint::ratingA))
                .map(BookJoint::name)
                .toList();
    }

    private static void remove(Rig rig, RigPath at, String key, List<Change> changes) {
        if (rig.declaration().at(at.child(key)).isPresent()) {
            changes.add(new Change.Remove(at.child(key)));
        }
    }
}
