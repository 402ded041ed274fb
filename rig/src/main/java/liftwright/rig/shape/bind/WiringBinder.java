package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Contactor;
import liftwright.rig.Element;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.Wiring;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Name;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.KillKeys;
import liftwright.rig.shape.words.WiringKeys;

/** The wiring as chains between nodes. */
final class WiringBinder {

    private final Ledger ledger;
    private final Parts parts;
    private final Set<String> people;
    private final List<Wiring.Chain> chains = new ArrayList<>();
    private final Map<String, Integer> chainIds = new HashMap<>();

    /**
     * @param people who may hold a kill
     */
    WiringBinder(Ledger ledger, Parts parts, Set<String> people) {
        this.ledger = ledger;
        this.parts = parts;
        this.people = Set.copyOf(people);
    }

    Wiring bind(Fields wiring) {
        var contactors = contactors(wiring);
        var elements = new ElementsBinder(ledger, contactors);
        var feeds = new FeedsBinder(ledger, parts, elements, this::add);
        for (Stated<Fields> feed : wiring.get(WiringKeys.FEEDS).orElse(List.of())) {
            feeds.bind(feed.value());
        }
        for (Stated<Fields> link : wiring.get(WiringKeys.LINKS).orElse(List.of())) {
            link(link.value(), elements);
        }
        countPoles(wiring);
        var kills = new KillsBinder(ledger, parts, people, contactors.keySet());
        var grounds = kills.grounds(wiring.get(KillKeys.GROUNDS).orElse(List.of()));
        return new Wiring(
                chains,
                List.copyOf(contactors.values()),
                wiring.get(KillKeys.PRE_CHARGE).map(this::resistorPath),
                kills.kills(wiring.get(KillKeys.KILLS).orElse(List.of())),
                grounds,
                wiring.get(KillKeys.DISCHARGE).map(this::resistorPath));
    }

    private Wiring.PreCharge resistorPath(Fields fields) {
        return new Wiring.PreCharge(
                ledger.value(fields, KillKeys.RESISTOR), fields.get(KillKeys.FOR));
    }

    private Map<String, Contactor> contactors(Fields wiring) {
        var contactors = new LinkedHashMap<String, Contactor>();
        wiring.get(WiringKeys.CONTACTORS)
                .orElse(Map.of())
                .forEach((name, f) -> contactors.put(name, contactor(name, f.value())));
        return contactors;
    }

    private Contactor contactor(String name, Fields fields) {
        return new Contactor(
                name,
                ledger.value(fields, WiringKeys.POLES),
                ledger.value(fields, WiringKeys.POLE_RESISTANCE),
                fields.get(WiringKeys.RATING),
                fields.get(WiringKeys.BREAKS),
                fields.get(WiringKeys.VOLTAGE),
                new WarmthBinder(ledger).pole(fields),
                ledger.value(fields, WiringKeys.OPENS_IN),
                new SupplyBinder(ledger, parts).of(fields, WiringKeys.COIL_FROM),
                ledger.value(fields, WiringKeys.NORMALLY_OPEN));
    }

    private void add(Wiring.Chain chain, Spot spot) {
        Integer before = chainIds.putIfAbsent(chain.id().text(), chains.size());
        if (before != null) {
            ledger.problems()
                    .add(
                            Code.DUPLICATE_ID,
                            spot,
                            Problems.quote(chain.id().text()),
                            "connections that are written once",
                            "Two entries make the same connection: take one out.");
            return;
        }
        chains.add(chain);
    }

    private void link(Fields link, ElementsBinder elements) {
        Optional<String> from = link.stated(WiringKeys.LINK_FROM).flatMap(this::node);
        Optional<String> to = link.stated(WiringKeys.LINK_TO).flatMap(this::node);
        List<ElementsBinder.Template> through =
                elements.bind(link.get(WiringKeys.THROUGH).orElse(List.of()));
        Optional<String> id = link.get(WiringKeys.LINK_ID);
        if (from.isEmpty() || to.isEmpty() || id.isEmpty()) {
            return;
        }
        if (from.equals(to)) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            link.spotOf(WiringKeys.LINK_TO),
                            "a link from " + Problems.quote(to.get()) + " to itself",
                            "two different ends",
                            "");
            return;
        }
        add(
                new Wiring.Chain(
                        new PartId(id.get()),
                        from.get(),
                        to.get(),
                        ElementsBinder.make(id.get(), through)),
                link.spotOf(WiringKeys.LINK_ID));
    }

    /** A pack, a fan or a bus of the builder's own. */
    private Optional<String> node(Stated<String> name) {
        String text = name.value();
        if (parts.isPack(text) || parts.isFan(text)) {
            return Optional.of(text);
        }
        if (parts.isBroken(text)) {
            return Optional.empty();
        }
        if (parts.isTaken(text)) {
            var members = parts.membersOf(text);
            if (members.size() == 1) {
                return Optional.of(members.getFirst());
            }
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            name.spot(),
                            Problems.quote(text) + ", a group",
                            "one pack, one fan, or a name of your own for a bus",
                            members.isEmpty() ? "" : "Name one: " + members.getFirst() + ".");
            return Optional.empty();
        }
        if (text.indexOf('.') > 0) {
            if (chains.stream().anyMatch(chain -> chain.to().equals(text))) {
                return Optional.of(text); // a split that a feed made
            }
            parts.noSuchNode(name.spot(), text);
            return Optional.empty();
        }
        return Name.check(text, name.spot(), name.spot().span(), ledger.problems())
                ? Optional.of(text)
                : Optional.empty();
    }

    private void countPoles(Fields wiring) {
        var used = new HashMap<String, Integer>();
        for (Wiring.Chain chain : chains) {
            for (Element element : chain.elements()) {
                if (element instanceof Element.Pole pole) {
                    used.merge(pole.contactor().name(), 1, Integer::sum);
                }
            }
        }
        wiring.get(WiringKeys.CONTACTORS)
                .orElse(Map.of())
                .forEach(
                        (name, fields) -> {
                            int poles = fields.value().get(WiringKeys.POLES).orElse(1);
                            int needed = used.getOrDefault(name, 0);
                            if (needed > poles && !fields.value().failed(WiringKeys.POLES)) {
                                ledger.problems()
                                        .add(
                                                Code.CONTRADICTION,
                                                fields.value().spotOf(WiringKeys.POLES),
                                                needed + " circuits through " + poles + " poles",
                                                "at least as many poles as circuits",
                                                "Write “poles: "
                                                        + needed
                                                        + "”, or use another"
                                                        + " contactor.");
                            }
                        });
    }
}
