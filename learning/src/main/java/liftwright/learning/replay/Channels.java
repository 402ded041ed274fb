package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.plant.heat.HeatPart;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.table.StartState.Place;
import liftwright.trials.predict.Gauge;

/** Finds for each recorded channel what of the plant it measures, or why the plant has no such. */
final class Channels {

    /**
     * What a channel measures.
     *
     * @param probe reads it
     * @param gauge what the model leaves out of it
     * @param missingSi the same where it goes nowhere, SI
     */
    record Found(Probe probe, Gauge gauge, double missingSi) {}

    private final Plant plant;
    private final Rig rig;
    private final Held held;

    Channels(Plant plant, Held held) {
        this.plant = plant;
        rig = plant.rig();
        this.held = held;
    }

    /** What a channel measures; else the reason why it has no prediction, in words. */
    sealed interface Sought {
        record Measures(Found found) implements Sought {}

        record Nothing(String why) implements Sought {}
    }

    Sought of(Track track) {
        String of = track.of();
        return switch (track.signal()) {
            case THROTTLE -> new Sought.Nothing("it drives the plant");
            case AIR_TEMPERATURE, AIR_PRESSURE, HUMIDITY ->
                    new Sought.Nothing("it is the air the plant runs in");
            case WIND -> new Sought.Nothing("the plant is in still air");
            case THRUST -> thrust(of);
            case SCALE -> sought(held.scale(), "the scale carries nothing that is known");
            case TETHER_LOAD -> sought(held.tether(), "the tether was slack before the fans woke");
            case ROLL_MOMENT -> moment(of, Vec3::x);
            case PITCH_MOMENT -> moment(of, Vec3::y);
            case YAW_MOMENT -> moment(of, Vec3::z);
            case CURRENT -> current(of);
            case VOLTAGE -> voltage(of);
            case CELL_VOLTAGE -> ofPacks(of, Gauge.CELL_VOLTAGE, 1, true, Discharge::leastCellV);
            case CHARGE_USED ->
                    ofPacks(of, Gauge.CHARGE, 0, false, (run, pack) -> run.state().passedAs(pack));
            case SPEED -> ofFan(of, Gauge.SPEED, (run, fan) -> run.fans().units().speedRadps(fan));
            case WINDING_CURRENT ->
                    ofFan(
                            of,
                            Gauge.WINDING_CURRENT,
                            (run, fan) -> run.fans().units().windingA(fan));
            case TEMPERATURE -> temperature(of);
        };
    }

    private static Sought sought(Optional<Found> found, String why) {
        return found.<Sought>map(Sought.Measures::new).orElseGet(() -> new Sought.Nothing(why));
    }

    private Sought none(String of) {
        return new Sought.Nothing("the rig has no part " + of + " that this is read of");
    }

    @FunctionalInterface
    private interface OfPart {
        double read(Discharge run, int part);
    }

    private Sought thrust(String of) {
        int[] fans = fans(of);
        if (fans.length == 0) {
            return none(of);
        }
        Gauge gauge = fans.length == rig.fans().size() ? Gauge.THRUST : Gauge.MOUNT_THRUST;
        return measures(gauge, 0, (run, vector) -> sum(run, fans, Channels::thrustN));
    }

    /** As it pushes: a fan that turns the wrong way counts against the others. */
    static double thrustN(Discharge run, int fan) {
        return run.fans().sense(fan) * run.fans().units().thrustAtPointN(fan);
    }

    private Sought moment(String of, ToDoubleFunction<Vec3> axis) {
        if (!of.equals(Track.ALL)) {
            return new Sought.Nothing("a moment is that of the whole rig");
        }
        int count = rig.fans().size();
        OfVector declared = new OfVector(plant, true);
        declared.load(plant.parameters().nominal());
        double squares = 0;
        for (int fan = 0; fan < count; fan++) {
            double armM = axis.applyAsDouble(declared.armM(fan));
            double full = Gauge.THRUST.missing() * armM * fullN(fan);
            squares += full * full;
        }
        return measures(
                Gauge.THRUST,
                Math.sqrt(squares),
                (run, vector) -> {
                    double sum = 0;
                    for (int fan = 0; fan < count; fan++) {
                        sum += thrustN(run, fan) * axis.applyAsDouble(vector.armM(fan));
                    }
                    return sum;
                });
    }

    private double fullN(int fan) {
        return held.full().fanThrustN(fan);
    }

    private Sought current(String of) {
        int pack = number(packs(), of);
        if (pack >= 0) {
            return measures(Gauge.PACK_CURRENT, 0, (run, vector) -> run.packA(pack));
        }
        if (of.equals(Track.ALL)) {
            int[] all = IntStream.range(0, rig.packs().size()).toArray();
            return measures(
                    Gauge.PACK_CURRENT, 0, (run, vector) -> sum(run, all, Discharge::packA));
        }
        int[] fans = fans(of);
        return fans.length == 0
                ? none(of)
                : measures(
                        Gauge.PACK_CURRENT,
                        0,
                        (run, vector) ->
                                sum(run, fans, (at, fan) -> at.fans().units().currentA(fan)));
    }

