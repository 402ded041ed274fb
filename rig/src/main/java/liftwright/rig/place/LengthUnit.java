package liftwright.rig.place;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.quantity.Dimensions;
import liftwright.quantity.WrittenQuantity;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;

/** The unit in which a builder says where things are. */
final class LengthUnit {

    private static final List<String> SECTIONS = List.of("fans", "mounts", "packs", "other parts");

    private static final Set<String> LENGTHS =
            Set.of(
                    "forward",
                    "back",
                    "right",
                    "left",
                    "up",
                    "down",
                    "outboard",
                    "inboard",
                    "along",
                    "spacing",
                    "row spacing",
                    "radius");

    private LengthUnit() {}

    /** A length of nothing in the unit used most for places, first met of equals; else in mm. */
    static WrittenQuantity nothing(Declaration declaration) {
        var counts = new LinkedHashMap<String, Integer>();
        for (String section : SECTIONS) {
            declaration.at(RigPath.of(section)).ifPresent(tree -> count(tree, counts));
        }
        String best = "mm";
        int most = 0;
        for (Map.Entry<String, Integer> each : counts.entrySet()) {
            if (each.getValue() > most) {
                best = each.getKey();
                most = each.getValue();
            }
        }
        return WrittenQuantity.read("0 " + best, Dimensions.LENGTH).orElseThrow();
    }

    private static void count(Tree tree, Map<String, Integer> counts) {
        switch (tree) {
            case Tree.Entries(var byKey) ->
                    byKey.forEach(
                            (key, value) -> {
                                if (value instanceof Tree.Text(var text)) {
                                    unit(key, text)
                                            .ifPresent(u -> counts.merge(u, 1, Integer::sum));
                                } else {
                                    count(value, counts);
                                }
                            });
            case Tree.Items(var items) -> items.forEach(item -> count(item, counts));
            case Tree.Text _ -> {}
        }
    }

    private static Optional<String> unit(String key, String text) {
        return LENGTHS.contains(key)
                ? WrittenQuantity.read(text, Dimensions.LENGTH).map(WrittenQuantity::unitText)
                : Optional.empty();
    }
}
