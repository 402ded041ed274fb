package liftwright.rig.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.WrittenQuantity;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/** Finds for every part of a rig the section of its file that says where it is. */
public final class PlacesInFile {

    private static final String EXCEPT = "except";
    private static final String AT = "at";
    private static final String SHIFT = "shift";
    private static final String LIKE = "like";

    private final Declaration declaration;
    private final WrittenQuantity nothing;
    private final List<Carried> carried;
    private final List<Mount> mounts;

    public PlacesInFile(Rig rig) {
        this.declaration = rig.declaration();
        this.nothing = LengthUnit.nothing(declaration);
        this.carried = Carried.of(rig);
        this.mounts = rig.mounts();
    }

    /** All that has a place on a mount. */
    public List<Carried> carried() {
        return carried;
    }

    /** The parts made from the same entry of the file that are no mirror images of it. */
    public List<Carried> membersOf(Carried part) {
        return carried.stream()
                .filter(
                        other ->
                                other.kind() == part.kind()
                                        && other.declaredAt().equals(part.declaredAt())
                                        && !isMirrored(other))
                .toList();
    }

    /** Whether the file makes the part as the mirror image of another. */
    public boolean isMirrored(Carried part) {
        return !text(part.declaredAt().child("id")).equals(Optional.of(part.group()));
    }

    /** The mirror image that the file makes of a part, or that it is of. */
    public Optional<Carried> declaredTwin(Carried part) {
        return carried.stream()
                .filter(
                        other ->
                                other.kind() == part.kind()
                                        && other.declaredAt().equals(part.declaredAt())
                                        && !other.id().equals(part.id())
                                        && other.number().equals(part.number())
                                        && isMirrored(other) != isMirrored(part))
                .findFirst();
    }

    /** Whether one part of a group may have a place of its own. */
    public static boolean mayDiffer(Carried part) {
        return switch (part.kind()) {
            case FAN, PACK -> true;
            case OTHER_PART -> false;
        };
    }

    /**
     * What to change to move a part that is no mirror image.
     *
     * @param whole whether its group shall move as a whole
     */
    public SaidPlace of(Carried part, boolean whole) {
        boolean alone = membersOf(part).size() < 2;
        PlaceText own = exception(part);
        if (!whole && own.stands()) {
            return SaidPlace.of(own, SaidPlace.How.EXCEPTION);
        }
        if (!whole && !alone) {
            return exceptionOf(part);
        }
        return group(part, whole, alone ? SaidPlace.How.OWN : SaidPlace.How.GROUP);
    }

    /** The exception of one part of a group or its twin, whether it stands or not. */
    public SaidPlace exceptionOf(Carried part) {
        PlaceText own = exception(part);
        return own.stands()
                ? SaidPlace.of(own, SaidPlace.How.EXCEPTION)
                : new SaidPlace(own, part.at(), List.of(), List.of(), SaidPlace.How.NEW_EXCEPTION);
    }

    private PlaceText exception(Carried part) {
        return section(
                part.declaredAt().child(EXCEPT).child(part.id().text()).child(AT), part.mount());
    }

    private SaidPlace group(Carried part, boolean whole, SaidPlace.How how) {
        var along = new ArrayList<PlaceText>();
        var mirrored = new ArrayList<PlaceText>();
        if (whole && mayDiffer(part)) {
            for (Carried member : membersOf(part)) {
                add(exception(member), along);
                declaredTwin(member).ifPresent(twin -> add(exception(twin), mirrored));
            }
        }
        RigPath entry = part.declaredAt();
        return switch (part.kind()) {
            case PACK, OTHER_PART ->
                    said(section(entry.child(AT), part.mount()), along, mirrored, how);
            case FAN -> fans(entry, part.mount(), along, mirrored, how);
        };
    }

    private SaidPlace fans(
            RigPath entry,
            Mount mount,
            List<PlaceText> along,
            List<PlaceText> mirrored,
            SaidPlace.How how) {
        PlaceText shift = section(entry.child(SHIFT), mount);
        PlaceText at = section(entry.child(AT), mount);
        PlaceText from = section(entry.child("from"), mount);
        PlaceText to = section(entry.child("to"), mount);
        if (shift.stands()) {
            return said(shift, along, mirrored, how);
        }
        if (at.stands()) {
            return said(at, along, mirrored, how);
        }
        if (from.stands() && to.stands()) {
            along.add(to);
            return said(from, along, mirrored, how);
        }
        if (declaration.at(entry.child(LIKE)).isPresent()) {
            return new SaidPlace(shift, inherited(entry, mount), along, mirrored, how);
        }
        return said(at, along, mirrored, how);
    }

    /** The shift that a group takes from the nearest one it is like that has any. */
    private Vec3 inherited(RigPath entry, Mount mount) {
        Optional<String> model = text(entry.child(LIKE));
        while (model.isPresent()) {
            RigPath above = RigPath.of("fans", model.get());
            PlaceText shift = section(above.child(SHIFT), mount);
            if (shift.stands()) {
                return shift.middle();
            }
            model = text(above.child(LIKE));
        }
        return Vec3.ZERO;
    }

    private static void add(PlaceText text, List<PlaceText> to) {
        if (text.stands()) {
            to.add(text);
        }
    }

    private static SaidPlace said(
            PlaceText text, List<PlaceText> along, List<PlaceText> mirrored, SaidPlace.How how) {
        return new SaidPlace(text, text.middle(), along, mirrored, how);
    }

    /** What to change to move a mount that is no mirror image, but for its share along a limb. */
    public PlaceText of(Mount mount) {
        return new PlaceText(
                declaration,
                RigPath.of("mounts", mount.name(), AT),
                Carriage.of(mount.on()),
                nothing);
    }

    /** The mount that the file makes {@code mount} the mirror image of; itself where it is none. */
    public Mount original(Mount mount) {
        if (declaration.at(RigPath.of("mounts", mount.name())).isPresent()) {
            return mount;
        }
        return mounts.stream()
                .filter(m -> twinName(m).equals(Optional.of(mount.name())))
                .findFirst()
                .orElse(mount);
    }

    /** The mirror image that the file makes of a mount, or that it is of. */
    public Optional<Mount> declaredTwin(Mount mount) {
        Mount original = original(mount);
        if (!original.name().equals(mount.name())) {
            return Optional.of(original);
        }
        return twinName(mount)
                .flatMap(name -> mounts.stream().filter(m -> m.name().equals(name)).findFirst());
    }

    private Optional<String> twinName(Mount mount) {
        return text(RigPath.of("mounts", mount.name(), "twin"));
    }

    /** The text that stands at a path; empty for anything else. */
    public Optional<String> text(RigPath path) {
        return declaration.at(path).orElse(null) instanceof Tree.Text(var text)
                ? Optional.of(text)
                : Optional.empty();
    }

    private PlaceText section(RigPath path, Mount mount) {
        return new PlaceText(declaration, path, Carriage.on(mount), nothing);
    }
}
