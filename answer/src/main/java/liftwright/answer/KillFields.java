package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What it takes to make a rig dead, and what its throttle does without a signal. */
final class KillFields {

    private static final String FILE = "the rig file";
    private static final String CHAINS = "KillTablesTest.everyKillIsDrawnWithWhatItNeeds";
    private static final String CUTS = "KillStructureTest.cutsEqualEveryStateOfTheElements";
    private static final String LINK = "ThrottleLinkTest.whatIsBeyondItsLimitIsFound";

    static final List<Field> ROWS =
            List.of(
                    new Field(
                            "kill",
                            "kill",
                            Measure.COUNT,
                            "A way to make the rig dead.",
                            "as declared",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-means",
                            "by",
                            Measure.COUNT,
                            "How a kill acts.",
                            "as declared",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-chain",
                            "chain",
                            Measure.COUNT,
                            "What a kill needs, from the hand to the contactor, in order.",
                            "as declared; a supply only where its loss does not open by itself",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-leaves",
                            "fans still fed",
                            Measure.COUNT,
                            "Fans that a pack still feeds and nobody commands to zero.",
                            "walk from every pack over all chains whose contactors stay closed",
                            FILE,
                            CUTS),
                    new Field(
                            "kill-on-loss",
                            "when lost",
                            Measure.COUNT,
                            "What a kill does when its own supply or link is lost.",
                            "as declared",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-reaction",
                            "reaction",
                            Measure.TIME,
                            "From a surprise to the press.",
                            "as declared for the kill, else for the person, else the limit for a watcher"
                                    + " or wearer",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-time",
                            "press to still",
                            Measure.TIME,
                            "From the press of a kill until no fan that it stops has a tenth of its"
                                    + " thrust, from full throttle on full packs.",
                            "delay, opening of the contactor unless zero is commanded before, coasting:"
                                    + " J/kappa (1/(0.316 Omega) - 1/Omega)",
                            "equation of motion of the rotor",
                            "KillTimesTest.delayContactorAndCoastingAddUp"),
                    new Field(
                            "kill-need",
                            "element",
                            Measure.COUNT,
                            "One thing that kills need.",
                            "as declared; the same name is the same thing",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-served",
                            "needed by",
                            Measure.COUNT,
                            "Kills that need it.",
                            "as declared",
                            FILE,
                            CHAINS),
                    new Field(
                            "kill-cut",
                            "failing together",
                            Measure.COUNT,
                            "Things whose failing keeps thrust on although every kill is pressed; with"
                                    + " any of them whole, thrust stops.",
                            "minimal cut sets, from the leaves up",
                            "Fussell and Vesely 1972, from memory",
                            CUTS),
                    new Field(
                            "kill-cut-size",
                            "how many",
                            Measure.COUNT,
                            "How many things must fail together.",
                            "counted",
                            "definition",
                            CUTS),
                    new Field(
                            "loss-time",
                            "signal lost after",
                            Measure.TIME,
                            "After which time a signal that stays away counts as lost.",
                            "as declared",
                            FILE,
                            LINK),
                    new Field(
                            "throttle-rise",
                            "rise in a second",
                            Measure.PERCENT,
                            "Fastest rise of the throttle in a second.",
                            "as declared",
                            FILE,
                            LINK),
                    new Field(
                            "live-below",
                            "live below",
                            Measure.PERCENT,
                            "Throttle above which the rig cannot be made live.",
                            "as declared",
                            FILE,
                            LINK));

    private KillFields() {}
}
