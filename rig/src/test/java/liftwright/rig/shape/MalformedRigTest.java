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
import static liftwright.rig.shape.Mistake.m;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import liftwright.rig.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be wrong with a file as a whole: its quantities, keys, words, names and references. */
class MalformedRigTest {

    private static final String BEAM = "trunk, at: {forward: -180 mm}, beam: ";
    private static final String TUBE =
            "outside: 30 mm, wall: 2 mm, modulus: 69 GPa, shear modulus: 26 GPa}";

    static Stream<Mistake> words() {
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
                                + "{runs: back, length: 1 m, outside: 30 mm, wall: ¦16 mm, modulus:"
                                + " 69 GPa, shear modulus: 26 GPa}",
                        CONTRADICTION,
                        "mounts/back/beam/wall"),
                m(
                        "trunk, at: {forward: -180 mm}",
                        BEAM
                                + "{runs: back, length: 1 m, outside: 30 mm, wall: 2 mm, modulus:"
                                + " ¦69 N, shear modulus: 26 GPa}",
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
                        "fans/top/seat/down"));
    }

    static Stream<Mistake> names() {
        return Stream.of(
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
                m("fans: [top]", "fans: [top, ¦tip]", NO_SUCH_PART, "control/groups/back/fans/2"));
    }

    @ParameterizedTest
    @MethodSource({"words", "names"})
    void oneMistakeGivesOneProblemAtItsPlace(Mistake mistake) {
        mistake.isToldAtItsPlace(Good.text());
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
