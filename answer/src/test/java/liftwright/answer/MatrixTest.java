package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import liftwright.answer.Section.Cases;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Plot;
import org.junit.jupiter.api.Test;

class MatrixTest {

    @Test
    void aMatrixIsATableToo() {
        Section.Table table = SampleFaults.matrix("left.3").table();
        assertThat(table.columns())
                .containsExactly(
                        "fails",
                        "fails-how",
                        "standing",
                        "thrust-to-weight",
                        "time-to-limit",
                        "alike");
        assertThat(table.rows())
                .containsExactly(
                        List.of(
                                Value.words("fails", "left.3"),
                                Value.words("fails-how", "fan stops"),
                                Value.words(
                                        "standing",
                                        "short: "
                                                + Fields.of("thrust-to-weight").label()
                                                + "; cannot be told: reached after"),
                                Value.of("thrust-to-weight", 0.93),
                                new Value(
                                        "time-to-limit", new Value.Figure.NotComputed("it falls")),
                                Value.words("alike", "fuse of left.3, controller of left.3")),
                        List.of(
                                Value.words("fails", "back.1"),
                                Value.words("fails-how", "pack lost"),
                                Value.words("standing", "holds"),
                                Value.of("thrust-to-weight", 1.08),
                                Value.of("time-to-limit", 40),
                                Value.words("alike", "–")),
                        List.of(
                                Value.words("fails", "ground"),
                                Value.words("fails-how", "opens"),
                                Value.words("standing", "told"),
                                Value.of("thrust-to-weight", 1.3),
                                Value.of("time-to-limit", 60),
                                Value.words("alike", "–")));
    }

    @Test
    void aLineHasACellOfEachColumn() {
        Matrix.Line line = SampleFaults.matrix("left.3").lines().getFirst();
        assertThatThrownBy(() -> new Matrix("m", "M", List.of("thrust-to-weight"), List.of(line)))
                .hasMessageContaining("one cell a column: left.3");
        assertThatThrownBy(
                        () ->
                                new Matrix(
                                        "m",
                                        "M",
                                        List.of("time-to-limit", "thrust-to-weight"),
                                        List.of(line)))
                .hasMessageContaining("one cell a column");
    }

    @Test
    void aCaseHasAnEntryForEachSpot() {
        Cases cases = SampleFaults.cases("left.3");
        var one = new Cases.Case("a, b", "falls", List.of(true), List.of(0.0));
        assertThatThrownBy(() -> new Cases("c", "C", "share-of-whole", cases.spots(), List.of(one)))
                .hasMessageContaining("one entry a spot: a, b");
        assertThatThrownBy(
                        () -> new Cases.Case("a, b", "falls", List.of(true), List.of(Double.NaN)))
                .hasMessageContaining("finite");
    }

    @Test
    void aSideViewIsTablesToo() {
        List<Section.Table> tables = SampleFaults.elevation("left.3").tables();
        assertThat(tables)
                .extracting(Section.Table::id)
                .containsExactly("restraint-elevation", "restraint-elevation-places");
        assertThat(tables.getFirst().rows())
                .containsExactly(
                        List.of(
                                Value.words("what", "lift of left.3"),
                                Value.of("lift-usable", 401.1),
                                Value.of("load-across", -30),
                                Value.of("load-up", 400),
                                Value.of("across", 0),
                                Value.of("height-above-ground", 1.5)));
        assertThat(tables.getLast().rows())
                .containsExactly(
                        List.of(
                                Value.words("what", "nobody here"),
                                Value.words("shape", "keep out"),
                                Value.of("from-across", -4),
                                Value.of("to-across", 4),
                                Value.of("from-up", 0),
                                Value.of("to-up", 2.5)),
                        List.of(
                                Value.words("what", "down line"),
                                Value.words("shape", "down line"),
                                Value.of("from-across", 0.5),
                                Value.of("to-across", 1.5),
                                Value.of("from-up", 0),
                                Value.of("to-up", 1)));
    }

    @Test
    void whatIsDrawnHasAPlace() {
        assertThatThrownBy(() -> new Elevation.Shape(Elevation.Kind.LINE, "rope", List.of(), false))
                .hasMessageContaining("rope");
        assertThatThrownBy(() -> new Elevation.Spot2(0, Double.POSITIVE_INFINITY))
                .hasMessageContaining("finite");
        var at = new Elevation.Spot2(0, 0);
        assertThatThrownBy(
                        () -> new Elevation.Load("pull", at, Double.NaN, 0, Value.of("across", 1)))
                .hasMessageContaining("finite: pull");
    }

    @Test
    void aZoneHasALength() {
        assertThatThrownBy(() -> new Plot.Zone("z", 2, 2))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Plot.Zone("z", 2, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void numbersComeBackFromJsonAsTheSame() {
        var json = AnswerJsonTest.read(AnswerJsonTest.sample("left.3")).at("/answer/sections");
        assertThat(json.at("/5/lines/0/members/0").stringValue()).isEqualTo("fuse of left.3");
        assertThat(json.at("/5/lines/0/cells/0/standing").stringValue()).isEqualTo("short");
        assertThat(json.at("/5/lines/0/cells/0/value/si").doubleValue()).isEqualTo(0.93);
        assertThat(json.at("/5/lines/0/cells/1/standing").stringValue())
                .isEqualTo("cannot be told");
        assertThat(json.at("/6/spots/1/at/1").doubleValue()).isEqualTo(0.5);
        assertThat(json.at("/6/cases/0/label").stringValue()).isEqualTo("left.3, fan stops");
        assertThat(json.at("/6/cases/0/lost/0").booleanValue()).isTrue();
        assertThat(json.at("/6/cases/0/values/1").doubleValue()).isEqualTo(0.875);
        assertThat(json.at("/6/y/unit").stringValue()).isEqualTo("1");
        assertThat(json.at("/7/shapes/0/shape").stringValue()).isEqualTo("keep out");
        assertThat(json.at("/7/shapes/1/outline/1/0").doubleValue()).isEqualTo(1.5);
        assertThat(json.at("/7/shapes/1/closed").booleanValue()).isFalse();
        assertThat(json.at("/7/loads/0/at/1").doubleValue()).isEqualTo(1.5);
        assertThat(json.at("/7/loads/0/across").doubleValue()).isEqualTo(-30);
        assertThat(json.at("/7/loads/0/value/unit").stringValue()).isEqualTo("N");
        assertThat(json.at("/7/y/unit").stringValue()).isEqualTo("m");
        assertThat(json.at("/8/zones/0/to").doubleValue()).isEqualTo(6);
    }
}
