package liftwright.rig.complete;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import liftwright.rig.Supplies;
import liftwright.rig.book.PartsBook;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.words.FanKeys;
import liftwright.rig.shape.words.KillKeys;
import liftwright.rig.shape.words.PackKeys;
import liftwright.rig.shape.words.RigKeys;
import liftwright.rig.shape.words.WiringKeys;
import liftwright.rig.text.Node;

/**
 * The names that a file gives, gathered from its tree, since a file that is being written is seldom
 * a rig.
 */
final class Names {

    /** A group that is like one that is like one: files are untrusted. */
    private static final int LONGEST_LIKENESS = 8;

    private final Node root;

    Names(Node root) {
        this.root = root;
    }

    /**
     * @param text as written
     * @param what what it names
     */
    record Named(String text, String what) {}

    /** What a reference may name. */
    List<Named> of(Reference.To to) {
        return switch (to) {
            case MOUNT -> keysWithTwins(RigKeys.MOUNTS.name(), "a mount");
            case FAN_TYPE -> keys(at(root, RigKeys.FAN_TYPES.name()), "a fan type");
            case FAN_GROUP -> groups(fanGroups(), "a fan group", false);
            case FAN -> both(groups(fanGroups(), "all fans of the group", true), fans());
            case CELL_TYPE -> keys(at(root, RigKeys.CELLS.name()), "a cell type");
            case PACK -> both(groups(packGroups(), "all packs of the group", true), packs());
            case CONTACTOR ->
                    keys(
                            at(root, RigKeys.WIRING.name())
                                    .flatMap(w -> at(w, WiringKeys.CONTACTORS.name())),
                            "a contactor");
            case NODE -> both(both(packs(), fans()), buses());
            case PERSON -> both(keys(at(root, RigKeys.CREW.name()), "one of the crew"), wearer());
            case OPEN_CIRCUIT ->
                    PartsBook.openCircuitNames().stream()
                            .map(n -> new Named(n, "a curve of the parts book"))
                            .toList();
            case JOINT ->
                    PartsBook.jointNames().stream()
                            .map(n -> new Named(n, "a joint of the parts book"))
                            .toList();
            case PART -> both(both(fans(), packs()), others());
            case SUPPLY ->
                    both(packs(), List.of(new Named(Supplies.OWN, "a battery beside the packs")));
            case SIGNAL_GROUND ->
                    at(root, RigKeys.WIRING.name())
                            .flatMap(w -> at(w, KillKeys.GROUNDS.name()))
                            .stream()
                            .flatMap(Names::mapsIn)
                            .flatMap(ground -> text(ground, "id").stream())
                            .filter(Names::isOffered)
                            .map(id -> new Named(id, "a signal ground"))
                            .toList();
        };
    }

    /** The parts that the keys of the map at hand may name. */
    List<Named> ofPartsAt(Marked marked) {
        String top = marked.keys().isEmpty() ? "" : marked.keys().getFirst().orElse("");
        if (top.equals(RigKeys.WIRING.name())) {
            return packs();
        }
        if (marked.holders().size() > 2
                && marked.holders().get(2) instanceof Node.Entries group
                && (top.equals(RigKeys.FANS.name()) || top.equals(RigKeys.PACKS.name()))) {
            return top.equals(RigKeys.FANS.name())
                    ? members(List.of(group), "a fan")
                    : members(List.of(group), "a pack");
        }
        return both(fans(), packs());
    }

    private List<Node.Entries> fanGroups() {
        return maps(RigKeys.FANS.name());
    }

    private List<Node.Entries> packGroups() {
        return maps(RigKeys.PACKS.name());
    }

    private List<Named> fans() {
        return members(fanGroups(), "a fan");
    }

    private List<Named> packs() {
        return members(packGroups(), "a pack");
    }

    private List<Named> others() {
        return groups(maps(RigKeys.OTHER_PARTS.name()), "a part", true);
    }

    private List<Named> wearer() {
        return at(root, RigKeys.WEARER.name())
                .map(_ -> List.of(new Named("wearer", "the person in the rig")))
                .orElse(List.of());
    }

    /** Names of the builder's own at the ends of links. */
    private List<Named> buses() {
        var links = at(root, RigKeys.WIRING.name()).flatMap(w -> at(w, WiringKeys.LINKS.name()));
        return links.stream()
                .flatMap(Names::mapsIn)
                .flatMap(link -> Stream.of("from", "to").flatMap(end -> text(link, end).stream()))
                .filter(name -> !name.contains(".") && isOffered(name))
                .distinct()
                .map(name -> new Named(name, "a place of a link"))
                .toList();
    }

