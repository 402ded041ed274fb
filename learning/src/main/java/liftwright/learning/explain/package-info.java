/**
 * Why a rig did not do what was promised: causes weighed by what was measured, missing newtons
 * shared out among groups of causes, the test that would tell most, trends from test to test.
 */
@NullMarked
package liftwright.learning.explain;

import org.jspecify.annotations.NullMarked;
