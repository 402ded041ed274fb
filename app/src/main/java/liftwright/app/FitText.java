package liftwright.app;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import liftwright.learning.correct.FitResult;
import liftwright.learning.fit.Fitted;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;

/** What a fit found, in words. */
final class FitText {

    /** Values that went less far stand in the file alone. */
    private static final int MOST = 30;

    private final StringBuilder out = new StringBuilder();

    private FitText() {}

    static String of(String rig, FitResult found) {
        var text = new FitText();
        text.write(rig, found);
        return text.out.toString();
    }

    private void write(String rig, FitResult found) {
        line(rig + ": what its tests find of its numbers. A calculation, not a certificate.");
        line("");
        if (!found.fitted().converged()) {
            line(
                    "What was found is not proven to be most probable: no verdict becomes better by"
                            + " it.");
        }
        if (found.moved().isEmpty()) {
            line("These tests tell no number better than it is declared.");
        } else {
            line("Found, farthest first; in brackets 95 % of what is left of the doubt:");
            found.moved().stream().limit(MOST).forEach(this::moved);
            if (found.moved().size() > MOST) {
                line("  and " + (found.moved().size() - MOST) + " more");
            }
        }
        line("");
        line("How the channels fit, root mean square of measured less predicted:");
        for (Fitted.Residual one : found.fitted().residuals()) {
            line(
                    String.format(
                            Locale.ROOT,
                            "  test %d, %s: %.4g as declared, %.4g fitted (SI)",
                            one.test() + 1,
                            one.channel(),
                            one.declaredRmsSi(),
                            one.rmsSi()));
        }
        if (found.fitted().outliers() > 0) {
            line(
                    "  "
                            + found.fitted().outliers()
                            + " blocks lie far off and count for less than half");
        }
        line("");
        heldOut(found);
        found.fitted().untold().forEach(one -> line("Not told by these tests: " + one.words()));
        found.fitted().notes().forEach(one -> line("Note: " + one));
    }

    private void heldOut(FitResult found) {
        if (found.heldOut().isEmpty()) {
            line(
                    "No test was held out: one test cannot bear out what it found itself. No verdict"
                            + " becomes better by it; add another test.");
            return;
        }
        double rms = found.heldOut().getAsDouble();
        line(
                String.format(
                        Locale.ROOT,
                        "Each test told by the others: off by %.2f times what was expected%s.",
                        rms,
                        rms > Grounds.WORST_HELD_OUT
                                ? ", which is too much: the model leaves something out"
                                : ""));
    }

    private void moved(FitResult.Moved one) {
        Found found = one.found();
        line(
                "  "
                        + found.parameter()
                        + ": "
                        + shown(found.value(), found)
                        + " ("
                        + shown(found.low(), found)
                        + " to "
                        + shown(found.high(), found)
                        + "), declared "
                        + SiText.of(found.declared())
                        + String.format(
                                Locale.ROOT,
                                "; went %+.1f of its standard deviations, %.0f %% of its doubt left",
                                one.by(),
                                100 * one.left()));
    }

    private static String shown(double si, Found found) {
        double rounded = new BigDecimal(si).round(new MathContext(4)).doubleValue();
        return SiText.of(Quantity.exact(rounded, found.declared().dimension()));
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
