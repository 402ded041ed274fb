package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Section.Card;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/** A card such as a programme makes: the first spin of one bare fan, all of it invented. */
public final class SampleCard {

    private SampleCard() {}

    public static CardHead head() {
        return new CardHead(
                "Mudlark",
                "mudlark/rig.yaml",
                "revision 4",
                "sha256:3f2a9c01d2e47b6655aa10c9e0f4d8b2718293a4b5c6d7e8f90123456789abcd",
                "0.1.0");
    }

    public static Card firstSpin() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                lines(
                        "What it is done with",
                        Style.TICK,
                        "Fan left.3, serial number ________, bare: no duct lip, no grille",
                        "Controller of left.3, settings 9b21f07c, as on the pass of card throttle",
                        "Pack p.1 alone, serial number ________, at least 80 % charged"));
        blocks.add(
                new Block.Lines(
                        "Set-up",
                        Style.NUMBER,
                        List.of(
                                Sentence.words("The bench is bolted down and holds ")
                                        .then(Measure.THRUST, 310)
                                        .then(" on the line of thrust, three times what is asked."),
                                Sentence.words(
                                                "The fan points away from door and people. "
                                                        + "Nobody stands within ")
                                        .then(Measure.LENGTH, 4.2)
                                        .then(
                                                " of it, and nobody in the plane of the rotor at"
                                                        + " any distance."),
                                Sentence.words(
                                        "A barrier of 12 mm plywood or better stands all round"
                                                + " in the plane of the rotor."),
                                Sentence.words(
                                        "Loose things within two metres of the intake are taken"
                                                + " away: rags, cable ends, tape."))));
        blocks.add(new Block.View(Sample.elevation("bench")));
        blocks.add(new Block.Rows(instruments()));
        blocks.add(new Block.Rows(steps(6)));
        blocks.add(new Block.Rows(aborts()));
        blocks.add(
                lines(
                        "People",
                        Style.WRITE,
                        "Test lead, at the remote",
                        "Second, at the pack's disconnect, with the fire bucket",
                        "Reader of instruments, behind the barrier"));
        blocks.add(
                lines(
                        "Start list",
                        Style.TICK,
                        "Everybody named above is here, rested, and knows the calls",
                        "Ear and eye protection on everybody",
                        "Bucket of sand, extinguisher and the way out are clear",
                        "Kills proved today: card kill passed",
                        "Remote at zero, trims at zero, throttle lock on",
                        "“Make live” is called and answered by all; then the pack is connected"));
        blocks.add(
                lines(
                        "If something goes wrong",
                        Style.PLAIN,
                        "Call “stop”. Anyone may call it, for any reason; the remote goes to zero"
                                + " and stays there.",
                        "The thrust does not go away: press the second kill; then pull the"
                                + " disconnect from the side, never across the rotor's plane.",
                        "Smoke or hissing from the pack: everybody leaves upwind. Nobody carries"
                                + " it out."));
        blocks.add(
                lines(
                        "Sign-off",
                        Style.WRITE,
                        "Passed, aborted, failed or unexplained",
                        "What was seen that is not on this card",
                        "Date and time",
                        "Test lead",
                        "Second"));
        return new Card(
                "first-spin.F140",
                "First spin of one bare fan",
                "closed",
                Sentence.words(
                        "Whether the fan turns the right way, without rubbing, and draws what the"
                                + " rig file says at three low throttles."),
                blocks);
    }

    private static Section.Table instruments() {
        return new Section.Table(
                "first-spin-instruments",
                "Instruments",
                List.of("part", "stand-item", "done"),
                List.of(
                        row("clamp meter on the pack's lead", "±2 % of reading, declared"),
                        row("cell checker", "±10 mV, common practice"),
                        row("optical counter", "±0.5 %, common practice")));
    }

    private static List<Value> row(String part, String error) {
        return List.of(
                Value.words("part", part),
                Value.words("stand-item", error),
                Value.words("done", ""));
    }

    /** Throttle steps with what is expected. */
    public static Section.Table steps(int count) {
        List<List<Value>> rows = new ArrayList<>();
        for (int k = 1; k <= count; k++) {
            double share = 0.4 * k / count;
            rows.add(
                    List.of(
                            Value.words("step", k + ": " + Math.round(100 * share) + " %"),
                            Value.of("time", 10),
                            banded("fan-thrust", 60 * share * share, 0.08),
                            banded("pack-current", 80 * share * share * share, 0.1),
                            banded("least-cell-voltage", 4.1 - 0.3 * share, 0.01),
                            banded("fan-speed", 2800 * share, 0.04)));
        }
        return new Section.Table(
                "first-spin-steps",
                "Steps, and what is expected at the end of each",
                List.of(
                        "step",
                        "time",
                        "fan-thrust",
                        "pack-current",
                        "least-cell-voltage",
                        "fan-speed"),
                rows);
    }

    private static Section.Table aborts() {
        return new Section.Table(
                "first-spin-aborts",
                "Stop at once when one of these is read",
                List.of("part", "pack-current", "time", "limit-kind"),
                List.of(
                        List.of(
                                Value.words("part", "pack current above"),
                                Value.of("pack-current", 12),
                                Value.of("time", 3.4),
                                Value.words("limit-kind", "40 A, the fuse")),
                        List.of(
                                Value.words("part", "winding of left.3"),
                                new Value(
                                        "pack-current",
                                        new Value.Figure.NotComputed(
                                                "none lies between what is expected and the"
                                                        + " limit: shorten the run")),
                                Value.of("time", 12),
                                Value.words("limit-kind", "130 °C, insulation class B"))));
    }

    private static Value banded(String field, double si, double share) {
        return Value.of(
                field, si, new Band(si * (1 - share), si * (1 + share), 0.95, "sampled", 1024, 0));
    }

    private static Block lines(String title, Style style, String... lines) {
        return new Block.Lines(
                title, style, java.util.Arrays.stream(lines).map(Sentence::words).toList());
    }
}
