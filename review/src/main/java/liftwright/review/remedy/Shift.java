package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** One mount, group of packs or part moved along one axis, in steps of 5 mm up to 300 mm. */
public final class Shift {

    private static final double STEP_M = 0.005;
    private static final int MOST = 60;

    /** A word of a direction, and the word against it. */
    private record Way(String towards, String against) {}

    private static final List<Way> WAYS =
            List.of(
                    new Way("forward", "back"),
                    new Way("back", "forward"),
                    new Way("right", "left"),
                    new Way("left", "right"));

    private Shift() {}

    /** Every such move that the declaration leaves open. */
    public static List<Candidate> of(Rig rig) {
        Map<RigPath, String> movable = new LinkedHashMap<>();
        for (Mount mount : rig.mounts()) {
            movable.put(RigPath.of("mounts", mount.name()), "the mount " + mount.name());
        }
        for (Pack pack : rig.packs()) {
            movable.putIfAbsent(pack.declaredAt(), "packs of " + group(pack));
        }
        for (OtherPart part : rig.otherParts()) {
            movable.putIfAbsent(part.declaredAt(), part.id().text());
        }
        List<Candidate> candidates = new ArrayList<>();
        movable.forEach(
                (path, what) -> {
                    RigPath at = path.child("at");
                    if (rig.declaration().at(at).isPresent()) {
                        for (Way way : WAYS) {
                            shift(rig, at, what, way).ifPresent(candidates::add);
                        }
                    }
                });
        return candidates;
    }

    private static String group(Pack pack) {
        String id = pack.id().text();
        int dot = id.lastIndexOf('.');
        return dot < 0 ? id : id.substring(0, dot);
    }

    /** Empty where the place is written as a range, or as outboard. */
    private static Optional<Candidate> shift(Rig rig, RigPath at, String what, Way way) {
        for (String word : List.of("outboard", "inboard", "along")) {
            if (rig.declaration().at(at.child(word)).isPresent()
                    && !way.towards.equals("forward")
                    && !way.towards.equals("back")) {
                return Optional.empty();
            }
        }
        RigPath same = at.child(way.towards);
        RigPath other = at.child(way.against);
        boolean againstStands = rig.declaration().at(other).isPresent();
        RigPath written = againstStands ? other : same;
        Optional<Quantity> now = declared(rig, written);
        if (now.isEmpty()) {
            return Optional.empty();
        }
        double sign = againstStands ? -1 : 1;
        return Optional.of(
                new Candidate(
                        MOST,
                        steps ->
                                Sentence.words("move " + what + " ")
                                        .then(Measure.SMALL_LENGTH, steps * STEP_M)
                                        .then(" " + words(way.towards)),
                        Sentence.start().then(Measure.SMALL_LENGTH, STEP_M),
                        steps ->
                                List.of(
                                        new Change.Set(
                                                written,
                                                text(
                                                        rig,
                                                        written,
                                                        now.get(),
                                                        now.get().si() + sign * steps * STEP_M)))));
    }

    private static String words(String towards) {
        return switch (towards) {
            case "right", "left" -> "to the " + towards;
            default -> towards;
        };
    }

    private static String text(Rig rig, RigPath at, Quantity now, double si) {
        return rig.declaration().at(at).isPresent()
                ? Written.like(rig, at, now, Written.decimal(si))
                : String.format(Locale.ROOT, "%.0f mm", 1000 * si);
    }

    /** Nought where nothing stands; empty where what stands is no single length. */
    private static Optional<Quantity> declared(Rig rig, RigPath at) {
        Optional<Tree> tree = rig.declaration().at(at);
        if (tree.isEmpty()) {
            return Optional.of(Quantity.exact(0, Dimensions.LENGTH));
        }
        return switch (tree.get()) {
            case Tree.Text(var text) ->
                    switch (QuantityParser.parse(text, Dimensions.LENGTH)) {
                        case Reading.Parsed<Quantity>(var quantity) -> Optional.of(quantity);
                        case Reading.Refused<Quantity> _ -> Optional.empty();
                    };
            case Tree.Entries _, Tree.Items _ -> Optional.empty();
        };
    }
}
