/**
 * What was measured, kept: logs of tests read in from tables, a folder of open files for each test,
 * parts as they came in, packs over their lives, incidents.
 */
@NullMarked
package liftwright.logbook;

import org.jspecify.annotations.NullMarked;
