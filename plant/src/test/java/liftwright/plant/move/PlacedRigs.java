package liftwright.plant.move;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.testkit.RandomText;

/**
 * Invented rig files whose parts are placed in every way the format knows: on trunk, frame and
 * posed limbs, tilted and straight mounts, singly, in rows, rings and ranges, like others, shifted,
 * mirrored, with exceptions, in several units, with tolerances and comments between.
 */
final class PlacedRigs extends RandomText {

    private static final String[] UNITS = {"mm", "cm", "m", "in"};
    private static final double[] UNIT_M = {0.001, 0.01, 1, 0.0254};

    private final List<String> fans = new ArrayList<>();
    private final int unit;

    private PlacedRigs(RandomGenerator random) {
        super(random);
        this.unit = random.nextInt(UNITS.length);
    }

    static String text(RandomGenerator random) {
        return new PlacedRigs(random).make();
    }

    private String make() {
        line("# a rig that was never built");
        line("liftwright: 1");
        line("rig: Placed");
        line("wearer:   # nobody");
        line("  mass: %.1f kg", in(45, 110));
        line("  stature: %.2f m", in(1.5, 2.0));
        line("  body: %s", word("female", "male"));
        line("  posture:");
        if (coin()) {
            line(
                    "    both shoulders: {flexion: %.0f°, abduction: %.0f°, rotation: %.0f°}",
                    in(-20, 60), in(0, 60), in(-30, 30));
        } else {
            line("    left shoulder: {flexion: %.0f°, abduction: %.0f°}", in(-20, 60), in(0, 60));
            line("    right shoulder: {flexion: %.0f°}", in(-20, 60));
        }
        line("    both elbows: {flexion: %.0f°}", in(0, 90));
        if (coin()) {
            line("    lean: {forward: %.0f°, right: %.0f°}", in(-10, 20), in(-5, 5));
        }
        line("mounts:");
        line(
                "  back: {on: trunk, at: {%s}%s}   # on the back",
                place("forward", "back", "up", "down"),
                coin() ? text(", turn: {forward: %.0f°}", in(-10, 10)) : "");
        line(
                "  side: {on: %s, at: {%s: %s}, twin: other side}",
                word("frame", "trunk"), word("left", "right"), length(0.1, 0.4));
        line(
                "  pod: {on: %s, at: {along: %.0f %%, outboard: %s}, turn: {outboard: %.0f°}, twin: other pod}",
                word("left forearm", "right forearm", "left upper arm"),
                in(10, 90),
                length(0.02, 0.1),
                in(-10, 10));
        line("fan types:");
        line("  F:");
        line("    tip: 120 mm");
        line("    hub: 50 mm");
        line("    mass: 0.5 kg");
        line("    at speed: {speed: 26000 rpm, thrust: 92 N, shaft power: 4.6 kW}");
        line(
                "    motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2 A}");
        line("    controller: {mass: 0.1 kg}");
        line("fans:");
        group("ga", word("back", "side", "pod"));
        group("gb", word("back", "side", "pod"));
        single("one", word("back", "side", "pod"));
        line(
                "  - {id: copy, like: %s%s}",
                word("ga", "gb", "one"),
                coin() ? ", shift: {" + place("up", "down", "forward") + "}" : "");
        fans.add("copy.1");
        line("cells:");
        line(
                "  C: {chemistry: LiPo, capacity: 8 Ah, resistance: 1 mΩ, mass: 165 g, open circuit: LiPo}");
        line("packs:");
        line(
                "  - {id: p, count: 4, cell: C, series: 12, at: {mount: back, %s, right: -%s}%s}",
                place("forward", "back"), range(), coin() ? ", except: {p.2: {charge: 90 %}}" : "");
        line(
                "  - {id: q, count: %d, cell: C, series: 12, at: {mount: pod, along: %s}, twin: r}",
                1 + random.nextInt(2), length(0.01, 0.1));
        line("wiring:");
        line("  feeds:");
        line("    - id: feed");
        line("      from: p");
        line("      trunk: [{fuse: 200 A}]");
        line("      branch: [{run: 10 AWG, length: 500 mm}]");
        line("      fans: {p.1: [%s]}", fans.getFirst());
        line("other parts:");
        line("  - {id: frame, mass: 5 kg, at: {mount: back}}   # the frame");
        line("  - id: box");
        line("    mass: 2 kg");
        line("    at:");
        line("      mount: back");
        line("      # measured twice");
        line("      right: %s ± %s   # roughly", length(0.05, 0.2), length(0.001, 0.01));
        line("  - {id: strap, mass: 1 kg, at: {on: trunk, up: %s}}", length(0.05, 0.2));
        line(
                "  - {id: shell, mass: 1 kg, at: {mount: pod, outboard: %s}, twin: other shell}",
                length(0.01, 0.05));
        line("control:");
        line("  kind: flight computer");
        line("# the end");
        return out.toString();
    }

