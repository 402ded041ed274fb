package liftwright.flight;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/**
 * Invented rigs that might fly by themselves, of many shapes and sizes: rings and double rows of
 * four to twelve fans of 90 to 260 mm, on one pack, on two or on one for each pair of fans, with
 * other weights, swirl, cants, delays, sensors and rates. Numbers of a fan grow with its size as
 * those of like fans do, so that large ones spool slowly; nothing says that loops are granted.
 */
public final class FlyingRigs {

    private static final double G = 9.80665;
    private static final int SERIES = 14;

    private final RandomGenerator random;
    private final int fans;
    private final double tipM;
    private final double thrustN;
    private final double powerW;
    private final int packs;
    private final double packKg;

    private FlyingRigs(RandomGenerator random) {
        this.random = random;
        fans = 4 + 2 * random.nextInt(5);
        tipM = between(0.09, 0.26);
        thrustN = 92 * Math.pow(tipM / 0.14, 2) * between(0.85, 1.15);
        double exitM2 = exitM2();
        powerW = Math.pow(thrustN, 1.5) / Math.sqrt(4 * 1.225 * exitM2) / between(0.68, 0.8);
        packs = new int[] {1, 2, fans / 2}[random.nextInt(3)];
        packKg = SERIES * 0.165 * capacityAh() / 8 + 0.25;
    }

    /** One of them. */
    public static Rig draw(RandomGenerator random) {
        String text = text(random);
        RigReading reading = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig()
                .orElseThrow(() -> new IllegalStateException(reading.problems() + "\n" + text));
    }

    /** The file of one of them. */
    public static String text(RandomGenerator random) {
        return new FlyingRigs(random).write();
    }

    private double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private String any(String... words) {
        return words[random.nextInt(words.length)];
    }

    private double exitM2() {
        return 0.0128 * Math.pow(tipM / 0.14, 2);
    }

    private double capacityAh() {
        return 8 * powerW * fans / packs / (2 * 4600);
    }

