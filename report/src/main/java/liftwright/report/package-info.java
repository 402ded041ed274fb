@NullMarked
package liftwright.report;

import org.jspecify.annotations.NullMarked;
