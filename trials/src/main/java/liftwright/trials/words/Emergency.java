package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.rig.Tether;
import liftwright.trials.Run;

/**
 * What is done when it goes wrong: the usual order of doing, to be gone through aloud before the
 * run. Local rules and those who know the place go before it.
 */
final class Emergency {

    private Emergency() {}

    static List<Block> blocks(CardFacts facts) {
        Rig rig = facts.rig();
        boolean worn = facts.planned().run().map(Run::worn).orElse(false);
        boolean hangs =
                facts.planned().run().map(run -> run.held() == Run.Held.TETHER).orElse(false);
        List<Block> blocks = new ArrayList<>();
        blocks.add(numbered("When thrust does not go away", runaway(rig, isLoose(facts))));
        blocks.add(numbered("Fire or smoke", fire(worn)));
        blocks.add(numbered("Somebody was touched by a rotor or hit by a piece", contact()));
        if (hangs && worn) {
            blocks.add(numbered("The wearer hangs and does not come down", hanging(rig)));
        }
        return blocks;
    }

    private static Block numbered(String title, List<String> lines) {
        return CardText.lines(title, Style.NUMBER, lines);
    }

    /** Flies with nobody in it and nothing that holds it. */
    private static boolean isLoose(CardFacts facts) {
        return facts.planned()
                .run()
                .filter(run -> run.held() == Run.Held.NOTHING && !run.worn())
                .isPresent();
    }

    private static List<String> runaway(Rig rig, boolean loose) {
        List<String> lines = new ArrayList<>();
        lines.add("Everybody calls “stop”.");
        for (Kill kill : rig.wiring().kills()) {
            lines.add(
                    kill.heldBy().map(who -> who + " presses ").orElse("Press ")
                            + kill.id()
                            + ", and holds it.");
        }
        if (rig.wiring().kills().isEmpty()) {
            lines.add("No kill is declared: without one this card is not to be done.");
        }
        if (loose) {
            lines.add(
                    "Pressed before it leaves the keep-out, whatever it falls on there, and not after.");
        }
        lines.add(
                "Nobody runs to the rig, holds a line or reaches for a plug while a rotor turns.");
        lines.add("When all stand still: plugs out, capacitors discharged, nothing else touched.");
        lines.add("It counts as an unexplained event: testing is over for the day.");
        return lines;
    }

    private static List<String> fire(boolean worn) {
        List<String> lines = new ArrayList<>();
        lines.add("“Stop”; whoever holds a kill presses.");
        if (worn) {
            lines.add(
                    "The wearer drops the rig, helped from upwind; cut the harness if it does not open.");
        }
        lines.add(
                "Everybody away upwind; the smoke of cells is poisonous, and can burn and burst.");
        lines.add("Call the fire service at once, and say: lithium batteries.");
        lines.add("Much water from far away where nobody is in it; a burning pack is not carried.");
        lines.add("Cells that are out burn again: watch them for a day, apart, in the open.");
        return lines;
    }

    private static List<String> contact() {
        return List.of(
                "“Stop”; whoever holds a kill presses. Plugs out before anybody kneels down.",
                "Call for medical help at once; press on what bleeds, tie off above if it does not stop.",
                "What was cut off goes with the person, dry, cool, not on ice.",
                "An eye that was hit is covered and not rubbed; nothing is pulled out.");
    }

    private static List<String> hanging(Rig rig) {
        List<String> lines = new ArrayList<>();
        lines.add("“Stop”; whoever holds a kill presses; wait until every rotor stands.");
        Optional<String> down = rig.restraint().tether().flatMap(Tether::gettingDown);
        lines.add(
                down.map(how -> "Get the wearer down: " + how + ".")
                        .orElse(
                                "How the wearer gets down is not declared: without it this card is not to"
                                        + " be done."));
        lines.add("Until then: knees up, legs moving, somebody speaks to the wearer all the time.");
        lines.add(
                "Hanging still in a harness harms within minutes: whoever does not answer is got down"
                        + " first and asked later, and medical help is called.");
        return lines;
    }
}
