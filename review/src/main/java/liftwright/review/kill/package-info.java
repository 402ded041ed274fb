/**
 * Kill chains: what each way to make a rig dead needs, what they have in common, and what stays fed
 * when something of it fails.
 */
@NullMarked
package liftwright.review.kill;

import org.jspecify.annotations.NullMarked;
