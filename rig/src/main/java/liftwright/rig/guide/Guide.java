package liftwright.rig.guide;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.UnitSystem;
import liftwright.rig.Problem;
import liftwright.rig.file.RigReading;

/**
 * A guided start for someone without a file: what has to be known, step by step, each with a value
 * to begin with, and the commented file that the answers make. Answers are read by the reader of
 * the rig file itself, and no file is given that it does not read without a problem.
 *
 * @param steps what is asked, with what is wrong in the answers so far
 * @param text the file; empty while a problem stands
 */
public record Guide(List<GuideStep> steps, Optional<String> text) {

    public Guide {
        steps = List.copyOf(steps);
    }

    /**
     * The guide with these answers.
     *
     * @param answers by the key of their field; a field without answer keeps its placeholder, and a
     *     key that no field has is passed over
     * @param units in which placeholders are given
     */
    public static Guide of(Map<String, String> answers, UnitSystem units) {
        var form = new Form(answers);
        Answers read = new Questions(form, units).ask();
        if (!form.good()) {
            return new Guide(form.steps(), Optional.empty());
        }
        String text = RigSketch.text(read, units);
        var problems =
                RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8)).problems();
        if (problems.isEmpty()) {
            return new Guide(form.steps(), Optional.of(text));
        }
        Problem first = problems.getFirst();
        form.wrong("name", first.found() + " at " + first.at().path() + ". " + first.advice());
        return new Guide(form.steps(), Optional.empty());
    }
}
