/** The declaration of a thrust stand: its own small file, read by the grammar of rig files. */
@NullMarked
package liftwright.rig.stand;

import org.jspecify.annotations.NullMarked;
