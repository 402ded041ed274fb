package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What holds a rig, and who stands in it. */
final class RestraintFields {

    private static final String STATICS = "statics";
    private static final String STAND = "StandHoldTest.theWorstOfABoltIsThatOfAllSubsets";
    private static final String TETHER = "TetherHoldTest.everyAskIsThatOfTheNumbers";
    private static final String ANSWER = "RestraintQuestionTest.theAnswerAgreesWithItself";
    private static final String STANDING = "StandingWearerTest.nearWeightNothingIsLeftToLeanOn";
    private static final String SCALE = "ScaleReadingTest.jetsOnThePlatformHideTheLift";

    static final List<Field> ROWS =
            List.of(
                    margin("restraint-margin", "margin", "least over everything that is asked"),
                    margin("restraint-margin-demand", "margin asked for", "nought"),
                    margin("restraint-margin-gain", "gain", "difference of two margins"),
                    words("hold", "what gives", "What could give, or what could be met."),
                    words(
                            "worst-fans",
                            "worst under",
                            "Which fans at full throttle load it most, or what else does."),
                    new Field(
                            "bears",
                            "gives at",
                            Measure.COUNT,
                            "Load at which it gives, weight and floor included, in the unit of the load.",
                            "statics of a rigid stand; as declared for anchors and lines",
                            STATICS,
                            STAND),
                    new Field(
                            "asked-times",
                            "asked",
                            Measure.RATIO,
                            "How many times the load it has to bear.",
                            "as declared, or the default limit",
                            "limits/restraint factor",
                            TETHER),
                    load(
                            "hold-force",
                            "force",
                            Measure.THRUST,
                            "Force of a load, or that bears it."),
                    load(
                            "hold-moment",
                            "moment",
                            Measure.MOMENT,
                            "Moment about an edge of the feet."),
                    load("hold-length", "length", Measure.LENGTH, "A way, or the room for it."),
                    load(
                            "hold-speed",
                            "speed",
                            Measure.SPEED,
                            "Speed of a blow, or the limit of it."),
                    load(
                            "hold-share",
                            "share",
                            Measure.PERCENT,
                            "Share of a bolt that pull and shear use up together."),
                    new Field(
                            "thrust-share",
                            "thrust over weight",
                            Measure.PERCENT,
                            "Thrust over weight of a wearer who stands on the ground.",
                            "a round number",
                            "definition",
                            STANDING),
                    standing(
                            "recoverable-lean",
                            "lean that is caught",
                            Measure.ANGLE,
                            "Greatest lean from which a standing person comes back without a step.",
                            "asin((1 − T/W) d/l), d from ankle to the edge of the foot, l height of the centre"),
                    standing(
                            "recoverable-sway",
                            "sway that is caught",
                            Measure.SPEED,
                            "Greatest speed of the centre of mass from which the same holds.",
                            "(1 − T/W) d √(g/l)"),
                    standing(
                            "feet-slide-at",
                            "feet slide at",
                            Measure.THRUST,
                            "Push to the side at which the feet slide.",
                            "friction times (W − T)"),
                    standing(
                            "lean-slides",
                            "thrust slides the feet at a lean of",
                            Measure.ANGLE,
                            "Lean at which the thrust itself slides the feet.",
                            "T sin θ = friction (W − T cos θ)"),
                    standing(
                            "jump-height",
                            "a jump goes up",
                            Measure.LENGTH,
                            "How high a jump goes with that thrust on throughout.",
                            "push of the legs and thrust over the way of the push, then (W − T) alone"),
                    standing(
                            "jump-landing",
                            "and lands, thrust gone at the top, with",
                            Measure.SPEED,
                            "Speed on the ground if the thrust goes at the top of the jump.",
                            "√(2 g h)"),
                    scale("scale-reads", "scale reads", Measure.MASS, "What the scale shows."),
                    scale(
                            "scale-hides",
                            "hidden by jets",
                            Measure.MASS,
                            "What jets on the platform add to the reading."),
                    scale(
                            "scale-tells",
                            "thrust told by it",
                            Measure.THRUST,
                            "Thrust that the fall of the reading tells."),
                    scale(
                            "scale-finest",
                            "finest thrust it tells",
                            Measure.THRUST,
                            "Least change of thrust that changes the reading by one step and stands out of what is not known of the jets."),
                    load(
                            "strike-speed",
                            "strike",
                            Measure.SPEED,
                            "Speed at which a climb strikes what is overhead."),
                    fall(
                            "fall-height",
                            "falls",
                            Measure.LENGTH,
                            "Way fallen before the line is straight."),
                    fall(
                            "catch-undamped",
                            "pulls at most",
                            Measure.THRUST,
                            "Greatest pull of the line without damping, were there no ground."),
                    fall(
                            "catch-run",
                            "pulls as it runs",
                            Measure.THRUST,
                            "Greatest pull with the damping of the line, drag and ground."),
                    load(
                            "apex",
                            "apex",
                            Measure.LENGTH,
                            "Greatest height of the soles in a runaway."),
                    load(
                            "side-reach",
                            "reach",
                            Measure.LENGTH,
                            "How far to the side a part gets."));

    private RestraintFields() {}

    private static Field margin(String id, String label, String how) {
        return new Field(
                id,
                label,
                Measure.PERCENT,
                "Load at which what holds the rig gives, over the load, over how many times that is asked, less one; at most a thousand is told.",
                how,
                STATICS,
                ANSWER);
    }

    private static Field words(String id, String label, String meaning) {
        return new Field(id, label, Measure.COUNT, meaning, "named", "the rig file", ANSWER);
    }

    private static Field load(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "greatest over all subsets of fans, or over a runaway",
                STATICS,
                TETHER);
    }

    private static Field fall(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "m g (1 + √(1 + 2 h k/(m g))); as it runs, integrated",
                "conservation of energy",
                "FallTableTest.aFallIsCaughtAsInTheClosedForm");
    }

    private static Field standing(
            String id, String label, Measure measure, String meaning, String formula) {
        return new Field(
                id, label, measure, meaning, formula, "Hof et al. 2005; statics", STANDING);
    }

    private static Field scale(String id, String label, Measure measure, String meaning) {
        return new Field(
                id,
                label,
                measure,
                meaning,
                "(weight − thrust + momentum of the jets that meets the platform) / g",
                "momentum of free jets",
                SCALE);
    }
}
