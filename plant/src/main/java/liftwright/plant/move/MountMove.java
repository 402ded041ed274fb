package liftwright.plant.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.WrittenQuantity;
import liftwright.rig.Change;
import liftwright.rig.Mount;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.place.Carried;
import liftwright.rig.place.PlaceText;

/** Moves a mount with all that it carries: on the trunk, the frame or along its limb. */
final class MountMove {

    /** A share of a limb is written to this, 1. */
    private static final double SHARE_FINE = 1e-3;

    private static final double SHARE_COARSE = 1e-2;

    private final Steps steps;
    private final Mount mount;
    private final Wish wish;

    MountMove(Steps steps, Mount mount, Wish wish) {
        this.steps = steps;
        this.mount = mount;
        this.wish = wish;
    }

    void make() throws StaysException {
        Standing before = steps.now();
        Mount original = before.file().original(mount);
        boolean flip = !original.name().equals(mount.name());
        Vec3 now = before.frames().onCarrier(original);
        Vec3 own = before.frames().carrier(mount.on()).own(wish.to());
        Vec3 wanted = flip ? own.mirrored() : own;
        PlaceText text = before.file().of(original);
        Rounds rounds =
                new Rounds(wish.snap() ? Rounds.Grain.SNAP : Rounds.Grain.FREE, Snap.none());
        Vec3 place = rounds.place(now, wanted, now.minus(text.middle()), text);
        var changes = new ArrayList<Change>();
        Optional<Double> share = share(before, original, text, wanted, now);
        if (share.isPresent()) {
            place = new Vec3(place.x(), place.y(), now.z());
        }
        if (!place.equals(now)) {
            changes.addAll(text.to(text.middle().plus(place.minus(now))));
        }
        share.ifPresent(s -> changes.addAll(along(before, text.section().child("along"), s)));
        steps.make(changes);
        allWentAlong(before);
    }

    private static List<Change> along(Standing before, RigPath at, double share) {
        String written = before.file().text(at).orElse("0 %");
        String said =
                WrittenQuantity.read(written, Dimension.NONE)
                        .orElseThrow(() -> new IllegalStateException("no share: " + written))
                        .with(share, SHARE_FINE);
        return said.equals(written) ? List.of() : List.of(new Change.Set(at, said));
    }

    /**
     * The share of the limb at which it comes to stand, where it moves along one and keeps to it;
     * what goes past its ends is said in lengths.
     */
    private Optional<Double> share(
            Standing before, Mount original, PlaceText text, Vec3 wanted, Vec3 now) {
        double length = before.frames().lengthM(original.on());
        if (length <= 0 || Math.abs(wanted.z() - now.z()) < SHARE_FINE * length / 2) {
            return Optional.empty();
        }
        double step = wish.snap() ? SHARE_COARSE : SHARE_FINE;
        double share = Math.rint((wanted.z() - text.middle().z()) / length / step) * step;
        return share >= 0 && share <= 1 ? Optional.of(share) : Optional.empty();
    }

    /** Beyond the middle plane “outboard” means the other side, for what is on the mount too. */
    private void allWentAlong(Standing before) throws StaysException {
        List<Carried> after = steps.now().file().carried();
        for (Carried part : before.file().carried()) {
            boolean kept =
                    after.stream()
                            .filter(a -> a.id().equals(part.id()))
                            .anyMatch(a -> a.at().minus(part.at()).length() < 1e-9);
            if (!kept) {
                throw new StaysException(
                        "There “outboard” means the other side, and “"
                                + part.id().text()
                                + "” would not go along: say “left” or “right” for it first.");
            }
        }
    }
}
