package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.plant.parameters.DeclaredInput;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterTable;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.FanType;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class DrawsTest {

    private static final int MANY = 20_000;

    private static RigSketch sketch() {
        RigSketch sketch = new RigSketch();
        FanType type =
                RigSketch.fanType(
                        "F", FanType.Data.SELLER, Optional.empty(), RigSketch.each(1, 0.04));
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        for (int k = 1; k <= 3; k++) {
            sketch.fans.add(RigSketch.fan("f", k, type));
            sketch.wire("p.1", "f." + k, RigSketch.joint("j" + k, 0.001));
        }
        return sketch;
    }

    private static OtherPart part(String name, Quantity mass) {
        return new OtherPart(
                new PartId(name),
                RigPath.of("other parts", name),
                mass,
                RigSketch.FRAME,
                Vec3.ZERO,
                Optional.empty());
    }

    @Test
    void aSharedErrorHasOneRowAndEachPartsOwnErrorOneForEachPart() {
        ParameterTable table = Plant.assemble(sketch().rig()).parameters();
        assertThat(input(table, "fan types/F/motor/speed constant").rows()).hasSize(1);
        assertThat(input(table, "fan types/F/scatter").rows())
                .extracting(row -> table.rows().get(row).name())
                .containsExactly(
                        "f.1: fan types/F/scatter",
                        "f.2: fan types/F/scatter",
                        "f.3: fan types/F/scatter");
        assertThat(input(table, "fan types/F/data").rows()).hasSize(1);
        assertThat(table.inputs()).doesNotHaveDuplicates();
        for (int i = 0; i < table.inputs().size(); i++) {
            for (int row : table.inputs().get(i).rows()) {
                assertThat(table.rows().get(row).input()).isEqualTo(i);
            }
        }
    }

    private static DeclaredInput input(ParameterTable table, String path) {
        return table.inputs().stream()
                .filter(input -> input.at().toString().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aNewPartChangesNoOtherNumberOfADraw() {
        Seeded.check(
                60,
                random -> {
                    Rig before = RandomRigs.doubtful(random);
                    RigSketch more = RigSketch.of(before);
                    more.others.addFirst(part("newcomer", RigSketch.about(3, 0.1)));
                    ParameterTable one = Plant.assemble(before).parameters();
                    ParameterTable two = Plant.assemble(more.rig()).parameters();
                    double[] first = new double[one.size()];
                    double[] second = new double[two.size()];
                    int draw = random.nextInt(1000);
                    one.draw(5, draw, first);
                    two.draw(5, draw, second);
                    for (int row = 0; row < one.size(); row++) {
                        String name = one.rows().get(row).name();
                        assertThat(second[two.indexOf(name)]).as(name).isEqualTo(first[row]);
                    }
                });
    }

    @Test
    void drawsAreTheSameInAnyOrderAndDifferBetweenSeeds() {
        ParameterTable table = Plant.assemble(sketch().rig()).parameters();
        double[] out = new double[table.size()];
        table.draw(1, 41, out);
        double[] early = out.clone();
        table.draw(1, 7, out);
        assertThat(out).isNotEqualTo(early);
        table.draw(1, 41, out);
        assertThat(out).isEqualTo(early);
        table.draw(2, 41, out);
        assertThat(out).isNotEqualTo(early);
    }

    @Test
    void halvingADoubtHalvesItsDeviationsAndNoOthers() {
        ParameterTable table = Plant.assemble(sketch().rig()).parameters();
        double[] nominal = table.nominal();
        double[] whole = new double[table.size()];
        double[] half = new double[table.size()];
        double[] width = new double[table.inputs().size()];
        Arrays.fill(width, 1);
        int halved = table.inputs().indexOf(input(table, "fan types/F/scatter"));
        width[halved] = 0.5;
        table.draw(3, 11, whole);
        table.draw(3, 11, width, half);
        for (int row = 0; row < table.size(); row++) {
            double factor = table.rows().get(row).input() == halved ? 0.5 : 1;
            assertThat(half[row] - nominal[row])
                    .isCloseTo(factor * (whole[row] - nominal[row]), within(1e-15));
        }
        assertThat(half).isNotEqualTo(whole);
    }

    /** Mean and scatter of every kind of tolerance, against the moments of its distribution. */
    @Test
    void momentsAreThoseOfTheDeclaredTolerances() {
        RigSketch sketch = sketch();
        sketch.others.add(part("normal", RigSketch.about(10, 0.1)));
        sketch.others.add(part("split", doubt(10, 0.5, 1.5, Tolerance.Form.NORMAL)));
        sketch.others.add(part("bound", doubt(10, 1, 1, Tolerance.Form.BOUND)));
        ParameterTable table = Plant.assemble(sketch.rig()).parameters();
        double[] normal = moments(table, "other parts/normal/mass");
        assertThat(normal[0]).isCloseTo(10, within(5 * 0.5 / Math.sqrt(MANY)));
        assertThat(normal[1]).isCloseTo(0.5, within(0.02));
        // Split normal: mean √(2/π) (σ₊ − σ₋), σ² = (1 − 2/π)(σ₊ − σ₋)² + σ₊ σ₋.
        double[] split = moments(table, "other parts/split/mass");
        assertThat(split[0]).isCloseTo(10 - Math.sqrt(2 / Math.PI) * 0.5, within(0.02));
        assertThat(split[1])
                .isCloseTo(Math.sqrt((1 - 2 / Math.PI) * 0.25 + 0.25 * 0.75), within(0.02));
        double[] bound = moments(table, "other parts/bound/mass");
        assertThat(bound[1]).isCloseTo(1 / Math.sqrt(3), within(0.02));
    }

    /** 14 cells with 8 % each: their mean scatters by 8 % / √14. */
    @Test
    void errorsOfSingleCellsAverageOutInAPack() {
        ParameterTable table = Plant.assemble(sketch().rig()).parameters();
        double[] mean = moments(table, "p.1: cells/C/resistance");
        assertThat(mean[0]).isCloseTo(0.0009, within(2e-6));
        double sigma = 0.0009 * 0.08 / 2 / Math.sqrt(14);
        assertThat(mean[1]).isCloseTo(sigma, within(0.03 * sigma));
    }

    private static Quantity doubt(double value, double plus, double minus, Tolerance.Form form) {
        return new Quantity(
                value, Dimension.NONE, new Tolerance(plus, minus, form, Tolerance.Scope.SHARED));
    }

    private static double[] moments(ParameterTable table, String name) {
        double[] out = new double[table.size()];
        int row = table.indexOf(name);
        double sum = 0;
        double squares = 0;
        double shift = table.nominal()[row];
        for (int draw = 0; draw < MANY; draw++) {
            table.draw(17, draw, out);
            sum += out[row] - shift;
            squares += (out[row] - shift) * (out[row] - shift);
        }
        double mean = sum / MANY;
        return new double[] {shift + mean, Math.sqrt(squares / MANY - mean * mean)};
    }

    @Test
    void aDrawThatCannotBeNamesItsParameter() {
        RigSketch sketch = sketch();
        sketch.others.add(part("doubtful", RigSketch.about(1, 3)));
        ParameterTable table = Plant.assemble(sketch.rig()).parameters();
        double[] out = new double[table.size()];
        assertThatExceptionOfType(ImpossibleValueException.class)
                .isThrownBy(
                        () -> {
                            for (int draw = 0; draw < 100; draw++) {
                                table.draw(1, draw, out);
                            }
                        })
                .satisfies(
                        failure -> {
                            assertThat(failure.parameter()).isEqualTo("other parts/doubtful/mass");
                            assertThat(failure.value()).isNegative();
                        });
    }

    @Test
    void aDeclarationThatCannotBeIsRefusedAtAssembly() {
        RigSketch sketch = sketch();
        sketch.others.add(part("helium", RigSketch.si(-1)));
        assertThatExceptionOfType(ImpossibleValueException.class)
                .isThrownBy(() -> Plant.assemble(sketch.rig()))
                .withMessageContaining("helium");
    }

    @Test
    void unlikeValuesFromOneDeclarationShareItsError() {
        RigSketch sketch = sketch();
        RigPath one = RigPath.of("other parts", "pair");
        for (double mass : List.of(1.0, 2.0)) {
            sketch.others.add(
                    new OtherPart(
                            new PartId("pair." + (int) mass),
                            one,
                            RigSketch.about(mass, 0.1),
                            RigSketch.FRAME,
                            Vec3.ZERO,
                            Optional.empty()));
        }
        ParameterTable table = Plant.assemble(sketch.rig()).parameters();
        double[] out = new double[table.size()];
        table.draw(9, 4, out);
        double first = out[table.indexOf("other parts/pair/mass")];
        double second = out[table.indexOf("pair.2: other parts/pair/mass")];
        assertThat(second).isCloseTo(2 * first, within(1e-12));
        assertThat(first).isNotEqualTo(1);
    }
}
