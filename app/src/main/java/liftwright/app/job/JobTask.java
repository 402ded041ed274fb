package liftwright.app.job;

import java.util.Optional;
import liftwright.numerics.Work;
import liftwright.quantity.UnitSystem;

/** What a job does while it runs. */
public interface JobTask {

    /**
     * Works until it is whole or stopped; what was done before is not done again where it can be
     * kept.
     *
     * @return whether it is whole
     * @throws NoAnswerException where it cannot be worked out
     */
    boolean run(Progress work);

    /**
     * What is known by now, as a document for the page; may be asked while it runs.
     *
     * @return empty where nothing is known before it is whole
     */
    Optional<String> document(UnitSystem units);

    /** What its reader should know beside how it ended; empty where there is nothing. */
    default String told() {
        return "";
    }

    /** Work of which a part may have been done before. */
    interface Progress extends Work {

        @Override
        void already(long units);
    }

    /** Cannot be worked out, and not by trying again; the message is for the reader. */
    final class NoAnswerException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        public NoAnswerException(String sentence) {
            super(sentence, null, false, false);
        }
    }

    /** Makes what does a job. */
    @FunctionalInterface
    interface Maker {

        /**
         * @throws NoAnswerException where it cannot be worked out as things stand
         */
        JobTask make(JobNote note);
    }
}
