package liftwright.rig.csv;

import liftwright.rig.Problem.Code;

/** What stands beside a rig file: gives the bytes of the tables that the file names. */
@FunctionalInterface
public interface Beside {

    /** Of a rig file that is read without its folder. */
    Beside NOTHING =
            _ ->
                    new Fetched.Not(
                            Code.NO_SUCH_PART,
                            "a table that was not read, since only the rig file was given",
                            "Read the rig file from its folder.");

    /**
     * The file at a path, which is relative to the folder of the rig file. Never throws.
     *
     * @param path as the rig file names it
     */
    Fetched fetch(String path);

    /** What came of asking for a file. */
    sealed interface Fetched {

        /**
         * @param bytes of the file, at most one beyond {@link TableReader#MOST_BYTES}
         */
        @SuppressWarnings("ArrayRecordComponent")
        record Bytes(byte[] bytes) implements Fetched {}

        /**
         * There is none, or it may not be read.
         *
         * @param found what was found, as in a {@link liftwright.rig.Problem}
         * @param advice what to do, or empty
         */
        record Not(Code code, String found, String advice) implements Fetched {}
    }
}
