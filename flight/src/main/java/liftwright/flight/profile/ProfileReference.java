package liftwright.flight.profile;

import liftwright.rig.shape.RigReference;

/** The reference page of the profile file, written from the table of its keys. */
public final class ProfileReference {

    private static final String HEAD =
            """
            # The profile file, format 1

            This page is written from the table that the reader itself uses; a test says when it is
            stale. Every quantity carries its unit. What is left out takes the value in the column
            “without it”; every answer prints the defaults that it used.

            Times count from the start of the profile. Places are metres from the start, forward and
            right as the rig looked there; a height is that of the lowest part of the rig above the
            ground. How a profile is flown, and what comes of it, says
            [fly a profile](../how-to/fly-a-profile.md).
            """;

    private ProfileReference() {}

    /** The page as Markdown, with a line feed at its end. */
    public static String markdown() {
        return RigReference.markdown(HEAD, ProfileKeys.SECTION);
    }
}
