package liftwright.app.bay;

import java.util.Optional;

/**
 * One tab of the page, from the link it came in by until the server stops.
 *
 * @param number counts up; no secret
 * @param open the rig that its link named
 */
record Session(int number, Optional<String> open) {}
