package liftwright.plant.fault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.plant.fault.Fault.Kind;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.SignalGround;
import liftwright.rig.Wiring;

/** Every single thing that can go wrong with a rig, part by part. */
public final class Faults {

    /** Share of full duty that controllers keep which fold back, from memory. */
    public static final double FOLDED_BACK = 0.7;

    private final Rig rig;
    private final LiveWiring wiring;
    private final List<Fault> found = new ArrayList<>();

    private Faults(Rig rig) {
        this.rig = rig;
        wiring = LiveWiring.of(rig);
    }

    /**
     * All single faults, in the order of the rig's lists. Each effect names everything that is dead
     * by it and by it alone, so that parts in series make equal effects. Losing a pack takes along
     * what it feeds beside fans: coils of contactors, receiver and computer.
     */
    public static List<Fault> of(Rig rig) {
        Faults faults = new Faults(rig);
        faults.fans();
        faults.channels();
        faults.packs();
        faults.chains();
        faults.contactors();
        faults.foldBack();
        faults.link();
        faults.computer();
        faults.grounds();
        return List.copyOf(faults.found);
    }

    private void add(Kind kind, PartId part, RigPath at, String words, Effect effect) {
        found.add(new Fault(kind, part, at, words, wiring.taken(effect)));
    }

    private void fans() {
        for (int k = 0; k < rig.fans().size(); k++) {
            Fan fan = rig.fans().get(k);
            PartId id = fan.id();
            RigPath at = fan.declaredAt();
            Effect full = Effect.stuck(k, 1);
            add(Kind.FAN, id, at, "the fan stops", Effect.dead(k));
            add(Kind.CONTROLLER, id, at, "its controller stops it", Effect.dead(k));
            add(Kind.LOST_SYNC, id, at, "its controller loses the motor", Effect.dead(k));
            add(Kind.STUCK_FULL, id, at, "it stays at full throttle", full);
            add(Kind.STUCK_IDLE, id, at, "it stays at idle", Effect.stuck(k, idle(k)));
            add(Kind.START_UP_SURGE, id, at, "it runs up by itself when made live", full);
            add(Kind.SWAPPED_LEADS, id, at, "two motor leads are swapped", Effect.reversed(k));
        }
    }

    /** Idle duty of a fan: it stands still where none is declared. */
    private double idle(int fan) {
        return controller(fan).misbehaviour().idle().map(duty -> duty.si()).orElse(0.0);
    }

    private FanType.Controller controller(int fan) {
        return rig.fans().get(fan).type().controller();
    }

    /** What fans do whose signal is lost; one that keeps its last command loses nothing. */
    private Effect signalLost(int... fans) {
        Effect effect = Effect.NONE;
        for (int fan : fans) {
            effect =
                    effect.and(
                            switch (controller(fan).signalLoss()) {
                                case STOP -> Effect.dead(fan);
                                case IDLE -> Effect.stuck(fan, idle(fan));
                                case HOLD -> Effect.NONE;
                            });
        }
        return effect;
    }

