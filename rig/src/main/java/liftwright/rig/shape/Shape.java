package liftwright.rig.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.AmountRange;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.FilePath;
import liftwright.rig.shape.kind.Gauge;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.NoiseDensity;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Sensed;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;
import liftwright.rig.shape.words.RigKeys;

/** The one table of keys: what reader, schema, hints and reference page are made from. */
public final class Shape {

    private Shape() {}

    /** The whole file. */
    public static Section root() {
        return RigKeys.SECTION;
    }

    /**
     * Every section once, in the order in which the file first needs it, by name.
     *
     * @throws IllegalStateException when two different sections share a name, which would be a
     *     fault in the table
     */
    public static Map<String, Section> sections() {
        return sections(root());
    }

    /** The sections of another file by their names, itself first. */
    static Map<String, Section> sections(Section root) {
        var found = new LinkedHashMap<String, Section>();
        gather(root, found);
        return found;
    }

    /** The names of the sections that have a key of that name. */
    static List<String> homesOf(String key) {
        return Homes.BY_KEY.getOrDefault(key, List.of());
    }

    /** Worked out when the first key stands in the wrong place; most files never need it. */
    private static final class Homes {
        private static final Map<String, List<String>> BY_KEY = find();

        private static Map<String, List<String>> find() {
            var homes = new HashMap<String, List<String>>();
            for (Section section : sections().values()) {
                for (Key<?> key : section.keys()) {
                    homes.computeIfAbsent(key.name(), name -> new ArrayList<>())
                            .add(section.name());
                }
            }
            return homes;
        }
    }

    /** The sections that a value of this kind may hold directly. */
    public static List<Section> within(Kind<?> kind) {
        var found = new ArrayList<Section>();
        within(kind, found);
        return found;
    }

    private static void gather(Section section, Map<String, Section> found) {
        Section before = found.putIfAbsent(section.name(), section);
        if (before != null) {
            if (!before.equals(section)) {
                throw new IllegalStateException("two sections are called " + section.name());
            }
            return;
        }
        for (Key<?> key : section.keys()) {
            within(key.kind()).forEach(inner -> gather(inner, found));
        }
    }

    private static void within(Kind<?> kind, List<Section> found) {
        switch (kind) {
            case Section section -> found.add(section);
            case ListOf<?> list -> within(list.item(), found);
            case MapOf<?> map -> within(map.value(), found);
            case Either<?, ?> either -> {
                within(either.one(), found);
                within(either.other(), found);
            }
            case Amount _,
                    AmountRange _,
                    FilePath _,
                    Gauge _,
                    Ident _,
                    NoiseDensity _,
                    Reference _,
                    Sensed _,
                    Text _,
                    Whole _,
                    Word<?> _,
                    YesNo _ -> {}
        }
    }
}
