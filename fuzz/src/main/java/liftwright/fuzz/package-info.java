/** Doors that strangers' bytes come through, pushed by a coverage-guided fuzzer. */
@NullMarked
package liftwright.fuzz;

import org.jspecify.annotations.NullMarked;
