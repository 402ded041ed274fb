package liftwright.logbook.entry;

import liftwright.logbook.entry.PackSheet.Retire;
import liftwright.logbook.entry.PackSheet.Row;

/** Pieces of the text of a life sheet. */
final class PackText {

    private PackText() {}

    /** All but the rows. */
    static String head(PackSheet sheet) {
        var out = new Writing();
        out.comment(
                "Life sheet of a pack. Rows are added with `liftwright log pack`, never edited.");
        out.line(PackKeys.HEAD.name(), "1")
                .text(PackKeys.PACK.name(), sheet.pack())
                .textIfAny(PackKeys.SERIAL.name(), sheet.serial())
                .line(PackKeys.COEFFICIENT.name(), Writing.kelvin(sheet.temperatureCoefficient()))
                .amountIfAny(PackKeys.NEW_RESISTANCE.name(), sheet.newResistance())
                .amountIfAny(PackKeys.NEW_CAPACITY.name(), sheet.newCapacity());
        Retire retire = sheet.retire();
        if (retire.declared()) {
            out.open(PackKeys.RETIRE.name())
                    .share(PackKeys.RETIRE_RESISTANCE.name(), retire.resistance())
                    .share(PackKeys.RETIRE_CAPACITY.name(), retire.capacity())
                    .share(PackKeys.RETIRE_SWELLING.name(), retire.swelling())
                    .line(PackKeys.QUARANTINE.name(), String.valueOf(retire.quarantineDays()))
                    .close();
        }
        return out.toString();
    }

    /** One row, to stand below those there are. */
    static String row(Row row) {
        var out = new Writing().below();
        out.item()
                .line(PackKeys.DATE.name(), row.date().toString())
                .amountIfAny(PackKeys.RESISTANCE.name(), row.resistance())
                .amountIfAny(PackKeys.AT.name(), row.at())
                .amountIfAny(PackKeys.CAPACITY.name(), row.capacity())
                .amountIfAny(PackKeys.SWELLING.name(), row.swelling());
        row.storedDays().ifPresent(days -> out.line(PackKeys.STORED.name(), days.toString()));
        out.amountIfAny(PackKeys.CHARGE.name(), row.charge())
                .textIfAny(PackKeys.CRASH.name(), row.crash())
                .textIfAny(PackKeys.BY.name(), row.by())
                .textIfAny(PackKeys.NOTE.name(), row.note());
        return out.toString();
    }
}
