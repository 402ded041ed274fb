package liftwright.report.html;

/** Hatches that all pictures of a sheet share, so that nothing rests on colour. */
final class Hatches {

    private Hatches() {}

    static void define(Markup page) {
        page.element(
                "svg",
                () ->
                        page.element(
                                "defs",
                                () -> {
                                    hatch(page, "hatch-taken", "M-1 7 L7 -1 M-1 1 L1 -1 M5 7 L7 5");
                                    page.element(
                                            "pattern",
                                            () ->
                                                    page.empty(
                                                            "circle",
                                                            "cx",
                                                            "2.5",
                                                            "cy",
                                                            "2.5",
                                                            "r",
                                                            "1.2",
                                                            "class",
                                                            "hatchdot"),
                                            "id",
                                            "hatch-added",
                                            "width",
                                            "5",
                                            "height",
                                            "5",
                                            "patternUnits",
                                            "userSpaceOnUse");
                                    hatch(page, "hatch-pack", "M0 3 L6 3");
                                    hatch(
                                            page,
                                            "hatch-zone",
                                            "M-1 1 L1 -1 M-1 11 L11 -1 M9 11 L11 9",
                                            10,
                                            "zoneline");
                                }),
                "width",
                "0",
                "height",
                "0",
                "class",
                "hatches",
                "aria-hidden",
                "true",
                "focusable",
                "false");
    }

    private static void hatch(Markup page, String id, String d) {
        hatch(page, id, d, 6, "hatchline");
    }

    private static void hatch(Markup page, String id, String d, int size, String style) {
        page.element(
                "pattern",
                () -> page.empty("path", "d", d, "class", style),
                "id",
                id,
                "width",
                Integer.toString(size),
                "height",
                Integer.toString(size),
                "patternUnits",
                "userSpaceOnUse");
    }
}
