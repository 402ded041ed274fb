package liftwright.trials.measure;

import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.RigPath;

/**
 * All numbers that the readings of one card hang on, in one table: those of the rig that the card
 * needs, of its set-up, of its instruments and of what the laws leave out. Each is drawn by its
 * name, so that an instrument more changes no other number.
 */
final class Doubts {

    private final ParameterRows rows = new ParameterRows();
    private final String card;

    /**
     * @param card id of the card
     */
    Doubts(String card) {
        this.card = card;
    }

    /** Where parts of the plant declare theirs. */
    ParameterRows rows() {
        return rows;
    }

    /** A declared number of the rig that nothing else of the plant declares; above 0. */
    int declared(RigPath at, Quantity value) {
        return rows.row(at, at.toString(), value, Range.POSITIVE);
    }

    /**
     * A length or the like that whoever measures lays out.
     *
     * @param halfWidth 95 % of its errors are smaller
     * @return index in the vector
     */
    int setUp(String name, double si, double halfWidth) {
        return row("set-up", name, si, halfWidth, halfWidth);
    }

    /** An error that is 0 on average. */
    int error(String name, double halfWidth) {
        return row("error", name, 0, halfWidth, halfWidth);
    }

    /** What a law leaves out, as a factor. */
    int leftOut(String name, LeftOut leftOut) {
        return row("left out", name, 1, leftOut.moreShare(), leftOut.lessShare());
    }

    private int row(String kind, String name, double si, double plus, double minus) {
        return rows.row(
                RigPath.of("trials", card, kind, name),
                name,
                new Quantity(
                        si,
                        Dimension.NONE,
                        new Tolerance(plus, minus, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED)),
                Range.ANY);
    }

    /**
     * What the law behind a reading leaves out: a factor about 1, 95 % between 1 − less and 1 +
     * more.
     *
     * @param why in words, with its origin
     */
    record LeftOut(double lessShare, double moreShare, String why) {

        static final LeftOut NOTHING = new LeftOut(0, 0, "");

        static LeftOut even(double share, String why) {
            return new LeftOut(share, share, why);
        }
    }
}
