package liftwright.rig.book;

import java.util.Locale;
import liftwright.rig.HoldingStand.BoltClass;
import liftwright.rig.HoldingStand.BoltSize;
import liftwright.rig.RiskMatrix;

/** The part of the parts book that concerns stands and risks. */
final class HoldingPage {

    private final StringBuilder out;

    HoldingPage(StringBuilder out) {
        this.out = out;
    }

    void write() {
        bolts();
        risks();
    }

    private void bolts() {
        out.append(
                """

                ## Bolts

                Written after `bolt size` and `bolt class`. Coarse threads (ISO 261); the classes are those that are stamped
                on the heads (ISO 898-1), up to M16. A bolt of which no class is declared counts as 4.6, the least there is.
                What the hole in the ground holds is not known to the book: measure it, and write it as `bolt strength`.

                | size | diameter | pitch |
                | --- | --- | --- |
                """);
        for (BoltSize size : BoltSize.values()) {
            line(
                    "| `%s` | %.0f mm | %.2f mm |",
                    size.name(), 1e3 * size.diameterM(), 1e3 * size.pitchM());
        }
        out.append(
                """

                | class | stress under proof load | tensile strength |
                | --- | --- | --- |
                """);
        for (BoltClass one : BoltClass.values()) {
            line(
                    "| `%s` | %.0f MPa | %.0f MPa |",
                    one.word(), 1e-6 * one.proofPa(), 1e-6 * one.ultimatePa());
        }
    }

    private void risks() {
        RiskMatrix matrix = PartsBook.riskMatrix();
        line("");
        line("## Risk matrix");
        line("");
        line("Source: %s.", matrix.source());
        out.append(
                """
                It stands in until a [risk matrix](rig-file.md#risk-matrix) is declared. Severities and likelihoods are those of
                the standard's tables I and II; one printing has “low” where an improbable mishap is marginal. The chance is that of
                the failure within the `exposure` of the [rates](rig-file.md#rates).

                | likelihood | chance | I catastrophic | II critical | III marginal | IV negligible |
                | --- | --- | --- | --- | --- | --- |
                """);
        for (RiskMatrix.Likelihood level : RiskMatrix.Likelihood.values()) {
            var row = new StringBuilder();
            for (RiskMatrix.Severity severity : RiskMatrix.Severity.values()) {
                row.append(' ').append(matrix.risk(severity, level)).append(" |");
            }
            line(
                    "| %s %s | %s |%s",
                    level.letter(), level.name().toLowerCase(Locale.ROOT), chance(level), row);
        }
    }

    private static String chance(RiskMatrix.Likelihood level) {
        return switch (level) {
            case FREQUENT -> "from 10 %";
            case PROBABLE -> "from 1 % to 10 %";
            case OCCASIONAL -> "from 0.1 % to 1 %";
            case REMOTE -> "from 0.0001 % to 0.1 %";
            case IMPROBABLE -> "below 0.0001 %";
            case ELIMINATED -> "none";
        };
    }

    @SuppressWarnings("AnnotateFormatMethod") // formats are constants of this page
    private void line(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
