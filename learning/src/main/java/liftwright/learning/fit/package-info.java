/**
 * The numbers of a rig that a test leaves: rows of its parameter table, most probable given what
 * was declared and what was measured, with how well they are known and what the test does not tell.
 */
@NullMarked
package liftwright.learning.fit;

import org.jspecify.annotations.NullMarked;
