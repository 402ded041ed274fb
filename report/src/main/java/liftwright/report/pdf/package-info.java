/** Test cards as PDF: the pages of the HTML sheet, set by a library that stays in here. */
@NullMarked
package liftwright.report.pdf;

import org.jspecify.annotations.NullMarked;
