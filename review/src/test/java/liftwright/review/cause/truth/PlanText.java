package liftwright.review.cause.truth;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What the builder of a {@link Plan} writes down of it, as a rig file. */
final class PlanText {

    private PlanText() {}

    static String yaml(Plan plan) {
        Plan.Mount boom = plan.mounts().get(1);
        long row = plan.seats().stream().filter(seat -> seat.mount() == 0).count();
        Map<String, String> words =
                Map.ofEntries(
                        Map.entry("MASS", number(plan.body().kg())),
                        Map.entry("STATURE", number(plan.body().stature())),
                        Map.entry("BODY", plan.body().man() ? "male" : "female"),
                        Map.entry("FLEXION", degrees(plan.held()[0])),
                        Map.entry("ABDUCTION", degrees(plan.held()[1])),
                        Map.entry("ELBOW", degrees(plan.held()[3])),
                        Map.entry("HIPS", degrees(plan.body().hips())),
                        Map.entry("KNEES", degrees(plan.body().knees())),
                        Map.entry("LOOSE", degrees(plan.doubt().seatRad())),
                        Map.entry("TURN", degrees(plan.doubt().turnRad())),
                        Map.entry("AHEAD", number(1000 * boom.at()[0])),
                        Map.entry("OUT", number(-1000 * boom.at()[1])),
                        Map.entry("THRUST", number(plan.thrustN())),
                        Map.entry("POWER", number(plan.powerW())),
                        Map.entry("SWIRL", number(plan.swirl())),
                        Map.entry("WHIRL", number(plan.doubt().swirl())),
                        Map.entry("SCATTER", number(100 * plan.doubt().scatter())),
                        Map.entry("ROW", Long.toString(row)),
                        Map.entry("HALF", row == 4 ? "240" : "120"),
                        Map.entry(
                                "FANS",
                                plan.seats().stream()
                                        .map(Plan.Seat::id)
                                        .collect(Collectors.joining(", "))));
        String text = TEXT;
        for (Map.Entry<String, String> word : words.entrySet()) {
            text = text.replace("<" + word.getKey() + ">", word.getValue());
        }
        return text;
    }

    private static String degrees(double rad) {
        return number(Math.toDegrees(rad));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.9f", value);
    }

    private static final String TEXT =
            """
            liftwright: 1
            rig: Drawn   # invented by a test
            site: {elevation: 10 m, temperature: 15 °C}
            wearer:
              mass: <MASS> kg ± 0.4 kg
              stature: <STATURE> m
              body: <BODY>
              posture:
                both shoulders: {flexion: <FLEXION>°, abduction: <ABDUCTION>°}
                both elbows: {flexion: <ELBOW>°}
                both hips: {flexion: <HIPS>°}
                both knees: {flexion: <KNEES>°}
            mounts:
              back: {on: trunk, at: {back: 180 mm, up: 60 mm}, turn: {forward: 0° ± <TURN>°, right: 0° ± <TURN>°}}
              left boom: {on: trunk, at: {forward: <AHEAD> mm, left: <OUT> mm, up: 50 mm}, turn: {forward: 0° ± <TURN>°, right: 0° ± <TURN>°}, twin: right boom}
              left pod: {on: left forearm, at: {along: 60 %}, twin: right pod, turn: {forward: 0° ± <TURN>°, right: 0° ± <TURN>°}}
            fan types:
              fan:
                tip: 140 mm
                hub: 52 mm
                exit area: 128 cm²
                mass: 0.8 kg
                data: measured
                at speed: {speed: 26000 rpm, thrust: <THRUST> N ± 2 %, shaft power: <POWER> W}
                swirl: <SWIRL> ± <WHIRL>
                scatter: ± <SCATTER> % each
                installation: 1
                motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2.5 A}
                controller: {current limit: 400 A, mass: 0.12 kg}
            fans:
              - {id: back, type: fan, mount: back, row: <ROW>, from: {right: -<HALF> mm, up: 150 mm}, to: {right: <HALF> mm, up: 150 mm}, seat: {forward: 0° ± <LOOSE>° each, right: 0° ± <LOOSE>° each}}
              - {id: left-boom, type: fan, mount: left boom, row: 2, spacing: 160 mm, seat: {forward: 0° ± <LOOSE>° each, right: 0° ± <LOOSE>° each}, twin: right-boom}
              - {id: left-pod, type: fan, mount: left pod, row: 2, spacing: 150 mm, seat: {forward: 0° ± <LOOSE>° each, right: 0° ± <LOOSE>° each}, twin: right-pod}
            cells:
              cell: {chemistry: LiPo, capacity: 8 Ah, resistance: 0.9 mΩ, mass: 165 g, open circuit: LiPo}
            packs:
              - {id: p, cell: cell, series: 14, parallel: 8, mass: 19 kg, at: {mount: back, back: 60 mm}}
            wiring:
              feeds:
                - id: feed
                  from: p
                  branch: [{run: 4 AWG, length: 100 mm}]
                  fans: {p.1: [<FANS>]}
            other parts:
              - {id: frame, mass: 8 kg ± 2 %, box: [300 mm, 900 mm, 400 mm], at: {mount: back}}
            control: {kind: shared throttle}
            """;
}
