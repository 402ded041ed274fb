package liftwright.rig.shape.bind;

import liftwright.quantity.Quantity;
import liftwright.rig.Covering;
import liftwright.rig.Insulation;
import liftwright.rig.book.BookInsulation;
import liftwright.rig.book.PartsBook;
import liftwright.rig.book.WireGauge;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.words.ElementKeys;

/** What lies round the copper of a run. */
final class CoveringBinder {

    private final Ledger ledger;

    CoveringBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    Covering bind(Fields fields, int gauge, int conductors) {
        boolean declared = fields.has(ElementKeys.INSULATION);
        ledger.note(
                fields,
                ElementKeys.INSULATION,
                "that of PVC, the least heat-proof",
                "common practice: what is not known is taken at its worst");
        Insulation material = fields.get(ElementKeys.INSULATION).orElse(Insulation.PVC);
        BookInsulation book = PartsBook.insulation(material);
        Quantity serviceClass =
                ledger.computed(
                        fields,
                        ElementKeys.CLASS,
                        classText(book),
                        "parts book, " + material.word() + ": " + book.source());
        double wallM = book.wallM(new WireGauge(gauge).areaMm2());
        Quantity wall =
                ledger.computed(
                        fields,
                        ElementKeys.WALL,
                        WarmthBinder.bound(
                                Measure.LENGTH, wallM, BookInsulation.WALL_DOUBT_SHARE * wallM),
                        "parts book, usual wall; from memory, measure yours");
        int bundle =
                ledger.computed(
                        fields,
                        ElementKeys.BUNDLE,
                        Integer.toString(2 * conductors),
                        "common practice: out and back lie together");
        return new Covering(
                material,
                declared,
                wall,
                bundle,
                ledger.value(fields, ElementKeys.AIR),
                serviceClass);
    }

    private static String classText(BookInsulation book) {
        String middle = Measure.TEMPERATURE.show(book.classK());
        return book.spreadK() == 0
                ? middle
                : middle + " ± " + Measure.KELVIN.show(book.spreadK()) + " bound";
    }
}
