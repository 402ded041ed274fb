package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import liftwright.physics.Conductor;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * What more copper weighs, and the entries of {@code other parts} that say so: a rig file has no
 * other place for the mass of wires.
 */
final class WireMass {

    /** Copper at 20 °C, kg/m³ [IEC60028]. */
    private static final double COPPER_KGPM3 = 8890;

    /** Insulations lie between 1,150 (silicone) and 2,150 (PTFE), from memory, kg/m³. */
    private static final double INSULATION_KGPM3 = 1400;

    private WireMass() {}

    /** One wire with its insulation, one way, kg/m. */
    static double kgpm(int gauge, double wallM) {
        double bareM = Conductor.solidDiameterM(gauge);
        double ringM2 = Math.PI * wallM * (bareM + wallM);
        return COPPER_KGPM3 * Conductor.solidAreaM2(gauge) + INSULATION_KGPM3 * ringM2;
    }

    /** All wires of a run, out and back, kg. */
    static double kg(Element.Run run, int gauge, int conductors) {
        return 2 * run.length().si() * conductors * kgpm(gauge, run.covering().wall().si());
    }

    /**
     * The runs of some places in the file, each on the mount that its chain leads to.
     *
     * @param added mass that a run gains, kg
     */
    static Map<String, Double> byMount(
            Rig rig, List<RigPath> places, ToDoubleFunction<Element.Run> added) {
        Map<String, Double> byMount = new TreeMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            String mount = mount(rig, chain);
            for (Element element : chain.elements()) {
                if (element instanceof Element.Run run && places.contains(run.declaredAt())) {
                    byMount.merge(mount, added.applyAsDouble(run), Double::sum);
                }
            }
        }
        return byMount;
    }

    /** Of the fan that it feeds, else of the pack it comes from, else the first. */
    private static String mount(Rig rig, Wiring.Chain chain) {
        for (Fan fan : rig.fans()) {
            if (fan.id().text().equals(chain.to()) || fan.id().text().equals(chain.from())) {
                return fan.mount().name();
            }
        }
        for (Pack pack : rig.packs()) {
            if (pack.id().text().equals(chain.from()) || pack.id().text().equals(chain.to())) {
                return pack.mount().name();
            }
        }
        return rig.mounts().getFirst().name();
    }

    /** One entry of {@code other parts} for each mount, to the gram. */
    static List<Change> changes(Rig rig, String what, Map<String, Double> byMount) {
        List<Change> changes = new ArrayList<>();
        byMount.forEach(
                (mount, kg) -> {
                    long gram = Math.round(1000 * kg);
                    if (gram > 0) {
                        changes.add(
                                new Change.Add(
                                        RigPath.of("other parts"),
                                        "",
                                        String.format(
                                                Locale.ROOT,
                                                "{id: %s, mass: %.3f kg, at: {mount: %s}}",
                                                free(rig, what + " " + mount),
                                                gram / 1000.0,
                                                mount)));
                    }
                });
        return changes;
    }

    private static String free(Rig rig, String wanted) {
        String id = wanted;
        for (int number = 2; isTaken(rig, id); number++) {
            id = wanted + " " + number;
        }
        return id;
    }

    private static boolean isTaken(Rig rig, String id) {
        return rig.otherParts().stream().anyMatch(part -> part.id().text().equals(id));
    }

    static double sum(Map<String, Double> byMount) {
        return byMount.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
