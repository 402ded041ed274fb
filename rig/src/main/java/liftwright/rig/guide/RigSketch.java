package liftwright.rig.guide;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import liftwright.quantity.UnitSystem;
import liftwright.rig.book.GenericFan;
import liftwright.rig.book.PartsBook;

/** Writes the commented rig file that answers make. */
final class RigSketch {

    private static final String MEMORY = "from memory, measure yours";
    private static final int COMMENT_COLUMN = 44;

    private final Answers said;
    private final Figures figures;
    private final boolean us;
    private final StringBuilder out = new StringBuilder();

    private RigSketch(Answers said, UnitSystem units) {
        this.said = said;
        this.figures = new Figures(units);
        this.us = units == UnitSystem.US;
    }

    static String text(Answers said, UnitSystem units) {
        var sketch = new RigSketch(said, units);
        sketch.write();
        return sketch.out.toString();
    }

    private void write() {
        line(
                "# Made by the guide. What is marked PLACEHOLDER nobody has measured yet: put yours there.");
        line("# All keys and their defaults: docs/reference/rig-file.md.");
        line("liftwright: 1");
        line("rig: " + quoted(said.name()));
        line("revision: 1");
        line("");
        demands();
        wearer();
        mounts();
        fanType();
        fans();
        cells();
        packs();
        wiring();
        otherParts();
        control();
    }

    private void demands() {
        line("demands:");
        value("  thrust to weight: ", said.task().thrustToWeight(), "common practice");
        value("  hover: ", said.task().hover(), "one charge");
        line("");
    }

    private void wearer() {
        if (!said.worn()) {
            return;
        }
        line("wearer:");
        value("  mass: ", said.body().mass(), "clothed, without the rig");
        value("  stature: ", said.body().stature(), "standing, without shoes");
        line("  body: " + said.body().table());
        line("  posture:");
        line("    both shoulders: " + said.body().arms().shoulders());
        line("    both elbows: {flexion: " + said.body().arms().elbows() + "}");
        line("");
    }

    private boolean arms() {
        return said.layout().arm() > 0;
    }

    private void mounts() {
        line("# What carries fans, packs and parts. Places are said as the wearer sees them.");
        line("mounts:");
        if (said.worn()) {
            remark(
                    "  back: {on: trunk, at: {back: "
                            + figures.length(0.18)
                            + ", up: "
                            + figures.length(0.06)
                            + "}}",
                    "PLACEHOLDER: from the middle between the shoulders");
        } else {
            line("  back: {on: frame}");
        }
        if (arms()) {
            remark(
                    "  left pod: {on: left forearm, at: {along: 60 %, outboard: "
                            + figures.length(0.04)
                            + "}, twin: right pod}",
                    "PLACEHOLDER");
        }
        line("");
    }

    private void fanType() {
        Answers.FanSaid fan = said.fan();
        Answers.Packs packs = said.packs();
        var generic = new GenericFan(fan.tip().value().si());
        double volts = packs.nominalV();
        double amperes = fan.power().value().si() / 0.9 / volts;
        double most = Figures.above(1.8 * amperes, STEPS_A);
        line("fan types:");
        line("  my fan:");
        value("    tip: ", fan.tip(), "over the blades");
        remark("    hub: " + figures.plain(generic.hubM(), us ? "in" : "mm"), book());
        remark("    exit area: " + figures.area(generic.exitAreaM2()) + " ± 5 %", book());
        value("    mass: ", fan.mass(), "rotor, duct and motor");
        remark("    data: estimate", "seller, measured or estimate");
        line("    at speed:");
        value("      speed: ", fan.speed(), "the parts book's generic fan");
        value("      thrust: ", fan.thrust(), "the parts book's generic fan");
        value("      shaft power: ", fan.power(), "the parts book's generic fan");
        line("    motor:");
        value("      speed constant: ", fan.speedConstant(), "suits the packs; " + MEMORY);
        memory("      winding resistance: " + ohms(0.05 * volts / amperes) + " ± 30 %");
        memory("      no-load current: " + figures.plain(0.02 * amperes, "A") + " ± 30 %");
        line("    controller:");
        memory("      current limit: " + figures.plain(most, "A"));
        memory("      mass: " + figures.mass(0.001 * most));
        memory(
                "    intake: {free area: 85 %, face: "
                        + figures.area(1.5 * generic.exitAreaM2())
                        + "}");
        line("");
    }

