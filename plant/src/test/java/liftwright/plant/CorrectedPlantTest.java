package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import liftwright.plant.parameters.ParameterTable;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** A plant whose numbers tests corrected. */
class CorrectedPlantTest {

    private static final List<String> EXAMPLES = List.of("mudlark", "curlew", "sandpiper");

    static RigReading example(String name) {
        Path folder = Path.of("..", "examples", name);
        try {
            return RigReading.read(
                    "rig.yaml", Files.readAllBytes(folder.resolve("rig.yaml")), new Folder(folder));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Edits each corrected value into the file, where that can be said there; tells which it did.
     */
    private static RigReading edited(RigReading file, Correction group, Set<String> done) {
        RigReading now = file;
        for (Found found : group.found()) {
            String text = SiText.of(Quantity.exact(found.value(), found.declared().dimension()));
            var change = new Change.Set(RigPath.parse(found.path()), text);
            if (now.with(List.of(change)) instanceof RigReading.Edit.Changed(var next, var _)
                    && next.rig().isPresent()
                    && isAlone(now.rig().orElseThrow(), next.rig().get(), found)) {
                now = next;
                done.add(found.parameter());
            }
        }
        return now;
    }

    /** Of some values others are the default, such as the mass of a motor of its heat capacity. */
    private static boolean isAlone(Rig before, Rig after, Found found) {
        ParameterTable was = Plant.assembleHeated(before).parameters();
        ParameterTable is = Plant.assembleHeated(after).parameters();
        for (int i = 0; i < was.size(); i++) {
            String name = was.rows().get(i).name();
            if (!name.equals(found.parameter())
                    && !(is.has(name) && is.nominal()[is.indexOf(name)] == was.nominal()[i])) {
                return false;
            }
        }
        return true;
    }

    @Test
    void itIsThePlantOfARigWhoseDeclaredValuesWereEditedToWhatWasFound() {
        int[] compared = new int[1];
        Seeded.check(
                12,
                random -> {
                    RigReading file = example(EXAMPLES.get(random.nextInt(EXAMPLES.size())));
                    Rig declared = file.rig().orElseThrow();
                    ParameterTable table = Plant.assembleHeated(declared).parameters();
                    Correction wanted =
                            DrawnCorrections.group(
                                    random,
                                    declared,
                                    table,
                                    "drawn",
                                    12,
                                    row -> !row.name().contains(": "));
                    Set<String> done = new HashSet<>();
                    RigReading after = edited(file, wanted, done);
                    if (done.isEmpty()) {
                        return;
                    }
                    // What no text of the file says cannot be edited, so it is not corrected here.
                    Correction group = wanted.only(found -> done.contains(found.parameter()));
                    Plant edited = Plant.assembleHeated(after.rig().orElseThrow());
                    Plant corrected =
                            Plant.assembleHeated(DrawnCorrections.with(declared, List.of(group)));
                    if (corrected.corrections().held().isEmpty()) {
                        return; // some of the values of a table, which count for nothing
                    }
                    compared[0] += group.found().size();
                    same(edited, corrected);
                });
        assertThat(compared[0]).isGreaterThan(20);
    }

    private static void same(Plant edited, Plant corrected) {
        double[] p = edited.parameters().nominal();
        double[] q = corrected.parameters().nominal();
        for (int i = 0; i < q.length; i++) {
            String name = corrected.parameters().rows().get(i).name();
            if (edited.parameters().has(name)) {
                double want = p[edited.parameters().indexOf(name)];
                assertThat(q[i]).as(name).isCloseTo(want, within(1e-12 * Math.abs(want)));
            }
        }
        double[] one = numbers(edited, p);
        double[] other = numbers(corrected, q);
        for (int i = 0; i < one.length; i++) {
            assertThat(other[i]).isCloseTo(one[i], within(1e-12 * Math.abs(one[i]) + 1e-12));
        }
    }

    private static double[] numbers(Plant plant, double[] p) {
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), state);
        double[] numbers = new double[plant.rig().fans().size() + 2];
        for (int fan = 0; fan < plant.rig().fans().size(); fan++) {
            numbers[fan] = state.fanThrustN(fan);
        }
        numbers[numbers.length - 2] = plant.weightN(p);
        numbers[numbers.length - 1] = plant.siteDensityKgpm3(p);
        return numbers;
    }

    @Test
    void whatIsNotCorrectedKeepsEveryDrawToTheLastBit() {
        Seeded.check(
                30,
                random -> {
                    Rig declared = RandomRigs.doubtful(random);
                    ParameterTable table = Plant.assemble(declared).parameters();
                    List<Correction> groups = groups(random, declared, table);
                    ParameterTable with =
                            Plant.assemble(DrawnCorrections.with(declared, groups)).parameters();
                    Set<String> corrected = new HashSet<>();
                    groups.forEach(
                            group -> group.found().forEach(f -> corrected.add(f.parameter())));
                    double[] p = new double[table.size()];
                    double[] q = new double[with.size()];
                    assertThat(q).hasSameSizeAs(p);
                    for (int draw = 0; draw < 8; draw++) {
                        table.draw(11, draw, p);
                        with.draw(11, draw, q);
                        for (int i = 0; i < p.length; i++) {
                            boolean own = corrected.contains(table.rows().get(i).name());
                            if (!own) {
                                assertThat(q[i]).isEqualTo(p[i]);
                            }
                        }
                    }
                });
    }

