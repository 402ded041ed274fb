package liftwright.trials;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.testkit.RandomText;

/**
 * Random rigs as texts, of sizes that could be built: worn ones and modules, one to four mounts
 * with groups and twins, up to three fan types, packs and their feeds, kills of several kinds,
 * grounds, crew, stand, tether, scale, rates, limits, serial numbers. Usable lift over weight is
 * from about 0.8 to 1.8.
 */
public final class RandomTrialRig extends RandomText {

    /** A group of fans, its twin included: what feeds and controls it needs to know of it. */
    private record Group(String id, List<String> fans, FanKind kind) {}

    /** What fan, wire and fuse of one type are sized by. */
    record FanKind(String name, double thrustN, double currentA) {}

    private final boolean worn;
    private final int series;
    private final List<String> mounts = new ArrayList<>();
    private final List<FanKind> kinds = new ArrayList<>();
    private final List<Group> groups = new ArrayList<>();
    private final List<String> packs = new ArrayList<>();
    private final boolean crewed;
    private String layout = "";
    private int fanCount;

    private RandomTrialRig(RandomGenerator random) {
        super(random);
        worn = random.nextBoolean();
        series = 6 + random.nextInt(9);
        crewed = chance(0.9);
    }

    /** The file of a rig that reads without problems. */
    public static String yaml(RandomGenerator random) {
        return new RandomTrialRig(random).write();
    }

    /** The rig of such a file. */
    public static Rig rig(RandomGenerator random) {
        return rig(yaml(random));
    }

    /** The rig that a text declares, which has to be without errors. */
    public static Rig rig(String yaml) {
        var reading = reading(yaml);
        return reading.rig()
                .orElseThrow(() -> new AssertionError(reading.problems() + "\n" + yaml));
    }

