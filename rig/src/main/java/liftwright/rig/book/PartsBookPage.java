package liftwright.rig.book;

import java.math.BigDecimal;
import java.util.Locale;
import liftwright.rig.FuseOpening;

/** The reference page of the parts book, written from its tables. */
public final class PartsBookPage {

    private static final String HEAD =
            """
            # The parts book

            This page is written from the tables that the program itself uses; a test says when it is
            stale. No maker's part is described. The values stand in, with their doubt, until you
            measure your own: one measurement of a joint or a cell is worth more than this page. Every
            value that was used is printed with the answer.
            """;

    private static final double[] FAN_TIPS_M = {0.070, 0.090, 0.120, 0.140, 0.200, 0.300, 0.460};

    private final StringBuilder out = new StringBuilder(HEAD);

    private PartsBookPage() {}

    /** The page as Markdown, with a line feed at its end. */
    public static String markdown() {
        var page = new PartsBookPage();
        page.curves();
        page.joints();
        page.fuses();
        page.curvesOfFuses();
        page.gauges();
        page.insulations();
        page.fans();
        new HoldingPage(page.out).write();
        return page.out.toString();
    }

    private void curves() {
        out.append(
                """

                ## Open-circuit curves

                Written after `open circuit`: rest voltage of one cell against the share of charge left,
                linear between the points. The doubt shifts the whole curve.
                """);
        for (OpenCircuitCurve curve : OpenCircuitCurves.ALL) {
            line("");
            line("### `%s`", curve.name());
            line("");
            line("± %.2f V; %s.", curve.doubtV(), curve.source());
            line("");
            var charge = new StringBuilder("| charge |");
            var rule = new StringBuilder("| --- |");
            var volt = new StringBuilder("| V |");
            for (int i = 0; i < curve.curve().charge().size(); i++) {
                charge.append(text(" %.0f %% |", 100 * curve.curve().charge().get(i)));
                rule.append(" --- |");
                volt.append(text(" %.3f |", curve.curve().volt().get(i)));
            }
            line("%s", charge);
            line("%s", rule);
            line("%s", volt);
        }
    }

    private void joints() {
        out.append(
                """

                ## Joints

                Written after `joint`: both poles together, new and clean. The rating is what is usually
                advertised; limits take a share of it. The mass is that of the metal, ± 50 % bound: each pole has
                half of it, with the specific heat of copper and its alloys, 385 J/(kg·K).

                | joint | resistance | rating | mass | source |
                | --- | --- | --- | --- | --- |
                """);
        for (BookJoint joint : BookJoint.ALL) {
            line(
                    "| `%s` | %.2f mΩ ± %.0f %% bound | %.0f A | %.0f g | %s |",
                    joint.name(),
                    1e3 * joint.resistanceOhm(),
                    100 * joint.doubtShare(),
                    joint.ratingA(),
                    joint.massG(),
                    joint.source());
        }
    }

    private void fuses() {
        out.append(
                """

                ## Fuses

                Written after `fuse` with its rating. Without a `resistance` it is taken cold as
                """);
        line(
                "%s (± %.0f %% bound). `voltage` and `breaks` are never assumed: read them off yours.",
                PartsBook.fuseSource(), 100 * PartsBook.fuseDoubtShare());
        out.append(
                """

                | form | ratings | DC voltage | breaks | source |
                | --- | --- | --- | --- | --- |
                """);
        for (BookFuse fuse : BookFuse.ALL) {
            line(
                    "| %s | %.0f A to %.0f A | %s | %s | %s |",
                    fuse.form(),
                    fuse.leastA(),
                    fuse.mostA(),
                    fuse.voltage(),
                    fuse.breaks(),
                    fuse.source());
        }
    }

