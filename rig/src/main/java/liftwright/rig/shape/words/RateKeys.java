package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Rates;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;

/** The section {@code rates}: how often parts fail. */
public final class RateKeys {

    public static final Key<Quantity> EXPOSURE =
            defaulted(
                            "exposure",
                            Amount.positive(Measure.TIME),
                            "1 h",
                            "common practice: chances for each hour of running",
                            "Running time over which failures are counted.",
                            "10 h")
                    .readBy(Key.Question.FAILURES);

    /** One key for each kind of part. */
    public static final Map<Rates.PartKind, Key<Quantity>> OF = kinds();

    public static final Section SECTION = section();

    private RateKeys() {}

    private static Map<Rates.PartKind, Key<Quantity>> kinds() {
        var keys = new EnumMap<Rates.PartKind, Key<Quantity>>(Rates.PartKind.class);
        for (Rates.PartKind kind : Rates.PartKind.values()) {
            keys.put(
                    kind,
                    Key.<Quantity>open(
                                    kind.key(),
                                    Amount.positive(Measure.FAILURE_RATE),
                                    "Failures of " + meaning(kind) + " in running time.",
                                    "2e-5 /h",
                                    "how likely it is cannot be told")
                            .readBy(Key.Question.FAILURES));
        }
        return Collections.unmodifiableMap(keys);
    }

    private static String meaning(Rates.PartKind kind) {
        return switch (kind) {
            case FAN -> "one fan: rotor, motor and duct";
            case CONTROLLER -> "one motor controller";
            case PACK -> "one pack";
            case FUSE -> "one fuse that opens though nothing is wrong";
            case RUN -> "one wire";
            case JOINT -> "one joint";
            case CONTACTOR -> "one contactor, all its poles at once";
            case SENSOR -> "one sensor";
            case COMPUTER -> "one flight computer";
            case LINK -> "the throttle link";
            case SIGNAL -> "one signal line or its ground";
        };
    }

    private static Section section() {
        var keys = new ArrayList<Key<?>>();
        keys.add(EXPOSURE);
        keys.addAll(OF.values());
        return Section.of("rates", "How often parts fail.", keys.toArray(Key<?>[]::new));
    }
}
