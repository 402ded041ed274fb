/** The words of format 1: one class a section, each key with its meaning, range and default. */
@NullMarked
package liftwright.rig.shape.words;

import org.jspecify.annotations.NullMarked;
