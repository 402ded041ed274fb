package liftwright.rig.shape.bind;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Demands;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Site;
import liftwright.rig.Wearer;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.words.DemandKeys;
import liftwright.rig.shape.words.LimitKeys;
import liftwright.rig.shape.words.PostureKeys;
import liftwright.rig.shape.words.SiteKeys;
import liftwright.rig.shape.words.WearerKeys;

/** Where the rig is flown, by whom, and what is asked of it. */
final class PeopleBinder {

    private static final String STANDARD_AIR = "standard atmosphere (ISO 2533) at the elevation";

    private static final Quantity STRAIGHT = Quantity.exact(0, Measure.ANGLE.dimension());
    private static final Quantity STILL = Quantity.exact(0, Measure.SPEED.dimension());
    private static final Quantity NOWHERE = Quantity.exact(0, Measure.LENGTH.dimension());

    private final Ledger ledger;

    PeopleBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    Site site(Fields fields) {
        ledger.note(fields, SiteKeys.TEMPERATURE, "that of the air by the standard", STANDARD_AIR);
        ledger.note(fields, SiteKeys.PRESSURE, "that of the air by the standard", STANDARD_AIR);
        return new Site(
                ledger.value(fields, SiteKeys.ELEVATION),
                fields.get(SiteKeys.TEMPERATURE),
                fields.get(SiteKeys.PRESSURE),
                ledger.value(fields, SiteKeys.HUMIDITY),
                wind(fields),
                new Site.Ground(
                        ledger.value(fields, SiteKeys.FRICTION),
                        ledger.value(fields, SiteKeys.SLOPE),
                        ledger.value(fields, SiteKeys.SLOPE_TO)));
    }

