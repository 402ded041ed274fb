package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.trials.Run;

/** Lines to sign by hand. */
final class SignOff {

    private SignOff() {}

    static Block block(CardFacts facts) {
        List<String> lines = new ArrayList<>();
        lines.add("Date, place");
        lines.add("Air, wind, temperature");
        lines.add("Clean runs, of " + facts.planned().repeats());
        lines.add("Stopped by which value or call");
        lines.add("Anything that nobody can explain (then testing is over for the day)");
        lines.add("Outcome: passed, aborted, failed or unexplained");
        lines.add("Who ran the test, signature");
        lines.add("Who read and wrote, signature");
        if (facts.planned().run().map(Run::worn).orElse(false)) {
            lines.add("Who wore it, signature");
        }
        return CardText.lines("Sign-off", Style.WRITE, lines);
    }
}
