package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.SteadyState;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/** The operating point part by part. */
final class LiftTables {

    private LiftTables() {}

    static Section packs(Rig rig, SteadyState state) {
        List<List<Value>> rows = new ArrayList<>();
        for (int i = 0; i < rig.packs().size(); i++) {
            Pack pack = rig.packs().get(i);
            rows.add(
                    List.of(
                            Value.words("part", pack.id().text()),
                            Value.of("pack-current", state.packA(i)),
                            Value.of("pack-voltage", state.packTerminalV(i)),
                            Value.of("cell-under-load", state.cellUnderLoadV(i))));
        }
        return new Section.Table(
                "packs",
                "Packs at full throttle",
                List.of("part", "pack-current", "pack-voltage", "cell-under-load"),
                rows);
    }

    static Section fans(Rig rig, SteadyState state) {
        List<List<Value>> rows = new ArrayList<>();
        for (int i = 0; i < rig.fans().size(); i++) {
            Fan fan = rig.fans().get(i);
            rows.add(
                    List.of(
                            Value.words("part", fan.id().text()),
                            Value.of("fan-voltage", state.fanTerminalV(i)),
                            Value.of("fan-speed", state.fanSpeedRadps(i)),
                            Value.of("winding-current", state.fanWindingA(i)),
                            Value.of("fan-thrust", state.fanThrustN(i)),
                            Value.of("fan-lift", state.fanUpwardThrustN(i))));
        }
        return new Section.Table(
                "fans",
                "Fans at full throttle",
                List.of(
                        "part",
                        "fan-voltage",
                        "fan-speed",
                        "winding-current",
                        "fan-thrust",
                        "fan-lift"),
                rows);
    }
}
