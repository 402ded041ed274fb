package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;

/** What channels can be of: the parts of a rig by their names. */
final class PartNames {

    private enum Kind {
        FAN("a fan"),
        PACK("a pack"),
        MOUNT("a mount"),
        GROUP("a control group"),
        ELEMENT("a part of the wiring"),
        /** Winding, magnets and the like of a fan; cells of a pack. */
        INSIDE("a place in a part");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    private static final Set<Signal> OF_ALL_ALONE =
            EnumSet.of(
                    Signal.SCALE,
                    Signal.TETHER_LOAD,
                    Signal.ROLL_MOMENT,
                    Signal.PITCH_MOMENT,
                    Signal.YAW_MOMENT,
                    Signal.AIR_TEMPERATURE,
                    Signal.AIR_PRESSURE,
                    Signal.HUMIDITY,
                    Signal.WIND);

    private static final Map<Signal, Set<Kind>> CAN_BE_OF = canBeOf();

    private final Map<String, Kind> parts = new LinkedHashMap<>();

    PartNames(Rig rig) {
        rig.control().groups().forEach(group -> parts.put(group.name(), Kind.GROUP));
        rig.mounts().forEach(mount -> parts.put(mount.name(), Kind.MOUNT));
        rig.wiring()
                .chains()
                .forEach(
                        chain ->
                                chain.elements()
                                        .forEach(e -> parts.put(e.id().text(), Kind.ELEMENT)));
        rig.packs()
                .forEach(
                        pack -> {
                            parts.put(pack.id().text() + " cells", Kind.INSIDE);
                            parts.put(pack.id().text(), Kind.PACK);
                        });
        for (var fan : rig.fans()) {
            for (String place : List.of("winding", "magnets", "controller", "switches")) {
                parts.put(fan.id().text() + " " + place, Kind.INSIDE);
            }
            parts.put(fan.id().text(), Kind.FAN);
        }
    }

    private static Map<Signal, Set<Kind>> canBeOf() {
        var map = new EnumMap<Signal, Set<Kind>>(Signal.class);
        map.put(Signal.THROTTLE, EnumSet.of(Kind.FAN, Kind.GROUP));
        map.put(Signal.THRUST, EnumSet.of(Kind.FAN, Kind.MOUNT, Kind.GROUP));
        map.put(Signal.CURRENT, EnumSet.of(Kind.PACK, Kind.FAN, Kind.GROUP, Kind.ELEMENT));
        map.put(Signal.VOLTAGE, EnumSet.of(Kind.PACK, Kind.FAN));
        map.put(Signal.CELL_VOLTAGE, EnumSet.of(Kind.PACK));
        map.put(Signal.SPEED, EnumSet.of(Kind.FAN));
        map.put(Signal.WINDING_CURRENT, EnumSet.of(Kind.FAN));
        map.put(
                Signal.TEMPERATURE,
                EnumSet.of(Kind.FAN, Kind.PACK, Kind.ELEMENT, Kind.INSIDE, Kind.MOUNT));
        map.put(Signal.CHARGE_USED, EnumSet.of(Kind.PACK));
        return map;
    }

    /**
     * Why a channel is not one of this rig.
     *
     * @param found what stands there, a phrase
     */
    record Wrong(String found, String expected, String advice) {}

    /** Empty where the rig has such a part. */
    Optional<Wrong> wrong(Signal signal, String of) {
        if (of.equals(Track.ALL)) {
            return Optional.empty();
        }
        if (OF_ALL_ALONE.contains(signal)) {
            return Optional.of(
                    new Wrong(
                            "“" + signal.word() + " " + of + "”",
                            "“" + signal.word() + "” alone",
                            "There is one for the whole rig."));
        }
        Set<Kind> kinds = CAN_BE_OF.getOrDefault(signal, Set.of());
        Kind kind = parts.get(of);
        if (kind != null && kinds.contains(kind)) {
            return Optional.empty();
        }
        var words = new ArrayList<String>();
        kinds.forEach(k -> words.add(k.words));
        String expected = String.join(", ", words) + " of this rig";
        if (kind != null) {
            return Optional.of(new Wrong(kind.words + ", “" + of + "”", expected, ""));
        }
        var names =
                parts.entrySet().stream()
                        .filter(e -> kinds.contains(e.getValue()))
                        .map(Map.Entry::getKey)
                        .toList();
        return Optional.of(
                new Wrong(
                        "the part " + Problems.quote(of),
                        expected,
                        Nearest.to(of, names)
                                .map(near -> "Perhaps “" + near + "” is meant.")
                                .orElse(few(names))));
    }

    private static String few(List<String> names) {
        return names.isEmpty()
                ? ""
                : "Such as: "
                        + String.join(", ", names.subList(0, Math.min(6, names.size())))
                        + ".";
    }
}
