package liftwright.trials.words;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Value;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.FanAlone;
import liftwright.review.restraint.HoldWords;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/**
 * What has to be borne on a card, row by row.
 *
 * @param near the fans that run
 */
record LoadRows(Rig rig, Planned planned, Near near) {

    private static final List<String> COLUMNS =
            List.of("hold", "worst-fans", "load", "asked-times", "must-bear", "bears");

    /** How many times a load is asked to be borne. */
    double factor() {
        return rig.limits().si(LimitName.RESTRAINT_FACTOR);
    }

    /** What the seat of a rotor has to hold that lost a blade. */
    void lostBlade(double times, List<List<Value>> rows) {
        near.found("lost-blade-load")
                .ifPresent(
                        load ->
                                rows.add(
                                        force(
                                                "the seat of a rotor that lost a blade",
                                                "each fan",
                                                times * load)));
    }

    /** All that run, were nothing declared that holds them. */
    List<List<Value>> together(String hold) {
        List<List<Value>> rows = new ArrayList<>();
        Vec3 sum = Vec3.ZERO;
        double turning = 0;
        for (FanAlone fan : near.alone()) {
            sum = sum.plus(fan.direction().times(fan.thrustN()));
            turning += Math.abs(fan.swirlNm());
        }
        rows.add(force(hold, names(), sum.length()));
        rows.add(
                row(
                        "their turning, all the same way at worst",
                        names(),
                        "hold-moment",
                        turning,
                        OptionalDouble.empty(),
                        factor()));
        return rows;
    }

    Block table(String what, String title, List<List<Value>> rows) {
        return CardText.rows(planned.id(), what, title, COLUMNS, rows);
    }

    List<Value> asked(Ask ask) {
        return row(
                HoldWords.name(ask),
                HoldWords.fans(rig, ask.fans()),
                HoldWords.field(ask.what().unit()),
                ask.load(),
                ask.capacity(),
                ask.factor());
    }

    List<Value> force(String hold, String fans, double loadN) {
        return row(hold, fans, "hold-force", loadN, OptionalDouble.empty(), factor());
    }

    List<Value> row(
            String hold,
            String fans,
            String field,
            double load,
            OptionalDouble capacity,
            double times) {
        return List.of(
                Value.words("hold", hold),
                Value.words("worst-fans", fans),
                Value.of(field, load),
                Value.of("asked-times", times),
                Value.of(field, times * load),
                capacity.isPresent()
                        ? Value.of(field, capacity.getAsDouble())
                        : new Value("bears", new Value.Figure.NotComputed("not declared")));
    }

    /** Numbers of the fans that run, in the rig. */
    List<Integer> running() {
        Set<PartId> ids = new HashSet<>(planned.run().map(Run::fans).orElse(List.of()));
        List<Integer> numbers = new ArrayList<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            if (ids.contains(rig.fans().get(k).id())) {
                numbers.add(k);
            }
        }
        return numbers;
    }

    String names() {
        List<Integer> numbers = running();
        return numbers.isEmpty()
                ? near.rig().fans().getFirst().id().text()
                : HoldWords.fans(rig, numbers);
    }
}
