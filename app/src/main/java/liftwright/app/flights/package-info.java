/** Many flights flown and kept in a file: what the command line and the page share. */
@NullMarked
package liftwright.app.flights;

import org.jspecify.annotations.NullMarked;