    private static final double[] STEPS_A = {
        10, 20, 30, 40, 60, 80, 100, 120, 160, 200, 250, 300, 400, 600, 1000, 2000, 5000, 20000
    };

    private String ohms(double ohm) {
        return figures.plain(ohm, "mΩ");
    }

    private static String book() {
        return "PLACEHOLDER: the parts book's generic fan";
    }

    private void fans() {
        Answers.Layout layout = said.layout();
        String spacing = layout.spacing().text();
        line(
                "# Fans are called back.1, left.1 and so on. Spins alternate; a twin is the mirror image.");
        line("fans:");
        if (layout.back() > 0) {
            double middle = (layout.backRows().value() - 1) / 2.0 * layout.spacing().value().si();
            line("  - id: back");
            line("    type: my fan");
            line("    mount: back");
            line("    rows: " + repeated(layout.inBackRow().value(), layout.backRows().value()));
            value("    spacing: ", layout.spacing(), "middle to middle");
            line("    runs: right");
            line("    next row: back");
            remark(
                    "    at: {back: "
                            + figures.length(middle)
                            + ", up: "
                            + figures.length(0.15)
                            + "}",
                    "PLACEHOLDER: middle of all rows");
            if (layout.inBackRow().value() % 2 == 0) {
                value(
                        "    cant: {outboard: ",
                        layout.cant(),
                        "}",
                        "so that the jets pass the legs");
            } else {
                line("    # no lean outboard: a fan in the middle plane has no outboard side");
            }
        }
        if (arms()) {
            line("  - id: left");
            line("    type: my fan");
            line("    mount: left pod");
            line("    rows: " + repeated(layout.inArmRow().value(), layout.armRows().value()));
            line("    spacing: " + spacing);
            line("    twin: right");
        }
        line("");
    }

    private static String repeated(int inRow, int rows) {
        return Collections.nCopies(rows, Integer.toString(inRow)).stream()
                .collect(Collectors.joining(", ", "[", "]"));
    }

    private void cells() {
        Answers.Packs packs = said.packs();
        double ampereHours = packs.capacity().value().si() / 3600;
        line("cells:");
        line("  my cell:");
        line("    chemistry: " + packs.cell().chemistry());
        value("    capacity: ", packs.capacity(), "as printed");
        value("    resistance: ", packs.cellResistance(), MEMORY);
        value("    mass: ", packs.cellMass(), MEMORY);
        remark("    open circuit: " + packs.cell().curve(), "the parts book's curve");
        memory(
                "    continuous current: "
                        + figures.plain(packs.cell().continuousA(ampereHours), "A"));
        line("");
    }

    private void packs() {
        Answers.Packs packs = said.packs();
        line("# Two ends spread the packs of a group evenly.");
        line("packs:");
        line("  - id: p");
        line("    count: " + packs.count().text());
        line("    cell: my cell");
        line("    series: " + packs.series().text());
        line("    parallel: " + packs.parallel().text());
        remark(
                "    at: {mount: back, back: "
                        + figures.length(0.06)
                        + ", up: "
                        + (us ? "-1.5…7 in" : "-40…180 mm")
                        + "}",
                "PLACEHOLDER");
        line("");
    }