    private void group(String id, String mount) {
        int count = 2 + random.nextInt(4);
        String pattern =
                switch (random.nextInt(4)) {
                    case 0 ->
                            text(
                                    "row: %d, from: {%s}, to: {%s}",
                                    count, place("left", "forward"), place("right", "back"));
                    case 1 ->
                            text(
                                    "row: %d, spacing: %s, runs: right%s",
                                    count, length(0.1, 0.2), at(mount));
                    case 2 ->
                            text(
                                    "rows: [%d, %d], spacing: %s%s",
                                    count, 2, length(0.1, 0.2), at(mount));
                    default -> text("ring: %d, radius: %s%s", count, length(0.2, 0.5), at(mount));
                };
        boolean twin = coin();
        String except = "";
        if (coin()) {
            String who = twin && coin() ? "t" + id + ".2" : id + ".2";
            except = ", except: {" + who + ": {at: {" + place("up", "left", "forward") + "}}}";
        }
        line(
                "  - {id: %s, type: F, mount: %s, %s%s%s}   # %s",
                id, mount, pattern, twin ? ", twin: t" + id : "", except, "a group");
        fans.add(id + ".1");
    }

    private void single(String id, String mount) {
        line("  # one by itself");
        line("  - id: %s", id);
        line("    type: F");
        line("    mount: %s", mount);
        if (coin()) {
            line("    at:");
            line("      %s   # up or down", place("up", "down"));
            line("      %s ± 5 %%", place("right", "left"));
            if (mount.equals("back") && coin()) {
                line("    cant: {outboard: 3°}");
            }
        }
        if (coin()) {
            line("    shift: {%s}", place("forward", "back"));
        }
        if (coin()) {
            line("    twin: t%s", id);
        }
        fans.add(id + ".1");
    }

    private String at(String mount) {
        return switch (random.nextInt(3)) {
            case 0 -> "";
            case 1 -> ", at: {" + place("up", "down", "forward") + "}";
            default ->
                    ", at: {"
                            + (mount.equals("pod")
                                    ? place("outboard", "inboard", "along")
                                    : place("right", "left"))
                            + "}";
        };
    }

    private String place(String... ways) {
        return word(ways) + ": " + (random.nextInt(4) == 0 ? "-" : "") + length(0.02, 0.3);
    }

    private String range() {
        int u = random.nextInt(UNITS.length);
        return text("%s…%s %s", number(in(0.05, 0.2), u), number(in(0.05, 0.2), u), UNITS[u]);
    }

    private String length(double leastM, double mostM) {
        int u = random.nextInt(5) == 0 ? random.nextInt(UNITS.length) : unit;
        return number(in(leastM, mostM), u) + " " + UNITS[u];
    }

    private static String number(double metres, int u) {
        return text(UNIT_M[u] == 1 ? "%.3f" : "%.1f", metres / UNIT_M[u]);
    }

    private boolean coin() {
        return random.nextBoolean();
    }
}
