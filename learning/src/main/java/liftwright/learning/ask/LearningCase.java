package liftwright.learning.ask;

import java.util.Optional;
import liftwright.plant.recording.Recording;
import liftwright.rig.Rig;

/**
 * A test to be explained.
 *
 * @param rig as it was on the day of the test, with what tests found unless that is left out
 * @param rigDigest digest of its file
 * @param test its id in the logbook, or the name of the log; for words alone
 * @param recording what was measured
 * @param card of the programme that was run; empty where none was
 */
public record LearningCase(
        Rig rig, String rigDigest, String test, Recording recording, Optional<String> card) {}
