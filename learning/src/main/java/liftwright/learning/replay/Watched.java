package liftwright.learning.replay;

import liftwright.plant.recording.Track;

/**
 * A channel that was recorded and that the plant predicts.
 *
 * @param track as recorded
 * @param blocks of which means are compared
 * @param missingShare share of its way from the start that the model leaves out, k = 2
 * @param missingSi the same where it goes nowhere, SI
 * @param missingOrigin where these are from
 */
public record Watched(
        Track track, Blocks blocks, double missingShare, double missingSi, String missingOrigin) {

    /** 95 % of the instrument's errors at a reading are smaller, SI. */
    public double errorSi(double readingSi) {
        return Math.hypot(track.errorSi(), track.errorShare() * readingSi);
    }

    /**
     * What the model leaves out of a value, k = 2, SI.
     *
     * @param waySi how far it has gone from its start
     */
    public double leftOutSi(double waySi) {
        return Math.hypot(missingShare * waySi, missingSi);
    }
}
