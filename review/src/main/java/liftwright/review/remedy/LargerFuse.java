package liftwright.review.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.book.FuseSeries;

/**
 * Fuses of a larger size in place of those that open too soon, of the form that they have: another
 * form does not go into its holder.
 */
final class LargerFuse {

    private static final int MOST = 6;

    /** What a file may say of a fuse that holds for the old one only. */
    private static final List<String> OF_THE_OLD =
            List.of("resistance", "points", "time doubt", "time constant", "heat capacity");

    private LargerFuse() {}

    static List<Candidate> of(Rig rig, Set<RigPath> places) {
        Together<Element.Fuse> fuses =
                Together.at(places, Element.Fuse.class, rig).only(fuse -> !larger(fuse).isEmpty());
        int most = fuses.elements().stream().mapToInt(fuse -> larger(fuse).size()).max().orElse(0);
        return fuses.candidate(
                Math.min(MOST, most),
                steps -> Sentence.words("fuses of " + fuses.named(fuse -> step(fuse, steps))),
                Sentence.words("one size"),
                steps ->
                        fuses.each(
                                fuse ->
                                        Stream.concat(
                                                Stream.of(
                                                        new Change.Set(
                                                                fuse.declaredAt().child("fuse"),
                                                                step(fuse, steps))),
                                                fuses.without(fuse, OF_THE_OLD))));
    }

    private static List<Double> larger(Element.Fuse fuse) {
        double ratingA = fuse.rating().si();
        return FuseSeries.of(fuse.opening().speed(), ratingA).largerThan(ratingA);
    }

    private static String step(Element.Fuse fuse, int steps) {
        List<Double> larger = larger(fuse);
        double size = larger.get(Math.min(larger.size(), steps) - 1);
        return String.format(Locale.ROOT, size == Math.rint(size) ? "%.0f A" : "%s A", size);
    }
}
