package liftwright.learning.replay;

import liftwright.plant.recording.Track;

/**
 * A channel that was recorded and that the plant does not predict.
 *
 * @param track as recorded
 * @param why in words
 */
public record Unread(Track track, String why) {}
