package liftwright.logbook.store;

/** What is said of something that an interrupted program left. */
final class Remains {

    static final String WORDS =
            "is left of an interrupted addition that was never acknowledged; it is read by nobody"
                    + " and may be deleted";

    private Remains() {}
}
