package liftwright.answer;

import java.util.List;

/** What no calculation can do for the reader; every answer ends with it. */
public final class Cautions {

    /** What this is. */
    public static final String FIRST = "This is a calculation, not a certificate.";

    /** Who decides. */
    public static final String LAST =
            "Local aviation and electrical rules and licensed practice decide.";

    /** In the order of saying them. */
    public static final List<String> ALL =
            List.of(
                    FIRST,
                    "Test restrained first, with a remote throttle and two independent kills.",
                    "Nobody in the plane of the fans.",
                    "Hearing and eye protection.",
                    "A fire plan for lithium packs.",
                    LAST,
                    "SAFETY.md says more.");

    private Cautions() {}
}