    /** What a text declares. */
    public static RigReading reading(String yaml) {
        return RigReading.read("random.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    }

    private String write() {
        line("liftwright: 1");
        line("rig: Random %d", random.nextInt(1000));
        line("revision: %d", random.nextInt(20));
        site();
        if (worn) {
            wearer();
        }
        layout = mountsAndGroups();
        fanTypes();
        out.append(layout);
        cellsAndPacks();
        wiring();
        parts();
        control();
        new RandomTrialRest(random, out, worn, crewed, groups.getFirst().fans()).write();
        serials();
        return out.toString();
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private String doubt() {
        return switch (random.nextInt(4)) {
            case 0 -> "";
            case 1 -> text(" ± %.1f %%", in(0.5, 4));
            case 2 -> text(" ± %.1f %% each", in(0.5, 4));
            default -> text(" ± %.1f %% bound", in(0.5, 4));
        };
    }

    private void site() {
        line("site: {elevation: %.0f m, temperature: %.0f °C}", in(0, 900), in(2, 30));
        line(
                "demands: {thrust to weight: %.2f, hover: %.0f s, reserve: 20 %%, height: %.1f m,"
                        + " yaw: %s}",
                worn ? 1.15 : 1.6, in(10, 90), in(0.3, 1.5), word("held", "free"));
        if (chance(0.5)) {
            line(
                    "limits: {cell under load: %.2f V, kill time: %.2f s, motor winding: %.0f °C,"
                            + " bystanders: %.0f m}",
                    in(3.2, 3.4), in(0.3, 0.6), in(100, 130), in(20, 40));
        }
    }

    private void wearer() {
        line("wearer:");
        line("  mass: %.1f kg ± 0.4 kg", in(50, 95));
        line("  stature: %.2f m", in(1.55, 1.9));
        line("  body: %s", word("female", "male"));
        line(
                "  posture: {both shoulders: {flexion: %.0f°, abduction: %.0f°}, left elbow:"
                        + " {flexion: %.0f°}}",
                in(0, 25), in(5, 25), in(0, 20));
    }

    /** Writes the mounts and gives the text of the fans, which stands behind their types. */
    private String mountsAndGroups() {
        int types = 1 + random.nextInt(3);
        for (int i = 0; i < types; i++) {
            kinds.add(new FanKind("F" + (i + 1), 0, 0));
        }
        var fans = new StringBuilder("fans:\n");
        line("mounts:");
        mount("middle", worn ? "trunk" : "frame", false, fans);
        if (chance(0.6)) {
            mount("side", worn ? word("left forearm", "left upper arm") : "frame", true, fans);
        }
        if (chance(0.3)) {
            mount("rear", worn ? "trunk" : "frame", false, fans);
        }
        return fans.toString();
    }

    private void mount(String name, String on, boolean twin, StringBuilder fans) {
        mounts.add(name);
        String at =
                twin
                        ? text(
                                worn ? "outboard: %.0f mm, along: %.0f %%" : "left: %.0f mm",
                                worn ? in(20, 60) : in(250, 500),
                                in(30, 70))
                        : text("%s: %.0f mm", name.equals("rear") ? "back" : "up", in(0, 200));
        line("  %s: {on: %s, at: {%s}%s}", name, on, at, twin ? ", twin: other side" : "");
        int count = name.equals("middle") && chance(0.3) ? 2 : 1;
        for (int i = 0; i < count; i++) {
            group(name + " " + (char) ('a' + i), name, twin, fans);
        }
    }

    /**
     * Whole millimetres; on a mount that stands so many to one side halves, or a fan could come to
     * lie in the middle plane, where neither side is outboard.
     */
    private String rowEnd(boolean beside, double millimetres) {
        return text(
                "%.1f", beside && !worn ? Math.floor(millimetres) + 0.5 : Math.rint(millimetres));
    }

    private void group(String id, String mount, boolean twin, StringBuilder fans) {
        int made;
        String pattern;
        switch (random.nextInt(4)) {
            case 0 -> {
                made = 2 * (1 + random.nextInt(3));
                pattern =
                        text(
                                "row: %d, from: {right: %s mm}, to: {right: %s mm}, cant:"
                                        + " {outboard: %.1f° ± 0.3°}",
                                made,
                                rowEnd(twin, in(-420, -300)),
                                rowEnd(twin, in(300, 420)),
                                in(0, 5));
            }
            case 1 -> {
                made = 4;
                pattern = text("ring: 4, radius: %.2f m, start: 45°", in(0.4, 0.8));
            }
            case 2 -> {
                int each = 1 + random.nextInt(3);
                made = 2 * each;
                pattern =
                        text(
                                "rows: [%d, %d], spacing: %.0f mm, row spacing: %.0f mm",
                                each, each, in(180, 260), in(180, 260));
            }
            default -> {
                made = 1;
                pattern = text("at: {forward: %.0f mm, up: %.0f mm}", in(-80, 80), in(-50, 50));
            }
        }
        FanKind kind = kinds.get(random.nextInt(kinds.size()));
        String twinId = id.replace("side", "far");
        fans.append(
                text(
                        "  - {id: %s, type: %s, mount: %s, %s%s}\n",
                        id, kind.name(), mount, pattern, twin ? ", twin: " + twinId : ""));
        note(id, made, kind);
        if (twin) {
            note(twinId, made, kind);
        }
    }

    private void note(String id, int made, FanKind kind) {
        var names = new ArrayList<String>();
        for (int i = 1; i <= made; i++) {
            names.add(made == 1 ? id + ".1" : id + "." + i);
        }
        groups.add(new Group(id, names, kind));
        fanCount += made;
    }

    private void fanTypes() {
        double restKg = worn ? in(75, 120) : in(6, 20);
        double wanted = in(0.9, 1.9);
        double sumN = wanted * 9.81 * restKg / (1 - 0.235 * wanted);
        line("fan types:");
        for (int i = 0; i < kinds.size(); i++) {
            double thrustN = sumN / fanCount * in(0.85, 1.15);
            kinds.set(i, fanType(kinds.get(i).name(), thrustN));
        }
        groups.replaceAll(
                group ->
                        new Group(
                                group.id(),
                                group.fans(),
                                kinds.stream()
                                        .filter(k -> k.name().equals(group.kind().name()))
                                        .findFirst()
                                        .orElseThrow()));
    }

    private FanKind fanType(String name, double thrustN) {
        double areaM2 = thrustN / in(4500, 7500);
        double tipM = Math.sqrt(areaM2 / (0.785 * (1 - 0.14)));
        double jetMps = Math.sqrt(thrustN / (1.22 * areaM2));
        double powerW = 0.5 * thrustN * jetMps / in(0.68, 0.8);
        double rpm = in(150, 190) / (0.5 * tipM) * 9.549;
        double voltageV = 3.7 * series;
        double currentA = powerW / voltageV;
        line("  %s:", name);
        line("    tip: %.1f mm", 1e3 * tipM);
        line("    hub: %.1f mm", 370 * tipM);
        line("    exit area: %.1f cm² ± 2 %%", 1e4 * areaM2);
        line("    mass: %.3f kg%s", 0.008 * thrustN, doubt());
        line("    data: %s", word("measured", "measured", "seller"));
        line(
                "    at speed: {speed: %.0f rpm, thrust: %.1f N ± 3 %%, shaft power: %.0f W ± 4"
                        + " %%}",
                rpm, thrustN, powerW);
        line("    scatter: ± %.1f %% each", in(0.5, 3));
        line("    installation: %.2f ± 0.03", in(0.9, 0.98));
        line(
                "    motor: {speed constant: %.1f rpm/V%s, winding resistance: %.3f mΩ%s, no-load"
                        + " current: %.2f A, pole pairs: %d%s}",
                rpm / voltageV * in(1.02, 1.15),
                doubt(),
                1e3 * in(0.012, 0.03) * voltageV / currentA,
                doubt(),
                0.03 * currentA,
                2 + random.nextInt(6),
                chance(0.5) ? ", winding class: 180 °C, magnets: SH" : "");
        line(
                "    rotor: {top speed: %.0f rpm, inertia: %.2f kg·mm², mass: %.3f kg, blades: %d,"
                        + " blade mass: %.1f g, blade centre: %.0f mm}",
                1.2 * rpm,
                1e6 * 0.0005 * thrustN * tipM * tipM * in(0.6, 1),
                0.0025 * thrustN,
                5 + random.nextInt(8),
                0.06 * thrustN,
                340 * tipM);
        line(
                "    controller: {on-resistance: %.3f mΩ, current limit: %.0f A, top voltage: %.0f"
                        + " V, top electrical speed: 300000 rpm, cut-off: %.0f V, mass: %.3f kg, idle:"
                        + " 5 %%, signal loss: %s}",
                0.3 * voltageV / currentA * in(5, 8),
                Math.ceil(currentA * in(1.4, 2)),
                Math.ceil(5.2 * series),
                Math.floor(2.8 * series),
                0.0013 * thrustN,
                word("stop", "hold", "idle"));
        if (chance(0.4)) {
            line("    intake: {free area: %.0f %%, face: %.0f cm²}", in(80, 95), 1.8e4 * areaM2);
        }
        return new FanKind(name, thrustN, currentA);
    }

    private void cellsAndPacks() {
        int many = 1 + random.nextInt(Math.min(8, fanCount));
        double wholeA =
                groups.stream().mapToDouble(g -> g.fans().size() * g.kind().currentA()).sum();
        double packA = wholeA / many;
        double capacityAh = packA * in(120, 280) / 3600;
        line("cells:");
        line(
                "  C: {chemistry: LiPo, capacity: %.3f Ah ± 2 %% each, resistance: %.4f mΩ%s, mass:"
                        + " %.1f g, open circuit: LiPo}",
                capacityAh, 7.2 / capacityAh * in(0.7, 1.3), doubt(), 20.6 * capacityAh);
        line("packs:");
        line(
                "  - {id: p, count: %d, cell: C, series: %d, extra mass: %.3f kg, at: {mount:"
                        + " middle, up: %.0f…%.0f mm}%s}",
                many,
                series,
                0.03 * capacityAh * series / 14 + 0.01,
                in(-150, 0),
                in(10, 200),
                many > 1 && chance(0.4)
                        ? text(", except: {p.2: {charge: %.0f %%}}", in(80, 99))
                        : "");
        for (int i = 1; i <= many; i++) {
            packs.add("p." + i);
        }
    }

    private void wiring() {
        double mostA = kinds.stream().mapToDouble(FanKind::currentA).max().orElseThrow();
        double packA = mostA * Math.ceilDiv(fanCount, packs.size());
        boolean contactor = chance(0.9);
        line("wiring:");
        if (contactor) {
            line(
                    "  contactors: {main: {poles: %d, resistance: 0.2 mΩ, rating: %.0f A, breaks:"
                            + " 4000 A, voltage: 100 V, opens in: %.0f ms, coil from: own battery}}",
                    packs.size(), Math.ceil(1.1 * packA), in(10, 40));
        }
        line("  feeds:");
        line("    - id: feed");
        line("      from: p");
        line(
                "      trunk: [{joint: %s}, {fuse: %.0f A, speed: slow}, {run: 4 AWG, length: %.0f"
                        + " mm, insulation: silicone, class: 180 °C}%s]",
                word("lug M8", "lug M6", "bullet 8 mm"),
                Math.ceil(in(1.3, 1.6) * packA),
                in(100, 500),
                contactor ? ", {contactor: main}" : "");
        line(
                "      branch: [{run: %d AWG, length: %.0f mm ± 5 %%, insulation: silicone},"
                        + " {joint: bullet 6 mm}]",
                mostA > 90 ? 8 : 12, in(200, 800));
        line("      fans:");
        var fans = groups.stream().flatMap(g -> g.fans().stream()).toList();
        for (int p = 0; p < packs.size(); p++) {
            var mine = new ArrayList<String>();
            for (int f = p; f < fans.size(); f += packs.size()) {
                mine.add(fans.get(f));
            }
            line("        %s: [%s]", packs.get(p), String.join(", ", mine));
        }
        if (contactor && chance(0.95)) {
            kills();
        }
        if (chance(0.3)) {
            line(
                    "  grounds: [{id: ground, from: board, to: %s, resistance: 40 mΩ}]",
                    fans.getFirst());
        }
    }

    private void kills() {
        line("  kills:");
        line(
                "    - {id: remote, opens: [main], by: radio, radio: kill radio%s, delay: %.0f ms,"
                        + " fed by: own battery, opens on loss: %s}",
                crewed ? ", held by: watcher" : "", in(30, 120), word("yes", "no"));
        if (worn && chance(0.7)) {
            line(
                    "    - {id: cord, opens: [main], by: %s, held by: wearer, delay: 10 ms, opens"
                            + " on loss: yes}",
                    word("wire", "lanyard", "button"));
        }
        if (chance(0.4)) {
            line("    - {id: watchdog, by: software, fed by: p.1}");
        }
    }

    private void parts() {
        line("other parts:");
        line(
                "  - {id: frame, mass: %.2f kg%s, box: [420 mm, 300 mm, 200 mm], at: {mount:"
                        + " middle}}",
                worn ? in(4, 12) : in(2, 8), doubt());
        line("  - {id: board, mass: 60 g, at: {mount: middle, up: 40 mm}}");
        if (mounts.contains("side")) {
            line(
                    "  - {id: shell, mass: %.2f kg, at: {mount: side}, twin: far shell}",
                    in(0.3, 1.5));
        }
    }

    private void control() {
        boolean computer = !worn || chance(0.4);
        line("control:");
        line("  kind: %s", computer ? "flight computer" : "shared throttle");
        line("  link loss: %s", word("cut", "lower", "hold"));
        line("  loss time: %.2f s", in(0.1, 0.5));
        line("  rise: %.0f %%/s", in(30, 150));
        line("  radio: throttle radio");
        line("  fed by: %s", word("own battery", "p.1"));
        if (computer) {
            line("  sensors: {gyro: {count: %d}, height: {}}", 1 + random.nextInt(2));
            line("  rate: %.0f Hz", in(200, 1000));
        }
        if (chance(0.5)) {
            line("  groups:");
            for (Group group : groups) {
                line("    g %s: {fans: [%s], share: %.0f %%}", group.id(), group.id(), in(80, 100));
            }
        }
    }

    private void serials() {
        var named = new ArrayList<String>();
        for (Group group : groups) {
            for (String fan : group.fans()) {
                if (chance(0.5)) {
                    named.add(text("%s: S%d", fan, random.nextInt(1000)));
                }
            }
        }
        for (String pack : packs) {
            if (chance(0.5)) {
                named.add(text("%s: B%d", pack, random.nextInt(1000)));
            }
        }
        if (!named.isEmpty()) {
            line("serials: {%s}", String.join(", ", named));
        }
    }
}
