package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class FaultsTextTest {

    private static List<String> lines(Section section, int columns, boolean ascii) {
        var look = new Look(columns, ascii, false, UnitSystem.SI);
        return TextReport.sections(List.of(section), look).lines().toList();
    }

    @Test
    void aNumberOfAMatrixHasAMarkAndALineAWord() {
        assertThat(lines(Sample.matrix("left.3"), 100, false))
                .containsExactly(
                        "What each failure leaves",
                        "  what fails         stands  lift over weight             reached after"
                                + "           usable lift",
                        "  left.3, fan stops  short             ! 0.93  ? not computed: it falls"
                                + "  900 N (887 to 917 N)",
                        "  back.1, left.3     holds             + 1.08                      40 s"
                                + "                1012 N",
                        "  ! short of what is asked; ? cannot be told; + holds what is asked",
                        "  The same as left.3, fan stops: fuse of left.3, controller of left.3");
    }

    @Test
    void whereBandsHaveNoRoomItSaysWhereTheyStand() {
        List<String> lines = lines(Sample.matrix("left.3"), 72, true);
        assertThat(lines).noneMatch(line -> line.contains("887"));
        assertThat(String.join(" ", lines)).contains("900 N", "bands stand in --html and --json");
    }

    @Test
    void ofManyFailuresTheFirstStandThere() {
        List<Matrix.Line> many = new ArrayList<>();
        for (int k = 0; k < 33; k++) {
            Matrix.Line line = Sample.matrix("left.3").lines().getLast();
            many.add(new Matrix.Line("fan." + k, line.what(), List.of(), line.cells()));
        }
        List<String> lines =
                lines(new Matrix("m", "M", Sample.matrix("left.3").columns(), many), 100, false);
        assertThat(lines).filteredOn(line -> line.contains("fan.")).hasSize(20);
        assertThat(lines.getLast())
                .isEqualTo("  and 13 more failures: all of them with --html or --json");
    }

    /** Whatever numbers a matrix has, its text has the same, each within the terminal. */
    @Test
    void noLineIsWiderThanTheTerminalAndNoNumberIsLost() {
        Seeded.check(
                200,
                random -> {
                    int columns = 40 + random.nextInt(61);
                    boolean ascii = random.nextBoolean();
                    var figures = new Figures(new Look(columns, ascii, false, UnitSystem.SI));
                    List<Matrix.Line> rows = new ArrayList<>();
                    List<String> shown = new ArrayList<>();
                    for (int r = 0; r < 1 + random.nextInt(6); r++) {
                        List<Matrix.Cell> cells = new ArrayList<>();
                        for (String field : List.of("thrust-to-weight", "mass", "lift-usable")) {
                            var value = Value.of(field, 1000 * random.nextDouble());
                            var all = Matrix.Standing.values();
                            cells.add(new Matrix.Cell(value, all[random.nextInt(all.length)]));
                            shown.add(figures.value(value).replace('\u00a0', ' '));
                        }
                        rows.add(
                                new Matrix.Line(
                                        "p" + r, "w".repeat(random.nextInt(60)), List.of(), cells));
                    }
                    var matrix =
                            new Matrix(
                                    "m",
                                    "M",
                                    List.of("thrust-to-weight", "mass", "lift-usable"),
                                    rows);
                    List<String> lines = lines(matrix, columns, ascii);
                    assertThat(lines).allMatch(line -> line.length() <= columns);
                    assertThat(String.join(" ", lines)).contains(shown);
                });
    }

    /** 1 m by 2 m, twice as many characters to a metre across as up. */
    @Test
    void aSideViewIsDrawnToScale() {
        List<String> lines = lines(Sample.elevation("left.3"), 100, false);
        int top = first(lines, "SSSS");
        int ground = first(lines, "====");
        assertThat(ground - top).isEqualTo(15); // 2 m of 2.32 m on 18 lines
        String roof = lines.get(top);
        String walls = lines.get(top + 7);
        int wide = walls.lastIndexOf('S') - walls.indexOf('S');
        assertThat(wide).isBetween(14, 15);
        int middle = (walls.lastIndexOf('S') + walls.indexOf('S')) / 2;
        assertThat(lines.get(top - 1).strip()).isEqualTo("^1");
        assertThat(lines.get(top - 1).indexOf('^')).isEqualTo(middle);
        assertThat(roof.indexOf(">2")).isEqualTo(middle + 1);
        assertThat(String.join("\n", lines))
                .contains("= ground", "S stand (left.3)", "/ down line (line of left.3)")
                .contains("Keep out: 4 m from left.3")
                .contains("1 lift of left.3")
                .contains("900 N (887 to 917 N)");
    }

    private static int first(List<String> lines, String piece) {
        for (int k = 0; k < lines.size(); k++) {
            if (lines.get(k).contains(piece)) {
                return k;
            }
        }
        throw new AssertionError("nowhere " + piece);
    }

    /** Of any size and shape it stays within the terminal. */
    @Test
    void aSideViewFitsTheTerminal() {
        Seeded.check(
                200,
                random -> {
                    int columns = 40 + random.nextInt(61);
                    List<Elevation.Spot2> outline = new ArrayList<>();
                    double size = Math.pow(10, 4 * random.nextDouble() - 1);
                    for (int k = 0; k < 1 + random.nextInt(5); k++) {
                        outline.add(
                                new Elevation.Spot2(
                                        size * (random.nextDouble() - 0.5),
                                        size * random.nextDouble()));
                    }
                    var view =
                            new Elevation(
                                    "e",
                                    "E",
                                    List.of(
                                            new Elevation.Shape(
                                                    Elevation.Kind.GANTRY,
                                                    "g",
                                                    outline,
                                                    random.nextBoolean())),
                                    List.of());
                    List<String> lines = lines(view, columns, random.nextBoolean());
                    assertThat(lines).allMatch(line -> line.length() <= columns);
                    assertThat(lines.stream().filter(line -> line.contains("G"))).isNotEmpty();
                });
    }

    @Test
    void aZoneIsHatchedBelowTheAxisAndTold() {
        List<String> lines = lines(Sample.heights("left.3"), 100, false);
        int axis = first(lines, "───");
        String hatch = lines.get(axis + 2);
        assertThat(hatch.strip()).matches("/+");
        int wide = lines.get(axis).strip().length() - 2;
        // from −0.5 to 10.5 m: 4 m of 11 m
        assertThat((double) (hatch.strip().length() - 1) / wide).isCloseTo(4 / 11.0, within(0.02));
        assertThat(lines.get(axis + 3)).isEqualTo("  / nothing helps left.3, 2.0 to 6.0 m");
        assertThat(lines.getLast()).contains("fall of left.3");
    }
}
