package liftwright.logbook.store;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/** What was asked for is there, and is not what was written. */
public final class SpoiltException extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient List<Flaw> flaws;

    SpoiltException(List<Flaw> flaws) {
        super(
                flaws.stream()
                        .map(flaw -> flaw.file() + ": " + flaw.words())
                        .collect(Collectors.joining("; ")));
        this.flaws = List.copyOf(flaws);
    }

    public List<Flaw> flaws() {
        return flaws;
    }
}
