package liftwright.numerics;

/**
 * How a long computation tells its progress and learns that it should stop. Passed down; every
 * method may be called from any thread and returns at once.
 */
public interface Work {

    /**
     * A new stage begins.
     *
     * @param name for the user
     * @param total units it has, &gt; 0
     */
    void stage(String name, long total);

    /** So many more units of the stage are done. */
    void done(long units);

    /** So many units of the stage were done before it began: they took no time now. */
    default void already(long units) {
        done(units);
    }

    /** Where finished parts are kept, and were before. */
    default Kept kept() {
        return Kept.nothing();
    }

    /** Whether to stop: asked before each draw or case. */
    boolean stopped();

    /** Part of a stage that is told by its whole: tells nobody and is stopped with it. */
    static Work within(Work whole) {
        return new Within(whole);
    }

    /** Work that tells nobody and is never stopped. */
    static Work quiet() {
        return Quiet.QUIET;
    }
}
