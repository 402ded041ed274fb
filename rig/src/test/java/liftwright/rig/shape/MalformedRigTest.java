package liftwright.rig.shape;

import static liftwright.rig.Problem.Code.BAD_ID;
import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.DUPLICATE_ID;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.NO_SUCH_PART;
import static liftwright.rig.Problem.Code.OUTSIDE_FOLDER;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.UNKNOWN_WORD;
import static liftwright.rig.Problem.Code.UNSUPPORTED_VERSION;
import static liftwright.rig.Problem.Code.WRONG_KIND;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One mistake in a good file gives one problem: its code, its line and column, its path. In the
 * wrong text the sign ¦ stands where the problem must point; it is taken out before reading.
 */
class MalformedRigTest {

    private static final char HERE = '¦';

    private static final String BEAM = "trunk, at: {forward: -180 mm}, beam: ";
    private static final String TUBE =
            "outside: 30 mm, wall: 2 mm, modulus: 69 GPa, shear modulus: 26 GPa}";

    record Mistake(String right, String wrong, Code code, String path) {
        @Override
        public String toString() {
            return code + ": " + wrong;
        }
    }

    private static Mistake m(String right, String wrong, Code code, String path) {
        return new Mistake(right, wrong, code, path);
    }

    static Stream<Mistake> mistakes() {
        return Stream.of(
                // the file as a whole
                m("liftwright: 1", "liftwright: ¦2", UNSUPPORTED_VERSION, "liftwright"),
                m("liftwright: 1", "liftwright: ¦one", WRONG_KIND, "liftwright"),
                m("rig: Small\n", "rig:¦\n", WRONG_KIND, "rig"),
                m("revision: 2", "revision: ¦-2", OUT_OF_RANGE, "revision"),
                m("revision: 2", "revision: ¦1.5", WRONG_KIND, "revision"),
                m("revision: 2", "¦revison: 2", UNKNOWN_KEY, "revison"),
                m("limits: {", "¦limit: {", UNKNOWN_KEY, "limit"),
                m("site: {elevation: 4 m,", "site: {¦altitude: 4 m,", UNKNOWN_KEY, "site/altitude"),
                // quantities
                m("elevation: 4 m,", "elevation: ¦4 kg,", WRONG_UNIT, "site/elevation"),
                m("elevation: 4 m,", "elevation: ¦4,", WRONG_UNIT, "site/elevation"),
                m("elevation: 4 m,", "elevation: ¦9000 m,", OUT_OF_RANGE, "site/elevation"),
                m("elevation: 4 m,", "elevation: ¦high,", NOT_A_QUANTITY, "site/elevation"),
                m("elevation: 4 m,", "elevation: ¦[4 m],", WRONG_KIND, "site/elevation"),
                m("humidity: 80 %", "humidity: ¦180 %", OUT_OF_RANGE, "site/humidity"),
                m("12 °C", "¦12 rpm", WRONG_UNIT, "site/temperature"),
                m("hover: 60 s", "hover: ¦-60 s", OUT_OF_RANGE, "demands/hover"),
                m("hover: 60 s", "hover: ¦60 parsec", WRONG_UNIT, "demands/hover"),
                m("92 N ± 3 %,", "¦92 N ± 50 %,", OUT_OF_RANGE, "fan types/F140/at speed/thrust"),
                m("92 N ± 3 %,", "¦9.2 kg ± 3 %,", WRONG_UNIT, "fan types/F140/at speed/thrust"),
                m("± 2 % each", "¦2 % each", NOT_A_QUANTITY, "fan types/F140/scatter"),
                m("-40…180 mm", "¦180…-40 mm", OUT_OF_RANGE, "packs/p/at/up"),
                m("-40…180 mm", "¦-40…180 V", WRONG_UNIT, "packs/p/at/up"),
                m("12 AWG", "¦4 mm²", NOT_A_QUANTITY, "wiring/feeds/feed/branch/1/run"),
                m("12 AWG", "¦5/0 AWG", NOT_A_QUANTITY, "wiring/feeds/feed/branch/1/run"),
                m("88 %,", "¦0 %,", OUT_OF_RANGE, "fan types/F140/intake/free area"),
                m("3.4 V}", "¦3.4 A}", WRONG_UNIT, "limits/cell under load"),
                m("share: 92 %", "share: ¦192 %", OUT_OF_RANGE, "control/groups/pods/share"),
                // keys and words
                m("  stature: 1.68 m\n", "", MISSING_KEY, "wearer/stature"),
                m("body: female", "body: ¦woman", UNKNOWN_WORD, "wearer/body"),
                m("data: measured", "data: ¦measurd", UNKNOWN_WORD, "fan types/F140/data"),
                m("on: trunk", "on: ¦torso", UNKNOWN_WORD, "mounts/back/on"),
                m("spin: alternating", "spin: ¦clockwise", UNKNOWN_WORD, "fans/top/spin"),
                m("kind: shared throttle", "kind: ¦shared", UNKNOWN_WORD, "control/kind"),
                m("swirl: 0.10", "¦swril: 0.10", UNKNOWN_KEY, "fan types/F140/swril"),
                m("    tip: 140 mm\n", "", MISSING_KEY, "fan types/F140/tip"),
                m("series: 14", "series: ¦14 s", WRONG_KIND, "packs/p/series"),
                m("series: 14", "series: ¦0", OUT_OF_RANGE, "packs/p/series"),
                m("rows: [2, 2]", "rows: ¦2", WRONG_KIND, "fans/left/rows"),
                m("[2, 2]", "[2, ¦two]", WRONG_KIND, "fans/left/rows/2"),
                m(
                        "box: [420 mm, 90 mm, 520 mm]",
                        "box: ¦[420 mm, 90 mm]",
                        OUT_OF_RANGE,
                        "other parts/frame/box"),
                m("data: measured", "bench: ¦../bench.csv", OUTSIDE_FOLDER, "fan types/F140/bench"),
                m("data: measured", "bench: ¦/bench.csv", OUTSIDE_FOLDER, "fan types/F140/bench"),
                m("data: measured", "bench: ¦bench.txt", WRONG_KIND, "fan types/F140/bench"),
                m("data: measured", "lot: {worth: ¦86 kg}", WRONG_UNIT, "fan types/F140/lot/worth"),
                m(
                        "data: measured",
                        "lot: {measured: {a: ¦3}}",
                        OUT_OF_RANGE,
                        "fan types/F140/lot/measured/a"),
                m(
                        "data: measured",
                        "lot: {measured: ¦{}}",
                        OUT_OF_RANGE,
                        "fan types/F140/lot/measured"),
                m(
                        "data: measured",
                        "lot: {stand: ¦0.9, worth: 0.9}",
                        NOT_A_QUANTITY,
                        "fan types/F140/lot/stand"),
                m(
                        "data: measured",
                        "lot: {bench: lot.csv, worth: ¦0.9}",
                        CONTRADICTION,
                        "fan types/F140/lot/worth"),
                // beams and seats
                m(
                        "trunk, at: {forward: -180 mm}",
                        BEAM + "{runs: ¦out, length: 1 m, " + TUBE,
                        UNKNOWN_WORD,
                        "mounts/back/beam/runs"),
                m(
                        "trunk, at: {forward: -180 mm}",
                        BEAM
                                + "{runs: back, length: 1 m, outside: 30 mm, wall: ¦16 mm, modulus: 69 GPa, shear modulus: 26 GPa}",
                        CONTRADICTION,
                        "mounts/back/beam/wall"),
                m(
                        "trunk, at: {forward: -180 mm}",
                        BEAM
                                + "{runs: back, length: 1 m, outside: 30 mm, wall: 2 mm, modulus: ¦69 N, shear modulus: 26 GPa}",
                        WRONG_UNIT,
                        "mounts/back/beam/modulus"),
                m(
                        "trunk, at: {forward: -180 mm}",
                        BEAM + "{runs: ¦outboard, length: 1 m, " + TUBE,
                        CONTRADICTION,
                        "mounts/back/beam/runs"),
                m(
                        "cant: {outboard: 4°},",
                        "seat: {outboard: ¦4 mm},",
                        WRONG_UNIT,
                        "fans/top/seat/outboard"),
                m(
                        "cant: {outboard: 4°},",
                        "seat: {down: ¦4°},",
                        CONTRADICTION,
                        "fans/top/seat/down"),
                // what warms
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
                        "{fuse: 250 A, points: [{current: ¦250 A, time: 60 s}, {current: 500 A, time: 5 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/1/current"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: 60 s}, {current: ¦350 A, time: 5 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/2/current"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: 60 s}, {current: 500 A, time: ¦60 s}]}",
                        OUT_OF_RANGE,
                        "wiring/feeds/feed/trunk/2/points/2/time"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, points: [{current: 350 A, time: ¦0 s}, {current: 500 A, time: 5 s}]}",
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
                        "wiring/contactors/main/heat capacity"),
                // names
                m("id: shell", "id: ¦she.ll", BAD_ID, "other parts/she.ll/id"),
                m("id: shell", "id: ¦9shell", BAD_ID, "other parts/9shell/id"),
                m("    back: {fans", "    ¦ba.ck: {fans", BAD_ID, "control/groups/ba.ck"),
                m("id: shell", "id: ¦frame", DUPLICATE_ID, "other parts/frame/id"),
                m("id: shell", "id: ¦top", DUPLICATE_ID, "other parts/top/id"),
                m("twin: other shell", "twin: ¦top", DUPLICATE_ID, "other parts/shell/twin"),
                m("twin: right pod", "twin: ¦back", DUPLICATE_ID, "mounts/left pod/twin"),
                // references
                m(
                        "mount: left pod, rows",
                        "mount: ¦left pot, rows",
                        NO_SUCH_PART,
                        "fans/left/mount"),
                m("{id: top, type: F140", "{id: top, type: ¦F14", NO_SUCH_PART, "fans/top/type"),
                m("cell: C80", "cell: ¦C8O", NO_SUCH_PART, "packs/p/cell"),
                m(
                        "open circuit: LiPo",
                        "open circuit: ¦LiPO",
                        NO_SUCH_PART,
                        "cells/C80/open circuit"),
                m("bullet 8 mm", "¦bullet 9 mm", NO_SUCH_PART, "wiring/feeds/feed/trunk/1/joint"),
                m(
                        "contactor: main",
                        "contactor: ¦mian",
                        NO_SUCH_PART,
                        "wiring/feeds/feed/trunk/3/contactor"),
                m("from: p\n", "from: ¦q\n", NO_SUCH_PART, "wiring/feeds/feed/from"),
                m(
                        "left.1, right.1",
                        "left.1, ¦right.9",
                        NO_SUCH_PART,
                        "wiring/feeds/feed/fans/p.1/3"),
                m("        p.4: [", "        p.5: ¦[", NO_SUCH_PART, "wiring/feeds/feed/fans/p.5"),
                m("fans: [top]", "fans: [top, ¦tip]", NO_SUCH_PART, "control/groups/back/fans/2"),
                // what cannot be together
                m(
                        "    swirl:",
                        "    coefficients: ¦{thrust: 1e-5 N·s²/rad², torque: 2e-7 N·m·s²/rad²}\n"
                                + "    swirl:",
                        CONTRADICTION,
                        "fan types/F140/coefficients"),
                m(
                        "left.1, right.1",
                        "left.1, ¦top.1",
                        CONTRADICTION,
                        "wiring/feeds/feed/fans/p.1/3"),
                m("poles: 4", "poles: ¦3", CONTRADICTION, "wiring/contactors/main/poles"),
                m(
                        "fans: [left, right]",
                        "fans: [left, right, ¦top.2]",
                        CONTRADICTION,
                        "control/groups/pods/fans/3"),
                m(
                        "  groups:\n    back: {fans: [top]}",
                        "  groups:\n    ¦back: {fans: [top.1]}",
                        CONTRADICTION,
                        "control/groups"),
                m(
                        "from: {right: -240 mm}, to: {right: 240 mm}, cant: {outboard: 4°}",
                        "from: {back: 240 mm}, to: {forward: 240 mm}, cant: {outboard: ¦4°}",
                        CONTRADICTION,
                        "fans/top/cant/outboard"),
                m(
                        "cant: {outboard: 4°}",
                        "cant: {outward: ¦4°}",
                        CONTRADICTION,
                        "fans/top/cant/outward"),
                m("cant: {outboard: 4°}", "cant: {down: ¦4°}", CONTRADICTION, "fans/top/cant/down"),
                m("spin: alternating", "spin: ¦[left-hand]", CONTRADICTION, "fans/top/spin"),
                m(
                        "to: {right: 240 mm}",
                        "to: {right: 240 mm, left: ¦1 mm}",
                        CONTRADICTION,
                        "fans/top/to/left"),
                m(
                        "on: trunk, at: {forward",
                        "on: trunk, at: {outboard: ¦1 mm, forward",
                        CONTRADICTION,
                        "mounts/back/at/outboard"),
                m(
                        "at: {mount: back, up: -40…180 mm}",
                        "at: {mount: back, along: ¦1 mm}",
                        CONTRADICTION,
                        "packs/p/at/along"),
                m(
                        "at: {mount: back, up: -40…180 mm}",
                        "at: ¦{up: 10 mm}",
                        MISSING_KEY,
                        "packs/p/at/mount"),
                m(
                        "twin: right pod}",
                        "turn: {forward: 2°, back: ¦2°}, twin: right pod}",
                        CONTRADICTION,
                        "mounts/left pod/turn/back"),
                m("hub: 52 mm", "hub: ¦152 mm", OUT_OF_RANGE, "fan types/F140/hub"),
                m(
                        "twin: other shell",
                        "twin: other shell, at2: 1",
                        UNKNOWN_KEY,
                        "other parts/shell/at2"),
                m("spacing: 150 mm, ", "", MISSING_KEY, "fans/left/spacing"),
                m(
                        "twin: right}",
                        "twin: right, next row: ¦back}",
                        CONTRADICTION,
                        "fans/left/next row"),
                m(
                        "twin: right}",
                        "twin: right, except: {left.5: ¦{spin: left-hand}}}",
                        NO_SUCH_PART,
                        "fans/left/except/left.5"),
                m(
                        "twin: right}",
                        "twin: right, serials: {left.7: ¦A17}}",
                        NO_SUCH_PART,
                        "fans/left/serials/left.7"),
                m(
                        "spin: alternating}",
                        "spin: alternating, like: ¦left}",
                        NO_SUCH_PART,
                        "fans/top/like"),
                m(
                        "open circuit: LiPo",
                        "open circuit: [{charge: 0 %, voltage: 3 V}, "
                                + "{charge: ¦0 %, voltage: 4 V}]",
                        OUT_OF_RANGE,
                        "cells/C80/open circuit/2/charge"),
                m(
                        "open circuit: LiPo",
                        "open circuit: ¦[{charge: 0 %, voltage: 3 V}, "
                                + "{charge: 90 %, voltage: 4 V}]",
                        OUT_OF_RANGE,
                        "cells/C80/open circuit"),
                m(
                        "open circuit: LiPo",
                        "open circuit: LiPo, resistance over charge:"
                                + " [{charge: 10 %, factor: 2}, {charge: ¦10 %, factor: 1}]",
                        OUT_OF_RANGE,
                        "cells/C80/resistance over charge/2/charge"),
                m(
                        "open circuit: LiPo",
                        "open circuit: LiPo, resistance over charge:"
                                + " ¦[{charge: 0 %, factor: 2}, {charge: 100 %, factor: 1}]",
                        OUT_OF_RANGE,
                        "cells/C80/resistance over charge"),
                m(
                        "{fuse: 250 A}",
                        "{fuse: 250 A, run: ¦12 AWG, length: 1 m}",
                        CONTRADICTION,
                        "wiring/feeds/feed/trunk/2/run"),
                m(
                        "{fuse: 250 A}",
                        "¦{rating: 250 A}",
                        MISSING_KEY,
                        "wiring/feeds/feed/trunk/2/run"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void oneMistakeGivesOneProblemAtItsPlace(Mistake mistake) {
        String good = Good.text();
        assertThat(good).containsOnlyOnce(mistake.right());
        String marked = good.replace(mistake.right(), mistake.wrong());
        int here = marked.indexOf(HERE);
        Read read = Texts.read(marked.replace("" + HERE, ""));
        List<Problem> errors = Texts.errors(read);
        assertThat(errors)
                .as("%s", errors)
                .extracting(Problem::code, p -> p.at().path())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(mistake.code(), mistake.path()));
        assertThat(read.rig()).isEmpty();
        if (here >= 0) {
            String before = marked.substring(0, here);
            int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
            String lineStart = before.substring(before.lastIndexOf('\n') + 1);
            int column = lineStart.codePointCount(0, lineStart.length()) + 1;
            assertThat(errors.getFirst().at())
                    .isEqualTo(new Problem.Place("rig.yaml", line, column, mistake.path()));
        }
    }

    @Test
    void theGoodFileIsGood() {
        assertThat(Texts.errors(Texts.read(Good.text()))).isEmpty();
    }

    @Test
    void manyMistakesAreAllToldAtOnceInTheOrderOfTheFile() {
        String bad =
                Good.text()
                        .replace("elevation: 4 m", "elevation: 4 kg")
                        .replace("body: female", "body: woman")
                        .replace("cell: C80", "cell: C81")
                        .replace("    tip: 140 mm\n", "");
        assertThat(Texts.errors(Texts.read(bad)))
                .extracting(Problem::code)
                .containsExactly(WRONG_UNIT, UNKNOWN_WORD, MISSING_KEY, NO_SUCH_PART);
    }
}