    private Sought voltage(String of) {
        int fan = number(fanIds(), of);
        if (fan >= 0) {
            int series = rig.packs().getFirst().series();
            return measures(
                    Gauge.CELL_VOLTAGE,
                    series * Gauge.CELL_VOLTAGE.missingSi(),
                    (run, vector) -> run.network().loadTerminalV(fan));
        }
        int most = rig.packs().stream().mapToInt(pack -> pack.series()).max().orElse(1);
        return ofPacks(
                of,
                Gauge.CELL_VOLTAGE,
                most,
                true,
                (run, pack) -> run.network().packTerminalV(pack));
    }

    /** Of one pack; of all: the least of them, or their sum. */
    private Sought ofPacks(String of, Gauge gauge, double cells, boolean least, OfPart read) {
        double missingSi = cells * gauge.missingSi();
        int pack = number(packs(), of);
        if (pack >= 0) {
            return measures(gauge, missingSi, (run, vector) -> read.read(run, pack));
        }
        if (!of.equals(Track.ALL)) {
            return none(of);
        }
        int[] all = IntStream.range(0, rig.packs().size()).toArray();
        return measures(
                gauge,
                missingSi,
                (run, vector) -> {
                    if (!least) {
                        return sum(run, all, read);
                    }
                    double lowest = Double.POSITIVE_INFINITY;
                    for (int k : all) {
                        lowest = Math.min(lowest, read.read(run, k));
                    }
                    return lowest;
                });
    }

    private Sought ofFan(String of, Gauge gauge, OfPart read) {
        int fan = number(fanIds(), of);
        return fan < 0 ? none(of) : measures(gauge, 0, (run, vector) -> read.read(run, fan));
    }

    private Sought temperature(String of) {
        int part = heatPart(plant, of);
        if (part < 0) {
            return none(of);
        }
        Gauge gauge =
                switch (plant.heatParts().get(part).kind()) {
                    case WIRE -> Gauge.WIRE;
                    case JOINT, FUSE, POLE -> Gauge.JOINT;
                    case SWITCHES, CONTROLLER -> Gauge.CONTROLLER;
                    case WINDING -> Gauge.WINDING;
                    case MAGNETS -> Gauge.MAGNETS;
                    case CELLS -> Gauge.CELLS;
                };
        return measures(gauge, gauge.missingSi(), (run, vector) -> run.nowK(part));
    }

    /**
     * The part that a thermometer is on: an element of the wiring, a pack (its cells), a fan (its
     * controller), or one place of a fan: {@code left.3 winding}.
     *
     * @return its number; −1 where the rig has none
     */
    static int heatPart(Plant plant, String of) {
        int whole = heatPart(plant, of, HeatPart.Kind.SWITCHES);
        int space = of.lastIndexOf(' ');
        if (whole >= 0 || space < 0) {
            return whole;
        }
        return kind(of.substring(space + 1))
                .map(kind -> heatPart(plant, of.substring(0, space), kind))
                .orElse(-1);
    }

    private static int heatPart(Plant plant, String id, HeatPart.Kind ofFan) {
        List<HeatPart> parts = plant.heatParts();
        for (int k = 0; k < parts.size(); k++) {
            if (parts.get(k).id().text().equals(id)) {
                boolean isFan =
                        switch (parts.get(k).kind()) {
                            case SWITCHES, CONTROLLER, WINDING, MAGNETS -> true;
                            case WIRE, JOINT, FUSE, POLE, CELLS -> false;
                        };
                if (!isFan || parts.get(k).kind() == ofFan) {
                    return k;
                }
            }
        }
        return -1;
    }

    private static Optional<HeatPart.Kind> kind(String place) {
        if (place.equals(Place.JUNCTION.word())) {
            return Optional.of(HeatPart.Kind.SWITCHES);
        }
        if (place.equals(Place.SINK.word())) {
            return Optional.of(HeatPart.Kind.CONTROLLER);
        }
        if (place.equals(Place.WINDING.word())) {
            return Optional.of(HeatPart.Kind.WINDING);
        }
        return place.equals(Place.CASE.word())
                ? Optional.of(HeatPart.Kind.MAGNETS)
                : Optional.empty();
    }

    private static Sought measures(Gauge gauge, double missingSi, Probe probe) {
        return new Sought.Measures(new Found(probe, gauge, missingSi));
    }

    private static double sum(Discharge run, int[] parts, OfPart read) {
        double sum = 0;
        for (int part : parts) {
            sum += read.read(run, part);
        }
        return sum;
    }

    /** Those of all, of a fan, of a mount or of a control group. */
    private int[] fans(String of) {
        int count = rig.fans().size();
        int one = number(fanIds(), of);
        if (one >= 0) {
            return new int[] {one};
        }
        if (of.equals(Track.ALL)) {
            return IntStream.range(0, count).toArray();
        }
        List<Integer> found = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            var fan = rig.fans().get(k);
            boolean inGroup =
                    rig.control().groups().stream()
                            .filter(group -> group.name().equals(of))
                            .map(Control.Group::fans)
                            .anyMatch(fans -> fans.contains(fan.id()));
            if (fan.mount().name().equals(of) || inGroup) {
                found.add(k);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    private List<String> packs() {
        return rig.packs().stream().map(pack -> pack.id().text()).toList();
    }

    private List<String> fanIds() {
        return rig.fans().stream().map(fan -> fan.id().text()).toList();
    }

    private static int number(List<String> ids, String of) {
        return ids.indexOf(of);
    }

    /** Whether a channel asks for moments. */
    static boolean turns(Signal signal) {
        return signal == Signal.ROLL_MOMENT
                || signal == Signal.PITCH_MOMENT
                || signal == Signal.YAW_MOMENT;
    }
}
