package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.TrialExamples;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** What is said of a change before it is made. */
class VoidsTest {

    private static final RigReading MUDLARK = TrialExamples.reading("mudlark");

    private static Voids by(Change... changes) {
        var rig = MUDLARK.rig().orElseThrow();
        Inputs inputs = Inputs.of(rig);
        var passes = new ArrayList<Pass>();
        for (Planned card : Programme.of(rig).cards()) {
            passes.add(Cards.pass(passes.size() + 1, card, inputs, Cards.DAY, card.repeats()));
        }
        return Voids.by(
                MUDLARK,
                List.of(changes),
                passes,
                r -> Programme.of(r).cards(),
                Map.of(),
                Cards.DAY);
    }

    private static Voids.Told told(Change... changes) {
        assertThat(by(changes)).isInstanceOf(Voids.Told.class);
        return (Voids.Told) by(changes);
    }

    private static Set<CardKind> kinds(Iterable<CardId> cards) {
        Set<CardKind> kinds = new TreeSet<>();
        cards.forEach(card -> kinds.add(card.kind()));
        return kinds;
    }

    @Test
    void aPackMovedVoidsBalanceAndLeavesHeat() {
        var told =
                told(
                        new Change.Add(
                                RigPath.of("packs", "p"),
                                "except",
                                "{p.4: {at: {forward: -60 mm, up: 50 mm}}}"));
        assertThat(told.words()).startsWith("P.4 moved 30 mm up. Void: ");
        assertThat(kinds(told.voided().keySet()))
                .contains(CardKind.CENTRE, CardKind.INERTIA, CardKind.HANGING, CardKind.HOP)
                .doesNotContain(CardKind.MASS, CardKind.CELLS, CardKind.THRUST, CardKind.LAG);
        assertThat(told.stand()).contains(new CardId(CardKind.ALL_FANS, Programme.WARM));
    }

    @Test
    void anExchangedPackAndAHeavierFanVoidWhatTheyDecide() {
        var exchanged =
                told(new Change.Add(RigPath.of("packs", "p"), "serials", "{p.4: \"0418\"}"));
        assertThat(kinds(exchanged.voided().keySet()))
                .contains(CardKind.CELLS, CardKind.MASS)
                .doesNotContain(CardKind.CENTRE);
        assertThat(exchanged.words()).startsWith("P.4 serial: nothing → 0418. Void: ");
        var more = told(new Change.Set(RigPath.of("packs", "p", "count"), "13"));
        assertThat(more.words()).contains("p.13 is new");
        assertThat(more.voided()).containsKey(CardId.of(CardKind.MASS));
        var heavier = told(new Change.Set(RigPath.parse("fan types/F140/mass"), "0.76 kg ± 2 %"));
        assertThat(kinds(heavier.voided().keySet()))
                .contains(CardKind.MASS, CardKind.CENTRE, CardKind.INERTIA, CardKind.HOP);
        assertThat(heavier.stand()).contains(new CardId(CardKind.CELLS, "C80"));
    }

    @Test
    void aNameVoidsNothingAndWhatCannotBeDoneIsTold() {
        var named = told(new Change.Set(RigPath.of("rig"), "Lark"));
        assertThat(named.voided()).isEmpty();
        assertThat(named.words()).isEqualTo("Nothing of the rig changes; every pass stands.");
        assertThat(by(new Change.Set(RigPath.of("site", "elevation"), "blue")))
                .isInstanceOf(Voids.NoRig.class);
        assertThat(by(new Change.Remove(RigPath.of("no", "such"))))
                .isInstanceOf(Voids.Refused.class);
    }

    @Test
    void whatIsToldIsWhatComesOfIt() {
        var told = told(new Change.Set(RigPath.parse("site/temperature"), "20 °C"));
        assertThat(told.changed())
                .containsExactly(new Inputs.Difference("site/temperature", "285.15 K", "293.15 K"));
        assertThat(told.voided()).isNotEmpty();
        assertThat(told.voided().values()).allMatch(by -> by.equals(told.changed()));
        assertThat(told.words()).contains("285.15 K → 293.15 K");
    }
}
