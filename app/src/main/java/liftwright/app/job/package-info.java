/**
 * Work that takes minutes: begun, watched, stopped and taken up again. What it is and what came of
 * it stands in files, so that it outlives whoever began it. Knows nothing of pages and requests.
 */
@NullMarked
package liftwright.app.job;

import org.jspecify.annotations.NullMarked;
