package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionIntervalTest {

    /**
     * Printed to four digits: Newcombe, Statistics in Medicine 17 (1998) 857–872, Table I (cases
     * from memory, limits recomputed); 682/925: Conover 1971, as printed.
     */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2527, 0.3676, 5e-5",
        "15, 148, 0.0578, 0.1617, 5e-5",
        "0, 20, 0, 0.1684, 5e-5",
        "1, 29, 0.0009, 0.1776, 5e-5",
        "682, 925, 0.7076683, 0.7654066, 1e-7",
        "0, 30, 0, 0.1157, 5e-5",
    })
    void givesPublishedLimits(int successes, int trials, double low, double high, double error) {
        ProportionInterval interval = ProportionInterval.clopperPearson(successes, trials, 0.95);
        assertThat(interval.lower()).isCloseTo(low, within(error));
        assertThat(interval.upper()).isCloseTo(high, within(error));
    }

    /** 32-digit bisection of the incomplete beta function (Clopper and Pearson 1934). */
    @ParameterizedTest
    @CsvSource({
        "0, 5, 0.9, 0.0, 0.450719728346941",
        "1, 5, 0.95, 0.00505076337946806, 0.71641793611809",
        "2, 5, 0.99, 0.0228812213753545, 0.917170812798523",
        "5, 5, 0.99, 0.346572421577573, 1.0",
        "0, 10, 0.95, 0.0, 0.308497107818761",
        "9, 10, 0.95, 0.554983882971805, 0.997471421455538",
        "1, 20, 0.99, 0.000250595686831446, 0.317141734757095",
        "19, 20, 0.9, 0.783893835793153, 0.99743862122347",
        "7, 30, 0.95, 0.0993378649580198, 0.42283652297822",
        "0, 59, 0.9, 0.0, 0.0495076098882269",
        "29, 59, 0.95, 0.358912727800532, 0.625017450265024",
        "58, 59, 0.99, 0.880709989564901, 0.999915045272865",
        "10, 100, 0.9, 0.05526323768287, 0.163717623275815",
        "50, 100, 0.95, 0.398321129503301, 0.601678870496699",
        "150, 300, 0.99, 0.424472435834202, 0.575527564165798",
        "1, 1000, 0.95, 2.5317487491294e-5, 0.00555892427982667",
        "250, 1000, 0.99, 0.215496823241538, 0.286922134440236",
        "999, 1000, 0.9, 0.9952650064245, 0.999948708021091",
        "1000, 1000, 0.99, 0.994715693960503, 1.0",
    })
    void givesTheExactLimits(
            int successes, int trials, double confidence, double low, double high) {
        ProportionInterval interval =
                ProportionInterval.clopperPearson(successes, trials, confidence);
        assertThat(interval.lower()).isCloseTo(low, within(1e-12));
        assertThat(interval.upper()).isCloseTo(high, within(1e-12));
    }

    /** ln 0.05 / ln R, rounded up: the usual zero-failure demonstration. */
    @ParameterizedTest
    @CsvSource({"0.90, 29", "0.95, 59", "0.99, 299"})
    void countsTheTrialsWithoutAFailure(double reliability, int trials) {
        assertThat(ProportionInterval.trialsWithoutFailure(reliability, 0.95)).isEqualTo(trials);
    }

    @Test
    void refusesWhatIsNoProportion() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ProportionInterval.clopperPearson(0, 0, 0.95));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ProportionInterval.clopperPearson(5, 4, 0.95));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ProportionInterval.clopperPearson(-1, 4, 0.95));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ProportionInterval.clopperPearson(1, 4, 1));
    }
}
