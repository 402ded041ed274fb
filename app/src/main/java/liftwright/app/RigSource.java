package liftwright.app;

import liftwright.rig.file.RigReading;

/**
 * A rig file as it was read.
 *
 * @param file where it is
 * @param read what stands in it
 */
record RigSource(UserFile file, RigReading read) {

    /**
     * @throws UsageException when it cannot be read at all
     */
    static RigSource of(UserFile file) {
        return new RigSource(file, RigReading.read(file.named(), file.read(), file.folder()));
    }

    /** The same where what tests found is left out of account, if {@code wanted}. */
    RigSource asDeclared(boolean wanted) {
        return wanted ? new RigSource(file, read.asDeclared()) : this;
    }

    /** Of the file and its tables, so that an answer names what it answers about. */
    String digest() {
        return read.digest();
    }
}