    private static List<Correction> groups(
            RandomGenerator random, Rig declared, ParameterTable table) {
        List<Correction> groups = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            Correction group =
                    DrawnCorrections.group(
                            random,
                            declared,
                            table,
                            "group " + i,
                            6,
                            row ->
                                    !taken.contains(row.name())
                                            && !row.name().startsWith("control/"));
            group.found().forEach(found -> taken.add(found.parameter()));
            groups.add(group);
        }
        return groups;
    }

    @Test
    void aDrawIsTheSameBesideAnotherGroupAndDrawsAreNested() {
        Seeded.check(
                20,
                random -> {
                    Rig declared = RandomRigs.doubtful(random);
                    ParameterTable table = Plant.assemble(declared).parameters();
                    List<Correction> groups = groups(random, declared, table);
                    ParameterTable first =
                            Plant.assemble(DrawnCorrections.with(declared, groups.subList(0, 1)))
                                    .parameters();
                    ParameterTable all =
                            Plant.assemble(DrawnCorrections.with(declared, groups)).parameters();
                    double[] p = new double[table.size()];
                    double[] q = new double[table.size()];
                    first.draw(3, 5, p);
                    all.draw(3, 5, q);
                    for (Found found : groups.getFirst().found()) {
                        int row = all.indexOf(found.parameter());
                        assertThat(q[row]).isEqualTo(p[row]);
                    }
                    assertThat(all.inputs().stream().mapToInt(in -> in.rows().size()).sum())
                            .isEqualTo(
                                    all.inputs().stream()
                                            .flatMap(in -> in.rows().stream())
                                            .distinct()
                                            .count());
                });
    }

    @Test
    void bandsAreThoseOfARefereesOwnSampling() {
        Seeded.check(
                4,
                random -> {
                    Rig declared = RandomRigs.doubtful(random);
                    Plant before = Plant.assemble(declared);
                    Correction group =
                            DrawnCorrections.group(
                                    random,
                                    declared,
                                    before.parameters(),
                                    "drawn",
                                    30,
                                    row -> row.input() >= 0 && !row.name().startsWith("control/"));
                    Plant plant = Plant.assemble(DrawnCorrections.with(declared, List.of(group)));
                    int draws = 600;
                    double[][] own = new double[2][draws];
                    double[][] theirs = new double[2][draws];
                    double[][] lower = cholesky(group);
                    double[] p = new double[before.parameters().size()];
                    for (int k = 0; k < draws; k++) {
                        plant.parameters().draw(17, k, p);
                        look(plant, p, theirs, k);
                        before.parameters().draw(23, k, p);
                        sample(random, group, lower, before.parameters(), p);
                        look(before, p, own, k);
                    }
                    for (int what = 0; what < 2; what++) {
                        alike(own[what], theirs[what]);
                    }
                });
    }

    /** Weight and lift. */
    private static void look(Plant plant, double[] p, double[][] out, int k) {
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), state);
        out[0][k] = plant.weightN(p);
        for (int fan = 0; fan < plant.rig().fans().size(); fan++) {
            out[1][k] += state.fanThrustN(fan);
        }
    }

    /** The textbook's factor of the matrix that the deviations and correlations say. */
    private static double[][] cholesky(Correction group) {
        int n = group.found().size();
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum =
                        (i == j ? 1 : group.correlations().get(i * (i - 1) / 2 + j))
                                * group.found().get(i).deviation()
                                * group.found().get(j).deviation();
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(Math.max(sum, 0)) : sum / lower[j][j];
            }
        }
        return lower;
    }

    private static void sample(
            RandomGenerator random,
            Correction group,
            double[][] lower,
            ParameterTable table,
            double[] p) {
        double[] z = new double[lower.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = random.nextGaussian();
        }
        for (int i = 0; i < z.length; i++) {
            double by = 0;
            for (int j = 0; j <= i; j++) {
                by += lower[i][j] * z[j];
            }
            Found found = group.found().get(i);
            p[table.indexOf(found.parameter())] =
                    found.inLogarithms() ? found.value() * Math.exp(by) : found.value() + by;
        }
    }

    /** Means within five of their errors, deviations within a third (some six of theirs). */
    private static void alike(double[] own, double[] theirs) {
        double error = Math.hypot(deviation(own), deviation(theirs)) / Math.sqrt(own.length);
        assertThat(mean(theirs)).isCloseTo(mean(own), within(5 * error + 1e-9));
        if (deviation(own) > 1e-9) {
            assertThat(deviation(theirs) / deviation(own)).isBetween(0.75, 1.33);
        }
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double deviation(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return Math.sqrt(sum / (values.length - 1));
    }
}
