package liftwright.plant.move;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.file.RigReading;
import liftwright.rig.place.Carried;

/**
 * Turns places on the drawn rig into changes of its file. The drawn rig is the one at lift-off at
 * the declared values, without twist; a part stays on its mount, and a part that is strapped to a
 * limb moves in the limb's axes. Whatever is found is made in memory and read again, so that the
 * place and the list of what moves are those of the changed file.
 */
public final class Mover {

    /** Further from where it was sent a part is not where the file should say, m. */
    private static final double MISSED_M = 1e-4;

    private final Standing standing;

    private Mover(Standing standing) {
        this.standing = standing;
    }

    /** For a file; empty where it declares no rig. */
    public static Optional<Mover> of(RigReading reading) {
        Optional<Rig> rig = reading.rig();
        return rig.map(r -> new Mover(new Standing(reading, r)));
    }

    /** Why a part or mount cannot be moved at all; empty where it can. */
    public Optional<String> whyNot(String id) {
        return standing.carried(id).isPresent() || standing.mount(id).isPresent()
                ? Optional.empty()
                : Optional.of("There is no part and no mount “" + id + "”.");
    }

    /** The part or mount on the other side that goes along where twins do; a mount by its name. */
    public Optional<String> twin(String id) {
        Optional<Carried> part = standing.carried(id);
        if (part.isPresent()) {
            return standing.file()
                    .declaredTwin(part.get())
                    .or(() -> standing.counterpart(part.get()))
                    .map(c -> c.id().text());
        }
        return standing.mount(id).flatMap(standing.file()::declaredTwin).map(Mount::name);
    }

    /** Where the middle of a part or the origin of a mount is on the drawn rig, m. */
    public Optional<Vec3> place(String id) {
        return standing.carried(id)
                .map(standing::place)
                .or(() -> standing.mount(id).map(m -> standing.frames().mount(m).origin()));
    }

    /** The changes that put a part where it is wished. */
    public Outcome move(Wish wish) {
        Optional<Carried> part = standing.carried(wish.part());
        Optional<Mount> mount = standing.mount(wish.part());
        try {
            if (part.isPresent()) {
                return move(part.get(), wish);
            }
            return mount.isPresent()
                    ? move(mount.get(), wish)
                    : new Outcome.Stays(whyNot(wish.part()).orElseThrow());
        } catch (StaysException stays) {
            return new Outcome.Stays(String.valueOf(stays.getMessage()));
        }
    }

    private Outcome move(Carried part, Wish wish) throws StaysException {
        String id = part.id().text();
        Steps steps = new Steps(standing);
        var move = new PartMove(steps, id, wish);
        move.make();
        Carried moved = steps.now().carried(id).orElseThrow();
        Vec3 place = steps.now().place(moved);
        if (steps.done().isEmpty()) {
            return new Outcome.Moved(List.of(), place, "It is there already.", List.of());
        }
        missed(place, wish);
        Optional<String> counterpart = counterpart(part, steps, wish, place);
        List<String> parts = standing.movedIn(steps.now());
        String sentence =
                Telling.of(part, move, counterpart, parts)
                        + Telling.turned(standing.turnedIn(steps.now()));
        return new Outcome.Moved(steps.done(), place, sentence, parts);
    }

    /** Takes along what stands on the other side as its mirror image by itself. */
    private Optional<String> counterpart(Carried part, Steps steps, Wish wish, Vec3 place)
            throws StaysException {
        if (!wish.twin() || standing.file().declaredTwin(part).isPresent()) {
            return Optional.empty();
        }
        Optional<String> other =
                standing.counterpart(part)
                        .map(c -> c.id().text())
                        .filter(id -> !standing.movedIn(steps.now()).contains(id));
        if (other.isPresent()) {
            var along =
                    new Wish(
                            other.get(),
                            place.mirrored(),
                            /* snap= */ false,
                            /* twin= */ false,
                            /* whole= */ false);
            new PartMove(steps, other.get(), along).exactly().make();
        }
        return other;
    }

    /** Says so where the words of the file do not lead where they should. */
    private static void missed(Vec3 place, Wish wish) throws StaysException {
        double reachM = wish.snap() ? 2 * Snap.REACH_M : 2e-3;
        if (place.minus(wish.to()).length() > reachM + MISSED_M) {
            throw new StaysException(
                    "The words that stand in the file for its place do not lead there: change them"
                            + " by hand.");
        }
    }

    private Outcome move(Mount mount, Wish wish) throws StaysException {
        Steps steps = new Steps(standing);
        new MountMove(steps, mount, wish).make();
        Vec3 place =
                steps.now()
                        .mount("mounts/" + mount.name())
                        .map(m -> steps.now().frames().mount(m).origin())
                        .orElseThrow();
        if (steps.done().isEmpty()) {
            return new Outcome.Moved(List.of(), place, "It is there already.", List.of());
        }
        missed(place, wish);
        List<String> parts = standing.movedIn(steps.now());
        return new Outcome.Moved(
                steps.done(),
                place,
                Telling.of(mount, standing.file().declaredTwin(mount))
                        + Telling.turned(standing.turnedIn(steps.now())),
                parts);
    }
}
