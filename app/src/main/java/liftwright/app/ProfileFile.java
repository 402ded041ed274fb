package liftwright.app;

import java.util.Optional;
import liftwright.answer.ProblemsJson;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.report.ProblemReport;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/**
 * A profile that a user named, as it was read.
 *
 * @param digest of the file
 */
record ProfileFile(UserFile file, Profile profile, String digest) {

    /** Empty where it has problems, which are told in words or, if asked, as JSON. */
    static Optional<ProfileFile> read(UserFile file, Rig rig, Voice voice, Options options) {
        byte[] bytes = file.read();
        String digest = RigReading.digest(bytes);
        ProfileReading reading = ProfileReading.read(file.named(), bytes, rig);
        if (reading.profile().isEmpty()) {
            voice.answer(
                    options.json()
                            ? ProblemsJson.write(
                                            file.named(),
                                            digest,
                                            false,
                                            reading.problems(),
                                            Program.VERSION)
                                    + "\n"
                            : ProblemReport.write(
                                    file.named(),
                                    "a profile",
                                    "",
                                    reading.problems(),
                                    options.look()));
        }
        return reading.profile().map(profile -> new ProfileFile(file, profile, digest));
    }
}
