package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Cautions;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;

/**
 * What is printed on a card: configuration and what changed, set-up with loads and distances,
 * instruments, steps with what they should show, where to stop, people, start list, what to do when
 * it goes wrong, cautions, lines to sign.
 */
public final class CardText {

    private CardText() {}

    /**
     * The blocks in reading order.
     *
     * @throws liftwright.plant.parameters.ImpossibleValueException if a declared value is none that
     *     can be
     */
    public static List<Block> of(CardFacts facts) {
        Planned planned = facts.planned();
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(Configuration.blocks(facts));
        boolean turns = planned.run().isPresent() || planned.killProof();
        if (turns) {
            Near near = Near.of(facts.rig(), planned);
            blocks.addAll(SetUp.blocks(facts, near));
            blocks.addAll(Distances.blocks(facts, near));
        }
        if (planned.id().kind() == CardKind.KILL) {
            blocks.addAll(KillPaths.blocks(facts));
        }
        blocks.addAll(facts.measuring());
        blocks.addAll(Steps.blocks(facts));
        blocks.addAll(AbortRows.blocks(facts));
        if (turns) {
            blocks.addAll(PeopleRows.blocks(facts));
            blocks.add(StartList.block(facts));
            blocks.addAll(Emergency.blocks(facts));
        }
        blocks.add(Repeats.block(planned));
        if (turns) {
            blocks.addAll(Questions.blocks(planned));
        }
        blocks.add(lines("Cautions", Style.PLAIN, Cautions.ALL));
        blocks.add(SignOff.block(facts));
        return List.copyOf(blocks);
    }

    /** A block of plain words. */
    static Block lines(String title, Style style, List<String> lines) {
        return new Block.Lines(title, style, lines.stream().map(Sentence::words).toList());
    }

    /** Name of a table of a card that no other card has: lower case with hyphens. */
    static String id(CardId card, String what) {
        return card.text().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + "-" + what;
    }

    static Block rows(
            CardId card,
            String what,
            String title,
            List<String> columns,
            List<List<liftwright.answer.Value>> rows) {
        return new Block.Rows(new Section.Table(id(card, what), title, columns, rows));
    }
}
