package liftwright.rig.place;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Dimensions;
import liftwright.quantity.WrittenQuantity;
import liftwright.rig.Change;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * A section that says a place ({@code at}, {@code from}, {@code to}, {@code shift}), whether it
 * stands in the file or not yet. A change keeps the words, units, ends and tolerances that stand
 * there; a word that is missing is chosen so that its value is positive.
 */
public final class PlaceText {

    /** Numbers are written to the first decimal at or below this, m. */
    public static final double FINEST_M = 1.3e-5;

    /** What is nearer than this is the same place, m. */
    private static final double SAME_M = 1e-9;

    private record Word(Way way, WrittenQuantity written) {}

    private final Declaration declaration;
    private final RigPath section;
    private final Carriage carriage;
    private final WrittenQuantity nothing;
    private final Map<Way.Axis, Word> words = new EnumMap<>(Way.Axis.class);

    /**
     * @param section where it stands or would stand
     * @param nothing a length of nothing in the unit for words that are not there yet
     */
    PlaceText(
            Declaration declaration, RigPath section, Carriage carriage, WrittenQuantity nothing) {
        this.declaration = declaration;
        this.section = section;
        this.carriage = carriage;
        this.nothing = nothing;
        for (Way way : Way.values()) {
            if (way.isUsable(carriage)
                    && declaration.at(section.child(way.key())).orElse(null)
                            instanceof Tree.Text(var text)) {
                WrittenQuantity.read(text, Dimensions.LENGTH)
                        .ifPresent(written -> words.put(way.axis(), new Word(way, written)));
            }
        }
    }

    /** Where it stands or would stand. */
    public RigPath section() {
        return section;
    }

    /** Whether it stands in the file. */
    public boolean stands() {
        return declaration.at(section).isPresent();
    }

    /** The place that it says, m: the middle where it has two ends, 0 where nothing is said. */
    public Vec3 middle() {
        return new Vec3(middle(Way.Axis.X), middle(Way.Axis.Y), middle(Way.Axis.Z));
    }

    private double middle(Way.Axis axis) {
        Word word = words.get(axis);
        if (word == null) {
            return 0;
        }
        var range = word.written().range();
        return word.way().sign(carriage) * (range.from().si() + range.to().si()) / 2;
    }

    /**
     * The steps in which its numbers are round: 1, 2, 2.5 or 5 times a power of ten of the unit
     * they are in, along the three axes, m.
     *
     * @param mostM no step is longer
     */
    public Vec3 steps(double mostM) {
        return new Vec3(step(Way.Axis.X, mostM), step(Way.Axis.Y, mostM), step(Way.Axis.Z, mostM));
    }

    private double step(Way.Axis axis, double mostM) {
        Word word = words.get(axis);
        double unitM = (word == null ? nothing : word.written()).unitSi();
        double power = Math.pow(10, Math.floor(Math.log10(mostM / unitM)));
        double best = power;
        for (double step : new double[] {2, 2.5, 5}) {
            if (step * power * unitM <= mostM * (1 + 1e-12)) {
                best = step * power;
            }
        }
        return best * unitM;
    }

    /** The changes after which it says {@code place}, m; its ends move by the same. */
    public List<Change> to(Vec3 place) {
        Vec3 by = place.minus(middle());
        if (!stands()) {
            return List.of(create(by));
        }
        var changes = new ArrayList<Change>();
        for (Way.Axis axis : Way.Axis.values()) {
            double far = axis.of(by);
            if (Math.abs(far) < SAME_M) {
                continue;
            }
            Word word = words.get(axis);
            if (word == null) {
                Way way = way(axis, far);
                changes.add(new Change.Set(section.child(way.key()), length(far)));
            } else {
                double along = word.way().sign(carriage) * far;
                String text = word.written().moved(along, FINEST_M);
                if (!text.equals(word.written().text())) {
                    changes.add(new Change.Set(section.child(word.way().key()), text));
                }
            }
        }
        return changes;
    }

    /** Writes a section that is not there, with those above it that are not there either. */
    private Change create(Vec3 place) {
        var parts = new ArrayList<String>();
        for (Way.Axis axis : Way.Axis.values()) {
            double far = axis.of(place);
            if (Math.abs(far) >= FINEST_M / 2) {
                parts.add(way(axis, far).key() + ": " + length(far));
            }
        }
        if (parts.isEmpty()) {
            parts.add(Way.UP.key() + ": " + length(0));
        }
        String value = "{" + String.join(", ", parts) + "}";
        List<String> path = section.segments();
        int depth = path.size() - 1;
        while (declaration.at(new RigPath(path.subList(0, depth))).isEmpty()) {
            value = "{" + path.get(depth) + ": " + value + "}";
            depth--;
        }
        return new Change.Add(new RigPath(path.subList(0, depth)), path.get(depth), value);
    }

    private String length(double along) {
        return nothing.with(Math.abs(along), FINEST_M);
    }

    private Way way(Way.Axis axis, double far) {
        return switch (axis) {
            case X -> far >= 0 ? Way.FORWARD : Way.BACK;
            case Y -> sideways(far);
            case Z -> far < 0 ? Way.UP : carriage.alongIsLength() ? Way.ALONG : Way.DOWN;
        };
    }

    private Way sideways(double far) {
        if (carriage.onLimb()) {
            return far * carriage.outboard() >= 0 ? Way.OUTBOARD : Way.INBOARD;
        }
        return far >= 0 ? Way.RIGHT : Way.LEFT;
    }
}
