/** The parts book: generic parts whose values stand in until the builder measures their own. */
@NullMarked
package liftwright.rig.book;

import org.jspecify.annotations.NullMarked;
