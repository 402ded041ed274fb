package liftwright.trials.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import liftwright.rig.Rig;
import liftwright.trials.Basis;

/**
 * All that a rig is, as texts by paths: {@code fans/left.3/at/right} is {@code 0.12 m}. Parts are
 * called by their ids, so that an order that means nothing is none. Numbers are SI and whole: two
 * rigs with equal inputs are the same rig for every question.
 *
 * <p>Not among them: name, note and revision of the rig, comments and layout of its file.
 *
 * @param byPath value by path
 */
public record Inputs(SortedMap<String, String> byPath) {

    /** Head of the paths of what no record holds: settings of controllers. */
    static final String SETTINGS = "settings";

    /** Most inputs that a pass of them can be read back with. */
    static final int MOST = 20_000;

    public Inputs {
        byPath = Collections.unmodifiableSortedMap(new TreeMap<>(byPath));
    }

    /** What stands where a path is in one set of inputs and not in the other. */
    public static final String NOTHING = "nothing";

    /** Those of a rig whose controllers' settings are not known. */
    public static Inputs of(Rig rig) {
        return of(rig, Map.of());
    }

    /**
     * Those of a rig.
     *
     * @param settings digest of every file of controller settings by the name of the file
     */
    public static Inputs of(Rig rig, Map<String, String> settings) {
        SortedMap<String, String> found = new InputWriter(rig).write();
        UnreadKeys.add(rig.declaration(), found);
        CorrectionInputs.add(rig, found);
        settings.forEach((file, digest) -> found.put(SETTINGS + "/" + segment(file), digest));
        return new Inputs(found);
    }

    /** A name of the builder's own as one segment of a path. */
    static String segment(String name) {
        return name.replace('/', '∕').replace('=', '＝');
    }

    /** Those that a pass with this basis rests on. */
    public Inputs restingOn(Basis basis) {
        var kept = new TreeMap<String, String>();
        byPath.forEach(
                (path, value) -> {
                    if (rests(basis, path)) {
                        kept.put(path, value);
                    }
                });
        return new Inputs(kept);
    }

    /** Whether a pass with this basis rests on what stands at a path. */
    public static boolean rests(Basis basis, String path) {
        if (Collections.disjoint(basis.topics(), Topics.of(path))) {
            return false;
        }
        Optional<Set<String>> meant = basis.parts();
        Set<String> parts = Topics.parts(path);
        return meant.isEmpty() || parts.isEmpty() || !Collections.disjoint(meant.get(), parts);
    }

    /**
     * Where a rig of today differs from what a pass rests on: every path recorded, and every path
     * of today that belongs to the basis and was not recorded.
     *
     * @param recorded what the pass rests on
     * @param basis of its card today
     */
    public List<Difference> since(Inputs recorded, Basis basis) {
        return since(recorded, restingOn(basis));
    }

    /** As that, where the inputs that belong to the basis are known. */
    List<Difference> since(Inputs recorded, Inputs resting) {
        var differences = new ArrayList<Difference>();
        recorded.byPath.forEach(
                (path, was) -> {
                    String is = byPath.getOrDefault(path, NOTHING);
                    if (!was.equals(is)) {
                        differences.add(new Difference(path, was, is));
                    }
                });
        resting.byPath.forEach(
                (path, _) -> {
                    String is = byPath.getOrDefault(path, NOTHING);
                    if (!recorded.byPath.containsKey(path) && !is.equals(NOTHING)) {
                        differences.add(new Difference(path, NOTHING, is));
                    }
                });
        differences.sort(Comparator.comparing(Difference::path));
        return List.copyOf(differences);
    }

    /**
     * One input that is not what it was.
     *
     * @param path which
     * @param from what a pass rests on; {@link #NOTHING} where it was not there
     * @param to what is there now, likewise
     */
    public record Difference(String path, String from, String to) {}
}