    /** The ids of groups, and those of their twins. */
    private static List<Named> groups(List<Node.Entries> groups, String what, boolean twins) {
        return groups.stream()
                .flatMap(group -> twins ? idAndTwin(group) : text(group, "id").stream())
                .filter(Names::isOffered)
                .map(id -> new Named(id, what))
                .toList();
    }

    private static Stream<String> idAndTwin(Node.Entries group) {
        return Stream.of("id", FanKeys.TWIN.name()).flatMap(key -> text(group, key).stream());
    }

    private List<Named> members(List<Node.Entries> groups, String what) {
        var found = new ArrayList<Named>();
        for (var group : groups) {
            int count = count(group, 0);
            idAndTwin(group)
                    .filter(Names::isOffered)
                    .forEach(
                            id ->
                                    IntStream.rangeClosed(1, count)
                                            .mapToObj(i -> new Named(id + "." + i, what))
                                            .forEach(found::add));
        }
        return found;
    }

    /** How many parts a group makes, as far as it says so. */
    private int count(Node.Entries group, int likeness) {
        for (String key : List.of(FanKeys.ROW.name(), FanKeys.RING.name(), PackKeys.COUNT.name())) {
            var number = text(group, key).flatMap(Names::number);
            if (number.isPresent()) {
                return number.get();
            }
        }
        if (group.value(FanKeys.ROWS.name()).orElse(null) instanceof Node.Items(var rows, var _)) {
            int sum =
                    rows.stream()
                            .flatMap(
                                    row ->
                                            row instanceof Node.Scalar(var n, var _, var _)
                                                    ? number(n).stream()
                                                    : Stream.empty())
                            .mapToInt(n -> n)
                            .sum();
            return Math.clamp(sum, 1, ListOf.LONGEST);
        }
        var like = text(group, FanKeys.LIKE.name());
        if (like.isPresent() && likeness < LONGEST_LIKENESS) {
            for (var other : fanGroups()) {
                if (text(other, "id").equals(like)) {
                    return count(other, likeness + 1);
                }
            }
        }
        return 1;
    }

    private static Optional<Integer> number(String text) {
        return text.matches("[1-9][0-9]{0,2}")
                ? Optional.of(Math.min(Integer.parseInt(text), ListOf.LONGEST))
                : Optional.empty();
    }

    private List<Named> keysWithTwins(String section, String what) {
        return at(root, section).stream()
                .flatMap(
                        node ->
                                node instanceof Node.Entries(var entries, var _)
                                        ? entries.stream()
                                        : Stream.empty())
                .flatMap(
                        entry ->
                                Stream.concat(
                                        Stream.of(entry.key()),
                                        entry.value() instanceof Node.Entries map
                                                ? text(map, FanKeys.TWIN.name()).stream()
                                                : Stream.empty()))
                .filter(Names::isOffered)
                .map(name -> new Named(name, what))
                .toList();
    }

    private static List<Named> keys(Optional<Node> map, String what) {
        return map.stream()
                .flatMap(
                        node ->
                                node instanceof Node.Entries(var entries, var _)
                                        ? entries.stream()
                                        : Stream.empty())
                .map(Node.Entry::key)
                .filter(Names::isOffered)
                .map(name -> new Named(name, what))
                .toList();
    }

    /** What is no good name is not offered: it could not be written as it is. */
    private static boolean isOffered(String name) {
        return liftwright.rig.shape.kind.Name.isGood(name);
    }

    private List<Node.Entries> maps(String section) {
        return at(root, section).stream().flatMap(Names::mapsIn).toList();
    }

    private static Stream<Node.Entries> mapsIn(Node node) {
        return node instanceof Node.Items(var items, var _)
                ? items.stream()
                        .flatMap(
                                item ->
                                        item instanceof Node.Entries map
                                                ? Stream.of(map)
                                                : Stream.empty())
                : Stream.empty();
    }

    private static Optional<Node> at(Node node, String key) {
        return node instanceof Node.Entries map ? map.value(key) : Optional.empty();
    }

    private static Optional<String> text(Node.Entries map, String key) {
        return map.value(key).orElse(null) instanceof Node.Scalar(var value, var _, var _)
                        && !value.isEmpty()
                ? Optional.of(value)
                : Optional.empty();
    }

    private static List<Named> both(List<Named> one, List<Named> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }
}
