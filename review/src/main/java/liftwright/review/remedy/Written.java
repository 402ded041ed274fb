package liftwright.review.remedy;

import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.QuantityWriter;
import liftwright.quantity.Reading;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Values as they stand in the file. */
final class Written {

    private Written() {}

    /** What stands at the path with another number, its own doubt and the builder's unit. */
    static String like(Rig rig, RigPath at, Quantity declared, double si) {
        String before =
                rig.declaration()
                        .at(at)
                        .map(tree -> tree instanceof Tree.Text(String text) ? text : "")
                        .orElse("");
        return QuantityWriter.writeLike(
                new Quantity(si, declared.dimension(), declared.tolerance()), before);
    }

    /** The double nearest to a decimal of six places, so that a step of 0.1 is written as one. */
    static double decimal(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }

    /** An angle as the parser would read it, to the last bit. */
    static double degreesSi(double degrees) {
        return switch (QuantityParser.parse(decimal(degrees) + " °", Dimensions.ANGLE)) {
            case Reading.Parsed<Quantity>(var angle) -> angle.si();
            case Reading.Refused<Quantity>(var refusal) ->
                    throw new IllegalStateException(refusal.toString());
        };
    }
}
