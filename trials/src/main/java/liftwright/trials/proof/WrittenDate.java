package liftwright.trials.proof;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;

/** A date in a file: year, month and day, as ISO 8601 writes them. */
public final class WrittenDate {

    /** What is expected of one. */
    public static final String EXPECTED = "a date such as 2026-05-02";

    private WrittenDate() {}

    /** The date under a key; empty where it is none, which has then been told. */
    public static Optional<LocalDate> read(Fields fields, Key<String> key, Problems problems) {
        return fields.stated(key)
                .flatMap(
                        told -> {
                            try {
                                return Optional.of(LocalDate.parse(told.value()));
                            } catch (DateTimeParseException notOne) {
                                problems.add(
                                        Code.WRONG_KIND,
                                        told.spot(),
                                        Problems.quote(told.value()),
                                        EXPECTED,
                                        "Year, month and day, in this order.");
                                return Optional.empty();
                            }
                        });
    }
}
