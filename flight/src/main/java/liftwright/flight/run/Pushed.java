package liftwright.flight.run;

/**
 * How hard jets of other modules push one of a scene: on its body and on the air that its fans turn
 * into their own. What they take of its thrust is not counted.
 *
 * @param name of it
 * @param mostN greatest push, any way, N
 * @param weightShare the same over its weight, 1
 * @param atS when that is, s
 */
public record Pushed(String name, double mostN, double weightShare, double atS) {}
