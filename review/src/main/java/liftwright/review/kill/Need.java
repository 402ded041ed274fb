package liftwright.review.kill;

import java.util.Locale;
import liftwright.rig.RigPath;

/**
 * One thing that a kill needs to act. What has the same sort and name is the same thing, whichever
 * kills it serves; names are compared without regard to case.
 *
 * @param sort what kind of thing
 * @param name as declared, or made from the kill that alone has it
 * @param declaredAt where it is said that a kill needs it
 */
record Need(Sort sort, String name, RigPath declaredAt) {

    /** Kinds of things. */
    enum Sort {
        /** Button, plug or line of one kill. */
        SWITCH,
        PERSON,
        RADIO,
        /** Pack or battery. */
        SUPPLY,
        /** Signal ground. */
        GROUND,
        /** Flight computer, with its program. */
        COMPUTER,
        /** From the throttle's receiver to the controllers. */
        LINK,
        CONTACTOR,
        /** What the builder named without saying what it is. */
        NAMED
    }

    /** What it is told by. */
    static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    boolean is(Sort other, String called) {
        return sort == other && folded(name).equals(folded(called));
    }

    String words() {
        return switch (sort) {
            case SWITCH -> "switch of " + name;
            case PERSON -> name;
            case RADIO -> "radio link " + name;
            case SUPPLY -> "supply " + name;
            case GROUND -> "ground " + name;
            case COMPUTER, LINK, NAMED -> name;
            case CONTACTOR -> "contactor " + name;
        };
    }

    /** How its failing keeps a kill from acting. */
    String failing() {
        return switch (sort) {
            case SWITCH -> "a button that sticks or a line that snags";
            case PERSON -> "whoever does not see it, is hurt or lets go acts on neither";
            case RADIO -> "a receiver that hangs, or a link that another jams, keeps every output";
            case SUPPLY -> "without it nothing acts";
            case GROUND -> "an open ground lets signals float";
            case COMPUTER -> "a program that hangs carries nothing out";
            case LINK -> "a frozen throttle line keeps its last command";
            case CONTACTOR -> "contacts weld, and a coil can be held on by a short";
            case NAMED -> "whatever stops it stops them all";
        };
    }
}
