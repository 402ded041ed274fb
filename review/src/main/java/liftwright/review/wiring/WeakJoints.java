package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.AircraftWire;
import liftwright.physics.RatedWire;
import liftwright.quantity.Measure;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.rig.book.PartsBook;

/**
 * Joints that are rated for less than the wire beside them, both by a rise of 30 K in still air: a
 * fuse chosen for the wire does not protect such a joint.
 */
final class WeakJoints {

    private WeakJoints() {}

    /**
     * @param wireA current at which the thinnest wire beside it, alone in still air, warms by 30 K
     * @param fuseA least rating of a fuse in its chain; infinite where there is none
     */
    record Weak(Element.Joint joint, Element.Run run, double ratingA, double wireA, double fuseA) {}

    static List<Weak> of(Rig rig) {
        List<Weak> weak = new ArrayList<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            Optional<Element.Run> thinnest =
                    chain.elements().stream()
                            .filter(Element.Run.class::isInstance)
                            .map(Element.Run.class::cast)
                            .min(Comparator.comparingDouble(WeakJoints::areaM2));
            if (thinnest.isEmpty()) {
                continue;
            }
            double fuseA =
                    chain.elements().stream()
                            .filter(Element.Fuse.class::isInstance)
                            .mapToDouble(fuse -> ((Element.Fuse) fuse).rating().si())
                            .min()
                            .orElse(Double.POSITIVE_INFINITY);
            double wireA = risesAtA(thinnest.get());
            for (Element element : chain.elements()) {
                OptionalDouble rating = SolderingList.rating(element);
                if (element instanceof Element.Joint joint
                        && rating.isPresent()
                        && rating.getAsDouble() < wireA) {
                    weak.add(new Weak(joint, thinnest.get(), rating.getAsDouble(), wireA, fuseA));
                }
            }
        }
        return weak;
    }

    private static double areaM2(Element.Run run) {
        return run.conductors() * AircraftWire.of(run.gauge()).areaM2();
    }

    /** Greatest current of a joint whose rated wire is still this one, A. */
    static double risesAtA(Element.Run run) {
        double wall = run.covering().wall().si();
        double wpmK = PartsBook.insulation(run.covering().material()).conductivityWpmK();
        double low = 0.01;
        double high = 2000;
        for (int k = 0; k < 50; k++) {
            double middle = Math.sqrt(low * high);
            RatedWire rated = RatedWire.of(middle, wall, wpmK);
            boolean carried =
                    rated.conductors() == 1
                            && rated.wire().areaM2()
                                    <= AircraftWire.of(run.gauge()).areaM2() * (1 + 1e-9);
            if (carried) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return run.conductors() * low;
    }

    static Optional<Finding> finding(Rig rig) {
        List<Weak> weak = of(rig);
        return weak.stream()
                .min(
                        Comparator.comparingDouble((Weak one) -> one.ratingA / one.wireA)
                                .thenComparing(one -> one.joint.id()))
                .map(
                        worst ->
                                Finding.of(
                                                weak.stream()
                                                                .anyMatch(
                                                                        one ->
                                                                                one.fuseA
                                                                                        > one.ratingA)
                                                        ? Severity.WARNS
                                                        : Severity.NOTES,
                                                "joint-below-wire",
                                                Sentence.words(
                                                                worst.joint.kind()
                                                                        + " "
                                                                        + worst.joint.id()
                                                                        + Unfused.others(
                                                                                weak.size())
                                                                        + " is rated for ")
                                                        .then(Measure.CURRENT, worst.ratingA)
                                                        .then(", the wire beside it for ")
                                                        .then(Measure.CURRENT, worst.wireA),
                                                "the joint is the weakest place, and a fuse chosen for the"
                                                        + " wire does not protect it")
                                        .about(worst.joint.id().text())
                                        .at(worst.joint.declaredAt().child("rating").toString())
                                        .against(
                                                Value.of("part-rating", worst.ratingA),
                                                new Finding.Limit(
                                                        Value.of("part-rating", worst.wireA),
                                                        "current that warms the wire by 30 K in"
                                                                + " still air, as EIA-364-70 rates"
                                                                + " joints")));
    }
}
