package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import liftwright.physics.CellLaw;
import liftwright.plant.Plant;
import liftwright.plant.heat.HeatPart;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.CellType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Site;
import liftwright.rig.table.StartState;

/**
 * The rig on the day of the test: in the air that was recorded, with packs as charged and as warm
 * as the first samples say, each with the error of its instrument.
 *
 * @param rig the same rig with these values in place of what it declares
 * @param notes what was taken from where
 */
record Start(Rig rig, List<String> notes) {

    /** Rest voltages of a cell are not quite those of its curve, V; as for cards, from memory. */
    private static final double CURVE_V = 0.012;

    /** A rest voltage that tells charge worse than this tells nothing. */
    private static final double WORST_CHARGE = 0.25;

    /** Standard deviation of a normal distribution over its median absolute deviation. */
    private static final double NORMAL = 1.4826;

    /** So much of the rest before the fans wake is averaged, s. */
    private static final double LOOK_S = 5;

    static Start of(Rig rig, Recording recording, Throttles throttles) {
        List<String> notes = new ArrayList<>();
        Rig inAir = rig.at(site(rig.site(), recording, throttles, notes));
        List<Pack> packs = new ArrayList<>();
        for (Pack pack : rig.packs()) {
            Quantity charge = charge(pack, rig, recording, throttles, notes);
            Optional<Quantity> warm =
                    first(recording, Signal.TEMPERATURE, pack.id().text(), throttles)
                            .map(found -> own(found, Dimensions.TEMPERATURE))
                            .or(pack::temperature);
            packs.add(with(pack, charge, warm));
        }
        return new Start(inAir.fedBy(packs), List.copyOf(notes));
    }

    private static Pack with(Pack pack, Quantity charge, Optional<Quantity> temperature) {
        return new Pack(
                pack.id(),
                pack.declaredAt(),
                pack.cell(),
                pack.series(),
                pack.parallel(),
                pack.extraMass(),
                pack.mass(),
                pack.interconnect(),
                pack.mount(),
                pack.at(),
                charge,
                temperature,
                pack.serial());
    }

    private static Site site(
            Site site, Recording recording, Throttles throttles, List<String> notes) {
        return new Site(
                site.elevation(),
                air(recording, Signal.AIR_TEMPERATURE, throttles, notes).or(site::temperature),
                air(recording, Signal.AIR_PRESSURE, throttles, notes).or(site::pressure),
                air(recording, Signal.HUMIDITY, throttles, notes).orElse(site.humidity()));
    }

    private static Optional<Quantity> air(
            Recording recording, Signal signal, Throttles throttles, List<String> notes) {
        Optional<Track> found = recording.track(signal, Track.ALL);
        if (found.isEmpty()) {
            notes.add(signal.word() + " was not recorded: taken as the rig file declares it");
            return Optional.empty();
        }
        Seen seen = mean(found.get(), throttles.fromS(), throttles.toS());
        double doubt = Math.hypot(error(found.get(), seen.meanSi), 2 * seen.scatterSi);
        return Optional.of(
                new Quantity(
                        seen.meanSi,
                        signal.dimension(),
                        new Tolerance(
                                doubt, doubt, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED)));
    }

    private static double error(Track track, double si) {
        return Math.hypot(track.errorSi(), track.errorShare() * si);
    }

    /** What a channel showed at rest. */
    private record Seen(double meanSi, double scatterSi, double errorSi) {}

    /** Median and robust scatter: a thermometer that fails for a moment tells nothing by it. */
    private static Seen mean(Track track, double fromS, double toS) {
        Samples samples = track.samples();
        double[] seen =
                IntStream.range(0, samples.size())
                        .filter(k -> samples.timeS(k) >= fromS && samples.timeS(k) <= toS)
                        .mapToDouble(samples::si)
                        .toArray();
        if (seen.length == 0) {
            return new Seen(samples.si(0), 0, error(track, samples.si(0)));
        }
        double middle = Noise.median(seen);
        double[] off = DoubleStream.of(seen).map(si -> Math.abs(si - middle)).toArray();
        return new Seen(middle, NORMAL * Noise.median(off), error(track, middle));
    }

