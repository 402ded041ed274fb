package liftwright.review.cause;

import java.util.Locale;

/**
 * What the builder of a {@link RicherRig} writes down of it.
 *
 * @param aheadM of the booms, forward of the shoulders
 * @param outM of the booms, to each side
 * @param thrustN of a fan at its speed
 * @param powerW at its shaft there
 * @param row fans in the row on the back
 * @param fans their ids, as a list between commas
 */
record RicherText(
        double massKg,
        double statureM,
        double aheadM,
        double outM,
        double thrustN,
        double powerW,
        double swirl,
        int row,
        String fans) {

    private static final String SEAT = "seat: {forward: 0° ± 0.15° each, right: 0° ± 0.15° each}";
    private static final String TURN = "turn: {forward: 0° ± 0.15°, right: 0° ± 0.15°}";

    String yaml() {
        return """
        liftwright: 1
        rig: Drawn   # invented by a test
        site: {elevation: 10 m, temperature: 15 °C}
        wearer:
          mass: MASS kg ± 0.4 kg
          stature: STATURE m
          body: male
          posture:
            both shoulders: {flexion: 10°, abduction: 18°}
            both elbows: {flexion: 15°}
        mounts:
          back: {on: trunk, at: {back: 180 mm, up: 60 mm}, TURN}
          left boom: {on: trunk, at: {forward: AHEAD mm, left: OUT mm, up: 50 mm}, TURN, twin: right boom}
          left pod: {on: left forearm, at: {along: 60 %}, twin: right pod, TURN}
        fan types:
          fan:
            tip: 140 mm
            hub: 52 mm
            exit area: 128 cm²
            mass: 0.8 kg
            data: measured
            at speed: {speed: 26000 rpm, thrust: THRUST N ± 2 %, shaft power: POWER W}
            swirl: SWIRL ± 0.10
            scatter: ± 2 % each
            motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2.5 A}
            controller: {current limit: 400 A, mass: 0.12 kg}
        fans:
          - {id: back, type: fan, mount: back, row: ROW, from: {right: -HALF mm, up: 150 mm}, to: {right: HALF mm, up: 150 mm}, SEAT}
          - {id: left-boom, type: fan, mount: left boom, row: 2, spacing: 160 mm, SEAT, twin: right-boom}
          - {id: left-pod, type: fan, mount: left pod, row: 2, spacing: 150 mm, SEAT, twin: right-pod}
        cells:
          cell: {chemistry: LiPo, capacity: 8 Ah, resistance: 0.9 mΩ, mass: 165 g, open circuit: LiPo}
        packs:
          - {id: p, cell: cell, series: 14, parallel: 8, at: {mount: back, back: 60 mm}}
        wiring:
          feeds:
            - id: feed
              from: p
              branch: [{run: 4 AWG, length: 100 mm}]
              fans: {ALL]}
        other parts:
          - {id: frame, mass: 8 kg ± 2 %, box: [300 mm, 900 mm, 400 mm], at: {mount: back}}
        control: {kind: shared throttle}
        """
                .replace("MASS", number(massKg))
                .replace("STATURE", number(statureM))
                .replace("TURN", TURN)
                .replace("SEAT", SEAT)
                .replace("AHEAD", number(1000 * aheadM))
                .replace("OUT", number(1000 * outM))
                .replace("THRUST", number(thrustN))
                .replace("POWER", number(powerW))
                .replace("SWIRL", number(swirl))
                .replace("ROW", "" + row)
                .replace("HALF", number(row == 4 ? 240 : 120))
                .replace("ALL", "p.1: [" + fans);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }
}
