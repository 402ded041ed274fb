package liftwright.rig.place;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.Vec3;

/**
 * Where the file says the place of a part, and what moves when it says another.
 *
 * @param text the section that is changed
 * @param from the place that it says or, where it does not stand yet, that it will say before the
 *     part is moved, m
 * @param along other sections that are moved by the same
 * @param mirrored sections of twins that are moved by the same in the mirror
 * @param how what the change is to the builder
 */
public record SaidPlace(
        PlaceText text, Vec3 from, List<PlaceText> along, List<PlaceText> mirrored, How how) {

    /** What a change of the section is to the builder. */
    public enum How {
        /** The part alone: its own place. */
        OWN,
        /** One of a group gets an exception. */
        NEW_EXCEPTION,
        /** One of a group has an exception, which changes. */
        EXCEPTION,
        /** The group as a whole. */
        GROUP
    }

    public SaidPlace {
        along = List.copyOf(along);
        mirrored = List.copyOf(mirrored);
    }

    static SaidPlace of(PlaceText text, How how) {
        return new SaidPlace(text, text.middle(), List.of(), List.of(), how);
    }

    /** The changes after which it says {@code place}, m. */
    public List<Change> to(Vec3 place) {
        Vec3 by = place.minus(from);
        var changes = new ArrayList<>(text.to(place));
        along.forEach(other -> changes.addAll(other.to(other.middle().plus(by))));
        mirrored.forEach(other -> changes.addAll(other.to(other.middle().plus(by.mirrored()))));
        return changes;
    }
}
