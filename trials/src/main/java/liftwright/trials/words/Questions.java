package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.trials.Planned;
import liftwright.trials.Rung;

/** What to ask those who have a say. Questions alone: nobody here knows their answers. */
final class Questions {

    private Questions() {}

    static List<Block> blocks(Planned planned) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                ask(
                        "To ask the owner of the place",
                        "May this be tested here, by whom, at which hours, and how loud may it be?",
                        "What may be bolted, hung or blown on, and what does the floor or beam bear?",
                        "Who else can be here then, and who keeps them away?"));
        blocks.add(
                ask(
                        "To ask the fire service",
                        "How many lithium packs of which energy may be kept, charged and used here?",
                        "What should be said on the telephone, where should the crew meet them, and is"
                                + " there water?",
                        "What is to be done with a burnt or struck pack until somebody takes it?"));
        blocks.add(
                ask(
                        "To ask the insurer",
                        "Is this test covered, for the crew, for whoever wears it, for others and for the"
                                + " place, and in writing?",
                        "What has to be written down, and who has to have signed, for that to hold?"));
        if (planned.id().kind().rung().compareTo(Rung.HOP) >= 0) {
            blocks.add(
                    ask(
                            "To ask the aviation authority",
                            "Is this an aircraft, a model, an unmanned aircraft or none of them under your"
                                    + " rules, and does a tether change that?",
                            "What is needed before it leaves the ground here: registration, permission, an"
                                    + " observer, a notice, a least distance?",
                            "Who may be in it, and what must they have been told and have signed?"));
        }
        return blocks;
    }

    private static Block ask(String title, String... questions) {
        return CardText.lines(title, Style.WRITE, List.of(questions));
    }
}
