package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.answer.Section.Elevation.Kind;
import liftwright.answer.Section.Elevation.Load;
import liftwright.answer.Section.Elevation.Shape;
import liftwright.answer.Section.Elevation.Spot2;
import liftwright.answer.Value;
import liftwright.physics.Gravity;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.FanAlone;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.Push;
import liftwright.plant.hold.TetherHold;
import liftwright.plant.hold.TetherNumbers;
import liftwright.rig.HoldingStand;
import liftwright.rig.LimitName;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import org.jspecify.annotations.Nullable;

/**
 * Stand or tether from the right side, forward to the right of the drawing, heights above the
 * ground.
 */
public final class HoldPicture {

    /** Half the width of a drawn person, m. */
    private static final double HALF_M = 0.2;

    private final Rig rig;
    private final Held held;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Load> loads = new ArrayList<>();
    private double widestM = 1;

    private HoldPicture(Rig rig, Held held) {
        this.rig = rig;
        this.held = held;
    }

    /** The drawings of what is declared: of the tether, and of the stand. */
    public static List<Section.Elevation> of(Rig rig, Held held) {
        return Stream.of(tether(rig, held), stand(rig, held)).flatMap(Optional::stream).toList();
    }

    /** The tether; empty where there is none. */
    public static Optional<Section.Elevation> tether(Rig rig, Held held) {
        return held.tether()
                .map(
                        on -> {
                            var picture = new HoldPicture(rig, held);
                            picture.tether(on);
                            picture.beam(on.line());
                            picture.mats();
                            picture.scale(HoldPicture::isUnderWearer);
                            return picture.section(
                                    "restraint-elevation",
                                    "On the tether, from its right side",
                                    HoldSpace.tether(rig, held, on));
                        });
    }

    /** The stand; empty where there is none. */
    public static Optional<Section.Elevation> stand(Rig rig, Held held) {
        return held.stand()
                .flatMap(
                        on ->
                                rig.restraint()
                                        .stand()
                                        .map(
                                                stand -> {
                                                    var picture = new HoldPicture(rig, held);
                                                    picture.stand(stand, on);
                                                    picture.scale(under -> !isUnderWearer(under));
                                                    return picture.section(
                                                            held.tether().isPresent()
                                                                    ? "stand-elevation"
                                                                    : "restraint-elevation",
                                                            "On the stand, from its right side",
                                                            HoldSpace.stand(rig, held, stand, on));
                                                }));
    }

    private static boolean isUnderWearer(Restraint.Under under) {
        return under == Restraint.Under.WEARER;
    }

    private Section.Elevation section(String id, String title, Section.Table space) {
        around();
        return new Section.Elevation(id, title, shapes, loads, List.of(space));
    }

    private void stand(HoldingStand stand, Held.OnStand on) {
        double halfM = on.floor().feet().deepM() / 2;
        widestM = Math.max(widestM, halfM);
        box(Kind.STAND, "stand", -halfM, halfM, 0, 0.08);
        line(Kind.STAND, "post", new Spot2(0, 0.08), new Spot2(0, on.heightM()));
        List<FanAlone> fans = on.held().stream().map(held.fans()::get).toList();
        Vec3 middle = Push.middle(fans);
        List<Spot2> spots = new ArrayList<>();
        for (FanAlone fan : fans) {
            Vec3 at = Push.turned(fan.at().minus(middle), stand.thrustPoints());
            spots.add(new Spot2(at.x(), on.heightM() - at.z()));
        }
        hull("fans", spots);
        for (Ask ask : held.asks()) {
            if (HoldWords.path(ask.what()).equals("restraint/stand")
                    && ask.equals(weakest("restraint/stand"))) {
                Push sum = Push.NONE;
                for (int fan : ask.fans()) {
                    sum = sum.plus(on.pushes().get(on.held().indexOf(fan)));
                }
                double size = sum.force().length();
                if (size > 0) {
                    loads.add(
                            new Load(
                                    HoldWords.name(ask) + ", worst fans",
                                    new Spot2(0, on.heightM()),
                                    sum.force().x(),
                                    sum.upN(),
                                    Value.of("hold-force", size)));
                }
            }
        }
        double weightN = on.floor().steady().force().z();
        loads.add(
                new Load(
                        "weight and clamps",
                        new Spot2(0, on.heightM() / 2),
                        0,
                        -weightN,
                        Value.of("hold-force", weightN)));
    }

    private Ask weakest(String path) {
        @Nullable Ask worst = null;
        double least = Double.POSITIVE_INFINITY;
        for (Ask ask : held.asks()) {
            if (HoldWords.path(ask.what()).equals(path)
                    && ask.margin().isPresent()
                    && (worst == null || ask.margin().getAsDouble() < least)) {
                worst = ask;
                least = ask.margin().getAsDouble();
            }
        }
        return Objects.requireNonNull(worst);
    }