    private void curvesOfFuses() {
        out.append(
                """

                ### When a fuse opens

                Written after `speed`. The times are the middle, on a logarithmic scale, of the windows that
                standards leave to makers; a fuse may open in 0.4 to 2.5 times of them. Points that you
                declare count in their place. Up to 40 A a fuse is taken as fast, above as slow.

                | speed | current over rating | opens in | settles in | source |
                | --- | --- | --- | --- | --- |
                """);
        for (FuseOpening.Speed speed : FuseOpening.Speed.values()) {
            var multiples = new StringBuilder();
            var times = new StringBuilder();
            for (int i = 0; i < speed.points(); i++) {
                multiples.append(text(i == 0 ? "%.0f %%" : ", %.0f %%", 100 * speed.multiple(i)));
                times.append(text(i == 0 ? "%s s" : ", %s s", plain(speed.timeS(i))));
            }
            line(
                    "| `%s` | %s | %s | %.0f s ± 50 %% bound | %s |",
                    speed.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    multiples,
                    times,
                    speed.timeConstantS(),
                    PartsBook.fuseCurveSource(speed));
        }
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private void insulations() {
        out.append(
                """

                ## Insulation

                Written after `insulation`. The class is the temperature that the material bears for years;
                lists of the trade differ by 20 K either way, so read yours off the wire and write it
                after `class`. A wire of which nothing is declared is taken as PVC of 70 °C. Walls are
                ± 30 % bound and from memory, conductivity and heat capacity ± 20 % bound.

                | insulation | class | conductivity | heat capacity | wall up to 1.5 · 6 · 16 · 35 mm² and beyond | source |
                | --- | --- | --- | --- | --- | --- |
                """);
        for (BookInsulation book : BookInsulation.ALL) {
            var walls = new StringBuilder();
            for (BookInsulation.Wall wall : book.walls()) {
                walls.append(walls.isEmpty() ? "" : " · ").append(plain(wall.mm()));
            }
            line(
                    "| `%s` | %.0f °C%s | %.2f W/(m·K) | %.2f MJ/(m³·K) | %s mm | %s |",
                    book.material().word(),
                    book.celsius(),
                    book.spreadK() == 0 ? "" : text(" ± %.0f K bound", book.spreadK()),
                    book.conductivityWpmK(),
                    1e-6 * book.heatJpm3K(),
                    walls,
                    book.source());
        }
    }

    private void gauges() {
        out.append(
                """

                ## Wire gauges

                Written after `run`: American wire gauge, d = 0.127 mm · 92^((36 − n)/39) (ASTM B258).
                Diameter and area are those of solid copper.

                | gauge | diameter | area |
                | --- | --- | --- |
                """);
        for (WireGauge gauge : WireGauge.common()) {
            line("| `%s` | %.3f mm | %.2f mm² |", gauge, gauge.diameterMm(), gauge.areaMm2());
        }
    }

    private void fans() {
        out.append(
                """

                ## Generic fans

                For a first sketch only, before a fan is bought: worked out from what common ducted fans
                share (a jet of 75 m/s, a blade tip of 190 m/s, a shaft power of the ideal over 0.72).
                ± 25 % at best; from memory, measure yours, and say `data: estimate`.

                | tip | hub | exit area | speed | thrust | shaft power |
                | --- | --- | --- | --- | --- | --- |
                """);
        for (double tipM : FAN_TIPS_M) {
            var fan = new GenericFan(tipM);
            line(
                    "| %.0f mm | %.0f mm | %.0f cm² | %.0f rpm | %.0f N | %.1f kW |",
                    1e3 * fan.tipM(),
                    1e3 * fan.hubM(),
                    1e4 * fan.exitAreaM2(),
                    fan.speedRadPerS() * 30 / Math.PI,
                    fan.thrustN(),
                    1e-3 * fan.shaftPowerW());
        }
    }

    @SuppressWarnings("AnnotateFormatMethod") // formats are constants of this page
    private void line(String format, Object... values) {
        out.append(text(format, values)).append('\n');
    }

    @SuppressWarnings("AnnotateFormatMethod")
    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
