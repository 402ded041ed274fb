package liftwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.BalancedSets;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.quantity.Measure;
import liftwright.rig.Change;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wiring;

/**
 * Which pack should feed which fans, so that a pack that is lost takes a set that balances: least
 * of the greatest roll and pitch acceleration, together as one length, in the moment after any one
 * pack of a feed is gone, the other fans still at the thrust of lift-off. Every pack keeps the
 * number of fans it has.
 */
final class PairingSearch {

    private PairingSearch() {}

    /** Packs of one feed and the fans behind each, by their places in the rig's list. */
    private record Feed(String id, Map<String, List<Integer>> byPack) {}

    static Searched of(Rig rig, Work work) {
        Optional<List<Feed>> feeds = feeds(rig);
        if (feeds.isEmpty()) {
            return only(
                    "pairing-not-searched",
                    "packs that share fans lose none: there is no pairing to search",
                    "only feeds of one pack each are searched");
        }
        List<Feed> open = feeds.get().stream().filter(feed -> feed.byPack.size() > 1).toList();
        if (open.isEmpty()) {
            return only(
                    "pairing-not-searched",
                    "no feed has several packs: there is no pairing to search",
                    "one pack takes all its fans with it");
        }
        work.stage("search for pairs", open.size());
        double[][] vector = accelerations(rig);
        List<Change> changes = new ArrayList<>();
        double bound = 0;
        for (Feed feed : open) {
            double least = better(rig, feed, vector, changes);
            bound = Math.max(bound, Rounding.off(least, Rounding.RADPS2));
            work.done(1);
        }
        Map<String, Double> before = residuals(rig, feeds.get());
        Optional<Rig> revised = changes.isEmpty() ? Optional.of(rig) : Revised.with(rig, changes);
        Optional<List<Feed>> again = revised.flatMap(PairingSearch::feeds);
        if (revised.isEmpty() || again.isEmpty()) {
            return only(
                    "pairing-not-written",
                    "a better pairing is known but cannot be written into this file",
                    "the feeds as changed do not read");
        }
        return told(rig, before, residuals(revised.get(), again.get()), bound, changes);
    }

    /** The edits to a better pairing; none where there is none, or none can be searched. */
    static List<Change> better(Rig rig) {
        double[][] vector = accelerations(rig);
        List<Change> changes = new ArrayList<>();
        for (Feed feed : feeds(rig).orElse(List.of())) {
            if (feed.byPack.size() > 1) {
                better(rig, feed, vector, changes);
            }
        }
        return changes;
    }

    private static Searched only(String code, String sentence, String cause) {
        return new Searched(
                List.of(Finding.of(Finding.Severity.NOTES, code, Sentence.words(sentence), cause)),
                List.of());
    }

    private static Searched told(
            Rig rig,
            Map<String, Double> before,
            Map<String, Double> after,
            double bound,
            List<Change> changes) {
        List<List<Value>> rows = new ArrayList<>();
        for (Pack pack : rig.packs()) {
            String id = pack.id().text();
            Double now = before.get(id);
            Double then = after.get(id);
            if (now != null && then != null) {
                rows.add(
                        List.of(
                                Value.words("part", id),
                                Value.of("pack-loss-tilt", now),
                                Value.of("paired-loss-tilt", then)));
            }
        }
        Section table =
                new Section.Table(
                        "pairing-search",
                        "Roll and pitch right after a pack is lost",
                        List.of("part", "pack-loss-tilt", "paired-loss-tilt"),
                        rows);
        return new Searched(
                List.of(finding(greatest(before), greatest(after), bound, changes)),
                List.of(table));
    }

    private static Finding finding(double now, double then, double bound, List<Change> changes) {
        Value judged = Value.of("worst-loss-tilt", now);
        String proof =
                then <= bound + 1e-9 + 1e-6 * then
                        ? "proven: no pairing with as many fans a pack tilts it less"
                        : "not proven best; what no pairing can beat stands in the sentence";
        if (changes.isEmpty()) {
            return Finding.of(
                            Finding.Severity.NOTES,
                            "pairing-best",
                            Sentence.words("whichever pack is lost, it tilts with no more than ")
                                    .then(Measure.ANGULAR_ACCELERATION, now)
                                    .then("; other pairs do no better, none below ")
                                    .then(Measure.ANGULAR_ACCELERATION, bound),
                            proof)
                    .judging(judged);
        }
        return Finding.of(
                        Finding.Severity.NOTES,
                        "pairing-better",
                        Sentence.words("fed in other sets, it tilts with no more than ")
                                .then(Measure.ANGULAR_ACCELERATION, then)
                                .then(" whichever pack is lost, in place of ")
                                .then(Measure.ANGULAR_ACCELERATION, now)
                                .then("; none below ")
                                .then(Measure.ANGULAR_ACCELERATION, bound),
                        proof)
                .judging(judged)
                .mendedBy(
                        List.of(
                                new Remedy(
                                        Sentence.words(
                                                "feed the fans of "
                                                        + changes.size()
                                                        + " packs in other sets"),
                                        changes,
                                        new Remedy.Effect.Helps(
                                                Value.of("worst-loss-tilt", then),
                                                Value.of("worst-loss-tilt-gain", then - now)))));
    }

    private static double greatest(Map<String, Double> residuals) {
        return residuals.values().stream().mapToDouble(each -> each).max().orElse(0);
    }

