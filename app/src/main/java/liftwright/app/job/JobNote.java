package liftwright.app.job;

import java.time.Instant;

/**
 * A job as it is written down.
 *
 * @param id names it in its folder, from 1
 * @param begun when it was asked for first
 * @param told how it came to stand so, one line for the reader; empty where nothing is to be told
 * @param done of {@code total} units, when it stood still last
 */
public record JobNote(
        int id, JobSpec spec, Instant begun, JobState state, String told, long done, long total) {

    JobNote in(JobState state, String told) {
        return new JobNote(id, spec, begun, state, told, done, total);
    }

    JobNote of(JobSpec spec) {
        return new JobNote(id, spec, begun, state, told, done, total);
    }

    JobNote after(long done, long total) {
        return new JobNote(id, spec, begun, state, told, done, total);
    }
}
