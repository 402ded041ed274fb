package liftwright.trials.evidence;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.shape.Shape;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Section;

/**
 * What a file says that no question reads yet, and that therefore no record of a rig holds. A
 * builder who declares another setting of a controller has another controller all the same.
 */
final class UnreadKeys {

    /** Head of their paths. */
    static final String DECLARED = "declared";

    private final SortedMap<String, String> into;

    private UnreadKeys(SortedMap<String, String> into) {
        this.into = into;
    }

    static void add(Declaration declaration, SortedMap<String, String> into) {
        new UnreadKeys(into).section(DECLARED, declaration.root(), Shape.root());
    }

    private void section(String path, Tree tree, Section section) {
        if (!(tree instanceof Tree.Entries(var byKey))) {
            return;
        }
        byKey.forEach(
                (name, value) -> {
                    Key<?> key = section.byName().get(name);
                    if (key == null) {
                        return; // such a file has problems, and no rig
                    }
                    String at = path + "/" + name;
                    if (key.isUsed()) {
                        within(at, value, Shape.within(key.kind()));
                    } else {
                        all(at, value);
                    }
                });
    }

    /** Looks into values that may be sections, or lists and maps of sections. */
    private void within(String path, Tree tree, List<Section> sections) {
        if (sections.isEmpty()) {
            return;
        }
        switch (tree) {
            case Tree.Text _ -> {}
            case Tree.Items(var items) -> {
                for (int i = 0; i < items.size(); i++) {
                    within(path + "/" + step(items.get(i), i), items.get(i), sections);
                }
            }
            case Tree.Entries(var byKey) -> {
                for (Section section : sections) {
                    if (section.byName().keySet().containsAll(byKey.keySet())) {
                        section(path, tree, section);
                        return;
                    }
                }
                byKey.forEach((name, value) -> within(path + "/" + name, value, sections));
            }
        }
    }

    private void all(String path, Tree tree) {
        switch (tree) {
            case Tree.Text(var text) -> into.put(path, text);
            case Tree.Items(var items) -> {
                for (int i = 0; i < items.size(); i++) {
                    all(path + "/" + step(items.get(i), i), items.get(i));
                }
            }
            case Tree.Entries(Map<String, Tree> byKey) ->
                    byKey.forEach((name, value) -> all(path + "/" + name, value));
        }
    }

    private static String step(Tree entry, int index) {
        return entry instanceof Tree.Entries(var byKey)
                        && byKey.get(Section.ID) instanceof Tree.Text(var id)
                ? id
                : Integer.toString(index + 1);
    }
}
