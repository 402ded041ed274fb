/**
 * Tables beside a rig file: from the bytes of a CSV file to the records of {@code rig.table}, every
 * problem at its cell.
 */
@NullMarked
package liftwright.rig.csv;

import org.jspecify.annotations.NullMarked;
