package liftwright.learning.correct;

import liftwright.learning.replay.Driven;
import liftwright.rig.correction.Grounds;

/**
 * A test that a fit sees.
 *
 * @param name of it, with the digest of its recording
 * @param driven the plant of the rig as it is declared, driven by the recording
 */
public record FitTest(Grounds.Test name, Driven driven) {}
