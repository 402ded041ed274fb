package liftwright.review;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.identify.LotEstimate;
import liftwright.plant.identify.LotWorth;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.Rig;

/** What measured lots of fans are worth of their labels, in words. */
public final class Lots {

    private Lots() {}

    /** A sentence for each lot of a rig; empty where none was measured. */
    public static List<String> of(Rig rig) {
        return rig.fanTypes().stream()
                .flatMap(type -> LotWorth.of(type).map(lot -> words(type, lot)).stream())
                .toList();
    }

    static Optional<Finding> finding(FanType type) {
        return LotWorth.of(type)
                .map(
                        lot ->
                                Finding.of(
                                                Severity.NOTES,
                                                "lot-worth",
                                                Sentence.words(words(type, lot)),
                                                "the doubt of the lot's mean is shared by all its fans, the"
                                                        + " scatter about it is each fan's own")
                                        .about(type.name())
                                        .at("fan types/" + type.name() + "/lot")
                                        .judging(Value.of("lot-worth", lot.worth().si())));
    }

    private static String words(FanType type, LotWorth lot) {
        return "this lot of "
                + type.name()
                + " is worth "
                + doubted(lot.worth())
                + " of its label"
                + lot.estimate().map(estimate -> fans(lot, estimate)).orElse(", as declared");
    }

    private static String fans(LotWorth lot, LotEstimate estimate) {
        return ", by "
                + (estimate.fans() == 1 ? "1 fan" : estimate.fans() + " fans")
                + " ("
                + lot.byFan().entrySet().stream()
                        .map(one -> one.getKey() + " " + number(one.getValue()))
                        .collect(Collectors.joining(", "))
                + "); one more fan of it "
                + number(estimate.mean() - estimate.siblingHalfWidth())
                + " to "
                + number(estimate.mean() + estimate.siblingHalfWidth())
                + (estimate.scatterAssumed()
                        ? ", its scatter as declared or assumed"
                        : ", its scatter as found");
    }

    private static String doubted(Quantity worth) {
        double plus = worth.tolerance().plus();
        double minus = worth.tolerance().minus();
        return number(worth.si())
                + (plus == minus
                        ? " ± " + number(plus)
                        : " +" + number(plus) + "/−" + number(minus));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
