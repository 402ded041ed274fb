package liftwright.review.kill;

import static liftwright.review.kill.KillRigs.KILL;
import static liftwright.review.kill.KillRigs.MAIN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Fields;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import org.junit.jupiter.api.Test;

/** Kill chains of Curlew, written in its file. */
class KillTablesTest {

    private static final String SECOND = "    aux: {poles: 4, resistance: 0.2 mΩ, rating: 200 A}\n";

    private static KillChains curlew(String... replacements) {
        return KillChains.of(Plant.assemble(KillRigs.curlew(replacements)));
    }

    private static Section.Table table(KillChains chains, String id) {
        return (Section.Table)
                chains.sections().stream()
                        .filter(section -> section.id().equals(id))
                        .findFirst()
                        .orElseThrow();
    }

    private static String words(Value value) {
        return value.figure() instanceof Value.Figure.Words(var text) ? text : "";
    }

    private static List<String> codes(KillChains chains) {
        return chains.findings().stream().map(Finding::code).toList();
    }

    @Test
    void everyKillIsDrawnWithWhatItNeeds() {
        KillChains chains =
                curlew(
                        KILL,
                        "    - {id: remote, opens: [main], by: radio, radio: hand, held by: watcher,"
                                + " fed by: p.1, through: [hip plug]}\n");
        Section.Table drawn = table(chains, "kill-chains");

        assertThat(drawn.rows()).hasSize(1);
        assertThat(words(drawn.rows().getFirst().get(2)))
                .isEqualTo(
                        "watcher → switch of remote → radio link hand → supply p.1 → hip plug →"
                                + " contactor main");
        assertThat(words(drawn.rows().getFirst().get(3))).isEqualTo("none");
        assertThat(words(drawn.rows().getFirst().get(4))).isEqualTo("does not act");
        assertThat(table(chains, "kill-needs").rows()).hasSize(6);
        assertThat(table(chains, "kill-cuts").rows()).hasSize(6);
        chains.sections().stream()
                .map(Section.Table.class::cast)
                .flatMap(table -> table.columns().stream())
                .forEach(column -> assertThat(Fields.find(column)).isPresent());
    }

    @Test
    void oneKillIsAloneAndItsContactorToo() {
        assertThat(codes(curlew())).contains("kill-alone", "contactor-alone", "kill-lost-unseen");
    }

    @Test
    void noKillIsSaid() {
        KillChains chains = curlew("  kills:\n" + KILL, "");
        assertThat(codes(chains)).contains("no-kill");
        assertThat(chains.sections()).isEmpty();
    }

    @Test
    void twoSwitchesThatShareAContactorAreOne() {
        KillChains chains =
                curlew(
                        KILL,
                        KILL + "    - {id: plug, opens: [main], by: lanyard, held by: mate}\n");
        Finding common =
                chains.findings().stream()
                        .filter(finding -> finding.code().equals("kills-in-common"))
                        .findFirst()
                        .orElseThrow();
        assertThat(common.part()).contains("main");
        assertThat(common.severity()).isEqualTo(Severity.WARNS);
        assertThat(common.path()).contains("wiring/kills/remote/opens");
    }

    @Test
    void aSecondContactorInSeriesClearsIt() {
        KillChains chains =
                curlew(
                        MAIN,
                        MAIN + SECOND,
                        "{contactor: main}]",
                        "{contactor: main}, {contactor: aux}]",
                        KILL,
                        KILL + "    - {id: plug, opens: [aux], by: lanyard, held by: mate}\n");
        assertThat(codes(chains))
                .doesNotContain("kills-in-common", "kills-share", "contactor-alone", "kill-alone");
    }

    @Test
    void aPackThatFeedsBothIsCommon() {
        KillChains chains =
                curlew(
                        MAIN,
                        MAIN + SECOND,
                        "{contactor: main}]",
                        "{contactor: main}, {contactor: aux}]",
                        KILL,
                        """
                            - {id: remote, opens: [main], by: radio, held by: watcher, fed by: p.3}
                            - {id: plug, opens: [aux], held by: mate, fed by: p.3}
                        """);
        assertThat(chains.findings())
                .filteredOn(finding -> finding.code().equals("kills-in-common"))
                .extracting(finding -> finding.part().orElseThrow())
                .containsExactly("p.3");
    }

    @Test
    void aContactorThatCannotBreakFullThrottleIsFound() {
        KillChains chains = curlew("breaks: 4000 A", "breaks: 100 A");
        assertThat(codes(chains)).contains("kill-cannot-break");
        assertThat(codes(curlew())).doesNotContain("kill-cannot-break");
    }

    @Test
    void aKillBehindTheThrottlesRadioOrAComputerIsFound() {
        KillChains chains =
                curlew(
                        KILL,
                        """
                            - {id: remote, opens: [main], by: radio, radio: hand, held by: watcher}
                            - {id: mind, by: software, held by: watcher}
                        """,
                        "link loss: lower",
                        "link loss: lower\n  radio: hand");
        assertThat(chains.findings())
                .filteredOn(finding -> finding.code().equals("kill-behind-the-fault"))
                .extracting(finding -> finding.path().orElseThrow())
                .containsExactly("wiring/kills/remote/radio", "wiring/kills/mind/by");
    }

    @Test
    void aHeavyRotorIsLate() {
        assertThat(codes(curlew())).doesNotContain("kill-late");
        assertThat(codes(curlew("inertia: 120 kg·mm²", "inertia: 400 kg·mm²")))
                .contains("kill-late");
    }

    @Test
    void fansThatNoKillReachesAreNamed() {
        KillChains chains =
                curlew(
                        "p.4: [fan.4, fan.5]}",
                        "p.4: [fan.4]}\n    - {id: odd, from: p.4, branch: [{run: 12 AWG, length: 300 mm,"
                                + " insulation: silicone}], fans: {p.4: [fan.5]}}");
        Finding beyond =
                chains.findings().stream()
                        .filter(finding -> finding.code().equals("no-kill-reaches"))
                        .findFirst()
                        .orElseThrow();
        assertThat(beyond.part()).contains("fan.5");
        assertThat(codes(chains)).contains("contactor-alone");
    }

    /** Two switches, two people, one of them by radio; and one contactor of twelve poles. */
    @Test
    void theTwoKillsOfMudlarkAreOne() {
        KillChains chains = KillChains.of(Plant.assemble(KillRigs.example("mudlark")));
        Finding common =
                chains.findings().stream()
                        .filter(finding -> finding.code().equals("kills-in-common"))
                        .findFirst()
                        .orElseThrow();
        assertThat(common.part()).contains("main");
        assertThat(common.severity()).isEqualTo(Severity.STOPS);
        assertThat(table(chains, "kill-cuts").rows())
                .filteredOn(
                        row -> row.get(1).figure().equals(Value.of("kill-cut-size", 1).figure()))
                .hasSize(1);
    }
}