    /** Changes of one feed appended where they help; what no pairing of it can beat. */
    private static double better(Rig rig, Feed feed, double[][] vector, List<Change> changes) {
        List<String> packs = new ArrayList<>(feed.byPack.keySet());
        List<Integer> fans = new ArrayList<>();
        List<Integer> set = new ArrayList<>();
        for (int pack = 0; pack < packs.size(); pack++) {
            for (int fan : feed.byPack.getOrDefault(packs.get(pack), List.of())) {
                fans.add(fan);
                set.add(pack);
            }
        }
        double[] rest = new double[2];
        for (int k = 0; k < vector.length; k++) {
            if (!fans.contains(k)) {
                rest[0] += vector[k][0];
                rest[1] += vector[k][1];
            }
        }
        double[][] own = fans.stream().map(fan -> vector[fan]).toArray(double[][]::new);
        int[] given = set.stream().mapToInt(each -> each).toArray();
        double before = BalancedSets.worst(own, given, rest);
        BalancedSets.Found found = BalancedSets.of(own, given, rest);
        if (found.worst() < before - Rounding.RADPS2 - 1e-6 * before) {
            int[] kept = nearest(given, found.set(), packs.size());
            for (int pack = 0; pack < packs.size(); pack++) {
                List<String> names = new ArrayList<>();
                boolean same = true;
                for (int k = 0; k < kept.length; k++) {
                    same &= (kept[k] == pack) == (given[k] == pack);
                    if (kept[k] == pack) {
                        names.add(rig.fans().get(fans.get(k)).id().text());
                    }
                }
                if (!same) {
                    changes.add(
                            new Change.Replace(
                                    RigPath.of("wiring", "feeds", feed.id, "fans", packs.get(pack)),
                                    "[" + String.join(", ", names) + "]"));
                }
            }
        }
        return found.bound();
    }

    /** The same sets under the numbers with which most fans stay where they are. */
    private static int[] nearest(int[] given, int[] found, int packs) {
        int[] size = new int[packs];
        int[][] alike = new int[packs][packs];
        for (int k = 0; k < given.length; k++) {
            size[given[k]]++;
            alike[found[k]][given[k]]++;
        }
        int[] number = new int[packs];
        boolean[] done = new boolean[packs];
        boolean[] taken = new boolean[packs];
        for (int round = 0; round < packs; round++) {
            int from = -1;
            int to = -1;
            for (int i = 0; i < packs; i++) {
                for (int j = 0; j < packs; j++) {
                    if (!done[i]
                            && !taken[j]
                            && size[i] == size[j]
                            && (from < 0 || alike[i][j] > alike[from][to])) {
                        from = i;
                        to = j;
                    }
                }
            }
            done[from] = true;
            taken[to] = true;
            number[from] = to;
        }
        int[] kept = new int[found.length];
        for (int k = 0; k < kept.length; k++) {
            kept[k] = number[found[k]];
        }
        return kept;
    }

    /** Roll and pitch acceleration that each fan gives at lift-off, rad/s². */
    private static double[][] accelerations(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        HoverPoint point = balancing.worker().liftOff(balancing.parameters().nominal());
        List<FanAtWork> fans = point.ledger().fans();
        double[][] vector = new double[fans.size()][];
        for (int k = 0; k < vector.length; k++) {
            Vec3 rate = point.mass().inertia().acceleration(fans.get(k).moment());
            vector[k] = new double[] {rate.x(), rate.y()};
        }
        return vector;
    }

    /** What each pack's loss leaves, rad/s². */
    private static Map<String, Double> residuals(Rig rig, List<Feed> feeds) {
        double[][] vector = accelerations(rig);
        Map<String, Double> residuals = new HashMap<>();
        for (Feed feed : feeds) {
            feed.byPack.forEach(
                    (pack, lost) -> {
                        double x = 0;
                        double y = 0;
                        for (int k = 0; k < vector.length; k++) {
                            if (!lost.contains(k)) {
                                x += vector[k][0];
                                y += vector[k][1];
                            }
                        }
                        residuals.put(pack, Rounding.off(Math.hypot(x, y), Rounding.RADPS2));
                    });
        }
        return residuals;
    }

    /** Empty where any chain is not a trunk or a branch of a feed. */
    private static Optional<List<Feed>> feeds(Rig rig) {
        Map<String, Integer> fan = new HashMap<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            fan.put(rig.fans().get(k).id().text(), k);
        }
        Map<String, String> packAt = new HashMap<>();
        Map<String, Feed> feeds = new LinkedHashMap<>();
        Map<String, Feed> feedAt = new HashMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            Integer fed = fan.get(chain.to());
            String pack = packAt.get(chain.from());
            Feed feed = feedAt.get(chain.from());
            String trunk = "." + chain.from() + ".trunk";
            if (fed != null && pack != null && feed != null) {
                feed.byPack.computeIfAbsent(pack, _ -> new ArrayList<>()).add(fed);
            } else if (fed == null && chain.id().text().endsWith(trunk)) {
                String whole = chain.id().text();
                String id = whole.substring(0, whole.length() - trunk.length());
                packAt.put(chain.to(), chain.from());
                feedAt.put(
                        chain.to(),
                        feeds.computeIfAbsent(id, _ -> new Feed(id, new LinkedHashMap<>())));
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(List.copyOf(feeds.values()));
    }
}
