package liftwright.logbook.entry;

/**
 * The text of a sheet in pieces: it begins with its head, and rows are put behind.
 *
 * @param head without rows
 * @param rowsBegin what stands before the first row
 * @param row the row to add, lines that are ended
 */
public record SheetText(String head, String rowsBegin, String row) {

    /** A row of a pack, for a sheet that may not be there yet. */
    public static SheetText of(PackSheet sheet, PackSheet.Row row) {
        return new SheetText(PackText.head(sheet), PackKeys.ROWS.name() + ":\n", PackText.row(row));
    }

    /** An inspection of a part. */
    public static SheetText of(PartSheet sheet, PartSheet.Inspection inspection) {
        return new SheetText(
                PartText.head(sheet),
                PartKeys.INSPECTIONS.name() + ":\n",
                PartText.row(inspection));
    }
}
