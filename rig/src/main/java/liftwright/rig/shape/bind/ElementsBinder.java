package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Contactor;
import liftwright.rig.Covering;
import liftwright.rig.Element;
import liftwright.rig.FuseOpening;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.RigPath;
import liftwright.rig.Wear;
import liftwright.rig.book.BookJoint;
import liftwright.rig.book.PartsBook;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.ElementKeys;
import org.jspecify.annotations.Nullable;

/**
 * The elements of chains. One declared chain serves many generated ones, so its elements are read
 * once and then made again under each chain's id.
 */
final class ElementsBinder {

    /** An element that waits for its id. */
    record Template(String step, Made made) {}

    /** Makes the element of an id. */
    interface Made {
        Element as(PartId id);
    }

    private final Ledger ledger;
    private final Map<String, Contactor> contactors;

    ElementsBinder(Ledger ledger, Map<String, Contactor> contactors) {
        this.ledger = ledger;
        this.contactors = contactors;
    }

    static List<Element> make(String chainId, List<Template> templates) {
        return templates.stream()
                .map(t -> t.made().as(new PartId(chainId + "." + t.step())))
                .toList();
    }

    List<Template> bind(List<Stated<Fields>> declared) {
        var templates = new ArrayList<Template>(declared.size());
        var counts = new HashMap<String, Integer>();
        for (Stated<Fields> stated : declared) {
            Fields fields = stated.value();
            String kind = kind(fields);
            String step =
                    fields.get(ElementKeys.ID)
                            .orElseGet(
                                    () -> {
                                        int n = counts.merge(kind, 1, Integer::sum);
                                        return n == 1 ? kind : kind + "." + n;
                                    });
            template(fields, kind).ifPresent(made -> templates.add(new Template(step, made)));
        }
        return templates;
    }

    private static String kind(Fields fields) {
        return fields.has(ElementKeys.RUN)
                ? "run"
                : fields.has(ElementKeys.JOINT)
                        ? "joint"
                        : fields.has(ElementKeys.FUSE) ? "fuse" : "contactor";
    }

    private Optional<Made> template(Fields fields, String kind) {
        RigPath path = fields.spot().path();
        return switch (kind) {
            case "run" -> run(fields, path);
            case "joint" -> joint(fields, path);
            case "fuse" -> fuse(fields, path);
            default -> pole(fields, path);
        };
    }

    private Optional<Made> run(Fields fields, RigPath path) {
        int gauge = ledger.value(fields, ElementKeys.RUN);
        int conductors = ledger.value(fields, ElementKeys.CONDUCTORS);
        Quantity length = ledger.value(fields, ElementKeys.LENGTH);
        Covering covering = new CoveringBinder(ledger).bind(fields, gauge, conductors);
        return Optional.of(id -> new Element.Run(id, path, gauge, conductors, length, covering));
    }

    private Optional<Made> joint(Fields fields, RigPath path) {
        String kind = ledger.value(fields, ElementKeys.JOINT);
        BookJoint book = PartsBook.joint(kind).orElse(null);
        if (book == null && !fields.has(ElementKeys.RESISTANCE)) {
            unknownJoint(fields.spotOf(ElementKeys.JOINT), kind);
            return Optional.empty();
        }
        Quantity resistance =
                book == null
                        ? ledger.value(fields, ElementKeys.RESISTANCE)
                        : ledger.computed(
                                fields,
                                ElementKeys.RESISTANCE,
                                doubted(book.resistanceOhm(), book.doubtShare()),
                                "parts book, " + book.source());
        Optional<Quantity> rating = fields.get(ElementKeys.RATING);
        if (rating.isEmpty() && book != null) {
            ledger.note(
                    fields,
                    ElementKeys.RATING,
                    Measure.CURRENT.show(book.ratingA()),
                    "parts book, " + book.source());
            rating = Optional.of(Quantity.exact(book.ratingA(), Measure.CURRENT.dimension()));
        }
        var found = rating;
        var wear =
                new Wear(
                        fields.get(ElementKeys.DAMAGE).orElse(Wear.NONE.damage()),
                        fields.get(ElementKeys.GROWTH));
        Quantity heatCapacity = jointHeat(fields, book, rating);
        return Optional.of(
                id -> new Element.Joint(id, path, kind, resistance, found, wear, heatCapacity));
    }

    private Quantity jointHeat(Fields fields, @Nullable BookJoint book, Optional<Quantity> rating) {
        double usualJpK;
        String origin;
        if (book != null) {
            usualJpK = book.poleJpK();
            origin = "its mass in the parts book, " + book.source();
        } else if (rating.isPresent()) {
            usualJpK = Element.Joint.J_PER_K_A * rating.get().si();
            origin = "0.1 g of metal for each ampere of its rating; from memory, measure yours";
        } else {
            usualJpK = Element.Joint.USUAL_J_PER_K;
            origin = "10 g of metal; from memory, measure yours";
        }
        return ledger.computed(
                fields,
                ElementKeys.HEAT,
                WarmthBinder.bound(
                        Measure.HEAT_CAPACITY, usualJpK, BookJoint.MASS_DOUBT_SHARE * usualJpK),
                origin);
    }

    private void unknownJoint(Spot spot, String kind) {
        ledger.problems()
                .add(
                        Code.NO_SUCH_PART,
                        spot,
                        Problems.quote(kind),
                        "a joint of the parts book, or one with its resistance",
                        (Nearest.advice(kind, PartsBook.jointNames())
                                        + " Or add “resistance: 0.3 mΩ ± 30 %”.")
                                .strip());
    }

    private Optional<Made> fuse(Fields fields, RigPath path) {
        Quantity rating = ledger.value(fields, ElementKeys.FUSE);
        Quantity resistance =
                ledger.computed(
                        fields,
                        ElementKeys.RESISTANCE,
                        doubted(
                                PartsBook.fuseResistanceOhm(rating.si()),
                                PartsBook.fuseDoubtShare()),
                        "parts book, " + PartsBook.fuseSource());
        FuseOpening opening = new FuseBinder(ledger).bind(fields, rating);
        double usualJpK = Element.Fuse.J_PER_K_A * rating.si();
        Quantity heatCapacity =
                ledger.computed(
                        fields,
                        ElementKeys.HEAT,
                        WarmthBinder.bound(Measure.HEAT_CAPACITY, usualJpK, usualJpK / 2),
                        "by its rating; from memory, measure yours");
        return Optional.of(
                id ->
                        new Element.Fuse(
                                id,
                                path,
                                rating,
                                resistance,
                                fields.get(ElementKeys.BREAKS),
                                fields.get(ElementKeys.VOLTAGE),
                                opening,
                                heatCapacity));
    }

    private static String doubted(double ohm, double share) {
        return Measure.RESISTANCE.show(ohm)
                + " ± "
                + Measure.RESISTANCE.show(ohm * share)
                + " bound";
    }

    private Optional<Made> pole(Fields fields, RigPath path) {
        Stated<String> name = fields.stated(ElementKeys.POLE).orElse(null);
        if (name == null) {
            return Optional.empty();
        }
        Contactor contactor = contactors.get(name.value());
        if (contactor == null) {
            ledger.problems()
                    .add(
                            Code.NO_SUCH_PART,
                            name.spot(),
                            Problems.quote(name.value()),
                            "the name of a contactor",
                            contactors.isEmpty()
                                    ? "Declare it under “wiring: contactors”."
                                    : Nearest.advice(name.value(), contactors.keySet()));
            return Optional.empty();
        }
        return Optional.of(id -> new Element.Pole(id, path, contactor));
    }
}
