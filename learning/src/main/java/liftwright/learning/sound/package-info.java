/**
 * Speeds of fans from the sound they make: lines at the rate at which blades pass, followed over
 * time. Pure: samples go in, speeds come out, and where the sound does not carry a speed, none
 * does.
 */
@NullMarked
package liftwright.learning.sound;

import org.jspecify.annotations.NullMarked;
