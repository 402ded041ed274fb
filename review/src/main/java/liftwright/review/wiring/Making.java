package liftwright.review.wiring;

import java.util.Locale;
import java.util.OptionalDouble;
import liftwright.rig.Element;

/**
 * How an end, a joint or a device is made: what the trade does where the maker says nothing.
 *
 * @param words what to do
 * @param torqueNm for its screw, N·m; empty where none is tightened
 */
record Making(String words, OptionalDouble torqueNm) {

    /**
     * Tightening of copper lugs on studs and screws, from memory; brass and small steel screws
     * strip above it.
     */
    private static final double M4_NM = 1.5;

    private static final double M5_NM = 3;
    private static final double M6_NM = 6;
    private static final double M8_NM = 12;

    static Making of(Element element) {
        return switch (element) {
            case Element.Run _ ->
                    new Making(
                            "strip without a nick, twist, mark both ends with the part's name",
                            OptionalDouble.empty());
            case Element.Joint joint -> joint(joint.kind().strip().toLowerCase(Locale.ROOT));
            case Element.Fuse _ ->
                    new Making(
                            "read rating, voltage and breaking current off its body; clean, tight"
                                    + " holder",
                            OptionalDouble.empty());
            case Element.Pole _ ->
                    new Making(
                            "maker's torque; mind the polarity where it has one",
                            OptionalDouble.empty());
        };
    }

    /** By the words of the parts book; what it does not know goes by the maker's sheet. */
    private static Making joint(String kind) {
        if (kind.startsWith("bullet")) {
            return new Making(
                    "solder the cup full, let it cool held still, sleeve it; insulated half on the"
                            + " pack's side",
                    OptionalDouble.empty());
        }
        if (kind.startsWith("lug m")) {
            return new Making(
                    "crimp with the die of lug and gauge, sleeve, tighten, mark the nut",
                    switch (kind.substring("lug m".length())) {
                        case "4" -> OptionalDouble.of(M4_NM);
                        case "5" -> OptionalDouble.of(M5_NM);
                        case "6" -> OptionalDouble.of(M6_NM);
                        case "8" -> OptionalDouble.of(M8_NM);
                        default -> OptionalDouble.empty();
                    });
        }
        if (kind.startsWith("blade")) {
            return new Making("crimp with the die of the blade; push home", OptionalDouble.empty());
        }
        if (kind.startsWith("screw terminal")) {
            return new Making(
                    "ferrule or ring, never a tinned end; tighten", OptionalDouble.of(M4_NM));
        }
        if (kind.startsWith("crimp splice")) {
            return new Making(
                    "crimp with the die of splice and gauge, sleeve", OptionalDouble.empty());
        }
        if (kind.startsWith("solder splice")) {
            return new Making(
                    "join by hand first so that it holds unsoldered, flow, sleeve, tie down both"
                            + " sides",
                    OptionalDouble.empty());
        }
        return new Making("by its maker's sheet", OptionalDouble.empty());
    }

    /** Whether a joint holds its wire by a crimp, which is pulled at to test it. */
    static boolean isCrimped(Element.Joint joint) {
        String kind = joint.kind().strip().toLowerCase(Locale.ROOT);
        return kind.startsWith("lug") || kind.startsWith("blade") || kind.startsWith("crimp");
    }

    /**
     * Force that a crimped test piece must hold, N: UL 486A, pounds from memory; empty for gauges
     * that it does not print.
     */
    static OptionalDouble pullN(int gauge) {
        double pound =
                switch (gauge) {
                    case 22 -> 8;
                    case 20 -> 13;
                    case 18 -> 20;
                    case 16 -> 30;
                    case 14 -> 50;
                    case 12 -> 70;
                    case 10 -> 80;
                    case 8 -> 90;
                    case 6 -> 100;
                    case 4 -> 140;
                    case 3 -> 160;
                    case 2 -> 180;
                    case 1 -> 200;
                    case 0 -> 250;
                    case -1 -> 300;
                    case -2 -> 350;
                    case -3 -> 450;
                    default -> 0;
                };
        return pound == 0 ? OptionalDouble.empty() : OptionalDouble.of(pound * 4.4482216152605);
    }
}
