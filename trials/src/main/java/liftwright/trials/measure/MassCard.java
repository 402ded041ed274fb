package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Sentence;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.MassProperties;
import liftwright.plant.body.Pose;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.trials.Channel.Instrument;

/**
 * Every part weighed, then the whole. The sum of the parts against the whole tells what is declared
 * nowhere: wire, ties, glue.
 */
final class MassCard {

    /** What is weighed, and how heavy it is at a vector. */
    private record Weighing(Wanted wanted, ToDoubleFunction<Weighed> kg) {}

    /** A rig at one vector. */
    @SuppressWarnings("ArrayRecordComponent") // read, never compared
    private record Weighed(double[] p, MassProperties mass) {}

    private final Asked asked;
    private final Rig rig;
    private final Doubts doubts;
    private final MassLedger ledger;
    private final Sheet sheet;
    private final List<Weighing> weighings = new ArrayList<>();
    private final Set<String> known = new HashSet<>();

    MassCard(Asked asked) {
        this.asked = asked;
        rig = asked.rig();
        doubts = new Doubts("mass");
        ledger = MassLedger.declare(rig, Pose.declare(rig, doubts.rows()), doubts.rows());
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        asked.fanTypes().forEach(this::fanType);
        for (int k = 0; k < rig.packs().size(); k++) {
            pack(rig.packs().get(k), rig.fans().size() + k);
        }
        for (int k = 0; k < rig.otherParts().size(); k++) {
            other(rig.otherParts().get(k), rig.fans().size() + rig.packs().size() + k);
        }
        whole();
        words();
        List<Wanted> wanted = weighings.stream().map(Weighing::wanted).toList();
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, () -> this::at)
                .map(sheet::done);
    }

    private void at(double[] p, double[] out) {
        Weighed weighed = new Weighed(p, ledger.properties(p));
        for (int k = 0; k < out.length; k++) {
            out[k] = weighings.get(k).kg.applyAsDouble(weighed);
        }
    }

    private void fanType(FanType type) {
        RigPath at = RigPath.of("fan types", type.name());
        Fan fan = rig.fans().get(asked.firstFan(type));
        long count = rig.fans().stream().filter(one -> one.type().equals(type)).count();
        String each = count == 1 ? "" : ", each of " + count;
        unit("fan " + type.name() + " without its controller" + each, at, fan, type.mass());
        unit(
                "controller of " + type.name() + each,
                at.child("controller"),
                fan,
                type.controller().mass());
    }

    private void unit(String words, RigPath at, Fan fan, Quantity mass) {
        if (mass.si() == 0) {
            sheet.note(at.child("mass") + " is not declared and counts as nothing");
            sheet.write(at.child("mass"), Measure.MASS, Instruments.PARTS_SCALE.errorSi());
            return;
        }
        // The same row as that of the ledger: asked again for the same, it gives the same.
        int row = doubts.rows().row(at.child("mass"), words, fan.id(), mass, Range.NOT_NEGATIVE);
        weigh(
                words,
                at.child("mass"),
                Instruments.PARTS_SCALE,
                weighed -> weighed.p[row],
                mass.si());
    }

    private void pack(Pack pack, int item) {
        long alike =
                rig.packs().stream()
                        .filter(other -> other.declaredAt().equals(pack.declaredAt()))
                        .count();
        String words =
                alike == 1
                        ? "pack " + pack.id()
                        : "pack of "
                                + pack.declaredAt().segments().getLast()
                                + ", each of "
                                + alike;
        weigh(words, pack.declaredAt().child("mass"), Instruments.PARTS_SCALE, item(item));
    }

    private void other(OtherPart part, int item) {
        weigh(
                part.id().text(),
                part.declaredAt().child("mass"),
                Instruments.PARTS_SCALE,
                item(item));
    }

    /** Mass of a part behind the segments of the wearer. */
    private ToDoubleFunction<Weighed> item(int number) {
        return weighed -> {
            List<MassItem> items = weighed.mass.items();
            int parts = rig.fans().size() + rig.packs().size() + rig.otherParts().size();
            return items.get(items.size() - parts + number).massKg();
        };
    }

    private void whole() {
        sum("all parts together, without the wearer", Optional.empty(), this::ofParts);
        if (rig.wearer().isPresent()) {
            RigPath at = RigPath.of("wearer", "mass");
            sum("the wearer, clothed, without the rig", Optional.of(at), this::ofWearer);
            sum(
                    "the wearer in the rig, ready to fly",
                    Optional.empty(),
                    weighed -> weighed.mass.massKg());
        }
    }

    private double ofWearer(Weighed weighed) {
        double sum = 0;
        for (MassItem item : weighed.mass.items()) {
            if (item.kind() == MassItem.Kind.WEARER) {
                sum += item.massKg();
            }
        }
        return sum;
    }

    private double ofParts(Weighed weighed) {
        return weighed.mass.massKg() - ofWearer(weighed);
    }

    private void sum(String words, Optional<RigPath> at, ToDoubleFunction<Weighed> kg) {
        Instrument scale = Instruments.RIG_SCALE;
        weighings.add(new Weighing(Wanted.of(words, Measure.MASS, scale), kg));
        at.ifPresent(path -> sheet.write(path, Measure.MASS, scale.errorSi()));
    }

    private void weigh(String words, RigPath at, Instrument scale, ToDoubleFunction<Weighed> kg) {
        if (known.contains(words)) {
            return;
        }
        double[] nominal = doubts.rows().table().nominal();
        double si = kg.applyAsDouble(new Weighed(nominal, ledger.properties(nominal)));
        weigh(words, at, scale, kg, si);
    }

    private void weigh(
            String words, RigPath at, Instrument scale, ToDoubleFunction<Weighed> kg, double si) {
        if (known.add(words)) {
            weighings.add(new Weighing(Wanted.of(words, Measure.MASS, scale), kg));
            sheet.write(at, Measure.MASS, Predicted.halfWidth(scale, si));
        }
    }

    private void words() {
        sheet.step("Check each scale with a known mass near what it will weigh.");
        sheet.step("Packs out and apart: weigh each with its leads, and mark it with its serial.");
        sheet.step("Weigh one of each part; of fans and packs weigh all and write each down.");
        sheet.step(
                "Put the rig together with all wire, ties and guards. Hang it from the scale, or"
                        + " stand it on one, with nothing leaning on it.");
        if (rig.wearer().isPresent()) {
            sheet.step("Weigh the wearer as dressed for the day, then the wearer in the rig.");
        }
        sheet.good(
                Sentence.words("the whole known to ")
                        .then(Measure.PERCENT, 0.005)
                        .then(" (default, common practice)"));
        sheet.good(
                "the whole equals the sum of what was weighed: what is more is declared nowhere"
                        + " (wire, lugs, ties); write it as a part of its own");
        sheet.good("each part inside its band; a fan outside it is another fan than was declared");
        sheet.note(
                "Wire has no mass in the sums unless it is declared as a part: expect the whole"
                        + " heavier than its band where that was left out.");
    }
}
