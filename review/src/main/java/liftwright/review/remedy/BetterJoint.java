package liftwright.review.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.book.BookJoint;
import liftwright.rig.book.PartsBook;

/** New joints in place of damaged ones, or joints of a higher rating in place of hot ones. */
final class BetterJoint {

    private static final int MOST = 5;

    /** What a file may say of a joint that holds for the old one only. */
    private static final List<String> OF_THE_OLD =
            List.of("resistance", "rating", "damage", "growth", "heat capacity", "mass");

    private BetterJoint() {}

    /** As new. */
    static List<Candidate> asNew(Rig rig, Set<RigPath> places) {
        Together<Element.Joint> damaged =
                Together.at(places, Element.Joint.class, rig)
                        .only(joint -> joint.wear().damage().si() != 1);
        return damaged.candidate(
                1,
                _ -> Sentence.words("new joints in place of the damaged ones"),
                Sentence.words("all of them"),
                _ -> damaged.each(joint -> damaged.without(joint, List.of("damage"))));
    }

    /** Of the next higher ratings in the parts book, of the same form where it has any. */
    static List<Candidate> rated(Rig rig, Set<RigPath> places) {
        Together<Element.Joint> joints =
                Together.at(places, Element.Joint.class, rig)
                        .only(joint -> !higher(joint).isEmpty());
        int most =
                joints.elements().stream().mapToInt(joint -> higher(joint).size()).max().orElse(0);
        return joints.candidate(
                Math.min(MOST, most),
                steps ->
                        Sentence.words(
                                joints.named(joint -> step(joint, steps))
                                        + " in place of "
                                        + joints.named(Element.Joint::kind)),
                Sentence.words("one size"),
                steps ->
                        joints.each(
                                joint ->
                                        Stream.concat(
                                                Stream.of(
                                                        new Change.Set(
                                                                joint.declaredAt().child("joint"),
                                                                step(joint, steps))),
                                                joints.without(joint, OF_THE_OLD))));
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
}
