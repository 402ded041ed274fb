package liftwright.trials.words;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.hold.FanAlone;
import liftwright.quantity.Quantity;
import liftwright.review.people.People;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/**
 * What reaches those near a run: as if the rig had no other fans than those that run, since a fan
 * alone gets more voltage, and turns faster, than one among many.
 *
 * @param rig with no other fans
 * @param people what there is to say of those near, all these fans at full throttle on full packs
 * @param alone every one of them at full throttle by itself; empty where none was found
 * @param faster how many times as fast as that the rotor turns on the card, ≥ 1
 */
record Near(Rig rig, People people, List<FanAlone> alone, double faster) {

    /** Speed of a proof over the top speed that a rotor is made for; common practice. */
    static final double PROOF = 1.05;

    Near {
        alone = List.copyOf(alone);
    }

    static Near of(Rig rig, Planned planned) {
        List<Fan> running = running(rig, planned);
        boolean bench = planned.run().map(run -> run.held() == Run.Held.BENCH).orElse(true);
        Rig near = only(rig, running, bench);
        Plant plant = Plant.assemble(near);
        People people = People.of(plant, 0, 0);
        List<FanAlone> alone =
                plant.fullThrust().at(plant.parameters().nominal()).orElse(List.of());
        double faster =
                planned.id().kind() == CardKind.PROOF_SPIN ? faster(plant, running.getFirst()) : 1;
        return new Near(near, people, alone, faster);
    }

    /** Fans that turn on a card, in the rig's order. */
    static List<Fan> running(Rig rig, Planned planned) {
        Set<PartId> ids = new HashSet<>(planned.run().map(Run::fans).orElse(List.of()));
        List<Fan> fans = rig.fans().stream().filter(fan -> ids.contains(fan.id())).toList();
        return fans.isEmpty()
                ? List.of(
                        rig.fans().stream()
                                .filter(fan -> fan.type().name().equals(planned.id().subject()))
                                .findFirst()
                                .orElse(rig.fans().getFirst()))
                : fans;
    }

    private static double faster(Plant plant, Fan fan) {
        SteadyState full = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                full);
        double now = full.fanSpeedRadps(0);
        return fan.type()
                .rotor()
                .topSpeed()
                .map(Quantity::si)
                .filter(_ -> now > 0)
                .map(top -> Math.max(1, PROOF * top / now))
                .orElse(1.0);
    }

    /** The same rig without the other fans, and on a bench without the packs that feed none. */
    private static Rig only(Rig rig, List<Fan> running, boolean bench) {
        Set<String> ids = new HashSet<>();
        running.forEach(fan -> ids.add(fan.id().text()));
        Set<String> dead = new HashSet<>();
        rig.fans().stream()
                .map(fan -> fan.id().text())
                .filter(id -> !ids.contains(id))
                .forEach(dead::add);
        List<Wiring.Chain> chains =
                rig.wiring().chains().stream()
                        .filter(chain -> !dead.contains(chain.from()) && !dead.contains(chain.to()))
                        .toList();
        List<Pack> packs = rig.packs();
        if (bench) {
            Set<String> reached = reached(ids, chains);
            packs = packs.stream().filter(pack -> reached.contains(pack.id().text())).toList();
            Set<String> gone = new HashSet<>();
            rig.packs().forEach(pack -> gone.add(pack.id().text()));
            packs.forEach(pack -> gone.remove(pack.id().text()));
            chains =
                    chains.stream()
                            .filter(
                                    chain ->
                                            !gone.contains(chain.from())
                                                    && !gone.contains(chain.to()))
                            .toList();
        }
        return with(rig, running, packs, chains, groups(rig, ids));
    }

    private static Set<String> reached(Set<String> from, List<Wiring.Chain> chains) {
        Set<String> reached = new HashSet<>(from);
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Wiring.Chain chain : chains) {
                if (reached.contains(chain.from()) || reached.contains(chain.to())) {
                    grows |= reached.add(chain.from());
                    grows |= reached.add(chain.to());
                }
            }
        }
        return reached;
    }

    private static List<Control.Group> groups(Rig rig, Set<String> ids) {
        return rig.control().groups().stream()
                .map(
                        group ->
                                new Control.Group(
                                        group.name(),
                                        group.declaredAt(),
                                        group.fans().stream()
                                                .filter(fan -> ids.contains(fan.text()))
                                                .toList(),
                                        group.share()))
                .filter(group -> !group.fans().isEmpty())
                .toList();
    }

    private static Rig with(
            Rig rig,
            List<Fan> fans,
            List<Pack> packs,
            List<Wiring.Chain> chains,
            List<Control.Group> groups) {
        Control control = rig.control().with(groups);
        Wiring wiring = rig.wiring();
        return rig.with(fans)
                .fedBy(packs)
                .wired(
                        new Wiring(
                                chains,
                                wiring.contactors(),
                                wiring.preCharge(),
                                wiring.kills(),
                                wiring.grounds(),
                                wiring.discharge()))
                .under(control);
    }

    /** What was found under a code, as a number, SI. */
    OptionalDouble found(String code) {
        return people.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .flatMap(finding -> finding.value().stream())
                .flatMapToDouble(Near::amount)
                .findFirst();
    }

    Optional<Finding> finding(String code) {
        return people.findings().stream().filter(one -> one.code().equals(code)).findFirst();
    }

    Optional<Section.Table> table(String id) {
        return people.sections().stream()
                .filter(section -> section.id().equals(id))
                .flatMap(
                        section ->
                                section instanceof Section.Table table
                                        ? Stream.of(table)
                                        : Stream.empty())
                .findFirst();
    }

    /** Greatest number of a column, SI; empty where the table is not there or has none. */
    OptionalDouble greatest(String table, String column) {
        return table(table)
                .map(
                        found ->
                                found.rows().stream()
                                        .map(row -> row.get(found.columns().indexOf(column)))
                                        .flatMapToDouble(Near::amount)
                                        .max())
                .orElse(OptionalDouble.empty());
    }

    static DoubleStream amount(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _)
                ? DoubleStream.of(si)
                : DoubleStream.empty();
    }
}
