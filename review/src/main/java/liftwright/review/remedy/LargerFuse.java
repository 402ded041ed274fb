package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/** Fuses of a larger size in place of those that open too soon. */
final class LargerFuse {

    /** Ratings that are sold, A; from memory of the series of ISO 8820 and of bolt-down links. */
    private static final List<Double> SIZES =
            List.of(
                    1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0,
                    70.0, 80.0, 100.0, 125.0, 150.0, 175.0, 200.0, 225.0, 250.0, 300.0, 350.0,
                    400.0, 500.0);

    private static final int MOST = 6;

    /** What a file may say of a fuse that holds for the old one only. */
    private static final List<String> OF_THE_OLD =
            List.of("resistance", "points", "time doubt", "time constant", "heat capacity");

    private LargerFuse() {}

    static List<Candidate> of(Rig rig, Set<RigPath> places) {
        Map<RigPath, Element.Fuse> fuses = new LinkedHashMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            for (Element element : chain.elements()) {
                if (element instanceof Element.Fuse fuse && places.contains(fuse.declaredAt())) {
                    fuses.putIfAbsent(fuse.declaredAt(), fuse);
                }
            }
        }
        if (fuses.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Candidate(
                        MOST,
                        steps ->
                                Sentence.words(
                                        "fuses of "
                                                + String.join(
                                                        " and ",
                                                        fuses.values().stream()
                                                                .map(fuse -> step(fuse, steps))
                                                                .distinct()
                                                                .toList())),
                        Sentence.words("one size"),
                        steps -> {
                            List<Change> changes = new ArrayList<>();
                            fuses.forEach(
                                    (at, fuse) -> {
                                        changes.add(
                                                new Change.Set(
                                                        at.child("fuse"), step(fuse, steps)));
                                        for (String key : OF_THE_OLD) {
                                            if (rig.declaration().at(at.child(key)).isPresent()) {
                                                changes.add(new Change.Remove(at.child(key)));
                                            }
                                        }
                                    });
                            return changes;
                        }));
    }

    private static String step(Element.Fuse fuse, int steps) {
        List<Double> larger =
                SIZES.stream().filter(size -> size > fuse.rating().si() * (1 + 1e-9)).toList();
        double size =
                larger.isEmpty()
                        ? fuse.rating().si()
                        : larger.get(Math.min(larger.size(), steps) - 1);
        return String.format(Locale.ROOT, size == Math.rint(size) ? "%.0f A" : "%.1f A", size);
    }
}
