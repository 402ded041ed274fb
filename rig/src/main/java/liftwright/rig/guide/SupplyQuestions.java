package liftwright.rig.guide;

import java.util.Arrays;
import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.book.WireGauge;
import liftwright.rig.guide.GuideField.Choice;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Gauge;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.words.CellKeys;
import liftwright.rig.shape.words.MotorKeys;

/** What the guide asks of packs, wires and motors, whose placeholders rest on each other. */
final class SupplyQuestions {

    private static final Kind<Quantity> RUN = Amount.of(Measure.LENGTH, Range.upTo(20));
    private static final Kind<Quantity> FUSE = Amount.of(Measure.CURRENT, Range.between(1, 5000));
    private static final Kind<Quantity> CAPACITY =
            Amount.of(Measure.CHARGE, Range.between(0.1 * 3600, 1000 * 3600));

    private final Form form;
    private final Figures figures;
    private final boolean us;

    SupplyQuestions(Form form, Figures figures, boolean us) {
        this.form = form;
        this.figures = figures;
        this.us = us;
    }

    Answers.Packs packs(Answers.Layout layout, Answers.FanSaid fan) {
        form.step(
                "packs",
                "The packs",
                "Cells in series make the voltage, their capacity the time. Mirror images hang on"
                        + " one pack, so that one that fails turns the rig as little as can be.");
        CellKind cell =
                CellKind.of(
                        form.choice(
                                "cell",
                                Arrays.stream(CellKind.values())
                                        .map(k -> new Choice(k.curve(), k.label()))
                                        .toList(),
                                CellKind.LIPO.curve(),
                                "Cells",
                                "Decides the curve of the voltage at rest, from the parts book."));
        int series = 14;
        int fans = Math.max(1, layout.fans());
        int packs = fans <= 16 ? fans : (fans + 1) / 2;
        double amperes =
                fan.power().value().si() / 0.85 / (series * cell.nominalV()) * fans / packs;
        double least = Figures.above(amperes / 20, 2, 3, 4, 5, 6, 8, 10, 12, 16, 22, 30, 60);
        Said<Quantity> capacity =
                form.ask(
                        "capacity",
                        CAPACITY,
                        figures.plain(least * 3600, "Ah") + " ± 3 % each",
                        "Capacity of one cell",
                        "As printed on it, or measured.");
        double ampereHours = capacity.value().si() / 3600;
        return new Answers.Packs(
                cell,
                capacity,
                form.ask(
                        "cell mass",
                        CellKeys.MASS.kind(),
                        figures.mass(cell.massKg(ampereHours)) + " ± 3 %",
                        "Mass of one cell",
                        "A pack on the scale, over its cells."),
                form.ask(
                        "cell resistance",
                        CellKeys.RESISTANCE.kind(),
                        figures.plain(cell.resistanceOhm(ampereHours), "mΩ") + " ± 20 % each",
                        "Resistance of one cell",
                        "As a charger shows it, or from a load test."),
                form.count("series", "cells", 3, 30, series, "Cells in series", "In one pack."),
                form.count("parallel", "strings", 1, 20, 1, "Strings side by side", "In one pack."),
                packCount(layout, packs));
    }

    private Said<Integer> packCount(Answers.Layout layout, int placeholder) {
        Said<Integer> count =
                form.count(
                        "packs",
                        "packs",
                        1,
                        Questions.MOST_FANS,
                        placeholder,
                        "How many packs",
                        "At most as many as fans; strings side by side make a pack larger.");
        if (layout.fans() > 0 && count.value() > layout.fans()) {
            form.wrong(
                    "packs",
                    layout.fans()
                            + " fans hang on at most as many packs: add strings side by side"
                            + " instead.");
        }
        return count;
    }

    Answers.Wires wires(Answers.Layout layout, Answers.FanSaid fan, Answers.Packs packs) {
        form.step(
                "wires",
                "Wires, fuse, switch",
                "From each pack a trunk with a fuse, then a branch to each of its fans; lengths are"
                        + " one way, out and back.");
        double fanA = fan.power().value().si() / 0.85 / packs.nominalV();
        double packA = fanA * Math.max(1, packs.perPack(layout.fans()));
        return new Answers.Wires(
                form.ask(
                        "trunk wire",
                        new Gauge(),
                        gauge(packA),
                        "Wire of the trunk",
                        "American gauge, such as 8 AWG. The placeholder carries 12 A/mm²."),
                form.ask(
                        "trunk length",
                        RUN,
                        us ? "16 in ± 10 %" : "400 mm ± 10 %",
                        "Length of the trunk",
                        "From the pack to where it splits."),
                form.ask(
                        "branch wire", new Gauge(), gauge(fanA), "Wire of a branch", "To one fan."),
                form.ask(
                        "branch length",
                        RUN,
                        us ? "22 in ± 10 %" : "550 mm ± 10 %",
                        "Length of a branch",
                        "From the split to the controller."),
                form.ask(
                        "fuse",
                        FUSE,
                        figures.plain(
                                Figures.above(
                                        1.25 * packA,
                                        30,
                                        40,
                                        60,
                                        80,
                                        100,
                                        125,
                                        150,
                                        200,
                                        250,
                                        300,
                                        400,
                                        500,
                                        800,
                                        1200,
                                        2000,
                                        4000),
                                "A"),
                        "Fuse of each pack",
                        "Its rating. The placeholder is a quarter above full throttle."),
                form.choice(
                                "contactor",
                                List.of(
                                        new Choice("yes", "a contactor, opened by radio and hand"),
                                        new Choice("no", "none yet")),
                                "yes",
                                "What makes it dead",
                                "One contactor that opens every pack; who may open it is written in"
                                        + " the file.")
                        .equals("yes"));
    }

    private static String gauge(double amperes) {
        int[] sold = {18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};
        for (int number : sold) {
            var wire = new WireGauge(number);
            if (wire.areaMm2() * 12 >= amperes) {
                return wire.toString();
            }
        }
        return new WireGauge(WireGauge.THICKEST).toString();
    }

    /** Asked after the pack, on whose voltage its placeholder rests. */
    Said<Quantity> speedConstant(Answers.FanSaid fan, Answers.Packs packs) {
        double perVolt = fan.speed().value().si() / (0.92 * packs.nominalV());
        return form.ask(
                "speed constant",
                MotorKeys.SPEED_CONSTANT.kind(),
                figures.plain(perVolt, "rpm/V") + " ± 5 %",
                "Speed constant of the motor",
                "Unloaded speed for each volt. The placeholder suits the pack above.");
    }
}
