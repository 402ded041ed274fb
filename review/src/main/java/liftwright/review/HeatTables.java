package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.plant.heat.HeatPart;

/** How hot each part gets, when, and where the watts go. */
final class HeatTables {

    /** Curves beyond these are told apart by nobody. */
    private static final int MOST_CURVES = 5;

    private HeatTables() {}

    static Section hottest(HeatParts parts, HeatRun run, HeatJudgement judgement) {
        record Row(double over, List<Value> values) {}
        List<Row> rows = new ArrayList<>();
        for (HeatParts.Group group : parts.groups()) {
            int worst = HeatWorst.inWhatIsAsked(parts, group, run);
            double hottestK = run.asked().hottestK(worst);
            double[] draws = HeatWorst.hottestK(group, judgement);
            double limitK = parts.part(worst).limitK();
            boolean limited = parts.isLimited(worst);
            rows.add(
                    new Row(
                            hottestK - limitK,
                            List.of(
                                    Value.words("part", parts.id(worst)),
                                    Value.words("what", parts.what(group, worst)),
                                    Value.of(
                                            "hottest",
                                            hottestK,
                                            Bands.shown(Bands.about(hottestK, draws))),
                                    limited
                                            ? Value.of("heat-limit", limitK)
                                            : Value.words("heat-limit", "none of its own"),
                                    limited
                                            ? Value.of("heat-margin", limitK - hottestK)
                                            : Value.words("heat-margin", "–"),
                                    Value.of("hottest-at", run.asked().hottestAtS(worst)))));
        }
        rows.sort(Comparator.comparingDouble(Row::over).reversed());
        return new Section.Table(
                "hottest",
                "The hottest moment of each part in what is asked, rest after it included",
                List.of("part", "what", "hottest", "heat-limit", "heat-margin", "hottest-at"),
                rows.stream().map(Row::values).toList());
    }

    static Section losses(HeatParts parts, HeatRun run) {
        Map<HeatPart.Kind, Double> byKind = new EnumMap<>(HeatPart.Kind.class);
        for (int part = 0; part < parts.all().size(); part++) {
            byKind.merge(parts.part(part).kind(), run.energy().partJ().get(part), Double::sum);
        }
        double overS = Math.max(run.flownS(), 1e-9);
        List<Section.Shares.Share> shares = new ArrayList<>();
        shares.add(share("rotors, and so the jets", run.energy().shaftJ() / overS));
        byKind.forEach(
                (kind, energyJ) -> {
                    if (energyJ != 0) {
                        shares.add(share(receiver(kind), energyJ / overS));
                    }
                });
        shares.sort(
                Comparator.comparingDouble(
                                (Section.Shares.Share share) ->
                                        share.value().figure()
                                                        instanceof Value.Figure.Amount(var si, _)
                                                ? si
                                                : 0)
                        .reversed());
        return new Section.Shares(
                "losses",
                "Where the watts go, mean of the flight that is asked",
                Value.of("mean-power", run.energy().sourceJ() / overS),
                shares);
    }

    private static Section.Shares.Share share(String label, double watt) {
        return new Section.Shares.Share(label, Value.of("mean-power", watt));
    }

    private static String receiver(HeatPart.Kind kind) {
        return switch (kind) {
            case WIRE -> "wires";
            case JOINT -> "joints";
            case FUSE -> "fuses";
            case POLE -> "contactors";
            case SWITCHES -> "switches of the controllers";
            case CONTROLLER -> "what the controllers draw besides";
            case WINDING -> "windings";
            case MAGNETS -> "iron and friction of the motors";
            case CELLS -> "cells";
        };
    }

    /** Those nearest their limits over the flight onwards, each with its limit. */
    static List<Section> temperatures(HeatParts parts, HeatRun run) {
        if (run.curve().size() < 2) {
            return List.of();
        }
        List<Integer> nearest =
                parts.groups().stream()
                        .map(group -> HeatWorst.inFlight(parts, group, run))
                        .filter(parts::isLimited)
                        .sorted(
                                Comparator.comparingDouble(
                                        part ->
                                                parts.part(part).limitK()
                                                        - run.onwards().hottestK(part)))
                        .limit(MOST_CURVES)
                        .toList();
        List<Plot.Series> series = new ArrayList<>();
        for (int part : nearest) {
            double limitK = parts.part(part).limitK();
            series.add(
                    new Plot.Series(
                            parts.what(part) + " " + parts.id(part),
                            Plot.Mark.LINE,
                            run.curve().stream()
                                    .map(at -> new Plot.Point(at.timeS(), at.kelvin().get(part)))
                                    .toList()));
            run.reached(part)
                    .ifPresent(
                            at ->
                                    series.add(
                                            new Plot.Series(
                                                    "its limit",
                                                    Plot.Mark.CROSS,
                                                    List.of(new Plot.Point(at, limitK)))));
        }
        return nearest.isEmpty()
                ? List.of()
                : List.of(
                        new Plot(
                                "temperatures",
                                "The parts nearest their limits, as far as the flight goes",
                                "time",
                                "temperature",
                                series));
    }

    /** Every part at moments of what is asked, with the rest after it. */
    static Section playback(Plant plant, HeatParts parts, HeatRun run) {
        HeatPlaces places = new HeatPlaces(plant);
        List<Section.Playback.Track> tracks = new ArrayList<>();
        for (int part = 0; part < parts.all().size(); part++) {
            int number = part;
            if (!parts.isLimited(part)) {
                continue;
            }
            tracks.add(
                    new Section.Playback.Track(
                            parts.id(part),
                            HeatParts.word(parts.part(part).kind()),
                            places.from(parts.rig(), parts.part(part)),
                            places.to(parts.rig(), parts.part(part)),
                            parts.part(part).limitK(),
                            run.played().stream()
                                    .map(at -> tenths(at.kelvin().get(number)))
                                    .toList()));
        }
        return new Section.Playback(
                "heat-playback",
                "Temperatures in what is asked, rest after it included",
                run.played().stream().map(HeatMoments.Moment::timeS).toList(),
                "temperature",
                tracks);
    }

    /** No thermometer of a workshop reads closer. */
    private static double tenths(double kelvin) {
        return Math.rint(10 * kelvin) / 10;
    }
}
