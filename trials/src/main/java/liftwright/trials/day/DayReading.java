package liftwright.trials.day;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.text.YamlText;

/**
 * A day file and the day that it tells.
 *
 * @param day empty when there is any problem
 * @param problems everything wrong with it, in the order of the file
 */
public record DayReading(Optional<Day> day, List<Problem> problems) {

    public DayReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     * @param rig whose packs and crew it names
     */
    public static DayReading read(String fileName, byte[] bytes, Rig rig) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new DayReading(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            return new DayReading(
                    Optional.empty(),
                    List.of(
                            new Problem(
                                    Problem.Code.MISSING_KEY,
                                    new Problem.Place(fileName, 1, 1, ""),
                                    "a file that says nothing",
                                    "a day",
                                    "docs/how-to/plan-a-day.md has one to start from.")));
        }
        var problems = new Problems(fileName);
        Optional<Day> day = new DayBinder(problems, rig).read(text.root().get());
        return new DayReading(problems.hasErrors() ? Optional.empty() : day, problems.inOrder());
    }
}