    private int[] all() {
        return IntStream.range(0, rig.fans().size()).toArray();
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
            Effect effect = Effect.lost(k);
            for (Contactor contactor : rig.wiring().contactors()) {
                if (feeds(pack, contactor.coil()) && contactor.normallyOpen()) {
                    effect = effect.and(Effect.open(chainsOf(contactor)));
                }
            }
            if (feeds(pack, rig.control().fedBy())) {
                effect = effect.and(signalLost(all()));
            }
            add(Kind.PACK, pack.id(), pack.declaredAt(), "it gives nothing", effect);
        }
    }

    private static boolean feeds(Pack pack, Optional<String> supply) {
        return supply.filter(name -> name.equals(pack.id().text())).isPresent();
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

    private int[] chainsOf(Contactor contactor) {
        List<Wiring.Chain> chains = rig.wiring().chains();
        return IntStream.range(0, chains.size())
                .filter(
                        chain ->
                                chains.get(chain).elements().stream()
                                        .anyMatch(
                                                element ->
                                                        element instanceof Element.Pole pole
                                                                && pole.contactor()
                                                                        .name()
                                                                        .equals(contactor.name())))
                .toArray();
    }

    private void contactors() {
        for (Contactor contactor : rig.wiring().contactors()) {
            PartId id = new PartId(contactor.name());
            RigPath at = RigPath.of("wiring", "contactors", contactor.name());
            if (contactor.normallyOpen()) {
                Effect falls = Effect.open(chainsOf(contactor));
                add(Kind.CONTACTOR, id, at, "it opens without its coil", falls);
            } else {
                add(Kind.CONTACTOR, id, at, "it stays closed without its coil", Effect.NONE);
            }
            add(Kind.WELDED_CONTACTOR, id, at, "its contacts weld and do not open", Effect.NONE);
        }
    }

    /** Controllers of one type are warm or low together, and fold back together. */
    private void foldBack() {
        Map<String, Effect> ofType = new LinkedHashMap<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            ofType.merge(
                    rig.fans().get(k).type().name(), Effect.noMore(k, FOLDED_BACK), Effect::and);
        }
        ofType.forEach(
                (type, effect) ->
                        add(
                                Kind.FOLD_BACK,
                                new PartId(type),
                                RigPath.of("fan types", type, "controller"),
                                "all controllers of the type fold back at once",
                                effect));
    }

    private void link() {
        Control control = rig.control();
        RigPath at = RigPath.of("control");
        PartId link = new PartId(control.radio().orElse("throttle link"));
        Effect lost =
                switch (control.linkLoss()) {
                    case CUT -> Effect.dead(all());
                    case LOWER, HOLD -> Effect.NONE;
                };
        add(Kind.LINK_LOST, link, at, "it is lost", lost);
        add(Kind.LINK_FROZEN, link, at, "it keeps its last value", Effect.NONE);
        String supply = control.fedBy().orElse("supply of the receiver");
        add(
                Kind.BROWN_OUT,
                new PartId(supply),
                at,
                "it sags until receiver and computer stop",
                signalLost(all()));
        if (control.kind() == Control.Kind.SHARED_THROTTLE) {
            PartId throttle = new PartId("throttle");
            add(Kind.FROZEN_THROTTLE, throttle, at, "it stays where it is", Effect.NONE);
        }
    }

    /** A sensor or computer that another stands in for takes nothing. */
    private void computer() {
        Control control = rig.control();
        if (control.kind() != Control.Kind.FLIGHT_COMPUTER) {
            return;
        }
        boolean spare = control.computers() > 1;
        add(
                Kind.COMPUTER,
                new PartId("flight computer"),
                RigPath.of("control"),
                spare ? "it stops; another stands in" : "it stops",
                spare ? Effect.NONE : signalLost(all()));
        for (Control.Sensor sensor : control.sensors()) {
            add(
                    Kind.SENSOR,
                    new PartId(sensor.name()),
                    sensor.declaredAt(),
                    sensor.count() > 1 ? "it is lost; another stands in" : "it is lost",
                    Effect.NONE);
        }
    }

    /** Signal grounds as declared; where none is, that of each control group. */
    private void grounds() {
        for (SignalGround ground : rig.wiring().grounds()) {
            int[] fans =
                    IntStream.of(all())
                            .filter(
                                    k -> {
                                        String fan = rig.fans().get(k).id().text();
                                        return fan.equals(ground.from()) || fan.equals(ground.to());
                                    })
                            .toArray();
            ground(new PartId(ground.id()), ground.declaredAt(), fans.length > 0 ? fans : all());
        }
        for (Control.Group group : rig.control().groups()) {
            if (rig.wiring().grounds().isEmpty()) {
                int[] fans =
                        IntStream.of(all())
                                .filter(k -> group.fans().contains(rig.fans().get(k).id()))
                                .toArray();
                ground(new PartId(group.name()), group.declaredAt(), fans);
            }
        }
    }

    private void ground(PartId id, RigPath at, int[] fans) {
        add(Kind.GROUND_OPEN, id, at, "the signal ground of its fans opens", signalLost(fans));
    }
}
