package liftwright.rig.text;

import java.util.List;

/** What an edit would do to a text. */
sealed interface Plan {

    /**
     * @param splices not overlapping
     */
    record Splices(List<Splice> splices) implements Plan {}

    record Refused(String reason) implements Plan {}

    static Plan of(Splice... splices) {
        return new Splices(List.of(splices));
    }
}
