package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Flights one after another: what a pause is good for, and that parting a flight changes nothing.
 */
class HeatWaitsTest {

    private static final Settings SETTINGS = new Settings(5, 128, 128, 1, false);

    /** Wires to the fans of that gauge, in plain PVC; a hover of that length. */
    private static Rig rig(int gauge, double hoverS, String... more) {
        String[] replacements = new String[4 + more.length];
        replacements[0] = "12 AWG, length: 550 mm ± 50 mm, insulation: silicone, class: 180 °C";
        replacements[1] = gauge + " AWG, length: 550 mm ± 50 mm, insulation: PVC, class: 105 °C";
        replacements[2] = "hover: 60 s";
        replacements[3] = "hover: " + hoverS + " s";
        System.arraycopy(more, 0, replacements, 4, more.length);
        return ExampleRigs.edited("mudlark", replacements);
    }

    private static HeatAnswer ask(Rig rig, Task task, Optional<StartState> start) {
        return (HeatAnswer)
                HeatQuestion.staged(rig, "test", new HeatCase(task, start), SETTINGS)
                        .answer(Stage.NOMINAL, Work.quiet())
                        .orElseThrow();
    }

    private static double firstS(HeatAnswer answer) {
        return answer.sections().stream()
                .filter(Section.Timeline.class::isInstance)
                .map(section -> si(((Section.Timeline) section).bars().getFirst().at()))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<Value>> rows(HeatAnswer answer, String id) {
        return answer.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(section -> ((Section.Table) section).rows())
                .findFirst()
                .orElseThrow();
    }

    private static double si(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    @Test
    void aLongerPauseNeverShortensTheNextFlight() {
        Seeded.check(
                12,
                random -> {
                    int gauge = 12 + 2 * random.nextInt(3);
                    Rig rig = rig(gauge, Math.rint(random.nextDouble(5, 60)));
                    Task task = random.nextBoolean() ? new Task.Hover() : new Task.FullThrottle();
                    double before = 0;
                    for (List<Value> row : rows(ask(rig, task, Optional.empty()), "pauses")) {
                        double now = si(row.get(1));
                        assertThat(now).as("%s", row).isGreaterThanOrEqualTo(before - 0.02);
                        before = now;
                    }
                });
    }

    /** The least wait suffices, and three quarters of it do not. */
    @Test
    void theWaitIsTheLeastThatKeepsEveryLimit() {
        double alone = firstS(ask(rig(16, 60), new Task.Hover(), Optional.empty()));
        Rig rig = rig(16, Math.rint(0.8 * alone));
        List<List<Value>> waits = rows(ask(rig, new Task.Hover(), Optional.empty()), "waits");
        double waitS = si(waits.getFirst().get(1));
        assertThat(waitS).isBetween(5.0, 3600.0);
        assertThat(si(waits.getFirst().get(2))).isLessThan(0.9 * alone);
        assertThat(si(waits.getLast().get(1))).as("fresh packs sag less").isLessThan(waitS);

        double hoverS = rig.demands().hover().si();
        assertThat(within(rig, 1.05 * waitS)).isGreaterThanOrEqualTo(2 * hoverS);
        assertThat(within(rig, 0.75 * waitS)).isLessThan(2 * hoverS);
    }

    private static double within(Rig rig, double pauseS) {
        HeatAnswer answer = ask(rig, new Task.Hops(2, pauseS), Optional.empty());
        return answer.verdict().sentence().parts().stream()
                .filter(liftwright.answer.Sentence.Part.Amount.class::isInstance)
                .mapToDouble(part -> ((liftwright.answer.Sentence.Part.Amount) part).si())
                .findFirst()
                .orElseThrow();
    }

    /**
     * A flight that is parted in two, the second from what the first left, ends when it would have:
     * to 3 %, since a state of tables knows no slow voltages, so cells begin rested and sag less.
     */
    @Test
    void partingAFlightChangesNoMoreThanRestedCellsDo() {
        Seeded.check(
                8,
                (RandomGenerator random) -> {
                    int gauge = 14 + 2 * random.nextInt(3);
                    double whole = firstS(ask(rig(gauge, 60), new Task.Hover(), Optional.empty()));
                    double partS = Math.round(random.nextDouble(0.2, 0.8) * whole * 10) / 10.0;
                    HeatAnswer first = ask(rig(gauge, partS), new Task.Hover(), Optional.empty());
                    HeatAnswer second =
                            ask(rig(gauge, 60), new Task.Hover(), Optional.of(first.left()));
                    assertThat(partS + firstS(second)).isCloseTo(whole, offset(0.03 * whole));
                });
    }

    @Test
    void whereNoWaitHelpsTheAnswerSaysWhy() {
        // Two hovers of 150 s on packs for 210 s: fresh packs help, a wait does not.
        Rig rig = rig(8, 150);
        List<List<Value>> waits = rows(ask(rig, new Task.Hover(), Optional.empty()), "waits");
        assertThat(waits.getFirst().get(1).figure())
                .isInstanceOfSatisfying(
                        Value.Figure.NotComputed.class,
                        none -> assertThat(none.reason()).contains("no wait is enough", "reserve"));
        assertThat(si(waits.getLast().get(1))).isZero();
    }
}
