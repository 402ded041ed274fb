package liftwright.plant.supply;

/** How single cells differ from the mean of their pack. */
public sealed interface CellDraw {

    /**
     * As expected: the cells of the whole rig stand at the normal scores of their tolerance, in an
     * order that depends on their names alone. So the declared values too have a weakest cell.
     */
    record Expected() implements CellDraw {}

    /**
     * Drawn at random, addressed by seed, draw and name like every other number.
     *
     * @param widthScale factor on the doubt of each declared input, in the order of the parameter
     *     table's inputs
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Drawn(long seed, int draw, double[] widthScale) implements CellDraw {}
}
