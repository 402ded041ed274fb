package liftwright.trials.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SortedMap;
import liftwright.plant.HeldCorrections;
import liftwright.quantity.Quantity;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;

/**
 * What tests found, as inputs of cards.
 *
 * <p>A correction tells of the build that was passed, and changes none of it. One that lies within
 * the doubt that was declared voids nothing: the numbers on the card had allowed for it. One that
 * lies beyond makes them wrong, and is an input about what its value is about. It is written in
 * whole times that doubt, so that a fit of one more test, which moves every value a little, voids
 * nothing either.
 */
final class CorrectionInputs {

    /** Head of their paths; behind it stands the name of the parameter. */
    static final String CORRECTED = "corrections";

    private CorrectionInputs() {}

    static void add(Rig rig, SortedMap<String, String> found) {
        for (Correction group : HeldCorrections.of(rig).held()) {
            for (Found one : group.found()) {
                String text = text(one);
                if (!text.isEmpty()) {
                    found.put(CORRECTED + "/" + one.parameter(), text);
                }
            }
        }
    }

    private static String text(Found found) {
        double by = found.value() - found.declared().si();
        double doubt =
                by < 0 ? found.declared().tolerance().minus() : found.declared().tolerance().plus();
        if (by == 0) {
            return "";
        }
        if (doubt == 0) {
            double rounded = new BigDecimal(found.value()).round(new MathContext(3)).doubleValue();
            return ValueText.of(Quantity.exact(rounded, found.declared().dimension()));
        }
        double times = Math.floor(Math.abs(by) / doubt);
        return times < 1
                ? ""
                : "found beyond "
                        + (long) Math.min(times, 1e6)
                        + " times its doubt "
                        + (by < 0 ? "below" : "above");
    }

    /** The path in the rig file that an input of these is about; another path as it is. */
    static String inRig(String path) {
        if (!path.startsWith(CORRECTED + "/")) {
            return path;
        }
        String name = path.substring(CORRECTED.length() + 1);
        int colon = name.indexOf(": ");
        return colon < 0 ? name : name.substring(colon + 2);
    }

    /** The part that an input of these is about by its name; empty text where none is. */
    static String part(String path) {
        String name = path.substring(CORRECTED.length() + 1);
        int colon = name.indexOf(": ");
        return colon < 0 ? "" : name.substring(0, colon);
    }
}
