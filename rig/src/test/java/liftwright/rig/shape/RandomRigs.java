package liftwright.rig.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.testkit.RandomText;

/** Random rigs as texts: each is right, none is likely to have been thought of. */
final class RandomRigs extends RandomText {

    private final List<String> fans = new ArrayList<>();
    private final List<String> groups = new ArrayList<>();
    private int twins;

    private RandomRigs(RandomGenerator random) {
        super(random);
    }

    /**
     * @param text the file
     * @param fanCount how many fans it means
     * @param packCount how many packs
     */
    record Made(String text, int fanCount, int packCount) {}

    static Made make(RandomGenerator random) {
        return new RandomRigs(random).make();
    }

    private Made make() {
        boolean worn = random.nextBoolean();
        line("liftwright: 1");
        line("rig: Random %d", random.nextInt(1000));
        if (random.nextBoolean()) {
            line("site: {elevation: %.0f m, humidity: %d %%}", in(0, 2000), random.nextInt(101));
        }
        if (worn) {
            line(
                    "wearer: {mass: %.1f kg ± 0.5 kg, stature: %.2f m, body: %s}",
                    in(45, 110), in(1.5, 2.0), random.nextBoolean() ? "female" : "male");
        }
        line("mounts:");
        line(
                "  middle: {on: %s, at: {%s: %.0f mm}}",
                worn ? "trunk" : "frame", word("forward", "back", "up", "down"), in(0, 300));
        line(
                "  side: {on: %s, at: {%s: %.0f mm}, turn: {%s: %.1f°}, twin: other side}",
                worn ? word("left forearm", "right upper arm") : "frame",
                worn ? "outboard" : word("left", "right"),
                in(20, 400),
                word("forward", "back", "left", "right"),
                in(0, 20));
        types();
        line("fans:");
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            fanGroup("g" + (char) ('a' + i));
        }
        line("cells:");
        line(
                "  C: {chemistry: LiPo, capacity: %.1f Ah ± 2 %% each, resistance: %.2f mΩ, mass: %.0f g, "
                        + "open circuit: LiPo}",
                in(2, 16), in(0.5, 3), in(50, 300));
        line("packs:");
        int packs = 1 + random.nextInt(Math.min(6, fans.size()));
        line(
                "  - {id: p, count: %d, cell: C, series: %d, at: {mount: middle, up: %.0f…%.0f mm}}",
                packs, 6 + random.nextInt(19), in(-200, 0), in(1, 200));
        wiring(packs);
        line("other parts:");
        line("  - {id: frame, mass: %.2f kg, at: {%s}}", in(1, 9), "mount: middle");
        line(
                "  - {id: shell, mass: %.2f kg, at: {mount: side, forward: %.0f mm}, twin: shell too}",
                in(1, 3), in(-50, 50));
        line("control:");
        line("  kind: %s", word("shared throttle", "flight computer"));
        if (random.nextBoolean()) {
            line("  groups:");
            for (String group : groups) {
                line("    %s: {fans: [%s], share: %.0f %%}", "c" + group, group, in(60, 100));
            }
        }
        return new Made(out.toString(), fans.size(), packs);
    }

    private void types() {
        line("fan types:");
        for (String type : List.of("A", "B")) {
            double tip = in(60, 300);
            line("  %s:", type);
            line("    tip: %.1f mm", tip);
            line("    hub: %.1f mm", tip * in(0.2, 0.5));
            line("    mass: %.0f g ± 3 %%", in(80, 900));
            line("    data: %s", word("seller", "measured", "estimate"));
            if (random.nextBoolean()) {
                line(
                        "    at speed: {speed: %.0f rpm, thrust: %.1f N, shaft power: %.0f W}",
                        in(5000, 40000), in(5, 200), in(100, 9000));
            } else {
                line(
                        "    coefficients: {thrust: %.3g N·s²/rad², torque: %.3g N·m·s²/rad²}",
                        in(1e-6, 1e-4), in(1e-8, 1e-6));
            }
            line(
                    "    motor: {speed constant: %.0f rpm/V, winding resistance: %.1f mΩ, "
                            + "no-load current: %.1f A}",
                    in(100, 2000), in(5, 60), in(0.5, 5));
            line(
                    "    controller: {mass: %.0f g%s}",
                    random.nextInt(4) == 0 ? 0 : in(10, 200),
                    random.nextBoolean()
                            ? text(
                                    ", heat capacity: %.0f J/K, to air: %.2f W/K",
                                    in(5, 99), in(1, 5))
                            : "");
        }
    }

    private void fanGroup(String id) {
        boolean side = random.nextBoolean();
        boolean twin = side && random.nextBoolean();
        var head =
                text(
                        "  - {id: %s, type: %s, mount: %s, ",
                        id, word("A", "B"), side ? "side" : "middle");
        var pattern = "";
        int fansMade;
        switch (random.nextInt(4)) {
            case 0 -> {
                fansMade = 1;
                pattern = text("at: {right: %.0f mm, up: %.0f mm}", in(10, 200), in(-50, 50));
            }
            case 1 -> {
                fansMade = 2 + random.nextInt(5);
                pattern =
                        text(
                                "row: %d, from: {left: 300 mm}, to: {right: %.0f mm}",
                                fansMade, in(10, 400));
            }
            case 2 -> {
                int a = 1 + random.nextInt(4);
                int b = 1 + random.nextInt(4);
                fansMade = a + b;
                pattern = text("rows: [%d, %d], spacing: %.0f mm", a, b, in(80, 200));
            }
            default -> {
                fansMade = 3 + random.nextInt(4);
                pattern =
                        text(
                                "ring: %d, radius: %.2f m, start: %.0f°, cant: {outward: %.1f°}",
                                fansMade, in(0.2, 1), in(0, 90), in(0, 8));
            }
        }
        String spin =
                random.nextBoolean()
                        ? ", spin: " + word("alternating", "left-hand", "right-hand")
                        : "";
        String twinText = "";
        add(id, fansMade);
        if (twin) {
            String name = "t" + twins++;
            twinText = ", twin: " + name;
            add(name, fansMade);
        }
        out.append(head).append(pattern).append(spin).append(twinText).append("}\n");
    }

    private void add(String group, int count) {
        groups.add(group);
        for (int i = 1; i <= count; i++) {
            fans.add(group + "." + i);
        }
    }

    private String opening(double ratingA) {
        var opening = new StringBuilder();
        if (random.nextBoolean()) {
            opening.append(", speed: ").append(word("fast", "slow", "very fast"));
        }
        if (random.nextBoolean()) {
            double currentA = Math.ceil(ratingA) * in(1.05, 1.8);
            double timeS = in(50, 5000);
            opening.append(", points: [");
            for (int k = 2 + random.nextInt(4); k > 0; k--) {
                opening.append(text("{current: %.1f A, time: %.6f s}", currentA, timeS));
                opening.append(k > 1 ? ", " : "]");
                currentA *= in(1.1, 2);
                timeS *= in(0.05, 0.8);
            }
            opening.append(text(", time constant: %.1f s", in(1, 200)));
        }
        return opening.toString();
    }

    private String covering() {
        var covering = new StringBuilder();
        if (random.nextBoolean()) {
            covering.append(", insulation: ")
                    .append(word("PVC", "XLPE", "ETFE", "silicone", "FEP", "PTFE"));
        }
        if (random.nextBoolean()) {
            covering.append(text(", class: %.0f °C", in(60, 260)));
        }
        if (random.nextBoolean()) {
            covering.append(text(", wall: %.2f mm ± 10 %%", in(0.2, 3)));
        }
        if (random.nextBoolean()) {
            covering.append(text(", bundle: %d, air: %.1f m/s", 1 + random.nextInt(9), in(0, 60)));
        }
        return covering.toString();
    }

    private void wiring(int packs) {
        line("wiring:");
        line("  contactors: {main: {poles: %d}}", packs);
        line("  feeds:");
        line("    - id: feed");
        line("      from: p");
        double fuseA = in(20, 300);
        line(
                "      trunk: [{joint: lug M6%s}, {fuse: %.0f A%s}, {contactor: main}]",
                random.nextBoolean()
                        ? text(", damage: %.2f, growth: %.1f %%/s", in(1, 5), in(0, 9))
                        : "",
                fuseA,
                opening(fuseA));
        line(
                "      branch: [{run: %d AWG, length: %.0f mm ± 5 %%%s}]",
                4 + 2 * random.nextInt(5), in(100, 900), covering());
        line("      fans:");
        for (int p = 0; p < packs; p++) {
            var mine = new ArrayList<String>();
            for (int f = p; f < fans.size(); f += packs) {
                mine.add(fans.get(f));
            }
            line("        p.%d: [%s]", p + 1, String.join(", ", mine));
        }
    }
}
