package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;
import liftwright.plant.HeldCorrections.Why;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Which corrections fall when a rig changes, against a referee that looks at the file alone. */
class HeldCorrectionsTest {

    private static final RigReading FILE = numbered();
    private static final Rig RIG = FILE.rig().orElseThrow();
    private static final ParameterTable TABLE = Plant.assembleHeated(RIG).parameters();

    /** Sandpiper with serial numbers on all it can. */
    private static RigReading numbered() {
        RigReading file = CorrectedPlantTest.example("sandpiper");
        return changed(
                file,
                new Change.Add(
                        RigPath.of(),
                        "serials",
                        "{corner.1: A1, corner.2: A2, corner.3: A3, corner.4: A4, p.1: B1, p.2: B2,"
                                + " p.3: B3, p.4: B4}"));
    }

    private static RigReading changed(RigReading file, Change change) {
        if (file.with(List.of(change)) instanceof RigReading.Edit.Changed(var next, var _)
                && next.rig().isPresent()) {
            return next;
        }
        throw new AssertionError(change + " makes no rig");
    }

    private static List<Correction> groups(RandomGenerator random) {
        List<Correction> groups = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < 3; i++) {
            Correction group =
                    DrawnCorrections.group(
                            random,
                            RIG,
                            TABLE,
                            "group " + i,
                            8,
                            row -> row.input() >= 0 && !taken.contains(row.name()));
            group.found().forEach(found -> taken.add(found.parameter()));
            groups.add(group);
        }
        return groups;
    }

    /** What must count: names by group. */
    private static Map<String, Set<String>> names(List<Correction> groups) {
        var names = new HashMap<String, Set<String>>();
        for (Correction group : groups) {
            var own = new HashSet<String>();
            group.found().forEach(found -> own.add(found.parameter()));
            if (!own.isEmpty()) {
                names.put(group.name(), own);
            }
        }
        return names;
    }

    private static void judge(
            List<Correction> groups, RigReading after, Map<String, Set<String>> wanted) {
        HeldCorrections judged =
                HeldCorrections.of(DrawnCorrections.with(after.rig().orElseThrow(), groups));
        wanted.values().removeIf(Set::isEmpty);
        assertThat(names(judged.held())).isEqualTo(wanted);
        int all = groups.stream().mapToInt(group -> group.found().size()).sum();
        assertThat(judged.values() + judged.voided()).isEqualTo(all);
    }

    @Test
    void nothingFallsWhileNothingOfItChanges() {
        Seeded.check(
                5,
                random -> {
                    List<Correction> groups = groups(random);
                    RigReading after =
                            changed(
                                    FILE,
                                    new Change.Set(
                                            RigPath.of("revision"), "" + random.nextInt(99)));
                    judge(groups, after, names(groups));
                });
    }

    @Test
    void anotherPartTakesWhatWasFoundOfItAlone() {
        Seeded.check(
                6,
                random -> {
                    List<Correction> groups = groups(random);
                    String part =
                            (random.nextBoolean() ? "corner." : "p.") + (1 + random.nextInt(4));
                    RigReading after =
                            changed(FILE, new Change.Set(RigPath.of("serials", part), "C9"));
                    Map<String, Set<String>> wanted = names(groups);
                    wanted.values().forEach(own -> own.removeIf(n -> n.startsWith(part + ": ")));
                    judge(groups, after, wanted);
                    HeldCorrections judged =
                            HeldCorrections.of(
                                    DrawnCorrections.with(after.rig().orElseThrow(), groups));
                    assertThat(judged.voids()).allMatch(one -> one.why() == Why.SERIAL);
                });
    }

    @Test
    void anotherDeclaredValueTakesTheWholeGroup() {
        int[] fallen = new int[1];
        Seeded.check(
                8,
                random -> {
                    List<Correction> groups = groups(random);
                    Correction group = groups.get(random.nextInt(groups.size()));
                    Found found = group.found().get(random.nextInt(group.found().size()));
                    RigPath at = RigPath.parse(found.path());
                    if (!(RIG.declaration().at(at).orElse(new Tree.Items(List.of()))
                            instanceof Tree.Text(var text))) {
                        return; // a default, or written elsewhere
                    }
                    RigReading after;
                    try {
                        after = changed(FILE, new Change.Set(at, other(text)));
                    } catch (AssertionError refused) {
                        return;
                    }
                    // Whatever stands on that line of the file started from something else; and so
                    // does what takes its default from it: both by the text, not by the judge.
                    Map<String, Set<String>> wanted = names(groups);
                    HeldCorrections judged =
                            HeldCorrections.of(
                                    DrawnCorrections.with(after.rig().orElseThrow(), groups));
                    assertThat(names(judged.held())).doesNotContainKey(group.name());
                    assertThat(judged.voids())
                            .anySatisfy(
                                    one -> {
                                        assertThat(one.group()).isEqualTo(group.name());
                                        assertThat(one.why()).isEqualTo(Why.DECLARED);
                                        assertThat(one.values()).isEqualTo(group.found().size());
                                    });
                    assertThat(wanted.keySet()).containsAll(names(judged.held()).keySet());
                    fallen[0]++;
                });
        assertThat(fallen[0]).isGreaterThan(3);
    }

    /** The first number of a text a little larger. */
    private static String other(String text) {
        var number = Pattern.compile("[0-9]+(\\.[0-9]+)?").matcher(text);
        if (!number.find()) {
            throw new AssertionError("no number in " + text);
        }
        double more = Double.parseDouble(number.group()) * 1.01;
        return text.substring(0, number.start())
                + String.format(Locale.ROOT, "%.6f", more)
                + text.substring(number.end());
    }

    @Test
    void aGroupThatIsAboutAPartWithoutNamingItFallsWithIt() {
        Correction group =
                DrawnCorrections.group(
                        new Random(1), RIG, TABLE, "one", 3, row -> !row.name().contains(": "));
        Correction bound =
                new Correction(
                        group.name(),
                        group.found(),
                        group.correlations(),
                        group.grounds(),
                        Map.of("corner.2", "A2"));
        assertThat(HeldCorrections.of(DrawnCorrections.with(RIG, List.of(bound))).voids())
                .isEmpty();
        RigReading after = changed(FILE, new Change.Set(RigPath.of("serials", "corner.2"), "C9"));
        assertThat(
                        HeldCorrections.of(
                                        DrawnCorrections.with(
                                                after.rig().orElseThrow(), List.of(bound)))
                                .voids())
                .singleElement()
                .satisfies(one -> assertThat(one.why()).isEqualTo(Why.SERIAL));
    }
}
