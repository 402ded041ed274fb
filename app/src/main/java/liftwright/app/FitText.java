package liftwright.app;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
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
    private static final int MOST = 20;

    /** Of what is not told, and of notes: more nobody reads. */
    private static final int MOST_TOLD = 8;

    private final StringBuilder out = new StringBuilder();
    private final List<String> tests;

    private FitText(List<String> tests) {
        this.tests = tests;
    }

    /**
     * @param tests ids of the tests, in the order of the fit
     */
    static String of(String rig, FitResult found, List<String> tests) {
        var text = new FitText(tests);
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
                line(
                        "  and "
                                + (found.moved().size() - MOST)
                                + " more, which went less far: they stand in the file that "
                                + FitGrammar.WRITE
                                + " writes");
            }
        }
        line("");
        line("How the channels fit, root mean square of measured less predicted:");
        FitResiduals.of(found.fitted().residuals(), tests).forEach(one -> line("  " + one));
        if (found.fitted().outliers() > 0) {
            line(
                    "  "
                            + found.fitted().outliers()
                            + " blocks lie far off and count for less than half");
        }
        line("");
        heldOut(found);
        several(
                "Not told by these tests",
                found.fitted().untold().stream().map(Fitted.Untold::words).distinct().toList());
        several("Note", found.fitted().notes().stream().distinct().toList());
    }

    /** The first some of what may be long. */
    private void several(String head, List<String> all) {
        all.stream().limit(MOST_TOLD).forEach(one -> line(head + ": " + one));
        if (all.size() > MOST_TOLD) {
            line(head + ": " + (all.size() - MOST_TOLD) + " more of the kind");
        }
    }

    private void heldOut(FitResult found) {
        if (tests.size() > 1 && found.heldOut().isEmpty()) {
            line(
                    "A test could not be told by the others: no verdict becomes better by what was"
                            + " found.");
            return;
        }
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
                        + declared(found.declared())
                        + String.format(
                                Locale.ROOT,
                                "; went %+.1f of its standard deviations, %.0f %% of its doubt left",
                                one.by(),
                                100 * Math.min(1, one.left())));
    }

    /** As declared, in digits that can be read. */
    private static String declared(Quantity of) {
        double wide = Math.max(of.tolerance().plus(), of.tolerance().minus());
        String unit = SiText.unit(of.dimension());
        return (number(of.si()) + (wide > 0 ? " ± " + number(wide) : "") + " " + unit).strip();
    }

    private static String shown(double si, Found found) {
        return (number(si) + " " + SiText.unit(found.declared().dimension())).strip();
    }

    private static String number(double si) {
        if (si == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(si).round(new MathContext(4)).stripTrailingZeros();
        double size = Math.abs(si);
        return size >= 1e-4 && size < 1e6
                ? rounded.toPlainString()
                : String.format(Locale.ROOT, "%.3e", si);
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
