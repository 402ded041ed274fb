/** What is asked of a logbook, as answers that every report can show. */
@NullMarked
package liftwright.logbook.ask;

import org.jspecify.annotations.NullMarked;
