/**
 * The folder of open files beside a rig file that a logbook is: what is added is there whole or not
 * at all, nothing is edited in place, and everything is known again by its digest.
 */
@NullMarked
package liftwright.logbook.store;

import org.jspecify.annotations.NullMarked;
