package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.rig.LimitName;
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
                .map(
                        table ->
                                only(
                                        table,
                                        List.of(
                                                "person",
                                                "person-distance",
                                                "noise-level",
                                                "niosh-time",
                                                "ear-protection")))
                .ifPresent(
                        table ->
                                blocks.add(
                                        CardText.rows(
                                                id,
                                                "noise",
                                                table.title(),
                                                table.columns(),
                                                table.rows())));
        List<Sentence> energy = new ArrayList<>();
        near.finding("stored-energy").map(Finding::sentence).ifPresent(energy::add);
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
                        OptionalDouble.of(Math.max(limitM, flightM)),
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

    private static List<Value> row(String who, String field, OptionalDouble atM, String why) {
        return List.of(
                Value.words("kept-away", who),
                atM.isPresent()
                        ? Value.of(field, atM.getAsDouble())
                        : new Value("distance", new Value.Figure.NotComputed("nothing tells it")),
                Value.words("distance-why", why));
    }

    /** Without the wearer where nobody is in the rig. */
    private static java.util.Optional<Section.Table> people(
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

    private static Section.Table only(Section.Table table, List<String> columns) {
        int[] kept = columns.stream().mapToInt(column -> table.columns().indexOf(column)).toArray();
        return new Section.Table(
                table.id(),
                table.title(),
                columns,
                table.rows().stream()
                        .map(row -> IntStream.of(kept).mapToObj(row::get).toList())
                        .toList());
    }
}
