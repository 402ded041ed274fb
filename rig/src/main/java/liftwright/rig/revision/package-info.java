/** What changed from one revision of a rig file to another. */
@org.jspecify.annotations.NullMarked
package liftwright.rig.revision;
