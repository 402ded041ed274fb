package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * More fans of a kind the rig has, in a row or ring that it has (and in its twin), fed by the feeds
 * that carry the fewest fans. Only rigs whose fans hang on feeds are offered it: in any other
 * wiring a new branch is the builder's to draw.
 */
final class MoreFans {

    private static final int MOST_STEPS = 4;

    private MoreFans() {}

    static List<Candidate> of(Rig rig) {
        Optional<Feed> feed = onlyFeed(rig.declaration().root());
        if (feed.isEmpty()) {
            return List.of();
        }
        return entries(rig.declaration().root(), "fans").stream()
                .flatMap(group -> candidate(group, feed.get()).stream())
                .toList();
    }

    /**
     * @param at path of the map from pack to fans
     * @param loads fans of each pack
     */
    private record Feed(RigPath at, Map<String, Integer> loads) {}

    private static Optional<Candidate> candidate(Tree.Entries group, Feed feed) {
        Optional<String> id = text(group, "id");
        String layout = group.byKey().containsKey("ring") ? "ring" : "row";
        Optional<Integer> count = text(group, layout).flatMap(MoreFans::wholeNumber);
        if (id.isEmpty() || count.isEmpty()) {
            return Optional.empty();
        }
        // An odd ring has no two halves, so a ring grows by two.
        int perStep = layout.equals("ring") ? 2 : 1;
        List<String> names = new ArrayList<>(List.of(id.get()));
        text(group, "twin").ifPresent(names::add);
        int perStepInAll = perStep * names.size();
        return Optional.of(
                new Candidate(
                        MOST_STEPS,
                        steps ->
                                Sentence.words(
                                        String.format(
                                                Locale.ROOT,
                                                "%d more %s like those of %s, on the feeds with the fewest",
                                                steps * perStepInAll,
                                                steps * perStepInAll == 1 ? "fan" : "fans",
                                                String.join(" and ", names))),
                        Sentence.words(perStepInAll == 1 ? "one fan" : perStepInAll + " fans"),
                        steps -> changes(names, layout, count.get(), steps * perStep, feed)));
    }

    private static List<Change> changes(
            List<String> names, String layout, int count, int added, Feed feed) {
        List<Change> changes = new ArrayList<>();
        changes.add(
                new Change.Set(
                        RigPath.of("fans", names.getFirst(), layout),
                        Integer.toString(count + added)));
        Map<String, Integer> loads = new LinkedHashMap<>(feed.loads());
        for (int number = count + 1; number <= count + added; number++) {
            for (String name : names) {
                String pack =
                        loads.entrySet().stream()
                                .min(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                                .orElseThrow()
                                .getKey();
                loads.merge(pack, 1, Integer::sum);
                changes.add(new Change.Add(feed.at().child(pack), "", name + "." + number));
            }
        }
        return changes;
    }

    private static Optional<Feed> onlyFeed(Tree root) {
        if (!(child(root, "wiring").orElse(root) instanceof Tree.Entries wiring)) {
            return Optional.empty();
        }
        List<Tree.Entries> feeds = entries(wiring, "feeds");
        if (feeds.size() != 1) {
            return Optional.empty();
        }
        Tree.Entries feed = feeds.getFirst();
        Optional<String> id = text(feed, "id");
        if (id.isEmpty() || !(child(feed, "fans").orElse(root) instanceof Tree.Entries fans)) {
            return Optional.empty();
        }
        Map<String, Integer> loads = new LinkedHashMap<>();
        fans.byKey()
                .forEach(
                        (pack, list) -> {
                            if (list instanceof Tree.Items items) {
                                loads.put(pack, items.items().size());
                            }
                        });
        return loads.isEmpty()
                ? Optional.empty()
                : Optional.of(new Feed(RigPath.of("wiring", "feeds", id.get(), "fans"), loads));
    }

    private static List<Tree.Entries> entries(Tree tree, String key) {
        List<Tree.Entries> maps = new ArrayList<>();
        if (child(tree, key).orElse(tree) instanceof Tree.Items list) {
            for (Tree item : list.items()) {
                if (item instanceof Tree.Entries map) {
                    maps.add(map);
                }
            }
        }
        return maps;
    }

    private static Optional<Tree> child(Tree tree, String key) {
        return tree instanceof Tree.Entries map
                ? Optional.ofNullable(map.byKey().get(key))
                : Optional.empty();
    }

    private static Optional<String> text(Tree.Entries map, String key) {
        return Optional.ofNullable(map.byKey().get(key))
                .flatMap(
                        tree ->
                                tree instanceof Tree.Text(String value)
                                        ? Optional.of(value)
                                        : Optional.empty());
    }

    private static Optional<Integer> wholeNumber(String text) {
        try {
            return Optional.of(Integer.valueOf(text));
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }
}
