/** Answers as one sheet of HTML that needs nothing else: no script, no font, no picture file. */
@NullMarked
package liftwright.report.html;

import org.jspecify.annotations.NullMarked;
