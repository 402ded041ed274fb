package liftwright.answer;

import java.util.List;
import liftwright.answer.Section.Cases;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Section.Playback.Place;
import liftwright.answer.Section.Plot;
import liftwright.quantity.Measure;

/** Sections about failures and what holds the rig. The numbers mean nothing. */
final class SampleFaults {

    private SampleFaults() {}

    static List<Section> all(String name) {
        return List.of(matrix(name), cases(name), elevation(name), heights(name), card(name));
    }

    /** A card about the part, with a block of each kind. */
    static Section.Card card(String name) {
        return new Section.Card(
                "first-spin",
                "First spin of " + name,
                "open",
                Sentence.words("whether it turns, with ").then(Measure.THRUST, 40),
                List.of(
                        new Section.Card.Block.Lines(
                                "Set up",
                                Section.Card.Style.TICK,
                                List.of(
                                        Sentence.words("nobody within ").then(Measure.LENGTH, 20),
                                        Sentence.words(name + " is clamped"))),
                        new Section.Card.Block.Rows(matrix(name).table()),
                        new Section.Card.Block.View(elevation(name))));
    }

    static Matrix matrix(String name) {
        return new Matrix(
                "failures",
                "What each failure leaves",
                List.of("thrust-to-weight", "time-to-limit"),
                List.of(
                        new Matrix.Line(
                                name,
                                "fan stops",
                                List.of("fuse of " + name, "controller of " + name),
                                List.of(
                                        cell("thrust-to-weight", 0.93, Standing.SHORT),
                                        new Matrix.Cell(
                                                new Value(
                                                        "time-to-limit",
                                                        new Value.Figure.NotComputed("it falls")),
                                                Standing.UNTOLD))),
                        new Matrix.Line(
                                "back.1",
                                "pack lost",
                                List.of(),
                                List.of(
                                        cell("thrust-to-weight", 1.08, Standing.HOLDS),
                                        cell("time-to-limit", 40, Standing.TOLD))),
                        new Matrix.Line(
                                "ground",
                                "opens",
                                List.of(),
                                List.of(
                                        cell("thrust-to-weight", 1.3, Standing.TOLD),
                                        cell("time-to-limit", 60, Standing.TOLD)))));
    }

    static Cases cases(String name) {
        return new Cases(
                "failure-cases",
                "Failures on the rig",
                "share-of-whole",
                List.of(
                        new Cases.Spot(name, "fan", new Place(0.25, -0.5, 1.25)),
                        new Cases.Spot("right.1", "fan", new Place(0.25, 0.5, 1.25))),
                List.of(
                        new Cases.Case(
                                matrix(name).lines().getFirst().label(),
                                "falls",
                                List.of(true, false),
                                List.of(0.0, 0.875))));
    }

    static Elevation elevation(String name) {
        return new Elevation(
                "restraint-elevation",
                "The stand",
                List.of(
                        new Elevation.Shape(
                                Elevation.Kind.KEEP_OUT,
                                "nobody here",
                                List.of(spot(-4, 0), spot(4, 0), spot(4, 2.5), spot(-4, 2.5)),
                                true),
                        new Elevation.Shape(
                                Elevation.Kind.DOWN_LINE,
                                "",
                                List.of(spot(0.5, 1), spot(1.5, 0)),
                                false)),
                List.of(
                        new Elevation.Load(
                                "lift of " + name,
                                spot(0, 1.5),
                                -30,
                                400,
                                Value.of("lift-usable", 401.1))));
    }

    static Plot heights(String name) {
        return new Plot(
                "heights",
                "Where nothing helps",
                "height-above-ground",
                "time",
                List.of(
                        new Plot.Series(
                                name,
                                Plot.Mark.LINE,
                                List.of(new Plot.Point(0, 0), new Plot.Point(8, 1.25)))),
                List.of(new Plot.Zone("no way out", 1.5, 6)));
    }

    private static Elevation.Spot2 spot(double acrossM, double upM) {
        return new Elevation.Spot2(acrossM, upM);
    }

    private static Matrix.Cell cell(String field, double si, Standing standing) {
        return new Matrix.Cell(Value.of(field, si), standing);
    }
}
