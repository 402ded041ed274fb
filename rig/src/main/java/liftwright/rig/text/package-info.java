/** The text of a rig file: reading YAML with places, and editing it by splicing. */
@NullMarked
package liftwright.rig.text;

import org.jspecify.annotations.NullMarked;
