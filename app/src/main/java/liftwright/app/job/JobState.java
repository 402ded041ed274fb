package liftwright.app.job;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How a job stands. */
public enum JobState {
    /** Its turn comes after that of others. */
    WAITING,
    RUNNING,
    /** Can be taken up again. */
    STOPPED,
    DONE,
    /** Cannot be worked out, or not as the rig stands. */
    FAILED;

    /** As it stands in files and as the page reads it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether work goes on, or will by itself. */
    public boolean isGoing() {
        return this == WAITING || this == RUNNING;
    }

    static Optional<JobState> of(String word) {
        return Stream.of(values()).filter(state -> state.word().equals(word)).findFirst();
    }
}
