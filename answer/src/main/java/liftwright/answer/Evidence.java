package liftwright.answer;

import java.util.ArrayList;
import java.util.List;

/**
 * What an answer rests on.
 *
 * @param rigDigest SHA-256 digest of the rig file's bytes, or of the declaration when it was
 *     changed in memory
 * @param correctionsDigest digest of the corrections; "none" without
 * @param seed of the draws
 * @param draws used for the verdict
 * @param state in words: charge, air, motors cold or hot, wires
 * @param laws laws used, with validity
 * @param assumptions defaults that stood in, each with its origin
 * @param checks computed on this very run; one that fails makes the verdict undecided
 * @param measured what tables of measured rows told, and how well
 * @param corrected how much of the corrections counts
 */
public record Evidence(
        String rigDigest,
        String correctionsDigest,
        long seed,
        int draws,
        Sentence state,
        List<Law> laws,
        List<Assumption> assumptions,
        List<Check> checks,
        List<Told> measured,
        Corrected corrected) {

    public Evidence {
        laws = List.copyOf(laws);
        assumptions = List.copyOf(assumptions);
        checks = List.copyOf(checks);
        measured = List.copyOf(measured);
    }

    /** What rests on no correction. */
    public Evidence(
            String rigDigest,
            String correctionsDigest,
            long seed,
            int draws,
            Sentence state,
            List<Law> laws,
            List<Assumption> assumptions,
            List<Check> checks,
            List<Told> measured) {
        this(
                rigDigest,
                correctionsDigest,
                seed,
                draws,
                state,
                laws,
                assumptions,
                checks,
                measured,
                Corrected.NONE);
    }

    /**
     * The same of a rig that tests corrected.
     *
     * @param digest of the corrections
     * @param told what they found, behind what tables told
     */
    public Evidence corrected(String digest, Corrected how, List<Told> told) {
        var all = new ArrayList<>(measured);
        all.addAll(told);
        return new Evidence(
                rigDigest, digest, seed, draws, state, laws, assumptions, checks, all, how);
    }

    /**
     * How much of the corrections beside a rig file counts.
     *
     * @param held values in force
     * @param voided values that count for nothing
     * @param ofAnotherRevision whether the rig file was another when they were made
     * @param why a clause for everything that is void
     */
    public record Corrected(int held, int voided, boolean ofAnotherRevision, List<String> why) {

        /** There are no corrections, or they are left out of account. */
        public static final Corrected NONE = new Corrected(0, 0, false, List.of());

        public Corrected {
            why = List.copyOf(why);
        }
    }

    /** What rests on no table. */
    public Evidence(
            String rigDigest,
            String correctionsDigest,
            long seed,
            int draws,
            Sentence state,
            List<Law> laws,
            List<Assumption> assumptions,
            List<Check> checks) {
        this(
                rigDigest,
                correctionsDigest,
                seed,
                draws,
                state,
                laws,
                assumptions,
                checks,
                List.of());
    }

    /**
     * @param part path of what was measured
     * @param sentence one thing that its tables tell, or fail to tell
     */
    public record Told(String part, Sentence sentence) {}

    /**
     * @param name of the law
     * @param source where it comes from
     * @param validity where it holds
     * @param within whether this run stayed there
     */
    public record Law(String name, String source, String validity, boolean within) {}

    /**
     * @param path where it would be declared
     * @param value as it would be written
     * @param origin standard, common practice or from memory
     */
    public record Assumption(String path, String value, String origin) {}

    /**
     * @param name what was checked
     * @param residual what is left, relative unless the name says otherwise
     * @param allowed the most it may be
     */
    public record Check(String name, double residual, double allowed) {
        public boolean passed() {
            return residual <= allowed;
        }
    }
}