    private String write() {
        double larger = tipM / 0.14;
        double stronger = powerW / 4600;
        double fanKg = 0.74 * Math.pow(larger, 2.5);
        double wholeKg = 0.8 * fans * thrustN / G / between(1.7, 2.6);
        double frameKg =
                Math.max(0.3 * fanKg * fans, wholeKg - fans * fanKg * 1.16 - packs * packKg);
        boolean ring = random.nextBoolean();
        double radiusM = between(1.1, 1.6) * tipM / 2 / Math.sin(Math.PI / fans);
        double spacingM = between(1.05, 1.5) * tipM;
        String places =
                ring
                        ? format(
                                "ring: %d, radius: %.3f m, start: %.1f°%s",
                                fans, radiusM, random.nextBoolean() ? 0 : 180.0 / fans, cant())
                        : format(
                                "rows: [%d, %d], spacing: %.0f mm, row spacing: %.0f mm",
                                fans / 2,
                                fans / 2,
                                1000 * spacingM,
                                1000 * spacingM * between(1, 2));
        double boxM = ring ? 2 * radiusM : spacingM * fans / 2;
        int rate = new int[] {500, 1000, 1000, 2000}[random.nextInt(4)];
        return String.join(
                "\n",
                "liftwright: 1",
                "rig: Invented",
                "revision: 1",
                format(
                        "site: {elevation: %.0f m, temperature: %.0f °C}",
                        between(0, 900), between(0, 28)),
                "demands: {thrust to weight: 1.2, reserve: 20 %, judged at charge: 20 %, height: 2 m, yaw: "
                        + any("held", "free")
                        + "}",
                "mounts: {deck: {on: frame}}",
                "fan types:",
                "  F:",
                format("    tip: %.1f mm", 1000 * tipM),
                format("    hub: %.1f mm", 370 * tipM),
                format("    exit area: %.1f cm² ± 2 %%", 1e4 * exitM2()),
                format("    mass: %.3f kg ± 2 %%", fanKg),
                "    data: measured",
                format(
                        "    at speed: {speed: %.0f rpm, thrust: %.1f N ± 3 %%, shaft power: %.0f W ± 4 %%}",
                        26000 / larger, thrustN, powerW),
                format("    swirl: %.2f ± 0.05", between(0.1, 0.35)),
                "    scatter: ± 2 % each",
                format(
                        "    motor: {speed constant: %.1f rpm/V ± 2 %%, winding resistance: %.2f mΩ ± 10 %%, no-load current: %.1f A ± 20 %%, pole pairs: 5}",
                        535 / larger, 12 / stronger, 2.5 * stronger),
                format(
                        "    rotor: {top speed: %.0f rpm, inertia: %.1f kg·mm², mass: %.3f kg, blades: 11}",
                        30000 / larger,
                        120 * Math.pow(larger, 5) * between(0.7, 1.4),
                        0.24 * Math.pow(larger, 3)),
                format(
                        "    controller: {on-resistance: %.2f mΩ ± 20 %%, current limit: %.0f A, top voltage: 75 V, top electrical speed: 400000 rpm, cut-off: 38 V, braking: %s, fixed power: 5 W, mass: %.2f kg, delay: %.1f ms, idle: 5 %%, signal loss: %s, heat capacity: 60 J/K ± 30 %%, to air: 2 W/K ± 30 %%}",
                        2 / stronger,
                        150 * stronger,
                        any("coast", "short", "freewheel"),
                        0.12 * larger,
                        between(0.5, 5),
                        any("stop", "idle", "hold")),
                "fans:",
                "  - {id: f, type: F, mount: deck, " + places + ", spin: alternating}",
                "cells:",
                format(
                        "  C: {chemistry: LiPo, capacity: %.2f Ah ± 2 %% each, resistance: %.3f mΩ ± 8 %% each, mass: %.0f g, open circuit: LiPo, continuous current: %.0f A, peak current: %.0f A}",
                        capacityAh(),
                        7.2 / capacityAh(),
                        165 * capacityAh() / 8,
                        25 * capacityAh(),
                        35 * capacityAh()),
                "packs:",
                format(
                        "  - {id: p, count: %d, cell: C, series: %d, parallel: 1, extra mass: 0.25 kg, interconnect: %.3f mΩ, at: {mount: deck, up: %.0f mm}}",
                        packs, SERIES, 12 / capacityAh(), between(-60, 80)),
                "wiring:",
                "  contactors:",
                format(
                        "    main: {poles: %d, resistance: 0.1 mΩ, rating: 2000 A, breaks: 9000 A, voltage: 100 V, opens in: 20 ms, coil from: own battery}",
                        packs),
                "  feeds:",
                "    - id: feed",
                "      from: p",
                "      trunk: [{contactor: main}]",
                format(
                        "      branch: [{run: %d AWG, length: 300 mm ± 30 mm, insulation: silicone, class: 180 °C}]",
                        stronger > 2 ? 6 : stronger > 0.8 ? 10 : 12),
                "      fans: {" + feeds(ring) + "}",
                "  kills:",
                "    - {id: remote, opens: [main], by: radio, radio: kill radio, held by: watcher, delay: 80 ms, fed by: own battery, opens on loss: yes}",
                "other parts:",
                format(
                        "  - {id: frame, mass: %.2f kg ± 3 %%, box: [%.0f mm, %.0f mm, 60 mm], at: {mount: deck}}",
                        frameKg, 1000 * boxM, 1000 * (ring ? boxM : 2 * spacingM)),
                "control:",
                "  kind: flight computer",
                format("  rate: %d Hz", rate),
                format("  delay: %.1f ms", between(1, 5)),
                "  sensors:",
                format(
                        "    gyro: {count: %d, noise: %.4f deg/s/√Hz, rate: %d Hz, delay: %.1f ms}",
                        1 + 2 * random.nextInt(2),
                        between(0.003, 0.02),
                        rate * (1 + random.nextInt(2)),
                        between(0.5, 1.5)),
                "    height: {count: 2}",
                format("  computers: %d", 1 + random.nextInt(2)),
                "  fed by: own battery",
                "  radio: throttle radio",
                "  link loss: " + any("lower", "cut", "hold"),
                "  lowering: 0.9",
                "crew:",
                "  watcher: {reaction: 1.5 s, distance: 10 m, role: holds the remote kill}",
                "");
    }

    private String cant() {
        return random.nextBoolean() ? "" : format(", cant: {outward: %.1f°}", between(1, 6));
    }

    /**
     * Packs that feed fans on both sides, so that the loss of one is not lost by its places alone.
     */
    private String feeds(boolean ring) {
        List<String> told = new ArrayList<>();
        for (int pack = 0; pack < packs; pack++) {
            int own = pack;
            String names =
                    IntStream.range(0, fans)
                            .filter(fan -> pack(fan, ring) == own)
                            .mapToObj(fan -> "f." + (fan + 1))
                            .collect(Collectors.joining(", "));
            told.add("p." + (pack + 1) + ": [" + names + "]");
        }
        return String.join(", ", told);
    }

    private int pack(int fan, boolean ring) {
        int half = fans / 2;
        if (packs == 2) {
            return fan % 2;
        }
        return (ring || fan < half ? fan % half : fans - 1 - fan) % packs;
    }

    @SuppressWarnings("AnnotateFormatMethod") // formats are constants of this class
    private static String format(String format, Object... numbers) {
        return String.format(Locale.ROOT, format, numbers);
    }
}
