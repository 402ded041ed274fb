package liftwright.review.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.physics.Fragment;
import liftwright.physics.SpoolDown;
import liftwright.review.people.FullThrottle.Moment;
import liftwright.review.people.Numbers.What;
import liftwright.rig.Element;
import liftwright.rig.FanType;
import liftwright.rig.Rig;

/**
 * One thing that can come off a fan.
 *
 * @param words what it is
 * @param massKg its mass
 * @param speedMps the most speed it leaves with
 * @param tumblingM2 C_d A of it as a thin plate, m²
 * @param compactM2 C_d A of the most compact shape of its mass, m²
 * @param mountN what it leaves the mount to hold; empty where that is not asked
 * @param how where the numbers come from
 */
record Piece(
        String words,
        ToDoubleFunction<Moment> massKg,
        ToDoubleFunction<Moment> speedMps,
        double tumblingM2,
        double compactM2,
        Optional<ToDoubleFunction<Moment>> mountN,
        String how) {

    /** What the piece is called that leaves a rotor out of balance. */
    static final String BLADE = "a blade";

    /** Blades are of plastic, carbon or at the densest aluminium, kg/m³ (common practice). */
    private static final double BLADE_KGPM3 = 2700;

    /** A rotor's bell is of steel at the densest, kg/m³ (common practice). */
    private static final double ROTOR_KGPM3 = 7850;

    /** Chord of a blade in a duct over its length (common practice). */
    private static final double DUCTED_CHORD = 0.6;

    /** The same of an open rotor, whose blades are slender (common practice). */
    private static final double OPEN_CHORD = 0.2;

    /** Leads of a fan to which no run is declared, m; from memory. */
    private static final double LEAD_M = 0.5;

    /** Energy as it leaves, J. */
    double energyJ(Moment moment) {
        return Fragment.energyJ(massKg.applyAsDouble(moment), speedMps.applyAsDouble(moment));
    }

    /**
     * All of one fan.
     *
     * @param fan its number
     * @param declared the declared values, which tell the shapes
     * @param untold takes what the file would have to say for the others
     */
    static List<Piece> of(Rig rig, int fan, Numbers numbers, Moment declared, List<String> untold) {
        List<Piece> pieces = new ArrayList<>();
        FanType type = rig.fans().get(fan).type();
        blade(type, fan, numbers, declared)
                .ifPresentOrElse(
                        pieces::add,
                        () ->
                                untold.add(
                                        type.rotor().blades().isPresent()
                                                ? "“blade mass”"
                                                : "“blade mass”, or “blades” and “inertia”"));
        third(type, fan, numbers, declared)
                .ifPresentOrElse(
                        pieces::add,
                        () ->
                                untold.add(
                                        numbers.has(type, What.INERTIA)
                                                ? "“mass” of the rotor"
                                                : "“inertia” and “mass” of the rotor"));
        pieces.add(whole(rig, fan, numbers));
        return pieces;
    }

    /** Declared, or all of the rotor's inertia in its blades, which is more than there is. */
    private static Optional<Piece> blade(FanType type, int fan, Numbers numbers, Moment declared) {
        boolean centred = numbers.has(type, What.BLADE_CENTRE);
        double middleM = (type.tip().si() + type.hub().si()) / 4;
        ToDoubleFunction<Moment> centreM =
                m -> centred ? numbers.of(m.own, type, What.BLADE_CENTRE) : middleM;
        ToDoubleFunction<Moment> massKg;
        String how;
        if (numbers.has(type, What.BLADE_MASS)) {
            massKg = m -> numbers.of(m.own, type, What.BLADE_MASS);
            how = centred ? "as declared" : "its centre in the middle of its length";
        } else if (numbers.has(type, What.INERTIA) && type.rotor().blades().isPresent()) {
            int blades = type.rotor().blades().getAsInt();
            massKg =
                    m -> {
                        double r = centreM.applyAsDouble(m);
                        return numbers.of(m.own, type, What.INERTIA) / (blades * r * r);
                    };
            how = "at most: all of the rotor's inertia in its blades";
        } else {
            return Optional.empty();
        }
        double lengthM = (type.tip().si() - type.hub().si()) / 2;
        double chord = type.ducted() ? DUCTED_CHORD : OPEN_CHORD;
        return Optional.of(
                new Piece(
                        BLADE,
                        massKg,
                        m -> Fragment.speedMps(centreM.applyAsDouble(m), m.speedRadps[fan]),
                        Fragment.tumblingDragM2(chord * lengthM * lengthM),
                        Fragment.compactDragM2(massKg.applyAsDouble(declared), BLADE_KGPM3),
                        Optional.of(
                                m ->
                                        Fragment.rootLoadN(
                                                massKg.applyAsDouble(m),
                                                centreM.applyAsDouble(m),
                                                m.speedRadps[fan])),
                        how));
    }

    private static Optional<Piece> third(FanType type, int fan, Numbers numbers, Moment declared) {
        if (!numbers.has(type, What.INERTIA) || !numbers.has(type, What.ROTOR_MASS)) {
            return Optional.empty();
        }
        ToDoubleFunction<Moment> massKg = m -> numbers.of(m.own, type, What.ROTOR_MASS) / 3;
        ToDoubleFunction<Moment> speedMps =
                m ->
                        Fragment.sectorMps(
                                numbers.of(m.own, type, What.INERTIA),
                                numbers.of(m.own, type, What.ROTOR_MASS),
                                m.speedRadps[fan]);
        double discM2 = Math.PI / 4 * type.tip().si() * type.tip().si();
        return Optional.of(
                new Piece(
                        "a third of the rotor",
                        massKg,
                        speedMps,
                        Fragment.tumblingDragM2(discM2 / 3),
                        Fragment.compactDragM2(massKg.applyAsDouble(declared), ROTOR_KGPM3),
                        Optional.of(
                                m ->
                                        massKg.applyAsDouble(m)
                                                * speedMps.applyAsDouble(m)
                                                * m.speedRadps[fan]),
                        "at most: its mass as far out as its inertia allows"));
    }

    /**
     * A fan that tears off its mount at full throttle: pushed by its thrust as far as its leads
     * reach, and then by what it still gives while it runs down. Its weight and drag are left out,
     * so it is never faster.
     */
    private static Piece whole(Rig rig, int fan, Numbers numbers) {
        FanType type = rig.fans().get(fan).type();
        double leadM = leadM(rig, rig.fans().get(fan).id().text());
        boolean coasts = numbers.has(type, What.INERTIA);
        ToDoubleFunction<Moment> massKg = m -> numbers.of(m.own, type, What.FAN_MASS);
        double faceM2 = Math.PI / 4 * type.tip().si() * type.tip().si();
        return new Piece(
                "the whole fan",
                massKg,
                m -> {
                    double mass = massKg.applyAsDouble(m);
                    double thrust = m.thrustN[fan];
                    double omega = m.speedRadps[fan];
                    double drawn = Math.sqrt(2 * thrust * leadM / mass);
                    if (!coasts || !(omega > 0) || !(m.shaftW[fan] > 0)) {
                        return drawn;
                    }
                    double tau =
                            SpoolDown.timeConstantS(
                                    numbers.of(m.own, type, What.INERTIA),
                                    m.shaftW[fan] / (omega * omega * omega),
                                    omega);
                    return drawn + thrust * tau / mass;
                },
                Fragment.tumblingDragM2(faceM2),
                Fragment.roundDragM2(type.tip().si()),
                Optional.empty(),
                coasts
                        ? "at most: thrust along its leads, then while it runs down"
                        : "thrust along its leads alone; “inertia” would tell the rest");
    }

    /** The runs on the last chain to a fan. */
    private static double leadM(Rig rig, String fan) {
        double told =
                rig.wiring().chains().stream()
                        .filter(chain -> chain.to().equals(fan) || chain.from().equals(fan))
                        .flatMap(chain -> chain.elements().stream())
                        .mapToDouble(
                                element ->
                                        element instanceof Element.Run run ? run.length().si() : 0)
                        .sum();
        return told > 0 ? told : LEAD_M;
    }
}