    private void tether(Held.OnTether on) {
        TetherNumbers line = on.line();
        double soleM = on.ran().startM();
        double headM = soleM + held.extent().heightM();
        double reachM = TetherHold.reachM(line, on.rig());
        widestM = Math.max(widestM, reachM + held.extent().sideM());
        Spot2 anchor = new Spot2(0, line.anchorM());
        shapes.add(new Shape(Kind.ANCHOR, "anchor", List.of(anchor), false));
        line(Kind.LINE, "line", anchor, new Spot2(0, soleM + line.ringM()));
        if (rig.wearer().isPresent()) {
            box(Kind.PERSON, "wearer", -HALF_M, HALF_M, soleM, headM);
        }
        List<Spot2> spots = new ArrayList<>();
        for (FanAlone fan : held.fans()) {
            spots.add(new Spot2(fan.at().x(), soleM + held.extent().aboveSolesM(fan.at())));
        }
        hull("fans", spots);
        line.down()
                .ifPresent(
                        down -> {
                            for (int side : new int[] {-1, 1}) {
                                line(
                                        Kind.DOWN_LINE,
                                        side < 0 ? "down-lines" : "",
                                        new Spot2(side * down.spreadM(), 0),
                                        new Spot2(0, soleM + line.ringM()));
                            }
                        });
        line.gantry()
                .ifPresent(
                        gantry -> {
                            double half = gantry.feet().deepM() / 2;
                            widestM = Math.max(widestM, half);
                            shapes.add(
                                    new Shape(
                                            Kind.GANTRY,
                                            "gantry",
                                            List.of(
                                                    new Spot2(-half, 0),
                                                    anchor,
                                                    new Spot2(half, 0)),
                                            false));
                        });
        if (reachM > 0) {
            arc(line, reachM);
        }
        loads.add(
                new Load(
                        "pull of the line after a runaway",
                        new Spot2(0, soleM + line.ringM()),
                        0,
                        on.ran().linePeakN(),
                        Value.of("hold-force", on.ran().linePeakN())));
        if (on.ran().downPeakN() > 0) {
            loads.add(
                    new Load(
                            "down-lines together",
                            new Spot2(0, soleM),
                            0,
                            -on.ran().downPeakN(),
                            Value.of("hold-force", on.ran().downPeakN())));
        }
        loads.add(
                new Load(
                        "weight",
                        new Spot2(0, soleM + held.extent().heightM() / 2),
                        0,
                        -held.massKg() * Gravity.STANDARD_MPS2,
                        Value.of("hold-force", held.massKg() * Gravity.STANDARD_MPS2)));
    }

    /** Where the ring can get on a straight line, down to where the soles meet the ground. */
    private void arc(TetherNumbers line, double reachM) {
        List<Spot2> spots = new ArrayList<>();
        double from = Math.asin(Math.min(1, reachM / line.lengthM()));
        for (int k = -12; k <= 12; k++) {
            double angle = from * k / 12;
            double upM = line.anchorM() - line.lengthM() * Math.cos(angle);
            if (upM >= line.ringM()) {
                spots.add(new Spot2(line.lengthM() * Math.sin(angle), upM));
            }
        }
        if (spots.size() > 1) {
            shapes.add(new Shape(Kind.REACH, "reach of the ring", spots, false));
        }
    }

    private void around() {
        double keepOutM = rig.limits().si(LimitName.KEEP_OUT);
        double drawn = Math.min(keepOutM, 1.5 * widestM + 1);
        line(Kind.GROUND, "ground", new Spot2(-drawn, 0), new Spot2(drawn, 0));
        for (int side : new int[] {-1, 1}) {
            line(
                    Kind.KEEP_OUT,
                    side < 0
                            ? "nobody beyond"
                            : "nobody within "
                                    + Math.round(keepOutM)
                                    + " m at least (not to scale)",
                    new Spot2(side * drawn, 0),
                    new Spot2(side * drawn, 1.8));
        }
    }

    private void beam(TetherNumbers line) {
        line(
                Kind.BEAM,
                "overhead",
                new Spot2(-widestM, line.overheadM()),
                new Spot2(widestM, line.overheadM()));
    }

    private void mats() {
        rig.restraint()
                .mats()
                .filter(thick -> thick.si() > 0)
                .ifPresent(thick -> box(Kind.MAT, "mats", -widestM, widestM, 0, thick.si()));
    }

    private void scale(Predicate<Restraint.Under> stands) {
        rig.restraint()
                .platform()
                .filter(scale -> stands.test(scale.under()))
                .ifPresent(
                        scale ->
                                box(
                                        Kind.PLATFORM,
                                        "scale",
                                        -scale.length().si() / 2,
                                        scale.length().si() / 2,
                                        0,
                                        0.05));
    }

    private void line(Kind kind, String label, Spot2 from, Spot2 to) {
        shapes.add(new Shape(kind, label, List.of(from, to), false));
    }

    private void box(Kind kind, String label, double left, double right, double low, double high) {
        shapes.add(
                new Shape(
                        kind,
                        label,
                        List.of(
                                new Spot2(left, low),
                                new Spot2(right, low),
                                new Spot2(right, high),
                                new Spot2(left, high)),
                        true));
    }

    /** The rectangle about all fans. */
    private void hull(String label, List<Spot2> spots) {
        if (spots.isEmpty()) {
            return;
        }
        double left = spots.stream().mapToDouble(Spot2::acrossM).min().orElseThrow();
        double right = spots.stream().mapToDouble(Spot2::acrossM).max().orElseThrow();
        double low = spots.stream().mapToDouble(Spot2::upM).min().orElseThrow();
        double high = spots.stream().mapToDouble(Spot2::upM).max().orElseThrow();
        box(Kind.RIG, label, left - 0.05, right + 0.05, low - 0.05, high + 0.05);
    }
}