    private void wiring() {
        Answers.Wires wires = said.wires();
        Answers.Packs packs = said.packs();
        line("wiring:                                     # every line is out and back");
        if (wires.contactor()) {
            double volts = 10 * Math.ceil(1.2 * packs.fullV() / 10);
            line("  contactors:");
            memory(
                    "    main: {poles: "
                            + packs.count().text()
                            + ", rating: "
                            + figures.plain(Figures.above(wires.fuse().value().si(), STEPS_A), "A")
                            + ", breaks: 6000 A, voltage: "
                            + figures.plain(volts, "V")
                            + "}");
        }
        line("  feeds:");
        line("    - id: feed");
        line(
                "      from: p                             # a trunk from each pack, a branch to each fan");
        value(
                "      trunk: [{joint: "
                        + joint(packs.perPack(said.layout().fans()) * fanA())
                        + "}, {fuse: "
                        + wires.fuse().text()
                        + "}, {run: "
                        + wires.trunk().text()
                        + ", length: ",
                wires.trunkLength(),
                wires.contactor() ? "}, {contactor: main}]" : "}]",
                "out and back; add its insulation");
        value(
                "      branch: [{run: " + wires.branch().text() + ", length: ",
                wires.branchLength(),
                "}, {joint: " + joint(fanA()) + "}]",
                "out and back; add its insulation");
        line("      fans:                               # mirror images together");
        feeds();
        if (wires.contactor()) {
            kills();
        }
        line("");
    }

    /** What one fan draws at the power that was said, A. */
    private double fanA() {
        return said.fan().power().value().si() / 0.85 / said.packs().nominalV();
    }

    /** The smallest generic joint that is advertised for half as much again. */
    private static String joint(double amperes) {
        for (String name : List.of("bullet 4 mm", "bullet 5 mm", "bullet 6 mm", "bullet 8 mm")) {
            if (PartsBook.joint(name).orElseThrow().ratingA() >= 1.5 * amperes) {
                return name;
            }
        }
        return "lug M8";
    }

    private void feeds() {
        Answers.Layout layout = said.layout();
        List<String> order =
                Feeding.inPairs(
                        layout.backRows().value(), layout.inBackRow().value(), layout.arm());
        List<List<String>> fed = Feeding.of(order, said.packs().count().value());
        for (int pack = 0; pack < fed.size(); pack++) {
            line("        p." + (pack + 1) + ": [" + String.join(", ", fed.get(pack)) + "]");
        }
    }

    /** No question reads them yet, so that they stand as a comment. */
    private void kills() {
        line("  # Who can make it dead, and how soon. No question reads this yet:");
        line("  # kills:");
        line("  #   - {id: remote, opens: [main], by: radio, held by: watcher, reaction: 1.5 s}");
        if (said.worn()) {
            line("  #   - {id: own, opens: [main], by: wire, held by: wearer}");
        }
    }

    private void otherParts() {
        Answers.Masses masses = said.masses();
        line("other parts:");
        part("frame", masses.frame(), "{mount: back}", "");
        if (said.worn()) {
            part("harness", masses.harness(), "{on: trunk}", "");
        }
        if (arms()) {
            part("left pod shell", masses.shell(), "{mount: left pod}", ", twin: right pod shell");
        }
        part("wire and lugs", masses.wires(), "{mount: back}", "");
        line("");
    }

    private void part(String id, Said<liftwright.quantity.Quantity> mass, String at, String rest) {
        value("  - {id: " + id + ", mass: ", mass, ", at: " + at + rest + "}", MEMORY);
    }

    private void control() {
        line("control:");
        line("  kind: " + said.control());
        line("  groups:");
        if (said.layout().back() > 0) {
            line("    back: {fans: [back]}");
        }
        if (arms()) {
            line("    pods: {fans: [left, right]}");
        }
    }

    /** A key whose value may be a placeholder, which its comment then says. */
    private void value(String before, Said<?> said, String source) {
        value(before, said, "", source);
    }

    private void value(String before, Said<?> said, String after, String source) {
        remark(before + said.text() + after, said.answered() ? "" : "PLACEHOLDER: " + source);
    }

    private void memory(String line) {
        remark(line, "PLACEHOLDER: " + MEMORY);
    }

    private void remark(String line, String comment) {
        if (comment.isEmpty()) {
            line(line);
        } else if (line.length() >= COMMENT_COLUMN) {
            line(line + "   # " + comment);
        } else {
            line(String.format(Locale.ROOT, "%-" + COMMENT_COLUMN + "s# %s", line, comment));
        }
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private static String quoted(String name) {
        return '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
