package liftwright.plant.move;

/** A part cannot be moved; its message is a sentence for the one who asked. */
@SuppressWarnings("serial")
final class StaysException extends Exception {

    StaysException(String why) {
        super(why);
    }
}
