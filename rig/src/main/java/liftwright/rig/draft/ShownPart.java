package liftwright.rig.draft;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import liftwright.rig.shape.words.FanKeys;
import liftwright.rig.shape.words.RigKeys;
import liftwright.rig.text.RigText;
import liftwright.rig.text.Span;

/**
 * Something on the rig that can be shown or named.
 *
 * @param id its lasting name
 * @param kind what it is
 * @param path what declares it; several parts that one group makes share it
 * @param span of that in the text
 * @param twin the id of its mirror image
 */
public record ShownPart(String id, Kind kind, RigPath path, Span span, Optional<String> twin) {

    /** What there is on a rig. */
    public enum Kind {
        FAN,
        PACK,
        MOUNT,
        PART
    }

    /** The parts of a rig; none while its file has errors. */
    public static List<ShownPart> of(RigReading reading) {
        return reading.rig().map(rig -> new Gathering(rig, reading.text()).all()).orElse(List.of());
    }

    /** Makes the list of one rig. */
    private static final class Gathering {
        private final Rig rig;
        private final RigText text;
        private final List<ShownPart> parts = new ArrayList<>();
        private final Set<String> ids = new HashSet<>();

        Gathering(Rig rig, RigText text) {
            this.rig = rig;
            this.text = text;
        }

        List<ShownPart> all() {
            rig.fans().forEach(f -> add(f.id().text(), Kind.FAN, f.declaredAt()));
            rig.packs().forEach(p -> add(p.id().text(), Kind.PACK, p.declaredAt()));
            rig.mounts().forEach(m -> add(m.name(), Kind.MOUNT, mountPath(m.name())));
            rig.otherParts().forEach(p -> add(p.id().text(), Kind.PART, p.declaredAt()));
            return parts.stream().map(this::withoutTwinThatIsAbsent).toList();
        }

        private ShownPart withoutTwinThatIsAbsent(ShownPart part) {
            var there = part.twin().filter(twin -> ids.contains(part.kind() + "/" + twin));
            return new ShownPart(part.id(), part.kind(), part.path(), part.span(), there);
        }

        private void add(String id, Kind kind, RigPath path) {
            ids.add(kind + "/" + id);
            text.span(path)
                    .ifPresent(
                            span -> parts.add(new ShownPart(id, kind, path, span, twin(id, path))));
        }

        /** Under its own name, or under that of the mount whose twin it is. */
        private RigPath mountPath(String name) {
            var mounts = RigPath.of(RigKeys.MOUNTS.name());
            if (declaration().at(mounts).orElse(null) instanceof Tree.Entries(var byName)
                    && !byName.containsKey(name)) {
                for (var entry : byName.entrySet()) {
                    if (child(entry.getValue(), "twin").filter(name::equals).isPresent()) {
                        return mounts.child(entry.getKey());
                    }
                }
            }
            return mounts.child(name);
        }

        /** Groups make {@code left.3} and its twin {@code right.3}; single parts have no number. */
        private Optional<String> twin(String id, RigPath path) {
            String own = path.segments().getLast();
            var twin = declaration().at(path).flatMap(tree -> child(tree, FanKeys.TWIN.name()));
            if (twin.isEmpty()) {
                return Optional.empty();
            }
            String name = twin.get();
            if (id.equals(own)) {
                return Optional.of(name);
            }
            if (id.equals(name)) {
                return Optional.of(own);
            }
            int dot = id.lastIndexOf('.');
            if (dot < 0) {
                return Optional.empty();
            }
            String group = id.substring(0, dot);
            String other = (group.equals(own) ? name : own) + id.substring(dot);
            return Optional.of(other);
        }

        private Declaration declaration() {
            return rig.declaration();
        }

        private static Optional<String> child(Tree tree, String key) {
            return tree instanceof Tree.Entries(var byKey)
                            && byKey.get(key) instanceof Tree.Text(var value)
                    ? Optional.of(value)
                    : Optional.empty();
        }
    }
}
