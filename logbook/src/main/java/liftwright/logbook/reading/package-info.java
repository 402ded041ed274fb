/**
 * Reading in logs: tables of scales, controllers and thermometers, or typed by hand, into columns
 * with units on one clock. Nothing is lost without being told.
 */
@NullMarked
package liftwright.logbook.reading;

import org.jspecify.annotations.NullMarked;