    /** A gust alone comes out of still air. */
    private static Optional<Site.Wind> wind(Fields fields) {
        Optional<Quantity> mean = fields.get(SiteKeys.WIND);
        Optional<Quantity> gust = fields.get(SiteKeys.GUST);
        return mean.isEmpty() && gust.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Site.Wind(
                                mean.orElse(STILL),
                                gust,
                                fields.get(SiteKeys.GUST_LENGTH),
                                fields.get(SiteKeys.WIND_FROM)));
    }

    Demands demands(Fields fields, boolean worn) {
        Quantity reserve = ledger.value(fields, DemandKeys.RESERVE);
        return new Demands(
                ledger.computed(
                        fields,
                        DemandKeys.THRUST_TO_WEIGHT,
                        worn ? "1.30" : "1.6",
                        worn
                                ? "common practice: free hover with a wearer"
                                : "common practice: a module that flies by itself"),
                ledger.value(fields, DemandKeys.HOVER),
                reserve,
                ledger.computed(
                        fields,
                        DemandKeys.JUDGED_AT_CHARGE,
                        Measure.SHARE.show(reserve.si()),
                        "common practice: the end of the flight"),
                ledger.value(fields, DemandKeys.RUNS),
                ledger.value(fields, DemandKeys.PAUSE),
                ledger.value(fields, DemandKeys.HEIGHT),
                ledger.value(fields, DemandKeys.YAW));
    }

    Limits limits(Fields fields) {
        var declared = new EnumMap<LimitName, Double>(LimitName.class);
        LimitKeys.OF.forEach(
                (name, key) ->
                        fields.stated(key)
                                .ifPresent(
                                        stated ->
                                                declared.put(
                                                        name,
                                                        ledger.middle(
                                                                stated.value(), stated.spot()))));
        return new Limits(declared);
    }

    Optional<Wearer> wearer(Optional<Fields> fields) {
        return fields.map(
                wearer -> {
                    Fields posture = Ledger.section(wearer, WearerKeys.POSTURE);
                    return new Wearer(
                            ledger.value(wearer, WearerKeys.MASS),
                            ledger.value(wearer, WearerKeys.STATURE),
                            ledger.value(wearer, WearerKeys.BODY),
                            arm(posture, PostureKeys.LEFT_SHOULDER, PostureKeys.LEFT_ELBOW),
                            arm(posture, PostureKeys.RIGHT_SHOULDER, PostureKeys.RIGHT_ELBOW),
                            ledger.value(wearer, WearerKeys.STEADINESS),
                            measured(Ledger.section(wearer, WearerKeys.MEASURED)),
                            stance(posture),
                            strength(Ledger.section(wearer, WearerKeys.STRENGTH)),
                            wearer.get(WearerKeys.REACTION));
                });
    }

    private Wearer.Stance stance(Fields posture) {
        Fields lean = Ledger.section(posture, PostureKeys.LEAN);
        return new Wearer.Stance(
                leg(posture, PostureKeys.LEFT_HIP, PostureKeys.LEFT_KNEE),
                leg(posture, PostureKeys.RIGHT_HIP, PostureKeys.RIGHT_KNEE),
                lean.get(PostureKeys.LEAN_FORWARD).orElse(STRAIGHT),
                lean.get(PostureKeys.LEAN_RIGHT).orElse(STRAIGHT));
    }

    private static Wearer.Leg leg(Fields posture, Key<Fields> ownHip, Key<Fields> ownKnee) {
        return new Wearer.Leg(
                bend(posture, ownHip, PostureKeys.BOTH_HIPS, PostureKeys.HIP_FLEXION),
                bend(posture, ownHip, PostureKeys.BOTH_HIPS, PostureKeys.HIP_ABDUCTION),
                bend(posture, ownKnee, PostureKeys.BOTH_KNEES, PostureKeys.KNEE_FLEXION));
    }

    /** The side's own angle of a leg, else that of both sides, else straight. */
    private static Quantity bend(
            Fields posture, Key<Fields> own, Key<Fields> both, Key<Quantity> angle) {
        return posture.get(own)
                .flatMap(joint -> joint.get(angle))
                .or(() -> posture.get(both).flatMap(joint -> joint.get(angle)))
                .orElse(STRAIGHT);
    }

    private static Wearer.Strength strength(Fields fields) {
        return new Wearer.Strength(
                stated(fields, WearerKeys.STRENGTHS),
                fields.get(WearerKeys.SHOULDER_STRENGTH),
                fields.get(WearerKeys.ELBOW_STRENGTH));
    }

    private static <E extends Enum<E>> Map<E, Quantity> stated(
            Fields fields, Map<E, Key<Quantity>> keys) {
        var found = new HashMap<E, Quantity>();
        keys.forEach((name, key) -> fields.get(key).ifPresent(value -> found.put(name, value)));
        return found;
    }

    private static Wearer.Centre centre(Fields place) {
        return new Wearer.Centre(
                place.get(WearerKeys.CENTRE_FORWARD).orElse(NOWHERE),
                place.get(WearerKeys.CENTRE_RIGHT).orElse(NOWHERE),
                place.get(WearerKeys.CENTRE_DOWN).orElse(NOWHERE));
    }

    private Wearer.Measured measured(Fields fields) {
        return new Wearer.Measured(
                fields.get(WearerKeys.ROLL),
                fields.get(WearerKeys.PITCH),
                fields.get(WearerKeys.YAW),
                fields.get(WearerKeys.SCALES)
                        .map(
                                own ->
                                        new Wearer.Scales(
                                                ledger.value(own, WearerKeys.FEET),
                                                ledger.value(own, WearerKeys.HANDS),
                                                ledger.value(own, WearerKeys.SUPPORTS_APART),
                                                ledger.value(own, WearerKeys.HANDS_BELOW))),
                fields.get(WearerKeys.ROLL_SWING).map(this::pivot),
                fields.get(WearerKeys.PITCH_SWING).map(this::pivot),
                fields.get(WearerKeys.YAW_SWING)
                        .map(
                                own ->
                                        new Wearer.CordSwing(
                                                ledger.value(own, WearerKeys.CORDS),
                                                ledger.value(own, WearerKeys.CORDS_APART),
                                                ledger.value(own, WearerKeys.SWING_TIME),
                                                ledger.value(own, WearerKeys.SWINGS),
                                                ledger.value(own, WearerKeys.HUNG_MASS),
                                                ledger.value(own, WearerKeys.HUNG_INERTIA))),
                fields.get(WearerKeys.CENTRE).map(PeopleBinder::centre),
                new Wearer.Sizes(
                        fields.get(WearerKeys.SHOULDERS),
                        fields.get(WearerKeys.HIPS),
                        stated(fields, WearerKeys.LENGTHS),
                        stated(fields, WearerKeys.MASSES)));
    }

    private Wearer.PivotSwing pivot(Fields own) {
        return new Wearer.PivotSwing(
                ledger.value(own, WearerKeys.BAR_ABOVE),
                ledger.value(own, WearerKeys.SWING_TIME),
                ledger.value(own, WearerKeys.SWINGS));
    }

    private Wearer.Arm arm(Fields posture, Key<Fields> ownShoulder, Key<Fields> ownElbow) {
        return new Wearer.Arm(
                angle(posture, ownShoulder, PostureKeys.BOTH_SHOULDERS, PostureKeys.FLEXION),
                angle(posture, ownShoulder, PostureKeys.BOTH_SHOULDERS, PostureKeys.ABDUCTION),
                angle(posture, ownShoulder, PostureKeys.BOTH_SHOULDERS, PostureKeys.ROTATION),
                angle(posture, ownElbow, PostureKeys.BOTH_ELBOWS, PostureKeys.BEND));
    }

    /** The side's own angle, else that of both sides, else the default. */
    private Quantity angle(Fields posture, Key<Fields> own, Key<Fields> both, Key<Quantity> angle) {
        return posture.get(own)
                .flatMap(joint -> joint.get(angle))
                .or(() -> posture.get(both).flatMap(joint -> joint.get(angle)))
                .orElseGet(() -> ledger.value(Ledger.section(posture, own), angle));
    }
}
