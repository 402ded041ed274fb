package liftwright.flight.profile;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.text.YamlText;

/**
 * A profile file and the profile that it tells.
 *
 * @param profile empty when there is any problem
 * @param problems everything wrong with it, in the order of the file
 */
public record ProfileReading(Optional<Profile> profile, List<Problem> problems) {

    public ProfileReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     * @param rig whose parts and kills it names
     */
    public static ProfileReading read(String fileName, byte[] bytes, Rig rig) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new ProfileReading(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            return new ProfileReading(
                    Optional.empty(),
                    List.of(
                            new Problem(
                                    Problem.Code.MISSING_KEY,
                                    new Problem.Place(fileName, 1, 1, ""),
                                    "a file that says nothing",
                                    "a profile",
                                    "docs/how-to/fly-a-profile.md has one to start from.")));
        }
        var problems = new Problems(fileName);
        Optional<Profile> profile = new ProfileBinder(problems, rig).read(text.root().get());
        return new ProfileReading(
                problems.hasErrors() ? Optional.empty() : profile, problems.inOrder());
    }
}
