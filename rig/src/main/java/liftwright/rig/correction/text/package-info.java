/** The file of corrections beside a rig file: {@code rig.corrections.yaml}. */
@NullMarked
package liftwright.rig.correction.text;

import org.jspecify.annotations.NullMarked;
