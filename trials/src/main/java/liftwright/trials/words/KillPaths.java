package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.review.kill.KillChains;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.trials.programme.Programme;
import liftwright.trials.proof.ProofPath;

/** Every way to make the rig dead, tried one by one while the log runs. */
final class KillPaths {

    private static final List<String> COLUMNS =
            List.of("kill", "kill-means", "kill-leaves", "kill-on-loss", "kill-time");

    private KillPaths() {}

    static List<Block> blocks(CardFacts facts) {
        List<Block> blocks = new ArrayList<>();
        chains(facts).ifPresent(blocks::add);
        blocks.add(CardText.lines("How it is proved", Style.NUMBER, ways(facts)));
        return blocks;
    }

    /** As computed from full throttle, with a column to write what the log says. */
    private static Optional<Block> chains(CardFacts facts) {
        return KillChains.of(Plant.assemble(facts.rig())).sections().stream()
                .filter(section -> section.id().equals("kill-chains"))
                .flatMap(
                        section ->
                                section instanceof Section.Table table
                                        ? Stream.of(table)
                                        : Stream.empty())
                .findFirst()
                .map(table -> rows(facts, table));
    }

    private static Block rows(CardFacts facts, Section.Table table) {
        int[] kept = COLUMNS.stream().mapToInt(table.columns()::indexOf).toArray();
        List<List<Value>> rows = new ArrayList<>();
        for (List<Value> row : table.rows()) {
            List<Value> cells = new ArrayList<>(IntStream.of(kept).mapToObj(row::get).toList());
            cells.add(Value.words("read", ""));
            rows.add(cells);
        }
        List<String> columns = new ArrayList<>(COLUMNS);
        columns.add("read");
        return CardText.rows(
                facts.planned().id(),
                "kills",
                "Every kill, and how long it takes from full throttle as computed",
                columns,
                rows);
    }

    private static List<String> ways(CardFacts facts) {
        Rig rig = facts.rig();
        List<String> lines = new ArrayList<>();
        boolean all = facts.planned().id().subject().equals(Programme.ALL);
        lines.add(
                all
                        ? "All fans at the level of the step; each path stops every one of them, and none"
                                + " comes back by itself."
                        : "One fan at the level of the step; thrust, current or speed is logged at least"
                                + " every 5 ms, and the press with it.");
        for (ProofPath path : ProofPath.of(rig)) {
            lines.add(
                    "“"
                            + path.name()
                            + "”: "
                            + path.words()
                            + ", nothing else; three times. The log calls it so.");
        }
        switch (rig.control().linkLoss()) {
            case CUT -> {}
            case LOWER ->
                    lines.add(
                            "Switch the throttle's sender off: thrust has to come down as declared, and"
                                    + " proves no kill.");
            case HOLD ->
                    lines.add(
                            "Switch the throttle's sender off: as declared, thrust stays. That is the"
                                    + " worst, and a reason to change it.");
        }
        if (rig.control().kind() == Control.Kind.FLIGHT_COMPUTER) {
            lines.add("Stop the flight computer: what its watchdog does has to end thrust.");
        }
        lines.add(
                "Pull the signal of one fan: it does what the card on the throttle showed, and no other does.");
        lines.add(
                "The longest of all repeats counts, from the press to half and to a tenth of the thrust;"
                        + " the log goes to the proof of the kills, which holds for this day alone.");
        return lines;
    }
}
