package liftwright.rig.place;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Mount;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * Whatever has a place on a mount.
 *
 * @param id lasting name
 * @param kind what it is
 * @param what names its like: two parts of the same kind and the same of this may be twins
 * @param declaredAt the entry of the file that it comes from
 * @param mount what carries it
 * @param at place in the mount's axes, m
 */
public record Carried(PartId id, Kind kind, String what, RigPath declaredAt, Mount mount, Vec3 at) {

    public enum Kind {
        FAN,
        PACK,
        OTHER_PART
    }

    /** All of a rig: fans, packs, other parts, in the order of the rig. */
    public static List<Carried> of(Rig rig) {
        var all = new ArrayList<Carried>();
        rig.fans()
                .forEach(
                        f ->
                                all.add(
                                        new Carried(
                                                f.id(),
                                                Kind.FAN,
                                                f.type().name(),
                                                f.declaredAt(),
                                                f.mount(),
                                                f.at())));
        rig.packs()
                .forEach(
                        p ->
                                all.add(
                                        new Carried(
                                                p.id(),
                                                Kind.PACK,
                                                p.cell().name()
                                                        + ' '
                                                        + p.series()
                                                        + ' '
                                                        + p.parallel(),
                                                p.declaredAt(),
                                                p.mount(),
                                                p.at())));
        rig.otherParts()
                .forEach(
                        o ->
                                all.add(
                                        new Carried(
                                                o.id(),
                                                Kind.OTHER_PART,
                                                Double.toString(o.mass().si()),
                                                o.declaredAt(),
                                                o.mount(),
                                                o.at())));
        return List.copyOf(all);
    }

    /** The part before the dot of a numbered part; the whole id of another. */
    public String group() {
        return switch (kind) {
            case FAN, PACK -> id.text().substring(0, id.text().lastIndexOf('.'));
            case OTHER_PART -> id.text();
        };
    }

    /** What follows the group's name: {@code .3}, or nothing. */
    public String number() {
        return id.text().substring(group().length());
    }
}
