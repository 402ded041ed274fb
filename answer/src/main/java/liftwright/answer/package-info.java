@NullMarked
package liftwright.answer;

import org.jspecify.annotations.NullMarked;
