package liftwright.rig.shape;

import static liftwright.rig.Problem.Code.BAD_ID;
import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.DUPLICATE_ID;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.NO_SUCH_PART;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.UNKNOWN_WORD;
import static liftwright.rig.Problem.Code.WRONG_KIND;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static liftwright.rig.shape.Mistake.m;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import liftwright.rig.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be wrong with kills, crew, control rules, restraint, rates and risks. */
class MalformedFailuresTest {

    private static final String GOOD = Good.resource("/format/v1-failures.yaml");
    private static final String STAND = "restraint/stand/";
    private static final String TETHER = "restraint/tether/";
    private static final String REMOTE = "wiring/kills/remote/";

    static Stream<Mistake> kills() {
        return Stream.of(
                m(
                        "{id: remote, opens: [main]",
                        "{id: remote, opens: [¦mane]",
                        NO_SUCH_PART,
                        REMOTE + "opens/1"),
                m(
                        "opens: [main], by: radio",
                        "opens: ¦[], by: radio",
                        OUT_OF_RANGE,
                        REMOTE + "opens"),
                m("by: radio", "by: ¦wireless", UNKNOWN_WORD, REMOTE + "by"),
                m("held by: watcher", "held by: ¦wacher", NO_SUCH_PART, REMOTE + "held by"),
                m("held by: wearer", "held by: ¦nobody", NO_SUCH_PART, "wiring/kills/cord/held by"),
                m("reaction: 0.9 s", "reaction: ¦-0.9 s", OUT_OF_RANGE, REMOTE + "reaction"),
                m("delay: 30 ms", "delay: ¦30 mm", WRONG_UNIT, REMOTE + "delay"),
                m(
                        "order: command zero then open",
                        "order: ¦command zero only",
                        CONTRADICTION,
                        REMOTE + "order"),
                m(
                        "{id: idle, by: software,",
                        "{id: idle, by: software, order: ¦open at once,",
                        CONTRADICTION,
                        "wiring/kills/idle/order"),
                m(
                        "by: lanyard",
                        "by: lanyard, radio: ¦kill radio",
                        CONTRADICTION,
                        "wiring/kills/cord/radio"),
                m("radio: kill radio", "radio: ¦kill/radio", BAD_ID, REMOTE + "radio"),
                m("fed by: p.1", "fed by: ¦p.9", NO_SUCH_PART, REMOTE + "fed by"),
                m("fed by: p.1", "fed by: ¦p", CONTRADICTION, REMOTE + "fed by"),
                m("fed by: p.1", "fed by: ¦top.1", NO_SUCH_PART, REMOTE + "fed by"),
                m("fed by: p.2", "fed by: ¦q.1", NO_SUCH_PART, "control/fed by"),
                m("ground: signal ground", "ground: ¦signal line", NO_SUCH_PART, REMOTE + "ground"),
                m("[relay board, hip plug]", "[relay board, ¦3]", BAD_ID, REMOTE + "through/2"),
                m(
                        "opens on loss: yes",
                        "opens on loss: ¦maybe",
                        UNKNOWN_WORD,
                        REMOTE + "opens on loss"),
                m("{id: cord, ", "¦{", MISSING_KEY, "wiring/kills/2/id"),
                m("{id: cord", "{id: ¦remote", DUPLICATE_ID, "wiring/kills/remote/id"),
                m(
                        "coil from: own battery of the frame",
                        "coil from: ¦own pack",
                        NO_SUCH_PART,
                        "wiring/contactors/main/coil from"),
                m(
                        "from: board, to: top.1",
                        "from: ¦bord, to: top.1",
                        NO_SUCH_PART,
                        "wiring/grounds/signal ground/from"),
                m(
                        "from: board, to: top.1",
                        "from: board, to: ¦board",
                        CONTRADICTION,
                        "wiring/grounds/signal ground/to"),
                m(
                        "resistance: 30 mΩ",
                        "resistance: ¦30 mV",
                        WRONG_UNIT,
                        "wiring/grounds/signal ground/resistance"),
                m("  second: {", "  wearer: ¦{", CONTRADICTION, "crew/wearer"));
    }

