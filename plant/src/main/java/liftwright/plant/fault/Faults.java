package liftwright.plant.fault;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import liftwright.plant.fault.Fault.Kind;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/** Every single thing that can go wrong with a rig, part by part. */
public final class Faults {

    /** Share of full duty that controllers keep which fold back, from memory. */
    public static final double FOLDED_BACK = 0.7;

    /** Idle duty of a controller: its motor stands still. */
    private static final double STANDSTILL = 0;

    private final Rig rig;
    private final LiveWiring wiring;
    private final List<Fault> found = new ArrayList<>();

    private Faults(Rig rig) {
        this.rig = rig;
        wiring = LiveWiring.of(rig);
    }

    /**
     * All single faults, in the order of the rig's lists. Each effect names everything that is dead
     * by it, so that parts in series make equal effects.
     */
    public static List<Fault> of(Rig rig) {
        Faults faults = new Faults(rig);
        faults.fans();
        faults.channels();
        faults.packs();
        faults.chains();
        faults.contactors();
        faults.foldBack();
        faults.control();
        return List.copyOf(faults.found);
    }

    private void add(Kind kind, PartId part, RigPath at, String words, Effect effect) {
        found.add(new Fault(kind, part, at, words, wiring.whole(effect)));
    }

    private void fans() {
        for (int k = 0; k < rig.fans().size(); k++) {
            Fan fan = rig.fans().get(k);
            PartId id = fan.id();
            RigPath at = fan.declaredAt();
            add(Kind.FAN, id, at, "the fan stops", Effect.dead(k));
            add(Kind.CONTROLLER, id, at, "its controller stops it", Effect.dead(k));
            add(Kind.LOST_SYNC, id, at, "its controller loses the motor", Effect.dead(k));
            add(Kind.STUCK_FULL, id, at, "it stays at full throttle", Effect.stuck(k, 1));
            add(Kind.STUCK_IDLE, id, at, "it stays at idle", Effect.stuck(k, STANDSTILL));
            add(
                    Kind.START_UP_SURGE,
                    id,
                    at,
                    "it runs up by itself when made live",
                    Effect.stuck(k, 1));
            add(Kind.SWAPPED_LEADS, id, at, "two motor leads are swapped", Effect.reversed(k));
        }
    }

    /** Each fan's channel against that of the next. */
    private void channels() {
        for (int k = 0; k + 1 < rig.fans().size(); k++) {
            Fan fan = rig.fans().get(k);
            add(
                    Kind.WRONG_CHANNEL,
                    fan.id(),
                    fan.declaredAt(),
                    "its channel is exchanged with that of " + rig.fans().get(k + 1).id(),
                    Effect.exchanged(k, k + 1));
        }
    }

    private void packs() {
        for (int k = 0; k < rig.packs().size(); k++) {
            Pack pack = rig.packs().get(k);
            add(Kind.PACK, pack.id(), pack.declaredAt(), "it gives nothing", Effect.lost(k));
        }
    }

    private void chains() {
        List<Wiring.Chain> chains = rig.wiring().chains();
        for (int chain = 0; chain < chains.size(); chain++) {
            for (Element element : chains.get(chain).elements()) {
                Effect opens = Effect.open(chain);
                switch (element) {
                    case Element.Run run ->
                            add(Kind.RUN, run.id(), run.declaredAt(), "the wire breaks", opens);
                    case Element.Joint joint ->
                            add(Kind.JOINT, joint.id(), joint.declaredAt(), "it opens", opens);
                    case Element.Fuse fuse ->
                            add(Kind.FUSE, fuse.id(), fuse.declaredAt(), "it opens", opens);
                    case Element.Pole pole ->
                            add(Kind.POLE, pole.id(), pole.declaredAt(), "it opens", opens);
                }
            }
        }
    }

    private void contactors() {
        Map<String, List<Integer>> chainsOf = new HashMap<>();
        List<Wiring.Chain> chains = rig.wiring().chains();
        for (int chain = 0; chain < chains.size(); chain++) {
            for (Element element : chains.get(chain).elements()) {
                if (element instanceof Element.Pole pole) {
                    chainsOf.computeIfAbsent(pole.contactor().name(), _ -> new ArrayList<>())
                            .add(chain);
                }
            }
        }
        for (Contactor contactor : rig.wiring().contactors()) {
            int[] opens =
                    chainsOf.getOrDefault(contactor.name(), List.of()).stream()
                            .mapToInt(chain -> chain)
                            .toArray();
            PartId id = new PartId(contactor.name());
            RigPath at = RigPath.of("wiring", "contactors", contactor.name());
            add(Kind.CONTACTOR, id, at, "its coil loses its supply", Effect.open(opens));
            add(Kind.WELDED_CONTACTOR, id, at, "its contacts weld and do not open", Effect.NONE);
        }
    }

    /** Controllers of one type are warm or low together, and fold back together. */
    private void foldBack() {
        Map<String, List<Integer>> ofType = new LinkedHashMap<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            ofType.computeIfAbsent(rig.fans().get(k).type().name(), _ -> new ArrayList<>()).add(k);
        }
        ofType.forEach(
                (type, fans) -> {
                    Effect effect = Effect.NONE;
                    for (int fan : fans) {
                        effect = effect.and(Effect.noMore(fan, FOLDED_BACK));
                    }
                    add(
                            Kind.FOLD_BACK,
                            new PartId(type),
                            RigPath.of("fan types", type, "controller"),
                            "all controllers of the type fold back at once",
                            effect);
                });
    }

    private void control() {
        RigPath at = RigPath.of("control");
        PartId link = new PartId("throttle link");
        int[] all = IntStream.range(0, rig.fans().size()).toArray();
        add(Kind.LINK_LOST, link, at, "it is lost", Effect.NONE);
        add(Kind.LINK_FROZEN, link, at, "it keeps its last value", Effect.NONE);
        switch (rig.control().kind()) {
            case SHARED_THROTTLE ->
                    add(
                            Kind.FROZEN_THROTTLE,
                            new PartId("throttle"),
                            at,
                            "it stays where it is",
                            Effect.NONE);
            case FLIGHT_COMPUTER ->
                    add(
                            Kind.COMPUTER,
                            new PartId("flight computer"),
                            at,
                            "it stops and all fans with it",
                            Effect.dead(all));
        }
        for (Control.Group group : rig.control().groups()) {
            int[] fans =
                    IntStream.of(all)
                            .filter(k -> group.fans().contains(rig.fans().get(k).id()))
                            .toArray();
            add(
                    Kind.GROUND_OPEN,
                    new PartId(group.name()),
                    group.declaredAt(),
                    "the signal ground of its fans opens",
                    Effect.dead(fans));
        }
    }
}
