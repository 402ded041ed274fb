/** Recordings of sound: reading a WAV file, which is untrusted. */
@NullMarked
package liftwright.logbook.sound;

import org.jspecify.annotations.NullMarked;
