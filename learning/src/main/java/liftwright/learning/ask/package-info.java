/** Makes of a replayed and explained recording the answer that is shown. */
@NullMarked
package liftwright.learning.ask;

import org.jspecify.annotations.NullMarked;
