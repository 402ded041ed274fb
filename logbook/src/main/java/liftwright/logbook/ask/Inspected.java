package liftwright.logbook.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.entry.PartSheet;
import liftwright.logbook.entry.PartSheet.Inspection;
import liftwright.logbook.entry.PartSheet.Measured;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityWriter;

/** How a part was found, time after time. */
public final class Inspected {

    private Inspected() {}

    /** As an answer: what counts is the last inspection. */
    public static LogbookAnswer of(About about, PartSheet sheet) {
        Optional<Inspection> last =
                sheet.inspections().stream()
                        .reduce((one, two) -> two.date().isBefore(one.date()) ? one : two);
        var rows = new ArrayList<List<Value>>();
        for (Inspection inspection : sheet.inspections()) {
            String head = head(inspection);
            if (inspection.measured().isEmpty()) {
                rows.add(row(head, "", "", "", inspection.note()));
            }
            for (Measured measured : inspection.measured()) {
                rows.add(
                        row(
                                head,
                                measured.what(),
                                QuantityWriter.write(measured.found()),
                                measured.declared().map(QuantityWriter::write).orElse(""),
                                agrees(measured)));
            }
        }
        boolean accepted = last.map(Inspection::accepted).orElse(false);
        return LogbookAnswer.of(
                about,
                accepted ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                        "part "
                                + sheet.part()
                                + (accepted ? " was accepted" : " was not accepted")
                                + last.map(i -> " on " + i.date() + " by " + i.by()).orElse("")),
                List.of(),
                List.of(
                        new Section.Table(
                                "part-inspections",
                                "Inspections",
                                List.of(
                                        "inspection",
                                        "part-measured",
                                        "part-found",
                                        "part-declared",
                                        "part-told"),
                                rows)));
    }

    private static String head(Inspection inspection) {
        return inspection.date()
                + (inspection.serial().isEmpty() ? "" : ", " + inspection.serial())
                + ", "
                + inspection.by()
                + (inspection.accepted() ? ", accepted" : ", not accepted");
    }

    private static List<Value> row(
            String head, String what, String found, String declared, String told) {
        return List.of(
                Value.words("inspection", head),
                Value.words("part-measured", what),
                Value.words("part-found", found),
                Value.words("part-declared", declared),
                Value.words("part-told", told));
    }

    /** Doubts added in quadrature: both are 95 % (k = 2). */
    static String agrees(Measured measured) {
        if (measured.declared().isEmpty()) {
            return "";
        }
        Quantity found = measured.found();
        Quantity declared = measured.declared().get();
        double off = found.si() - declared.si();
        double doubt =
                off > 0
                        ? Math.hypot(found.tolerance().minus(), declared.tolerance().plus())
                        : Math.hypot(found.tolerance().plus(), declared.tolerance().minus());
        return Math.abs(off) <= doubt
                ? "agrees"
                : off > 0 ? "more than declared" : "less than declared";
    }
}
