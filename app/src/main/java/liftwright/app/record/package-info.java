/**
 * What lies beside a rig file about its tests, read and added to; for the command line and the bay.
 */
@NullMarked
package liftwright.app.record;

import org.jspecify.annotations.NullMarked;