    /** What a channel showed before the fans woke; empty where it has no sample there. */
    private static Optional<Seen> first(
            Recording recording, Signal signal, String of, Throttles throttles) {
        double wakesS = throttles.wakesS();
        return recording
                .track(signal, of)
                .filter(track -> track.samples().firstS() <= wakesS)
                .map(track -> mean(track, wakesS - LOOK_S, wakesS));
    }

    private static Quantity own(Seen seen, Dimension dimension) {
        return new Quantity(
                seen.meanSi,
                dimension,
                new Tolerance(
                        seen.errorSi, seen.errorSi, Tolerance.Form.NORMAL, Tolerance.Scope.EACH));
    }

    private static Quantity charge(
            Pack pack, Rig rig, Recording recording, Throttles throttles, List<String> notes) {
        String id = pack.id().text();
        Optional<Seen> cell =
                first(recording, Signal.VOLTAGE, id, throttles)
                        .map(seen -> per(seen, pack.series()))
                        .or(() -> first(recording, Signal.CELL_VOLTAGE, id, throttles));
        if (cell.isEmpty() && rig.packs().size() == 1) {
            cell =
                    first(recording, Signal.VOLTAGE, Track.ALL, throttles)
                            .map(seen -> per(seen, pack.series()));
        }
        if (cell.isEmpty()) {
            notes.add(
                    "no rest voltage of "
                            + id
                            + " before its fans woke: charged as the rig file declares it");
            return pack.charge();
        }
        Optional<CellType.Curve> curve = pack.cell().openCircuit();
        if (curve.isEmpty()) {
            return pack.charge();
        }
        double volt = cell.get().meanSi;
        double errorV = Math.hypot(cell.get().errorSi, CURVE_V);
        double charge = inverse(curve.get(), volt);
        double doubt =
                (inverse(curve.get(), volt + errorV) - inverse(curve.get(), volt - errorV)) / 2;
        if (doubt > WORST_CHARGE) {
            notes.add(
                    "the rest voltage of "
                            + id
                            + " does not tell its charge: charged as the rig file declares it");
            return pack.charge();
        }
        return new Quantity(
                charge,
                Dimension.NONE,
                new Tolerance(doubt, doubt, Tolerance.Form.NORMAL, Tolerance.Scope.EACH));
    }

    private static Seen per(Seen seen, int series) {
        return new Seen(seen.meanSi / series, seen.scatterSi / series, seen.errorSi / series);
    }

    /** Charge at which a cell rests at a voltage; its ends where the curve does not go so far. */
    private static double inverse(CellType.Curve curve, double volt) {
        double[] charges = curve.charge().stream().mapToDouble(Double::doubleValue).toArray();
        double[] volts = curve.volt().stream().mapToDouble(Double::doubleValue).toArray();
        double low = 0;
        double high = 1;
        for (int k = 0; k < 50; k++) {
            double middle = (low + high) / 2;
            if (CellLaw.openCircuitV(charges, volts, middle) < volt) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Parts that were warmer or colder than the air before the fans woke, packs aside. */
    static StartState warm(Plant plant, Recording recording, Throttles throttles) {
        List<StartState.Row> rows = new ArrayList<>();
        for (Track track : recording.all(Signal.TEMPERATURE)) {
            int part = Channels.heatPart(plant, track.of());
            Optional<Seen> seen = first(recording, track.signal(), track.of(), throttles);
            if (part < 0 || seen.isEmpty()) {
                continue;
            }
            OptionalDouble kelvin = OptionalDouble.of(seen.get().meanSi);
            String id = plant.heatParts().get(part).id().text();
            for (StartState.Place place : places(plant.heatParts().get(part).kind())) {
                rows.add(
                        new StartState.Row(
                                0,
                                id,
                                place,
                                kelvin,
                                OptionalDouble.empty(),
                                OptionalDouble.empty()));
            }
        }
        return new StartState("", rows);
    }

    private static List<StartState.Place> places(HeatPart.Kind kind) {
        return switch (kind) {
            case WIRE -> List.of(StartState.Place.COPPER, StartState.Place.INSULATION);
            case JOINT, FUSE, POLE -> List.of(StartState.Place.WHOLE);
            case SWITCHES -> List.of(StartState.Place.JUNCTION);
            case CONTROLLER -> List.of(StartState.Place.SINK);
            case WINDING -> List.of(StartState.Place.WINDING);
            case MAGNETS -> List.of(StartState.Place.CASE);
            case CELLS -> List.of();
        };
    }
}
