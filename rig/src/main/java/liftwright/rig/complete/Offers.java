package liftwright.rig.complete;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import liftwright.rig.complete.Completion.Option;
import liftwright.rig.shape.Shape;
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
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.NoiseDensity;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Sensed;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** What the table of keys and the file itself offer for one place. */
final class Offers {

    private final Marked marked;
    private final Slot slot;
    private final Names names;
    private Optional<Key<?>> lastKey = Optional.empty();

    Offers(Marked marked, Slot slot) {
        this.marked = marked;
        this.slot = slot;
        this.names = new Names(marked.root());
    }

    List<Option> all() {
        List<Kind<?>> kinds = alternatives(Shape.root());
        for (var key : marked.keys()) {
            var next = new ArrayList<Kind<?>>();
            for (var kind : kinds) {
                step(kind, key).ifPresent(inner -> next.addAll(alternatives(inner)));
            }
            kinds = next;
        }
        return kinds.stream()
                .flatMap(marked.asKey() ? this::keysOf : this::valuesOf)
                .distinct()
                .toList();
    }

    /** A single text in one way, or a map or list in another: both may be meant. */
    private static List<Kind<?>> alternatives(Kind<?> kind) {
        if (kind instanceof Either<?, ?> either) {
            return Stream.concat(
                            alternatives(either.one()).stream(),
                            alternatives(either.other()).stream())
                    .toList();
        }
        return List.of(kind);
    }

    private Optional<Kind<?>> step(Kind<?> kind, Optional<String> key) {
        if (key.isEmpty()) {
            lastKey = Optional.empty();
            return kind instanceof ListOf<?> list ? Optional.of(list.item()) : Optional.empty();
        }
        if (kind instanceof MapOf<?> map) {
            lastKey = Optional.empty();
            return Optional.of(map.value());
        }
        if (kind instanceof Section section && section.byName().containsKey(key.get())) {
            Key<?> row = section.byName().get(key.get());
            lastKey = Optional.ofNullable(row);
            return lastKey.map(Key::kind);
        }
        return Optional.empty();
    }

    private Stream<Option> keysOf(Kind<?> kind) {
        if (kind instanceof Section section) {
            var there = new HashSet<>(marked.siblings());
            return section.keys().stream()
                    .filter(key -> !there.contains(key.name()))
                    .filter(key -> !isRuledOut(key, section, there))
                    .sorted(Comparator.comparing(key -> !(key.need() instanceof Need.Required)))
                    .map(key -> keyOption(key.name(), detail(key)));
        }
        if (kind instanceof MapOf<?> map && map.names() == MapOf.Names.OF_PARTS) {
            var there = new HashSet<>(marked.siblings());
            return names.ofPartsAt(marked).stream()
                    .filter(name -> !there.contains(name.text()))
                    .map(name -> keyOption(name.text(), name.what()));
        }
        return Stream.empty();
    }

    /** One of which there may be only one stands there already. */
    private static boolean isRuledOut(Key<?> key, Section section, Set<String> there) {
        return section.rules().stream()
                .anyMatch(
                        rule ->
                                rule instanceof Rule.AtMostOne(var keys)
                                        && keys.contains(key)
                                        && keys.stream().anyMatch(k -> there.contains(k.name())));
    }

    private Option keyOption(String name, String detail) {
        return new Option(name, lead() + name + (slot.named() ? "" : ": "), detail);
    }

    private Option valueOption(String value, String detail) {
        return new Option(value, lead() + value, detail);
    }

    private String lead() {
        return slot.glued() ? " " : "";
    }

    private static String detail(Key<?> key) {
        String without =
                switch (key.need()) {
                    case Need.Required _ -> "Required.";
                    case Need.Open(var means) -> "Without it: " + means + ".";
                    case Need.Default(var text, var origin) ->
                            "Without it: " + text + " (" + origin + ").";
                    case Need.Computed(var how) -> "Without it: " + how + ".";
                };
        return key.meaning()
                + " Expected: "
                + key.kind().expectation()
                + ". "
                + without
                + (key.isUsed() ? "" : " No question reads it yet.");
    }

    private Stream<Option> valuesOf(Kind<?> kind) {
        Stream<Option> own =
                switch (kind) {
                    case Word<?> word ->
                            word.words().keySet().stream().map(w -> valueOption(w, meaning()));
                    case YesNo _ -> Stream.of("yes", "no").map(w -> valueOption(w, meaning()));
                    case Reference(var to) ->
                            names.of(to).stream().map(n -> valueOption(n.text(), n.what()));
                    case Amount _,
                            AmountRange _,
                            FilePath _,
                            Gauge _,
                            Ident _,
                            ListOf<?> _,
                            MapOf<?> _,
                            NoiseDensity _,
                            Section _,
                            Sensed _,
                            Text _,
                            Whole _ ->
                            Stream.empty();
                    case Either<?, ?> _ -> Stream.empty(); // taken apart before
                };
        return Stream.concat(own, examples(kind));
    }

    private String meaning() {
        return lastKey.map(Key::meaning).orElse("");
    }

    /** What stands in without a value, and a value as the reference page shows it. */
    private Stream<Option> examples(Kind<?> kind) {
        if (lastKey.isEmpty() || isNamed(kind)) {
            return Stream.empty();
        }
        Key<?> key = lastKey.get();
        Stream<Option> standsIn =
                key.need() instanceof Need.Default(var text, var origin)
                        ? Stream.of(valueOption(text, "Stands in without it: " + origin + "."))
                        : Stream.empty();
        return Stream.concat(
                standsIn, Stream.of(valueOption(key.example(), "An example. " + detail(key))));
    }

    /** Names are the builder's: examples of them would only mislead. */
    private static boolean isNamed(Kind<?> kind) {
        return kind instanceof Ident
                || kind instanceof Reference
                || kind instanceof Word<?>
                || kind instanceof YesNo;
    }
}
