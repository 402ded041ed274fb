package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.trials.Run;

/** What is ticked off in the last minutes before a run, in the order of doing. */
final class StartList {

    private StartList() {}

    static Block block(CardFacts facts) {
        Rig rig = facts.rig();
        boolean worn = facts.planned().run().map(Run::worn).orElse(false);
        List<String> ticks = new ArrayList<>();
        ticks.add(
                "Everybody has read this card; who runs the test has said the abort values aloud.");
        ticks.add(
                "Ears, eyes and hair are covered; nothing loose on anybody; gloves off near rotors.");
        ticks.add("Rotors turned by hand: free, nothing rubs, every blade whole, grilles fast.");
        ticks.add("Wires, joints and plugs looked at and pulled; none is warm, brown or loose.");
        ticks.add(
                "Packs: temperature and rest voltage of every cell written down, spread as allowed.");
        for (Kill kill : rig.wiring().kills()) {
            ticks.add(
                    "Kill "
                            + kill.id()
                            + kill.heldBy().map(who -> ", held by " + who).orElse("")
                            + ": in the hand, tried with the packs out.");
        }
        ticks.add("Throttle at zero and held there; the rig cannot be made live above it.");
        ticks.add("The clock of the log runs, and every channel shows a value that moves.");
        ticks.add("Fire blanket, extinguisher, sand and a way out for everybody are there.");
        if (worn) {
            ticks.add("The wearer can reach release and kill with either hand, and says so.");
            ticks.add("The wearer slept, is not ill, and wants to do it.");
        }
        ticks.add("The keep-out is empty; somebody watches its edge.");
        return CardText.lines("Start list", Style.TICK, ticks);
    }
}
