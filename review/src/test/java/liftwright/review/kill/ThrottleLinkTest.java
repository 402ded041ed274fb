package liftwright.review.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

class ThrottleLinkTest {

    private static List<Finding> curlew(String control) {
        Rig rig = KillRigs.curlew(KillRigs.CONTROL, control);
        return new ThrottleLink(rig).findings();
    }

    private static Finding only(List<Finding> findings, String code) {
        return findings.stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not among " + findings));
    }

    private static final String GOOD =
            "control: {kind: flight computer, link loss: cut, loss time: 0.3 s, rise: 100 %/s,"
                    + " live below: 3 %, stop: hold-to-run, fed by: own battery}\n";

    @Test
    void whatKeepsEveryRuleIsSilent() {
        assertThat(curlew(GOOD)).isEmpty();
    }

    @Test
    void whatIsNotDeclaredIsSaid() {
        List<Finding> findings = curlew("control: {kind: flight computer}\n");

        assertThat(findings)
                .extracting(Finding::code)
                .containsExactly("link-loss-not-declared", "throttle-not-told");
        assertThat(findings.getFirst().path()).contains("control/link loss");
    }

    @Test
    void whatIsBeyondItsLimitIsFound() {
        List<Finding> findings =
                curlew(
                        GOOD.replace("loss time: 0.3 s", "loss time: 0.31 s")
                                .replace("100 %/s", "101 %/s")
                                .replace("3 %, stop", "4 %, stop"));

        assertThat(findings)
                .extracting(Finding::code)
                .containsExactly("link-loss-late", "throttle-rises-fast", "live-above-idle");
        assertThat(findings)
                .extracting(finding -> finding.path().orElseThrow())
                .containsExactly("control/loss time", "control/rise", "control/live below");
    }

    @Test
    void aThrottleThatStaysStopsWhereSomebodyWearsIt() {
        assertThat(only(curlew(GOOD.replace("cut", "hold")), "link-loss-holds").severity())
                .isEqualTo(Severity.WARNS);
        Rig mudlark =
                KillRigs.example(
                        "mudlark",
                        KillRigs.control("mudlark"),
                        "control: {kind: shared throttle, link loss: hold, rise: 60 %/s}\n");
        List<Finding> findings = new ThrottleLink(mudlark).findings();
        assertThat(only(findings, "link-loss-holds").severity()).isEqualTo(Severity.STOPS);
        assertThat(only(findings, "throttle-rises-fast").limit().orElseThrow().origin())
                .isEqualTo("common practice");
    }

    @Test
    void aReceiverOnOnePackBrownsOut() {
        Finding finding = only(curlew(GOOD.replace("own battery", "p.2")), "control-on-one-pack");
        assertThat(finding.part()).contains("p.2");
        assertThat(finding.path()).contains("control/fed by");
    }

    @Test
    void aControllerThatHoldsIsFound() {
        Rig rig =
                KillRigs.curlew(
                        "cut-off: 40 V,",
                        "cut-off: 40 V, signal loss: hold,",
                        KillRigs.CONTROL,
                        GOOD);
        assertThat(new ThrottleLink(rig).findings())
                .extracting(Finding::code)
                .containsExactly("controller-holds");
    }
}
