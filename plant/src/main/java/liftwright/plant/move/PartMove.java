package liftwright.plant.move;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Change;
import liftwright.rig.Vec3;
import liftwright.rig.place.Carried;
import liftwright.rig.place.PlacesInFile;
import liftwright.rig.place.SaidPlace;

/** Moves a part that is carried by a mount: on it, in the axes that turn with it. */
final class PartMove {

    private final Steps steps;
    private final String id;
    private final Wish wish;
    private Rounds.Grain grain;
    private List<String> caught = List.of();
    private SaidPlace.How how = SaidPlace.How.OWN;

    PartMove(Steps steps, String id, Wish wish) {
        this.steps = steps;
        this.id = id;
        this.wish = wish;
        this.grain = wish.snap() ? Rounds.Grain.SNAP : Rounds.Grain.FREE;
    }

    /** To the very place. */
    PartMove exactly() {
        grain = Rounds.Grain.EXACT;
        return this;
    }

    /** What caught it, in words. */
    List<String> caught() {
        return caught;
    }

    /** What was changed to move it. */
    SaidPlace.How how() {
        return how;
    }

    /** Its mirror image by the file, which goes along or does not. */
    Optional<Carried> twin() {
        return steps.now().file().declaredTwin(part());
    }

    /** Whether its mirror image by the file goes along. */
    boolean together() {
        return twin().isPresent()
                && (wish.twin() || wish.whole() || !PlacesInFile.mayDiffer(part()));
    }

    private Carried part() {
        return steps.now().carried(id).orElseThrow();
    }

    void make() throws StaysException {
        pinTwin();
        Standing now = steps.now();
        Carried part = part();
        Optional<Carried> twin = together() ? twin() : Optional.empty();
        boolean mirrored = now.file().isMirrored(part);
        Carried lead = mirrored ? twin.orElse(part) : part;
        boolean flip = !lead.id().equals(part.id());
        SaidPlace said =
                mirrored && twin.isEmpty()
                        ? now.file().exceptionOf(part)
                        : now.file().of(lead, wish.whole());
        how = said.how();
        Rounds rounds = new Rounds(grain, snap(now, part, lead));
        // What the file says, and where that stands, in the axes of the part.
        Vec3 from = flip ? said.from().mirrored() : said.from();
        Vec3 stands = flip && !wish.whole() ? lead.at().mirrored() : part.at();
        Vec3 zero = stands.minus(from);
        Vec3 place = rounds.place(part.at(), now.axes(part).own(wish.to()), zero, said.text());
        caught = rounds.caught();
        if (place.equals(part.at())) {
            return;
        }
        Vec3 says = place.minus(zero);
        var changes = new ArrayList<>(said.to(flip ? says.mirrored() : says));
        if (twin.isPresent() && !wish.whole()) {
            changes.addAll(follow(now, flip ? part : twin.get(), flip ? place : place.mirrored()));
        }
        steps.make(changes);
    }

    /** A mirror image that has a place of its own is moved by hand. */
    private static List<Change> follow(Standing now, Carried image, Vec3 place) {
        if (!PlacesInFile.mayDiffer(image)) {
            return List.of();
        }
        SaidPlace own = now.file().exceptionOf(image);
        return own.how() == SaidPlace.How.EXCEPTION ? own.to(place) : List.of();
    }

    /** A mirror image that shall not go along gets its present place for its own. */
    private void pinTwin() throws StaysException {
        Optional<Carried> twin = twin();
        if (twin.isEmpty() || together() || steps.now().file().isMirrored(part())) {
            return;
        }
        SaidPlace own = steps.now().file().exceptionOf(twin.get());
        if (own.how() == SaidPlace.How.NEW_EXCEPTION) {
            steps.make(own.to(twin.get().at()));
        }
    }

    private Snap snap(Standing now, Carried part, Carried lead) {
        if (grain != Rounds.Grain.SNAP) {
            return Snap.none();
        }
        Set<String> moving = new HashSet<>();
        moving.add(part.id().text());
        if (together()) {
            twin().ifPresent(t -> moving.add(t.id().text()));
        } else if (wish.twin()) {
            now.counterpart(part).ifPresent(c -> moving.add(c.id().text()));
        }
        if (wish.whole()) {
            for (Carried member : now.file().membersOf(lead)) {
                moving.add(member.id().text());
                now.file().declaredTwin(member).ifPresent(t -> moving.add(t.id().text()));
            }
        }
        return Snap.of(now, part, moving, !together());
    }
}
