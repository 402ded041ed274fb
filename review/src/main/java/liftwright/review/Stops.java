package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.plant.parameters.DeclaredInput;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.QuantityWriter;
import liftwright.quantity.Reading;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Values over the band of a declared value, each as it would stand in the file. */
final class Stops {

    /** To each side of what is declared. */
    static final int SIDE = 10;

    private Stops() {}

    /** From the lower end to the upper, what is declared in the middle; empty where none is set. */
    static List<String> of(Plant plant, DeclaredInput input) {
        Rig rig = plant.rig();
        Optional<String> text = text(rig, input.at());
        if (text.isEmpty()
                || !(QuantityParser.parse(text.get())
                        instanceof Reading.Parsed<Quantity>(var declared))
                || declared.tolerance().isNone()
                || Math.abs(declared.si() - nominal(plant, input))
                        > 1e-9 * Math.abs(declared.si())) {
            return List.of(); // a table tells it, or a default stands for it
        }
        List<String> stops = new ArrayList<>();
        for (int k = -SIDE; k <= SIDE; k++) {
            double half = k > 0 ? declared.tolerance().plus() : declared.tolerance().minus();
            stops.add(
                    k == 0
                            ? text.get()
                            : QuantityWriter.writeLike(
                                    new Quantity(
                                            rounded(declared.si() + half * k / SIDE, half),
                                            declared.dimension(),
                                            declared.tolerance()),
                                    text.get()));
        }
        boolean reads =
                reads(rig, input.at(), stops.getFirst()) && reads(rig, input.at(), stops.getLast());
        return reads ? stops : List.of();
    }

    /** A thousandth of the doubt is finer than a slider. */
    private static double rounded(double si, double half) {
        double step = Math.pow(10, Math.floor(Math.log10(half)) - 3);
        return half == 0 ? si : Math.rint(si / step) * step;
    }

    private static double nominal(Plant plant, DeclaredInput input) {
        return plant.parameters().nominal()[input.rows().getFirst()];
    }

    private static Optional<String> text(Rig rig, RigPath at) {
        return rig.declaration()
                .at(at)
                .flatMap(
                        tree ->
                                tree instanceof Tree.Text(String text)
                                        ? Optional.of(text)
                                        : Optional.empty());
    }

    private static boolean reads(Rig rig, RigPath at, String value) {
        return Revised.with(rig, List.of(new Change.Set(at, value))).isPresent();
    }
}
