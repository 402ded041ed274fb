package liftwright.review.referee;

import java.util.Locale;

/** Writes a referee's rig as a builder would. */
final class RefereeText {

    private RefereeText() {}

    static String of(RefereeRig rig) {
        StringBuilder text = new StringBuilder();
        var fan = rig.fan();
        line(text, "liftwright: 1");
        line(text, "rig: Drawn   # by a test");
        line(
                text,
                "site: {elevation: %s m, temperature: %s °C, humidity: %s %%}",
                n(rig.elevationM()),
                n(rig.temperatureC()),
                n(100 * rig.humidity()));
        line(
                text,
                "demands: {thrust to weight: %s, judged at charge: %s %%}",
                String.format(Locale.ROOT, "%.17g", rig.demand()),
                n(100 * rig.judgedAtCharge()));
        line(text, "mounts:");
        line(text, "  deck: {on: frame}   # everything sits here");
        line(text, "fan types:");
        line(text, "  fan-a:");
        line(text, "    tip: %s mm", n(fan.tipMm()));
        line(text, "    hub: %s mm", n(fan.hubMm()));
        line(text, "    exit area: %s", fan.exitAreaCm2().written());
        line(text, "    mass: %s", fan.massKg().written());
        line(text, "    data: %s", fan.seller() ? "seller" : "measured");
        line(
                text,
                "    at speed: {speed: %s rpm, thrust: %s, shaft power: %s}",
                n(fan.speedRpm()),
                fan.thrustN().written(),
                fan.shaftPowerW().written());
        line(text, "    scatter: ± %s %% each", n(100 * fan.scatterPercent().plus()));
        line(
                text,
                "    motor: {speed constant: %s, winding resistance: %s, no-load current: %s, pole pairs: 5}",
                fan.speedConstantRpmPerV().written(),
                fan.windingMilliohm().written(),
                fan.noLoadA().written());
        line(
                text,
                "    controller: {on-resistance: %s, fixed power: %s W, switching loss: 0.03, mass: %s kg%s%s}",
                fan.onMilliohm().written(),
                n(fan.fixedW()),
                n(fan.controllerKg()),
                fan.currentLimitA().map(a -> ", current limit: " + n(a) + " A").orElse(""),
                fan.cutOffV().map(v -> ", cut-off: " + n(v) + " V").orElse(""));
        fan.screen()
                .ifPresent(
                        screen ->
                                line(
                                        text,
                                        "    intake: {free area: %s, face: %s cm²}",
                                        screen.freeArea().written(),
                                        n(screen.faceCm2())));
        line(text, "    installation: %s", fan.installation().written());
        line(text, "fans:");
        line(text, "  # all in one ring");
        line(
                text,
                "  - {id: fan, type: fan-a, mount: deck, ring: %d, radius: 0.7 m, cant: {forward: %s}, spin: alternating}",
                rig.fans(),
                rig.cantDegrees().written());
        line(text, "cells:");
        StringBuilder curve = new StringBuilder();
        for (int i = 0; i < rig.cell().charge().size(); i++) {
            curve.append(i == 0 ? "" : ", ")
                    .append("{charge: ")
                    .append(n(100 * rig.cell().charge().get(i)))
                    .append(" %, voltage: ")
                    .append(n(rig.cell().volt().get(i)))
                    .append(" V}");
        }
        line(
                text,
                "  cell-a: {chemistry: LiPo, capacity: 8 Ah, resistance: %s, settling: [{resistance: %s, time: 25 s}],"
                        + " mass: %s, open circuit: [%s]}",
                rig.cell().resistanceMilliohm().written(),
                rig.cell().settlingMilliohm().written(),
                rig.cell().massG().written(),
                curve);
        line(text, "packs:");
        line(
                text,
                "  - {id: p, count: %d, cell: cell-a, series: %d, parallel: 1, extra mass: %s, interconnect: %s mΩ,"
                        + " at: {mount: deck}, temperature: 25 °C}",
                rig.fansOfPack().size(),
                rig.series(),
                rig.extraMass().written(),
                n(rig.interconnectMilliohm()));
        line(text, "wiring:");
        line(text, "  feeds:");
        line(text, "    - id: feed");
        line(text, "      from: p");
        line(
                text,
                "      trunk: [{joint: bullet 8 mm, resistance: %s mΩ}, {fuse: 250 A, resistance: %s mΩ}, {run: %d AWG, length: %s}]",
                n(rig.trunkJointMilliohm()),
                n(rig.fuseMilliohm()),
                rig.trunk().gauge(),
                rig.trunk().lengthMm().written());
        line(
                text,
                "      branch: [{run: %d AWG, length: %s}, {joint: bullet 6 mm, resistance: %s mΩ}]",
                rig.branch().gauge(),
                rig.branch().lengthMm().written(),
                n(rig.branchJointMilliohm()));
        line(text, "      fans:");
        int next = 1;
        for (int pack = 1; pack <= rig.fansOfPack().size(); pack++) {
            StringBuilder list = new StringBuilder();
            for (int i = 0; i < rig.fansOfPack().get(pack - 1); i++) {
                list.append(i == 0 ? "" : ", ").append("fan.").append(next++);
            }
            line(text, "        p.%d: [%s]", pack, list);
        }
        if (rig.oneBus() && rig.fansOfPack().size() > 1) {
            line(text, "  links:");
            for (int pack = 2; pack <= rig.fansOfPack().size(); pack++) {
                line(
                        text,
                        "    - {id: tie-%d, from: feed.p.1.split, to: feed.p.%d.split, through: []}",
                        pack,
                        pack);
            }
        }
        line(text, "other parts:");
        for (int i = 0; i < rig.partsKg().size(); i++) {
            line(
                    text,
                    "  - {id: part-%d, mass: %s, at: {mount: deck}}",
                    i + 1,
                    rig.partsKg().get(i).written());
        }
        line(text, "control:");
        line(text, "  kind: shared throttle");
        line(text, "  groups: {all: {fans: [fan], share: %s %%}}", n(100 * rig.share()));
        return text.toString();
    }

    @SuppressWarnings("AnnotateFormatMethod") // the annotation would be one more dependency
    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private static String n(double value) {
        return Doubtful.plain(value);
    }
}
