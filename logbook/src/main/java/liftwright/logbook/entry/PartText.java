package liftwright.logbook.entry;

import liftwright.logbook.entry.PartSheet.Inspection;
import liftwright.logbook.entry.PartSheet.Measured;

/** Pieces of the text of a part's sheet. */
final class PartText {

    private PartText() {}

    static String head(PartSheet sheet) {
        return new Writing()
                .comment("How a part was found. Inspections are added with `liftwright log part`.")
                .line(PartKeys.HEAD.name(), "1")
                .text(PartKeys.PART.name(), sheet.part())
                .toString();
    }

    /** One inspection, to stand below those there are. */
    static String row(Inspection inspection) {
        var out = new Writing().below();
        out.item()
                .line(PartKeys.DATE.name(), inspection.date().toString())
                .textIfAny(PartKeys.SERIAL.name(), inspection.serial())
                .line(PartKeys.ACCEPTED.name(), inspection.accepted() ? "yes" : "no")
                .text(PartKeys.BY.name(), inspection.by());
        if (!inspection.measured().isEmpty()) {
            out.open(PartKeys.MEASURED.name());
            for (Measured measured : inspection.measured()) {
                out.item()
                        .text(PartKeys.WHAT.name(), measured.what())
                        .amount(PartKeys.FOUND.name(), measured.found())
                        .amountIfAny(PartKeys.DECLARED.name(), measured.declared())
                        .close();
            }
            out.close();
        }
        return out.textIfAny(PartKeys.NOTE.name(), inspection.note()).toString();
    }
}
