package liftwright.rig.draft;

/**
 * An edit that can be taken back or done again.
 *
 * @param label what it was, in words
 * @param how it came about
 * @param patch what it did
 */
record Step(String label, How how, Patch patch) {}
