package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.body.Beams;
import liftwright.plant.body.Inertia;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.Pose;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.trials.Reading;

/**
 * Modes of mounts on beams from a tap ({@link TipModes}), against what the fans shake at once a
 * revolution about hover.
 */
final class FrameCard {

    /** First mode over the fastest turn, or under the slowest; common practice. */
    static final double CLEAR_ABOVE = 1.2;

    static final double CLEAR_BELOW = 0.8;

    private static final Doubts.LeftOut CLAMP =
            new Doubts.LeftOut(
                    0.25,
                    0.03,
                    "a root that gives and the mass of the beam itself, which lower it; common"
                            + " practice");

    private final Asked asked;
    private final Rig rig;
    private final Doubts doubts = new Doubts("frame");
    private final MassLedger ledger;
    private final Beams beams;
    private final Sheet sheet;
    private final List<String> tapped = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();

    FrameCard(Asked asked) {
        this.asked = asked;
        rig = asked.rig();
        Pose pose = Pose.declare(rig, doubts.rows());
        ledger = MassLedger.declare(rig, pose, doubts.rows());
        beams = Beams.declare(rig, pose, doubts.rows());
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        for (Beams.Standing beam : beams.standing(doubts.rows().table().nominal())) {
            tapped.add(beam.mount().name());
            wanted.add(
                    Wanted.of(
                            "mount " + beam.mount().name() + ", first mode",
                            Measure.FREQUENCY,
                            Instruments.TAP,
                            CLAMP));
            write(beam.mount());
        }
        undeclared();
        Optional<HoverTurns> turns = rig.fans().isEmpty() ? Optional.empty() : HoverTurns.of(asked);
        if (asked.work().stopped()) {
            return Optional.empty();
        }
        words(turns);
        sheet.leftOut(wanted);
        Optional<Predicted> predicted =
                Predicted.of(asked, doubts, wanted, Predicted.DRAWS, () -> this::at);
        predicted.ifPresent(told -> turns.ifPresent(now -> against(told.readings(), now)));
        return predicted.map(sheet::done);
    }

    private void at(double[] p, double[] out) {
        List<MassItem> items = ledger.properties(p).items();
        Map<String, List<MassItem>> byMount = byMount(items);
        List<Beams.Standing> standing = beams.standing(p);
        for (int k = 0; k < out.length; k++) {
            Beams.Standing beam = standing.get(k);
            out[k] = firstHz(beam, byMount.getOrDefault(beam.mount().name(), List.of()));
        }
    }

    /** First mode of a beam with what its tip carries, Hz; not a number without mass. */
    private static double firstHz(Beams.Standing beam, List<MassItem> items) {
        double kg = 0;
        Vec3 moment = Vec3.ZERO;
        for (MassItem item : items) {
            kg += item.massKg();
            moment = moment.plus(item.at().times(item.massKg()));
        }
        if (!(kg > 0)) {
            return Double.NaN;
        }
        Vec3 centre = moment.times(1 / kg);
        Inertia inertia = Inertia.ZERO;
        for (MassItem item : items) {
            inertia =
                    inertia.plus(item.own())
                            .plus(Bodies.point(item.massKg(), item.at().minus(centre)));
        }
        return TipModes.radps(beam, kg, centre, inertia)[0] / (2 * Math.PI);
    }

    private Map<String, List<MassItem>> byMount(List<MassItem> items) {
        List<Mount> mounts = new ArrayList<>();
        rig.fans().stream().map(Fan::mount).forEach(mounts::add);
        rig.packs().stream().map(Pack::mount).forEach(mounts::add);
        rig.otherParts().stream().map(OtherPart::mount).forEach(mounts::add);
        int first = items.size() - mounts.size();
        Map<String, List<MassItem>> byMount = new HashMap<>();
        for (int k = 0; k < mounts.size(); k++) {
            byMount.computeIfAbsent(mounts.get(k).name(), _ -> new ArrayList<>())
                    .add(items.get(first + k));
        }
        return byMount;
    }

