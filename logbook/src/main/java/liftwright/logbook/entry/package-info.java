/**
 * What stands in a logbook: tests, inspections of parts, life sheets of packs, incidents. Records,
 * their texts, and how they are read back. Pure: it knows no file.
 */
@NullMarked
package liftwright.logbook.entry;

import org.jspecify.annotations.NullMarked;
