package liftwright.trials.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
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
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/** Who keeps how far away, how loud it is there, and what energy stands about. */
final class Distances {

    private static final String WEARER = "wearer";

    private Distances() {}

    static List<Block> blocks(CardFacts facts, Near near) {
        CardId id = facts.planned().id();
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                CardText.rows(
                        id,
                        "distances",
                        "Who and what keeps how far away",
                        List.of("kept-away", "distance", "distance-why"),
                        rows(facts, near)));
        people(facts.planned(), near, "people-crew", "What reaches the crew where they stand")
                .ifPresent(
                        table ->
                                blocks.add(
                                        CardText.rows(
                                                id,
                                                "crew",
                                                table.title(),
                                                table.columns(),
                                                table.rows())));
        people(facts.planned(), near, "people-noise", "How loud it is, these fans at full throttle")
                .ifPresent(
                        table ->
                                blocks.add(
                                        CardText.rows(
                                                id,
                                                "noise",
                                                table.title(),
                                                List.of(
                                                        "person",
                                                        "person-distance",
                                                        "noise-level",
                                                        "hearing-day",
                                                        "ear-protection"),
                                                table.rows().stream()
                                                        .map(row -> heard(table, row))
                                                        .toList())));
        List<Sentence> energy = new ArrayList<>();
        near.greatest("people-energy", "stored-energy")
                .ifPresent(
                        joule ->
                                energy.add(
                                        Sentence.words("Full packs of this card store ")
                                                .then(Measure.ENERGY, rounded(joule))
                                                .then(
                                                        ", and give two to three times as much when"
                                                                + " they burn.")));
        near.finding("bus-hazardous").map(Finding::sentence).ifPresent(energy::add);
        energy.add(
                Sentence.words(
                        "Capacitors stay charged after the packs are out: discharge them before a hand"
                                + " goes to a terminal."));
        blocks.add(new Block.Lines("Energy that stands about", Style.PLAIN, energy));
        return blocks;
    }

    private static List<List<Value>> rows(CardFacts facts, Near near) {
        double square = near.faster() * near.faster();
        double limitM = facts.rig().limits().si(LimitName.KEEP_OUT);
        double flightM = square * near.greatest("people-fragments", "piece-reach").orElse(0);
        List<List<Value>> rows = new ArrayList<>();
        rows.add(
                row(
                        "everybody but the crew",
                        "keep-out",
                        OptionalDouble.of(keepOutM(facts.rig(), near)),
                        flightM > limitM
                                ? "so far the farthest piece of a broken fan can fly"
                                : "asked for, "
                                        + facts.rig().limits().origin(LimitName.KEEP_OUT)
                                        + "; no piece flies farther"));
        rows.add(
                row(
                        "crew without a barrier",
                        "piece-hazard-way",
                        near.faster() > 1
                                ? OptionalDouble.of(flightM)
                                : near.greatest("people-fragments", "piece-hazard-way"),
                        near.faster() > 1
                                ? "so far a piece can fly from the proof speed, at most"
                                : "nearer, a piece still has the energy that counts as hazardous"));
        rows.add(
                row(
                        "loose things and papers",
                        "swept-radius",
                        near.found("swept-ground"),
                        "the jets along the ground raise dust to half of it"));
        rows.add(
                row(
                        "bare skin, when the packs burn",
                        "fire-reach",
                        near.greatest("people-energy", "fire-reach"),
                        "heat alone, from memory; smoke reaches farther: stand upwind"));
        return rows;
    }

    /** Nobody but the crew is nearer, m. */
    static double keepOutM(Rig rig, Near near) {
        double square = near.faster() * near.faster();
        return Math.max(
                rig.limits().si(LimitName.KEEP_OUT),
                square * near.greatest("people-fragments", "piece-reach").orElse(0));
    }

    private static List<Value> row(String who, String field, OptionalDouble atM, String why) {
        return List.of(
                Value.words("kept-away", who),
                atM.isPresent()
                        ? Value.of(field, atM.getAsDouble())
                        : new Value("distance", new Value.Figure.NotComputed("nothing tells it")),
                Value.words("distance-why", why));
    }

    /** Without the wearer where nobody is in the rig. */
    private static Optional<Section.Table> people(
            Planned planned, Near near, String id, String title) {
        boolean worn = planned.run().map(Run::worn).orElse(false);
        return near.table(id)
                .map(
                        table ->
                                new Section.Table(
                                        id,
                                        title,
                                        table.columns(),
                                        table.rows().stream()
                                                .filter(row -> worn || !isWearer(row.getFirst()))
                                                .toList()))
                .filter(table -> !table.rows().isEmpty());
    }

    private static boolean isWearer(Value value) {
        return value.figure().equals(new Value.Figure.Words(WEARER));
    }

    private static List<Value> heard(Section.Table table, List<Value> row) {
        return List.of(
                cell(table, row, "person"),
                cell(table, row, "person-distance"),
                cell(table, row, "noise-level"),
                Value.words(
                        "hearing-day",
                        Near.amount(cell(table, row, "niosh-time"))
                                .mapToObj(Distances::lasts)
                                .findFirst()
                                .orElse("not known")),
                cell(table, row, "ear-protection"));
    }

    private static Value cell(Section.Table table, List<Value> row, String column) {
        return row.get(table.columns().indexOf(column));
    }

    /** Hours, minutes or seconds, rounded down to two figures: {@code 2.5 h}. */
    static String lasts(double timeS) {
        if (timeS >= 24 * 3600) {
            return "the whole day";
        }
        return timeS >= 3600
                ? down(timeS / 3600) + " h"
                : timeS >= 60 ? down(timeS / 60) + " min" : down(timeS) + " s";
    }

    private static String down(double number) {
        return number >= 10
                ? String.format(Locale.ROOT, "%.0f", Math.floor(number))
                : String.format(Locale.ROOT, "%.1f", Math.floor(10 * number) / 10);
    }

    /** To three figures: nothing here is known better. */
    private static double rounded(double number) {
        return number > 0
                ? BigDecimal.valueOf(number).round(new MathContext(3)).doubleValue()
                : number;
    }
}
