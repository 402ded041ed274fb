package liftwright.plant.move;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.body.Axes;
import liftwright.plant.body.Frames;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.file.RigReading;
import liftwright.rig.place.Carried;
import liftwright.rig.place.PlacesInFile;

/** A file that declares a rig, and where all of its parts stand. */
final class Standing {

    /** Parts this near to each other's mirror place are twins, m. */
    private static final double TWIN_M = 2e-3;

    /** What moves by less than the rounding of a written place stays, m. */
    private static final double STAYS_M = 3e-5;

    private static final String MOUNTS = "mounts/";

    private final RigReading reading;
    private final Rig rig;
    private final Frames frames;
    private final PlacesInFile file;

    Standing(RigReading reading, Rig rig) {
        this.reading = reading;
        this.rig = rig;
        this.frames = Frames.of(rig);
        this.file = new PlacesInFile(rig);
    }

    RigReading reading() {
        return reading;
    }

    Frames frames() {
        return frames;
    }

    PlacesInFile file() {
        return file;
    }

    Optional<Carried> carried(String id) {
        return file.carried().stream().filter(c -> c.id().text().equals(id)).findFirst();
    }

    Optional<Mount> mount(String id) {
        String name = id.startsWith(MOUNTS) ? id.substring(MOUNTS.length()) : id;
        return rig.mounts().stream().filter(m -> m.name().equals(name)).findFirst();
    }

    Axes axes(Carried part) {
        return frames.mount(part.mount());
    }

    /** Place of a part in rig axes, m. */
    Vec3 place(Carried part) {
        return axes(part).place(part.at());
    }

    /**
     * The part that stands where the mirror image of {@code part} would, where the file does not
     * make it: of the same kind, and alike.
     */
    Optional<Carried> counterpart(Carried part) {
        Vec3 mirrored = place(part).mirrored();
        if (Math.abs(mirrored.y()) < TWIN_M) {
            return Optional.empty();
        }
        return file.carried().stream()
                .filter(c -> c.kind() == part.kind() && c.what().equals(part.what()))
                .filter(c -> place(c).minus(mirrored).length() < TWIN_M)
                .findFirst();
    }

    /** Ids of the parts and mounts that stand elsewhere in {@code after}. */
    List<String> movedIn(Standing after) {
        Map<String, Vec3> before = places();
        var moved = new ArrayList<String>();
        after.places()
                .forEach(
                        (id, place) -> {
                            Vec3 was = before.get(id);
                            if (was == null || was.minus(place).length() > STAYS_M) {
                                moved.add(id);
                            }
                        });
        return moved;
    }

    /**
     * Ids of the fans whose jet goes another way in {@code after}: beyond the middle plane
     * “outboard” means the other side.
     */
    List<String> turnedIn(Standing after) {
        Map<String, List<Vec3>> before = jets();
        var turned = new ArrayList<String>();
        after.jets()
                .forEach(
                        (id, jet) -> {
                            if (!jet.equals(before.get(id))) {
                                turned.add(id);
                            }
                        });
        return turned;
    }

    private Map<String, List<Vec3>> jets() {
        var jets = new LinkedHashMap<String, List<Vec3>>();
        for (Fan fan : rig.fans()) {
            var ways = new ArrayList<>(List.of(fan.blows()));
            fan.leans().forEach(lean -> ways.add(lean.towards()));
            fan.seat().forEach(lean -> ways.add(lean.towards()));
            jets.put(fan.id().text(), ways);
        }
        return jets;
    }

    private Map<String, Vec3> places() {
        var places = new LinkedHashMap<String, Vec3>();
        file.carried().forEach(c -> places.put(c.id().text(), place(c)));
        rig.mounts().forEach(m -> places.put(MOUNTS + m.name(), frames.mount(m).origin()));
        return places;
    }
}