    static Stream<Mistake> rules() {
        return Stream.of(
                m("height: 0.4 m", "height: ¦0 m", OUT_OF_RANGE, "demands/height"),
                m("yaw: free", "yaw: ¦loose", UNKNOWN_WORD, "demands/yaw"),
                m(
                        "impact speed: 2.8 m/s",
                        "impact speed: ¦2.8 m",
                        WRONG_UNIT,
                        "limits/impact speed"),
                m("noise: 83 dBA", "noise: ¦83 %", WRONG_UNIT, "limits/noise"),
                m(
                        "noise: 104 dBA ± 3 dBA",
                        "noise: ¦204 dBA",
                        OUT_OF_RANGE,
                        "fan types/F140/noise"),
                m(
                        "signal loss: idle",
                        "signal loss: ¦coast",
                        UNKNOWN_WORD,
                        "fan types/F140/controller/signal loss"),
                m("blades: 12", "blades: ¦12.5", WRONG_KIND, "fan types/F140/rotor/blades"),
                m("link loss: cut", "link loss: ¦drop", UNKNOWN_WORD, "control/link loss"),
                m("loss time: 0.2 s", "loss time: ¦0 s", OUT_OF_RANGE, "control/loss time"),
                m("rise: 50 %/s", "rise: ¦50 %", WRONG_UNIT, "control/rise"),
                m("live below: 3 %", "live below: ¦103 %", OUT_OF_RANGE, "control/live below"),
                m("stop: hold-to-run", "stop: ¦hold to run", UNKNOWN_WORD, "control/stop"),
                m("computers: 2", "computers: ¦0", OUT_OF_RANGE, "control/computers"),
                m("lowering: 0.85", "lowering: ¦1.2", OUT_OF_RANGE, "control/lowering"),
                m("{count: 2}", "{count: ¦0}", OUT_OF_RANGE, "control/sensors/gyro/count"),
                m("fan: 2e-5 /h", "fan: ¦-2e-5 /h", OUT_OF_RANGE, "rates/fan"),
                m("pack: 1e-5 /h", "pack: ¦1e-5 h", WRONG_UNIT, "rates/pack"),
                m("pack: 1e-5 /h", "pack: ¦often", NOT_A_QUANTITY, "rates/pack"),
                m("run: 1e-7 /h", "¦wire: 1e-7 /h", UNKNOWN_KEY, "rates/wire"),
                m("  source: rules of our club\n", "", MISSING_KEY, "risk matrix/source"),
                m("  remote: [ask, ask, go, go]\n", "", MISSING_KEY, "risk matrix/remote"),
                m(
                        "remote: [ask, ask, go, go]",
                        "remote: ¦[ask, ask, go]",
                        OUT_OF_RANGE,
                        "risk matrix/remote"),
                m(
                        "remote: [ask, ask, go, go]",
                        "remote: [ask, ask, go, ¦[go]]",
                        WRONG_KIND,
                        "risk matrix/remote/4"));
    }

