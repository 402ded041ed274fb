package liftwright.rig.book;

/**
 * A generic connector, lug or splice.
 *
 * @param name as written after {@code joint}
 * @param resistanceOhm out and back together, new and clean, Ω
 * @param doubtShare how far the resistance may be off either way, share of it
 * @param ratingA continuous current as usually advertised, A
 * @param source where the values come from
 */
public record BookJoint(
        String name, double resistanceOhm, double doubtShare, double ratingA, String source) {}
