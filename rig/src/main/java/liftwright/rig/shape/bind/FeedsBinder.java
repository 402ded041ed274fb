package liftwright.rig.shape.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.Wiring;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.WiringKeys;

/** The usual wiring: each pack through a trunk to a split, and from there to its fans. */
final class FeedsBinder {

    private static final String SPLIT = ".split";

    private final Ledger ledger;
    private final Parts parts;
    private final ElementsBinder elements;
    private final BiConsumer<Wiring.Chain, Spot> chains;
    private final Map<String, String> feeders = new HashMap<>();

    FeedsBinder(
            Ledger ledger,
            Parts parts,
            ElementsBinder elements,
            BiConsumer<Wiring.Chain, Spot> chains) {
        this.ledger = ledger;
        this.parts = parts;
        this.elements = elements;
        this.chains = chains;
    }

    void bind(Fields feed) {
        List<ElementsBinder.Template> trunk =
                elements.bind(feed.get(WiringKeys.TRUNK).orElse(List.of()));
        List<ElementsBinder.Template> branch =
                elements.bind(feed.get(WiringKeys.BRANCH).orElse(List.of()));
        Stated<String> from = feed.stated(WiringKeys.FROM).orElse(null);
        String id = feed.get(WiringKeys.FEED_ID).orElse(null);
        if (from == null || id == null) {
            return;
        }
        List<PartId> packs = parts.packsOf(from);
        feed.get(WiringKeys.FANS)
                .orElse(Map.of())
                .forEach((pack, fans) -> one(id, from, packs, pack, fans, trunk, branch));
    }

    private void one(
            String feed,
            Stated<String> from,
            List<PartId> packs,
            String packName,
            Stated<List<Stated<String>>> fans,
            List<ElementsBinder.Template> trunk,
            List<ElementsBinder.Template> branch) {
        boolean lone = packs.size() == 1 && packName.equals(from.value());
        var pack = lone ? packs.getFirst() : new PartId(packName);
        if (!packs.contains(pack)) {
            if (!packs.isEmpty() && !parts.isBroken(packName)) {
                parts.noSuchPackOf(fans.spot(), packName, from.value());
            }
            return;
        }
        String split = feed + "." + pack + SPLIT;
        String trunkId = feed + "." + pack + ".trunk";
        chains.accept(
                new Wiring.Chain(
                        new PartId(trunkId),
                        pack.text(),
                        split,
                        ElementsBinder.make(trunkId, trunk)),
                fans.spot());
        for (Stated<String> name : fans.value()) {
            for (PartId fan : parts.fansOf(name)) {
                if (isNew(fan, pack, name.spot())) {
                    String branchId = feed + "." + pack + ".to." + fan;
                    chains.accept(
                            new Wiring.Chain(
                                    new PartId(branchId),
                                    split,
                                    fan.text(),
                                    ElementsBinder.make(branchId, branch)),
                            name.spot());
                }
            }
        }
    }

    private boolean isNew(PartId fan, PartId pack, Spot spot) {
        String before = feeders.putIfAbsent(fan.text(), pack.text());
        if (before != null) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            spot,
                            Problems.quote(fan.text()) + " fed twice",
                            "a fan that one pack feeds",
                            "It is fed by "
                                    + before
                                    + " already. Packs that share fans are said with links.");
        }
        return before == null;
    }
}