    private void undeclared() {
        rig.fans().stream()
                .map(Fan::mount)
                .filter(mount -> mount.beam().isEmpty())
                .distinct()
                .forEach(
                        mount -> {
                            sheet.note(
                                    "mount "
                                            + mount.name()
                                            + " has no declared beam: nothing to predict. Tap it all"
                                            + " the same, and declare length, outside, wall and"
                                            + " modulus of what holds it");
                            write(mount);
                        });
    }

    /** A twin that the file does not write out takes its beam from the other. */
    private void write(Mount mount) {
        if (rig.declaration().at(RigPath.of("mounts", mount.name())).isEmpty()) {
            return;
        }
        sheet.write(
                RigPath.of("mounts", mount.name(), "beam"),
                "beam: {runs: ________, length: ________, bending rigidity: ________, torsion"
                        + " rigidity: ________}");
    }

    /** Each predicted mode against the turns of hover. */
    private void against(List<Reading> readings, HoverTurns turns) {
        List<List<Value>> rows = new ArrayList<>();
        for (Reading reading : readings) {
            rows.add(
                    List.of(
                            Value.words("measuring-what", reading.channel().part()),
                            Value.of("reading-frequency", reading.expectedSi(), reading.band()),
                            Value.of("mode-free-below", freeBelowHz(turns)),
                            Value.of("mode-free-above", freeAboveHz(turns)),
                            Value.words("mode-standing", standing(reading.band(), turns))));
        }
        sheet.table(
                "modes",
                "Modes against what the fans shake at once a revolution",
                List.of(
                        "measuring-what",
                        "reading-frequency",
                        "mode-free-below",
                        "mode-free-above",
                        "mode-standing"),
                rows);
    }

    static double freeBelowHz(HoverTurns turns) {
        return CLEAR_BELOW * turns.leastRadps() / (2 * Math.PI);
    }

    static double freeAboveHz(HoverTurns turns) {
        return CLEAR_ABOVE * turns.mostRadps() / (2 * Math.PI);
    }

    /** What the prediction says before anybody taps. */
    static String standing(Band mode, HoverTurns turns) {
        if (mode.high() <= freeBelowHz(turns)) {
            return "clear, below";
        }
        if (mode.low() >= freeAboveHz(turns)) {
            return "clear, above";
        }
        return mode.low() > freeBelowHz(turns) && mode.high() < freeAboveHz(turns)
                ? "among the turns of hover"
                : "cannot be told before it is tapped";
    }

    private void words(Optional<HoverTurns> turns) {
        sheet.step(
                "Packs dead, rotors still. The rig held as it will be in flight, hung in slings or"
                        + " worn; not clamped to the bench.");
        sheet.step(
                "An accelerometer at the end of each mount; tap beside it with a rubber mallet,"
                        + " fore-and-aft, sideways, up. Five taps each, one second of ringing.");
        sheet.step(
                "Write down the lowest frequency that comes again, and how many swings it rings.");
        sheet.step("Then mount by mount with everything fixed as for flight, leads tied.");
        turns.ifPresentOrElse(
                told -> {
                    sheet.good(
                            Sentence.words("first mode of every mount at most ")
                                    .then(Measure.FREQUENCY, freeBelowHz(told))
                                    .then(" or at least ")
                                    .then(Measure.FREQUENCY, freeAboveHz(told))
                                    .then(
                                            ": 0.8 times the slowest turn about hover, 1.2 times the"
                                                    + " fastest (common practice)"));
                    sheet.note(
                            Sentence.words("fans turn at ")
                                    .then(Measure.ROTATION, told.leastRadps())
                                    .then(" to ")
                                    .then(Measure.ROTATION, told.mostRadps())
                                    .then(
                                            told.lifts()
                                                    ? ", from 0.8 to 1.25 of the weight (range from"
                                                            + " memory), 95 % of the declared doubt"
                                                    : " at full throttle: as declared this rig does"
                                                            + " not hover"));
                },
                () -> sheet.note("speeds about hover could not be computed"));
        sheet.good("the same within 5 % after ten minutes of running: what falls has come loose");
        sheet.note(
                "Mode of a stiff body on a massless beam that is clamped at its root, bending both"
                        + " ways and twisting; blades passing shake faster, at the number of blades"
                        + " times the turn.");
    }
}
