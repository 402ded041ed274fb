package liftwright.trials.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Gravity;
import liftwright.plant.Plant;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.FanAlone;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.Hold;
import liftwright.plant.hold.Push;
import liftwright.plant.hold.StandHold;
import liftwright.quantity.Measure;
import liftwright.review.restraint.HoldPicture;
import liftwright.review.restraint.HoldTables;
import liftwright.review.restraint.ScaleReading;
import liftwright.review.restraint.StandingWearer;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/** What holds the fans of a card, and what it has to bear with them at full throttle. */
final class SetUp {

    private final Rig rig;
    private final Planned planned;
    private final Near near;
    private final LoadRows loads;
    private final Plant plant;

    private SetUp(Rig rig, Planned planned, Near near) {
        this.rig = rig;
        this.planned = planned;
        this.near = near;
        loads = new LoadRows(rig, planned, near);
        plant = Plant.assembleHeld(rig);
    }

    static List<Block> blocks(CardFacts facts, Near near) {
        return new SetUp(facts.rig(), facts.planned(), near).blocks();
    }

    private List<Block> blocks() {
        Run.Held held = planned.run().map(Run::held).orElse(Run.Held.BENCH);
        return switch (held) {
            case BENCH -> bench();
            case STAND -> stand();
            case SCALE -> scale();
            case TETHER -> tether();
            case NOTHING -> free();
        };
    }

    private List<Block> bench() {
        List<List<Value>> rows = new ArrayList<>();
        double square = near.faster() * near.faster();
        for (FanAlone fan : near.alone()) {
            rows.add(
                    loads.force(
                            "the bench holds its thrust", fan.id().text(), square * fan.thrustN()));
            rows.add(
                    loads.row(
                            "the bench holds its turning",
                            fan.id().text(),
                            "hold-moment",
                            square * Math.abs(fan.swirlNm()),
                            OptionalDouble.empty(),
                            loads.factor()));
        }
        loads.lostBlade(square, rows);
        List<Block> blocks = new ArrayList<>();
        blocks.add(loads.table("loads", "What the bench has to bear, full packs", rows));
        blocks.add(
                CardText.lines(
                        "Set-up",
                        Style.TICK,
                        List.of(
                                "The bench is bolted or clamped to what cannot move, and was pulled by hand"
                                        + " with a spring scale as hard as the table asks.",
                                "A barrier that holds a piece of the rotor stands all around its plane.",
                                "Nothing loose within the jet or before the intake; the floor is swept.",
                                "The jet blows away from people, doors and papers.",
                                "The pack stands apart, in what holds a fire, with its plug in reach.")));
        return blocks;
    }