    static Stream<Mistake> restraint() {
        return Stream.of(
                m("kind: bench", "kind: ¦trestle", UNKNOWN_WORD, STAND + "kind"),
                m("fans: [left, top.1]", "fans: [left, ¦top.9]", NO_SUCH_PART, STAND + "fans/2"),
                m("thrust: forward", "thrust: ¦sideways", UNKNOWN_WORD, STAND + "thrust"),
                m(", height: 1.2 m", "", MISSING_KEY, STAND + "height"),
                m(", mass: 80 kg", "", MISSING_KEY, STAND + "mass"),
                m("friction: 0.5 ± 0.1", "friction: ¦5 ± 0.1", OUT_OF_RANGE, STAND + "friction"),
                m(
                        "bolts: 4, bolt size: M10, bolt class: 8.8,",
                        "bolts: ¦4,",
                        CONTRADICTION,
                        STAND + "bolts"),
                m("bolts: 4", "bolts: ¦none", WRONG_KIND, STAND + "bolts"),
                m("bolt class: 8.8", "bolt class: ¦8.9", UNKNOWN_WORD, STAND + "bolt class"),
                m("bolt size: M10", "bolt size: ¦M7", UNKNOWN_WORD, STAND + "bolt size"),
                m(
                        "bolt class: 8.8",
                        "bolt class: 8.8, bolt strength: ¦8 kN",
                        CONTRADICTION,
                        STAND + "bolt strength"),
                m("clamps: 2, clamp force: 1 kN", "clamps: 2", MISSING_KEY, STAND + "clamp force"),
                m(
                        "clamps: 2, clamp force: 1",
                        "clamp force: ¦1",
                        CONTRADICTION,
                        STAND + "clamp force"),
                m(
                        "anchor height: 4 m",
                        "anchor height: ¦6 m",
                        CONTRADICTION,
                        TETHER + "anchor height"),
                m("length: 2.5 m, ", "", MISSING_KEY, TETHER + "length"),
                m("stiffness: 15 kN/m", "stiffness: ¦15 kN", WRONG_UNIT, TETHER + "stiffness"),
                m("{mass: 120 kg, ", "{", MISSING_KEY, TETHER + "gantry/mass"),
                m("down-line length: 2.1 m, ", "", MISSING_KEY, TETHER + "down-line length"),
                m("beam: 4.2 m", "beam: ¦5.2 m", CONTRADICTION, "restraint/room/beam"),
                m(
                        "resolution: 50 g",
                        "resolution: ¦0 g",
                        OUT_OF_RANGE,
                        "restraint/platform/resolution"),
                m("under: wearer", "under: ¦nobody", UNKNOWN_WORD, "restraint/platform/under"),
                m("mats: 200 mm", "mats: ¦200 kg", WRONG_UNIT, "restraint/mats"));
    }

    @ParameterizedTest
    @MethodSource({"kills", "rules", "restraint"})
    void oneMistakeGivesOneProblemAtItsPlace(Mistake mistake) {
        mistake.isToldAtItsPlace(GOOD);
    }

    @Test
    void aRigThatNobodyWearsHasNoWearerToHoldOrStand() {
        String nobody =
                GOOD.replaceAll("(?s)wearer:\n  mass.*?mounts:", "mounts:")
                        .replace("on: trunk", "on: frame")
                        .replaceAll("  left pod: .*", "  left pod: {on: frame}")
                        .replace("twin: right", "like: top")
                        .replace("carries wearer: no", "carries wearer: yes");
        assertThat(Texts.errors(Texts.read(nobody)))
                .extracting(p -> p.at().path())
                .contains(
                        "wiring/kills/cord/held by",
                        STAND + "carries wearer",
                        "restraint/platform/under");
    }

    @Test
    void problemsSayWhatToDo() {
        assertThat(advice(kills(), REMOTE + "held by")).contains("watcher");
        assertThat(advice(kills(), REMOTE + "opens/1")).contains("main");
        assertThat(advice(kills(), REMOTE + "order")).contains("command zero then open");
        assertThat(advice(restraint(), STAND + "bolts")).contains("bolt size: M10");
        assertThat(advice(rules(), "risk matrix/remote")).contains("remote: [");
    }

    /** What the first mistake at a path is told. */
    private static String advice(Stream<Mistake> mistakes, String path) {
        Mistake mistake = mistakes.filter(one -> one.path().equals(path)).findFirst().orElseThrow();
        Read read = mistake.read(GOOD);
        Problem problem = Texts.errors(read).getFirst();
        return problem.expected() + " " + problem.advice();
    }
}
