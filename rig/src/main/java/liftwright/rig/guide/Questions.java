package liftwright.rig.guide;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.quantity.UnitSystem;
import liftwright.rig.book.GenericFan;
import liftwright.rig.guide.GuideField.Choice;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.words.CantKeys;
import liftwright.rig.shape.words.DemandKeys;
import liftwright.rig.shape.words.FanTypeKeys;
import liftwright.rig.shape.words.OtherPartKeys;
import liftwright.rig.shape.words.WearerKeys;

/**
 * What the guide asks, in the order in which a builder comes to know it. A placeholder follows from
 * the answers before it.
 */
final class Questions {

    private static final String NOBODY = "nobody";
    static final int MOST_FANS = 96;

    private static final Kind<Quantity> TIP = Amount.of(Measure.LENGTH, Range.between(0.05, 0.5));
    private static final Kind<Quantity> SPACING = Amount.of(Measure.LENGTH, Range.between(0.03, 2));

    private final Form form;
    private final Figures figures;
    private final boolean us;

    Questions(Form form, UnitSystem units) {
        this.form = form;
        this.figures = new Figures(units);
        this.us = units == UnitSystem.US;
    }

    Answers ask() {
        form.step("wearer", "Who flies", "The weight to be lifted, and how far the arms reach.");
        Said<String> name =
                form.text(
                        "name",
                        new Text("a name"),
                        "My rig",
                        "Name of the rig",
                        "What you call it.");
        String body =
                form.choice(
                        "body",
                        List.of(
                                new Choice("male", "a man"),
                                new Choice("female", "a woman"),
                                new Choice(NOBODY, "nobody: it flies by itself")),
                        "male",
                        "Worn by",
                        "Decides which table of body proportions applies.");
        boolean worn = !body.equals(NOBODY);
        Answers.Body wearer = body(body);
        Answers.Task task = task(worn);
        Answers.FanSaid fan = fan();
        Answers.Layout layout = layout(worn, fan);
        var supply = new SupplyQuestions(form, figures, us);
        Answers.Packs packs = supply.packs(layout, fan);
        Said<Quantity> speedConstant = supply.speedConstant(fan, packs);
        var whole =
                new Answers.FanSaid(
                        fan.tip(),
                        fan.mass(),
                        fan.thrust(),
                        fan.speed(),
                        fan.power(),
                        speedConstant);
        return new Answers(
                name.text(),
                worn,
                wearer,
                task,
                whole,
                layout,
                packs,
                supply.wires(layout, whole, packs),
                masses(layout),
                control(worn));
    }

    private Answers.Body body(String table) {
        Said<Quantity> mass =
                form.ask(
                        "wearer mass",
                        WearerKeys.MASS.kind(),
                        us ? "165 lb ± 2 lb" : "75 kg ± 1 kg",
                        "Mass of the wearer",
                        "On a scale, clothed, without the rig. Not used where nobody wears it.");
        Said<Quantity> stature =
                form.ask(
                        "stature",
                        WearerKeys.STATURE.kind(),
                        us ? "69 in" : "1.75 m",
                        "Stature",
                        "Standing, without shoes.");
        String arms =
                form.choice(
                        "arms",
                        List.of(
                                new Choice("out", "hanging, a little out"),
                                new Choice("hanging", "hanging straight down"),
                                new Choice("forward", "forearms forward")),
                        "out",
                        "Arms in flight",
                        "How the arms are held at lift-off.");
        Answers.Arms posture =
                switch (arms) {
                    case "hanging" -> Answers.Arms.HANGING;
                    case "forward" -> Answers.Arms.FORWARD;
                    default -> Answers.Arms.OUT;
                };
        return new Answers.Body(mass, stature, table, posture);
    }

    private Answers.Task task(boolean worn) {
        form.step("task", "What it shall do", "The demands that every answer is held against.");
        return new Answers.Task(
                form.ask(
                        "thrust to weight",
                        DemandKeys.THRUST_TO_WEIGHT.kind(),
                        worn ? "1.15" : "1.6",
                        "Lift over weight",
                        "1.15 for a restrained hop, 1.3 for a free hover, 1.6 for a module that"
                                + " flies by itself; common practice."),
                form.ask(
                        "hover",
                        DemandKeys.HOVER.kind(),
                        "60 s",
                        "Time in the air",
                        "How long it shall hover on one charge."));
    }

