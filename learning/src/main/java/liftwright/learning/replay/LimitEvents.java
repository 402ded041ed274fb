package liftwright.learning.replay;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.plant.Plant;
import liftwright.plant.recording.Track;
import liftwright.rig.CellType;
import liftwright.rig.Fan;
import liftwright.rig.LimitName;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/** Readings that go beyond a limit of the rig, whatever was expected of them. */
final class LimitEvents {

    /** So many samples one after the other, none of them within the limit. */
    private static final int IN_A_ROW = 3;

    /** And beyond it by so many standard deviations of the channel's noise. */
    private static final double SIGMAS = 2;

    /** A limit of a reading. */
    private record Held(Event.Kind kind, double si, boolean above, String origin) {}

    private LimitEvents() {}

    static List<Event> of(Plant plant, Track track, Series series) {
        return limits(plant, track).stream()
                .flatMap(limit -> reached(track, series, limit).stream())
                .toList();
    }

    private static Optional<Event> reached(Track track, Series series, Held limit) {
        double beyond = SIGMAS * Noise.of(series.measuredSi());
        int stay = 0;
        for (int k = 0; k < series.size(); k++) {
            double si = series.measuredSi()[k];
            boolean out = limit.above ? si > limit.si + beyond : si < limit.si - beyond;
            stay = out ? stay + 1 : 0;
            if (stay == Math.min(IN_A_ROW, series.size())) {
                int at = k - stay + 1;
                return Optional.of(
                        new Event(
                                limit.kind,
                                series.timesS()[at],
                                track.of(),
                                track.name(),
                                Sentence.words(track.name() + " ")
                                        .then(Measures.of(track.signal()), series.measuredSi()[at])
                                        .then(limit.above ? " above " : " below ")
                                        .then(Measures.of(track.signal()), limit.si)
                                        .then(": " + limit.origin)));
            }
        }
        return Optional.empty();
    }

    private static List<Held> limits(Plant plant, Track track) {
        Rig rig = plant.rig();
        Optional<Pack> pack =
                rig.packs().stream().filter(of -> of.id().text().equals(track.of())).findFirst();
        Optional<Fan> fan =
                rig.fans().stream().filter(of -> of.id().text().equals(track.of())).findFirst();
        return switch (track.signal()) {
            case CELL_VOLTAGE -> List.of(sag(rig, 1));
            case VOLTAGE ->
                    pack.map(of -> List.of(sag(rig, of.series())))
                            .or(() -> fan.map(LimitEvents::brownOut))
                            .orElse(List.of());
            case CURRENT -> pack.map(LimitEvents::current).orElse(List.of());
            case WINDING_CURRENT -> fan.map(of -> winding(rig, of)).orElse(List.of());
            case SPEED -> fan.map(of -> speed(rig, of)).orElse(List.of());
            case TEMPERATURE -> temperature(plant, track);
            default -> List.of();
        };
    }

    private static Held sag(Rig rig, int series) {
        return new Held(
                Event.Kind.SAG,
                series * rig.limits().si(LimitName.CELL_UNDER_LOAD),
                false,
                "least voltage of a cell under load, "
                        + rig.limits().origin(LimitName.CELL_UNDER_LOAD));
    }

    private static List<Held> brownOut(Fan fan) {
        return fan.type().controller().cutOff().stream()
                .map(
                        least ->
                                new Held(
                                        Event.Kind.BROWN_OUT,
                                        least.si(),
                                        false,
                                        "cut-off of its controller"))
                .toList();
    }

    private static List<Held> current(Pack pack) {
        CellType cell = pack.cell();
        return cell.peakCurrent()
                .or(cell::continuousCurrent)
                .map(
                        most ->
                                List.of(
                                        new Held(
                                                Event.Kind.LIMIT_REACHED,
                                                most.si() * pack.parallel(),
                                                true,
                                                "peak current of the cell, else its continuous one,"
                                                        + " declared")))
                .orElse(List.of());
    }

    private static List<Held> winding(Rig rig, Fan fan) {
        return fan.type().controller().currentLimit().stream()
                .map(
                        most ->
                                new Held(
                                        Event.Kind.LIMIT_REACHED,
                                        most.si()
                                                * rig.limits()
                                                        .si(LimitName.CONTROLLER_CURRENT_SHARE),
                                        true,
                                        rig.limits().origin(LimitName.CONTROLLER_CURRENT_SHARE)
                                                + " share of the current limit of its controller"))
                .toList();
    }

    private static List<Held> speed(Rig rig, Fan fan) {
        return fan.type().rotor().topSpeed().stream()
                .map(
                        most ->
                                new Held(
                                        Event.Kind.LIMIT_REACHED,
                                        most.si() * rig.limits().si(LimitName.ROTOR_SPEED_SHARE),
                                        true,
                                        rig.limits().origin(LimitName.ROTOR_SPEED_SHARE)
                                                + " share of the top speed of its rotor"))
                .toList();
    }

    private static List<Held> temperature(Plant plant, Track track) {
        int part = Channels.heatPart(plant, track.of());
        return part < 0
                ? List.of()
                : List.of(
                        new Held(
                                Event.Kind.LIMIT_REACHED,
                                plant.heatParts().get(part).limitK(),
                                true,
                                plant.heatParts().get(part).limitOrigin()));
    }
}
