package liftwright.rig.shape;

import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.UNKNOWN_WORD;
import static liftwright.rig.Problem.Code.WRONG_KIND;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static liftwright.rig.shape.Mistake.m;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be wrong with what warms. */
class MalformedWarmthTest {

    static Stream<Mistake> mistakes() {
        return Stream.of(
                m(
                        "550 mm}",
                        "550 mm, insulation: ¦rubber}",
                        UNKNOWN_WORD,
                        "wiring/feeds/feed/branch/1/insulation"),
                m(
                        "550 mm}",
                        "550 mm, insulation: ¦Silicone}",
                        UNKNOWN_WORD,
                        "wiring/feeds/feed/branch/1/insulation"),
                m(
                        "550 mm}",
                        "550 mm, class: ¦180 K of}",
                        WRONG_UNIT,
                        "wiring/feeds/feed/branch/1/class"),
                m(
                        "550 mm}",
                        "550 mm, class: ¦20 °C}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/class"),
                m(
                        "550 mm}",
                        "550 mm, class: ¦180}",
                        WRONG_UNIT,
                        "wiring/feeds/feed/branch/1/class"),
                m(
                        "550 mm}",
                        "550 mm, wall: ¦0 mm}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/wall"),
                m(
                        "550 mm}",
                        "550 mm, wall: ¦30 mm}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/wall"),
                m(
                        "550 mm}",
                        "550 mm, wall: ¦1 mm ± 60 %}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/wall"),
                m(
                        "550 mm}",
                        "550 mm, bundle: ¦0}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/bundle"),
                m(
                        "550 mm}",
                        "550 mm, bundle: ¦two}",
                        WRONG_KIND,
                        "wiring/feeds/feed/branch/1/bundle"),
                m(
                        "550 mm}",
                        "550 mm, air: ¦-1 m/s}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/air"),
                m(
                        "550 mm}",
                        "550 mm, air: ¦140 m/s}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/1/air"),
                m(
                        "550 mm}",
                        "550 mm, damage: ¦2}",
                        CONTRADICTION,
                        "wiring/feeds/feed/branch/1/damage"),
                m(
                        "550 mm}",
                        "550 mm, heat capacity: ¦5 J/K}",
                        CONTRADICTION,
                        "wiring/feeds/feed/branch/1/heat capacity"),
                m(
                        "550 mm}",
                        "550 mm, ¦insulaton: PVC}",
                        UNKNOWN_KEY,
                        "wiring/feeds/feed/branch/1/insulaton"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, damage: ¦0.5}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/2/damage"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, damage: ¦2 mΩ}",
                        WRONG_UNIT,
                        "wiring/feeds/feed/branch/2/damage"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, growth: ¦2 %}",
                        WRONG_UNIT,
                        "wiring/feeds/feed/branch/2/growth"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, growth: ¦-2 %/s}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/2/growth"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, growth: ¦200 %/s}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/2/growth"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, heat capacity: ¦0 J/K}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/branch/2/heat capacity"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, insulation: ¦PVC}",
                        CONTRADICTION,
                        "wiring/feeds/feed/branch/2/insulation"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, wall: ¦1 mm}",
                        CONTRADICTION,
                        "wiring/feeds/feed/branch/2/wall"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, speed: ¦slow}",
                        CONTRADICTION,
                        "wiring/feeds/feed/branch/2/speed"),
                m(
                        "bullet 6 mm}",
                        "bullet 6 mm, time constant: ¦5 s}",
                        CONTRADICTION,
                        "wiring/feeds/feed/branch/2/time constant"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, speed: ¦quick}",
                        UNKNOWN_WORD,
                        "wiring/feeds/feed/trunk/2/speed"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, heat capacity: ¦5 W}",
                        WRONG_UNIT,
                        "wiring/feeds/feed/trunk/2/heat capacity"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, growth: ¦2 %/s}",
                        CONTRADICTION,
                        "wiring/feeds/feed/trunk/2/growth"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, time doubt: ¦30 %}",
                        NOT_A_QUANTITY,
                        "wiring/feeds/feed/trunk/2/time doubt"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, time constant: ¦0 s}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/time constant"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: ¦[{current: 350 A, time: 60 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: ¦250 A, time: 60 s}, {current: 500 A,"
                                + " time: 5 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/1/current"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: 60 s}, {current: ¦350 A,"
                                + " time: 5 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/2/current"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: 60 s}, {current: 500 A,"
                                + " time: ¦60 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/2/time"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: ¦0 s}, {current: 500 A,"
                                + " time: 5 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/1/time"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: 60 s}, ¦{current: 500 A}]}",
                        MISSING_KEY,
                        "wiring/feeds/feed/trunk/2/points/2/time"),
                m("2.5 A}", "2.5 A, magnets: ¦XH}", UNKNOWN_WORD, "fan types/F140/motor/magnets"),
                m(
                        "2.5 A}",
                        "2.5 A, magnet fade: ¦2 %/K}",
                        OUT_OF_RANGE,
                        "fan types/F140/motor/magnet fade"),
                m(
                        "2.5 A}",
                        "2.5 A, magnet fade: ¦0.1 %}",
                        WRONG_UNIT,
                        "fan types/F140/motor/magnet fade"),
                m(
                        "2.5 A}",
                        "2.5 A, winding class: ¦180 W}",
                        WRONG_UNIT,
                        "fan types/F140/motor/winding class"),
                m(
                        "2.5 A}",
                        "2.5 A, winding heat capacity: ¦0 J/K}",
                        OUT_OF_RANGE,
                        "fan types/F140/motor/winding heat capacity"),
                m(
                        "2.5 A}",
                        "2.5 A, case heat capacity: ¦160 J}",
                        WRONG_UNIT,
                        "fan types/F140/motor/case heat capacity"),
                m(
                        "2.5 A}",
                        "2.5 A, winding to case: ¦1.5 W/K ± 60 %}",
                        OUT_OF_RANGE,
                        "fan types/F140/motor/winding to case"),
                m(
                        "2.5 A}",
                        "2.5 A, case to air: ¦-4 W/K}",
                        OUT_OF_RANGE,
                        "fan types/F140/motor/case to air"),
                m(
                        "mass: 0.12 kg}",
                        "mass: 0.12 kg, heat capacity: ¦60 J/K ± 60 J/K bound}",
                        OUT_OF_RANGE,
                        "fan types/F140/controller/heat capacity"),
                m(
                        "mass: 0.12 kg}",
                        "mass: 0.12 kg, junction to sink: ¦15 J/K}",
                        WRONG_UNIT,
                        "fan types/F140/controller/junction to sink"),
                m(
                        "mass: 0.12 kg}",
                        "mass: 0.12 kg, junction heat capacity: ¦0 J/K}",
                        OUT_OF_RANGE,
                        "fan types/F140/controller/junction heat capacity"),
                m(
                        "mass: 0.12 kg}",
                        "mass: 0.12 kg, to air: ¦warm}",
                        NOT_A_QUANTITY,
                        "fan types/F140/controller/to air"),
                m(
                        "LiPo}",
                        "LiPo, thermal: {heat capacity: ¦165 W/K}}",
                        WRONG_UNIT,
                        "cells/C80/thermal/heat capacity"),
                m(
                        "LiPo}",
                        "LiPo, thermal: {core to surface: ¦0 W/K}}",
                        OUT_OF_RANGE,
                        "cells/C80/thermal/core to surface"),
                m(
                        "LiPo}",
                        "LiPo, thermal: {surface to air: ¦cold}}",
                        NOT_A_QUANTITY,
                        "cells/C80/thermal/surface to air"),
                m(
                        "LiPo}",
                        "LiPo, thermal: {¦to air: 1 W/K}}",
                        UNKNOWN_KEY,
                        "cells/C80/thermal/to air"),
                m("LiPo}", "LiPo, thermal: ¦165 J/K}", WRONG_KIND, "cells/C80/thermal"),
                m(
                        "3.4 V}",
                        "3.4 V, wire below class: ¦20 °C of}",
                        WRONG_UNIT,
                        "limits/wire below class"),
                m(
                        "3.4 V}",
                        "3.4 V, wire below class: ¦-5 K}",
                        OUT_OF_RANGE,
                        "limits/wire below class"),
                m(
                        "3.4 V}",
                        "3.4 V, joint temperature: ¦900 °C}",
                        OUT_OF_RANGE,
                        "limits/joint temperature"),
                m(
                        "3.4 V}",
                        "3.4 V, touch temperature: ¦-90 °C}",
                        OUT_OF_RANGE,
                        "limits/touch temperature"),
                m(
                        "3.4 V}",
                        "3.4 V, controller junction: ¦95 V}",
                        WRONG_UNIT,
                        "limits/controller junction"),
                m("3.4 V}", "3.4 V, motor winding: ¦hot}", NOT_A_QUANTITY, "limits/motor winding"),
                m("3.4 V}", "3.4 V, magnets: ¦80}", WRONG_UNIT, "limits/magnets"),
                m(
                        "3.4 V}",
                        "3.4 V, cell temperature: ¦-90 °C}",
                        OUT_OF_RANGE,
                        "limits/cell temperature"),
                m("3.4 V}", "3.4 V, cell at start: ¦15 A}", WRONG_UNIT, "limits/cell at start"),
                m(
                        "  reserve: 20 %\n",
                        "  reserve: 20 %\n  runs: ¦0\n", OUT_OF_RANGE, "demands/runs"),
                m(
                        "  reserve: 20 %\n",
                        "  reserve: 20 %\n  runs: ¦some\n", WRONG_KIND, "demands/runs"),
                m(
                        "  reserve: 20 %\n",
                        "  reserve: 20 %\n  pause: ¦-1 s\n", OUT_OF_RANGE, "demands/pause"),
                m(
                        "  reserve: 20 %\n",
                        "  reserve: 20 %\n  pause: ¦5 m\n", WRONG_UNIT, "demands/pause"),
                m(
                        "poles: 4}",
                        "poles: 4, heat capacity: ¦0 J/K}",
                        OUT_OF_RANGE,
                        "wiring/contactors/main/heat capacity"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void oneMistakeGivesOneProblemAtItsPlace(Mistake mistake) {
        mistake.isToldAtItsPlace(Good.text());
    }
}