    private Answers.FanSaid fan() {
        form.step(
                "fan",
                "The fan",
                "One kind of fan. What is not known is that of a generic fan of the size, from the"
                        + " parts book: ± 25 % at best.");
        Said<Quantity> tip =
                form.ask(
                        "tip",
                        TIP,
                        us ? "7 in" : "180 mm",
                        "Diameter over the blades",
                        "Across the rotor, tip to tip.");
        GenericFan generic = new GenericFan(tip.value().si());
        double size = tip.value().si() / 0.18;
        Said<Quantity> mass =
                form.ask(
                        "fan mass",
                        FanTypeKeys.MASS.kind(),
                        figures.mass(1.1 * size * size) + " ± 10 %",
                        "Mass of one fan",
                        "Rotor, duct and motor on a kitchen scale.");
        Said<Quantity> speed =
                form.ask(
                        "speed",
                        FanTypeKeys.SPEED.kind(),
                        figures.plain(generic.speedRadPerS(), "rpm"),
                        "A speed at which it was measured",
                        "Of the rotor; thrust and power below belong to it.");
        Said<Quantity> thrust =
                form.ask(
                        "thrust",
                        FanTypeKeys.THRUST.kind(),
                        figures.force(generic.thrustN()) + " ± 25 %",
                        "Thrust at that speed",
                        "On a scale, near sea level.");
        Said<Quantity> power =
                form.ask(
                        "power",
                        FanTypeKeys.SHAFT_POWER.kind(),
                        figures.plain(generic.shaftPowerW(), "kW") + " ± 25 %",
                        "Shaft power at that speed",
                        "What the motor gives the rotor: about 0.85 of the electrical power.");
        return new Answers.FanSaid(tip, mass, thrust, speed, power, speed);
    }

    private Answers.Layout layout(boolean worn, Answers.FanSaid fan) {
        form.step(
                "layout",
                "How many fans, and where",
                "Rows behind the back, rows on a pod on each forearm. Spins alternate; the right arm"
                        + " mirrors the left.");
        var layout =
                new Answers.Layout(
                        form.count(
                                "back rows",
                                "rows",
                                0,
                                6,
                                worn ? 1 : 3,
                                "Rows behind the back",
                                "0 for none."),
                        form.count(
                                "back row",
                                "fans",
                                1,
                                8,
                                4,
                                "Fans in each of them",
                                "Side by side."),
                        form.count(
                                "arm rows",
                                "rows",
                                0,
                                3,
                                worn ? 2 : 0,
                                "Rows on each forearm",
                                "0 for none."),
                        form.count(
                                "arm row",
                                "fans",
                                1,
                                6,
                                2,
                                "Fans in each of them",
                                "One behind the other."),
                        form.ask(
                                "spacing",
                                SPACING,
                                figures.length(1.12 * fan.tip().value().si()),
                                "From fan to fan",
                                "Middle to middle, in a row and between rows."),
                        form.ask(
                                "cant",
                                CantKeys.OUTBOARD.kind(),
                                "4° ± 0.5°",
                                "Lean of the back jets",
                                "Away from the middle plane, so that the jets pass the legs. Not used where a row has a fan in that plane."));
        if (layout.fans() == 0) {
            form.wrong("back rows", "A rig has at least one fan.");
        } else if (layout.fans() > MOST_FANS) {
            form.wrong(
                    "back row",
                    "The guide makes rigs of up to "
                            + MOST_FANS
                            + " fans, not "
                            + layout.fans()
                            + ".");
        }
        if (!worn && layout.arm() > 0) {
            form.wrong("arm rows", "There are no arms where nobody wears the rig: write 0.");
        }
        if (layout.spacing().value().si() < fan.tip().value().si()) {
            form.wrong("spacing", "Fans this near to each other would touch.");
        }
        return layout;
    }

    private Answers.Masses masses(Answers.Layout layout) {
        form.step("masses", "What else has mass", "Everything that is lifted counts.");
        int fans = layout.fans();
        return new Answers.Masses(
                form.ask(
                        "frame mass",
                        OtherPartKeys.MASS.kind(),
                        figures.mass(2 + 0.3 * fans) + " ± 10 %",
                        "Frame",
                        "What carries the back fans and the packs."),
                form.ask(
                        "harness mass",
                        OtherPartKeys.MASS.kind(),
                        figures.mass(2) + " ± 10 %",
                        "Harness",
                        "What straps it on. Not used where nobody wears it."),
                form.ask(
                        "pod mass",
                        OtherPartKeys.MASS.kind(),
                        figures.mass(0.8 + 0.15 * layout.arm()) + " ± 10 %",
                        "Shell of one forearm pod",
                        "Not used where there is none."),
                form.ask(
                        "wire mass",
                        OtherPartKeys.MASS.kind(),
                        figures.mass(1 + 0.15 * fans) + " ± 20 %",
                        "Wires and lugs",
                        "All together; on the back."));
    }

    private String control(boolean worn) {
        form.step("control", "Control", "Who sets the fans.");
        return form.choice(
                "control",
                List.of(
                        new Choice("shared throttle", "one throttle for all"),
                        new Choice("flight computer", "a flight computer, each by itself")),
                worn ? "shared throttle" : "flight computer",
                "How the fans are set",
                "A shared throttle leaves steering to the arms and the body.");
    }
}
