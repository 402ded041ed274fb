package liftwright.learning.trend;

import java.time.LocalDate;
import liftwright.learning.explain.Departures;
import liftwright.rig.Rig;

/**
 * One test of a logbook.
 *
 * @param name its id
 * @param on its day
 * @param rig as it was on that day
 * @param departures what the test says of each part
 */
public record DatedTest(String name, LocalDate on, Rig rig, Departures departures) {}