    private List<Block> stand() {
        Optional<Held> held = held();
        Optional<Held.OnStand> on = held.flatMap(Held::stand).filter(this::holdsAll);
        List<List<Value>> rows = new ArrayList<>();
        if (on.isPresent()) {
            List<Integer> numbers = loads.running();
            List<Integer> places = new ArrayList<>();
            List<Push> pushes = new ArrayList<>();
            for (int k = 0; k < on.get().held().size(); k++) {
                if (numbers.contains(on.get().held().get(k))) {
                    places.add(on.get().held().get(k));
                    pushes.add(on.get().pushes().get(k));
                }
            }
            for (Hold way : StandHold.of(pushes, on.get().floor())) {
                Ask ask =
                        new Ask(
                                Ask.What.valueOf(way.way().name()),
                                way.over(),
                                way.worst().fans().stream().map(places::get).toList(),
                                way.worst().load(),
                                OptionalDouble.of(Math.max(0, way.capacity())),
                                loads.factor());
                rows.add(loads.asked(ask));
            }
        } else {
            rows.addAll(loads.together("what holds them down"));
        }
        loads.lostBlade(1, rows);
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                loads.table("loads", "What the stand has to bear with these fans at full", rows));
        if (on.isPresent()) {
            picture(held.orElseThrow()).ifPresent(blocks::add);
        }
        blocks.add(
                CardText.lines(
                        "Set-up",
                        Style.TICK,
                        List.of(
                                "Stand, bolts and ballast are as declared; bolts were tightened and marked.",
                                "Nobody is in the rig, and nobody can step into the plane of a fan.",
                                "Nothing loose within the jets or before an intake; the floor is swept.",
                                "The first run of the day is at the lowest step, and all screws are looked at"
                                        + " after it.")));
        return blocks;
    }

    private boolean holdsAll(Held.OnStand on) {
        return new HashSet<>(on.held()).containsAll(loads.running());
    }

    private List<Block> scale() {
        Optional<Held> held = held();
        boolean worn = planned.run().map(Run::worn).orElse(false);
        List<Block> blocks = new ArrayList<>();
        double most = greatestShare();
        held.ifPresent(
                found -> {
                    double weightN = Gravity.STANDARD_MPS2 * (found.massKg() - absentKg(worn));
                    blocks.add(
                            new Block.Lines(
                                    "Loads",
                                    Style.PLAIN,
                                    List.of(
                                            Sentence.words("It stands on the scale with ")
                                                    .then(Measure.THRUST, weightN)
                                                    .then(" and never gets lighter than ")
                                                    .then(Measure.THRUST, (1 - most) * weightN)
                                                    .then("."),
                                            Sentence.words("Thrust stays at or below ")
                                                    .then(Measure.PERCENT, most)
                                                    .then(
                                                            worn
                                                                    ? " of the weight: above "
                                                                    : " of the weight; with somebody on"
                                                                            + " it, nobody would dwell"
                                                                            + " above ")
                                                    .then(
                                                            Measure.PERCENT,
                                                            rig.limits().si(LimitName.DWELL_SHARE))
                                                    .then(
                                                            worn
                                                                    ? " a push can no longer be caught"
                                                                            + " with the feet."
                                                                    : "."))));
                    if (worn) {
                        tableOf(
                                        StandingWearer.of(
                                                        found, Plant.assemble(rig).mass().centre())
                                                .section(),
                                        "standing")
                                .ifPresent(blocks::add);
                    }
                    ScaleReading.of(rig, found)
                            .map(ScaleReading::sections)
                            .orElse(List.of())
                            .forEach(
                                    section ->
                                            tableOf(section, section.id()).ifPresent(blocks::add));
                });
        blocks.add(
                CardText.lines(
                        "Set-up",
                        Style.TICK,
                        List.of(
                                "The scale lies level on a hard floor and reads the same at each corner.",
                                "A line overhead is hooked in, slack by a hand's breadth, as on the hanging"
                                        + " card.",
                                "Spotters cannot be reached by a jet or an intake; nobody holds the rig.",
                                "The scale is read from where the readers stand.")));
        return blocks;
    }

    /** Mass of the wearer where nobody is in the rig, kg. */
    private double absentKg(boolean worn) {
        return worn ? 0 : rig.wearer().map(wearer -> wearer.mass().si()).orElse(0.0);
    }

    private List<Block> tether() {
        Optional<Held> held = held();
        List<Block> blocks = new ArrayList<>();
        Optional<Held> lines = held.filter(found -> found.tether().isPresent());
        if (lines.isPresent()) {
            Optional<String> kill = kill();
            HoldTables.of(rig, lines.get(), kill, _ -> Optional.empty()).stream()
                    .filter(section -> section.id().equals("tether-loads"))
                    .forEach(section -> tableOf(section, "loads").ifPresent(blocks::add));
            picture(lines.get()).ifPresent(blocks::add);
        } else {
            List<List<Value>> rows = new ArrayList<>();
            held.ifPresent(
                    found ->
                            rows.add(
                                    loads.force(
                                            "the line holds what hangs",
                                            "nothing",
                                            found.massKg() * Gravity.STANDARD_MPS2)));
            rows.addAll(loads.together("anchor and lines hold a pull of all fans"));
            rows.add(
                    loads.row(
                            "the anchor, whatever was computed",
                            "nothing",
                            "hold-force",
                            rig.limits().si(LimitName.ANCHOR),
                            OptionalDouble.empty(),
                            1));
            blocks.add(loads.table("loads", "What the tether has to bear", rows));
        }
        List<String> ticks = new ArrayList<>();
        ticks.add(
                "The anchor held the load of the table, as often as it is asked, for three minutes, with nobody"
                        + " below.");
        ticks.add("Lines, hooks and harness were looked at along their whole length.");
        ticks.add("A slack line cannot reach an intake, whatever way the rig swings.");
        rig.restraint()
                .tether()
                .flatMap(tether -> tether.gettingDown())
                .ifPresent(how -> ticks.add("Getting down was tried today: " + how + "."));
        if (planned.run().map(Run::worn).orElse(false)) {
            ticks.add(
                    "The wearer hung in the harness for five minutes today and felt nothing go numb.");
        }
        blocks.add(CardText.lines("Set-up", Style.TICK, ticks));
        return blocks;
    }

    private List<Block> free() {
        List<Block> blocks = new ArrayList<>();
        List<Sentence> lines = new ArrayList<>();
        near.finding("drop-speed").map(Finding::sentence).ifPresent(lines::add);
        if (planned.id().kind() == CardKind.TO_WEARER) {
            lines.add(
                    Sentence.words(
                            "Whoever it comes to stands where pieces fly: helmet, visor and a barrier, and"
                                    + " the module stops before an arm can reach it."));
        }
        lines.add(
                Sentence.words("Nobody and nothing goes higher than ")
                        .then(Measure.LENGTH, rig.demands().height().si())
                        .then("; today's sheet may say less."));
        blocks.add(new Block.Lines("What a fall does", Style.PLAIN, lines));
        blocks.add(
                CardText.lines(
                        "Set-up",
                        Style.TICK,
                        List.of(
                                "Soft ground or mats under the whole way; no water, no edge, no stairs, no"
                                        + " wires.",
                                "The ground is swept, and the whole keep-out is seen from one place.",
                                "The place to set down is marked, and a second one.",
                                "No wind above what today's sheet allows.")));
        return blocks;
    }

    private Optional<Held> held() {
        return plant.holding().at(plant.parameters().nominal(), true);
    }

    private Optional<String> kill() {
        return plant.holding().slowestKill(plant.parameters().nominal());
    }

    private Optional<Block> picture(Held held) {
        boolean lines = planned.run().filter(run -> run.held() == Run.Held.TETHER).isPresent();
        return (lines ? HoldPicture.tether(rig, held) : HoldPicture.stand(rig, held))
                .map(
                        of ->
                                new Block.View(
                                        new Section.Elevation(
                                                CardText.id(planned.id(), "held"),
                                                of.title(),
                                                of.shapes().stream()
                                                        .map(this::atItsDistance)
                                                        .toList(),
                                                of.loads())));
    }

    /** The picture of what holds a rig knows the limit alone; a card knows how far pieces fly. */
    private Section.Elevation.Shape atItsDistance(Section.Elevation.Shape shape) {
        boolean within =
                shape.kind() == Section.Elevation.Kind.KEEP_OUT
                        && shape.label().startsWith("nobody within");
        return within
                ? new Section.Elevation.Shape(
                        shape.kind(),
                        String.format(
                                Locale.ROOT,
                                "nobody within %.0f m (not to scale)",
                                Math.ceil(Distances.keepOutM(rig, near))),
                        shape.outline(),
                        shape.closed())
                : shape;
    }

    /** The same table under a name of this card's. */
    private Optional<Block> tableOf(Section section, String what) {
        return section instanceof Section.Table(var _, var title, var columns, var rows)
                ? Optional.of(CardText.rows(planned.id(), what, title, columns, rows))
                : Optional.empty();
    }

    private double greatestShare() {
        return planned.run().stream()
                .flatMap(run -> run.steps().stream())
                .mapToDouble(
                        step ->
                                step.level() instanceof Run.Level.OfWeight(double share)
                                        ? share
                                        : 0)
                .max()
                .orElse(0);
    }
}
