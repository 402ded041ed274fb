package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import liftwright.answer.Section;
import liftwright.numerics.Work;
import liftwright.quantity.Band;
import liftwright.rig.Rig;
import liftwright.trials.CardKind;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** Modes and turns of hover of rigs small enough to be done by hand. */
class FrameCardTest {

    /** A weight of four fans on a tube from the frame, exact but for what is asked. */
    private static String onATube(String beam) {
        return """
        liftwright: 1
        rig: Arm
        revision: 1
        site: {elevation: 0 m}
        mounts:
          arm: {on: frame, at: {forward: 400 mm}, beam: {runs: forward, length: 400 mm, %s}}
        fan types:
          F: {tip: 100 mm, hub: 40 mm, exit area: 60 cm², mass: 0.5 kg, data: measured, at speed: {speed: 20000 rpm, thrust: 30 N, shaft power: 1.5 kW}, swirl: 0.1, motor: {speed constant: 1000 rpm/V, winding resistance: 10 mΩ, no-load current: 2 A, pole pairs: 5}, controller: {on-resistance: 2 mΩ, cut-off: 10 V, mass: 0 kg}, installation: 1}
        fans:
          - {id: f, type: F, mount: arm, row: 4, from: {right: -150 mm}, to: {right: 150 mm}, spin: alternating}
        cells:
          C: {chemistry: LiPo, capacity: 5 Ah, resistance: 1 mΩ, mass: 120 g, open circuit: LiPo, continuous current: 200 A, peak current: 280 A}
        packs:
          - {id: p, cell: C, series: 8, parallel: 2, extra mass: 0 kg, interconnect: 1 mΩ, at: {on: frame}}
        wiring:
          feeds:
            - {id: feed, from: p, trunk: [{joint: bullet 8 mm}], branch: [{joint: bullet 6 mm}], fans: {p: [f]}}
        control: {kind: shared throttle, groups: {all: {fans: [f], share: 100 %%}}, link loss: cut}
        """
                .formatted(beam);
    }

    @Test
    void aRowOfFansOnATubeSwingsAsByHand() {
        Rig rig =
                RandomTrialRig.rig(
                        onATube("bending rigidity: 900 N·m², torsion rigidity: 600 N·m²"));
        Reading read = Made.card(rig, CardKind.FRAME).readings().getFirst();
        // Four fans of 0.5 kg in a row across, at ±50 and ±150 mm; disks lie level. Lowest of: up
        // and
        // down with the pitch of the disks, fore and aft held, sideways, and twist about the tube.
        double kg = 2;
        double row = 0.5 * 2 * (0.05 * 0.05 + 0.15 * 0.15);
        double twist = Math.sqrt(600 / (0.4 * (row + 4 * 0.5 * 0.05 * 0.05 / 4)));
        double bend = bending(kg, 4 * 0.5 * 0.05 * 0.05 / 4);
        double sideways = bending(kg, row + 4 * 0.5 * 0.05 * 0.05 / 2);
        double lowest = Math.min(twist, Math.min(bend, sideways)) / (2 * Math.PI);
        assertThat(read.expectedSi()).isCloseTo(lowest, within(1e-9 * lowest));
        assertThat(read.band().low()).isLessThan(lowest);
        assertThat(read.band().high()).isGreaterThan(lowest);
    }

    /** Way and slope of a tip with a mass and an inertia: the quadratic of K − ω² M. */
    private static double bending(double kg, double inertia) {
        double l = 0.4;
        double ei = 900;
        double a = kg * inertia;
        double b = -(kg * 4 * ei / l + inertia * 12 * ei / (l * l * l));
        double c = 12 * ei / (l * l * l) * 4 * ei / l - Math.pow(6 * ei / (l * l), 2);
        return Math.sqrt((-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a));
    }

    @Test
    void turnsOfHoverHoldWhatMomentumOfTheRecordsGives() {
        Rig rig = TrialExamples.rig("curlew");
        HoverTurns turns =
                HoverTurns.of(
                                new Asked(
                                        rig,
                                        Made.planned(CardKind.FRAME),
                                        Optional.empty(),
                                        3,
                                        1,
                                        Work.quiet()))
                        .orElseThrow();
        // Eight like fans upright: weight over eight, thrust as the square of speed. By hand, with
        // the mass of the file: 8 × 0.86 + 4 × (14 × 0.165 + 0.25) + 3.36 kg.
        double kg = 8 * 0.86 + 4 * (14 * 0.165 + 0.25) + 2.2 + 0.06 + 1.1;
        double newton = kg * 9.80665 / 8;
        double perSquare = 92 / Math.pow(26000 * Math.PI / 30, 2);
        double density = 1.236 / 1.225; // 12 °C, 80 %, 4 m: by an air table to half a per cent
        double screen = turns.lifts() ? installed() : 1;
        double hover = Math.sqrt(newton / (perSquare * density * screen));
        assertThat(turns.lifts()).isTrue();
        assertThat(turns.leastRadps()).isBetween(0.90 * 0.8944 * hover, 0.8944 * hover);
        assertThat(turns.mostRadps()).isBetween(1.118 * hover, 1.15 * 1.118 * hover);
    }

    /** Default installation 0.90 and a plate of 88 % over 210 cm² before 128 cm². */
    private static double installed() {
        double f = 0.88;
        double zeta = Math.pow(0.707 * Math.pow(1 - f, 0.375) + 1 - f, 2) / (f * f);
        double loss = zeta * Math.pow(128.0 / 210, 2);
        return 0.90 * Math.pow(1 + loss, -2.0 / 3);
    }

    @Test
    void aModeIsSaidToBeClearOnlyOutsideTheTurns() {
        HoverTurns turns = new HoverTurns(1000, 2000, true);
        double below = 0.8 * 1000 / (2 * Math.PI);
        double above = 1.2 * 2000 / (2 * Math.PI);
        assertThat(FrameCard.standing(band(below - 20, below), turns)).isEqualTo("clear, below");
        assertThat(FrameCard.standing(band(above, above + 20), turns)).isEqualTo("clear, above");
        assertThat(FrameCard.standing(band(below + 1, above - 1), turns)).startsWith("among");
        assertThat(FrameCard.standing(band(below - 1, above), turns)).startsWith("cannot");
        assertThat(FrameCard.standing(band(above - 1, above + 1), turns)).startsWith("cannot");
    }

    private static Band band(double low, double high) {
        return new Band(low, high, 0.95, "", 1, 0);
    }

    @Test
    void whatIsNotDeclaredIsAskedFor() {
        Measured card = Made.card(TrialExamples.rig("mudlark"), CardKind.FRAME);
        assertThat(card.readings()).isEmpty();
        assertThat(card.blocks().toString()).contains("mount back has no declared beam");
        Section.Card.Block good =
                card.blocks().stream()
                        .filter(block -> block.title().equals("What counts as good"))
                        .findFirst()
                        .orElseThrow();
        assertThat(good.toString()).contains("FREQUENCY");
    }
}
