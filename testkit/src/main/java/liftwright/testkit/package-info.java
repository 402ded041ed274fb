/** What every room's tests share and no shipped code uses. */
@NullMarked
package liftwright.testkit;

import org.jspecify.annotations.NullMarked;
