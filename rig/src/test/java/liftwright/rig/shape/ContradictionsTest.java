package liftwright.rig.shape;

import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NO_SUCH_PART;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.shape.Mistake.m;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot stand together in one file. */
class ContradictionsTest {

    static Stream<Mistake> mistakes() {
        return Stream.of(
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
        mistake.isToldAtItsPlace(Good.text());
    }
}
