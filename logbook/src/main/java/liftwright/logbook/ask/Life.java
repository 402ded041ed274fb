package liftwright.logbook.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.entry.PackSheet;
import liftwright.logbook.life.PackLife;
import liftwright.logbook.life.PackLife.Figure;
import liftwright.logbook.life.PackLife.Kind;
import liftwright.logbook.life.PackLife.Point;
import liftwright.logbook.life.PackLife.Reason;
import liftwright.quantity.Quantity;

/** The life of a pack, and whether it stays in use. */
public final class Life {

    private Life() {}

    /** As an answer. */
    public static LogbookAnswer of(About about, PackSheet sheet, PackLife life) {
        return LogbookAnswer.of(
                about,
                life.outcome(),
                sentence(sheet, life),
                List.of(),
                List.of(rule(sheet, life), rows(life)));
    }

    private static Sentence sentence(PackSheet sheet, PackLife life) {
        String pack =
                "pack "
                        + sheet.pack()
                        + (sheet.serial().isEmpty() ? "" : " (" + sheet.serial() + ")");
        String against =
                life.reasons().stream()
                        .filter(reason -> reason.outcome() == life.outcome())
                        .map(Life::words)
                        .collect(Collectors.joining(", "));
        return Sentence.words(
                switch (life.outcome()) {
                    case HOLDS -> pack + " stays within its rule of retirement";
                    case DOES_NOT_HOLD ->
                            pack
                                    + (onlyRests(life) ? " rests today: " : " is to be retired: ")
                                    + against;
                    case CANNOT_BE_TOLD, NOT_JUDGED ->
                            against.isEmpty()
                                    ? "nothing that the rule of retirement asks of "
                                            + pack
                                            + " was measured yet"
                                    : pack + ", too doubtful to tell: " + against;
                });
    }

    private static boolean onlyRests(PackLife life) {
        return life.reasons().stream()
                .filter(reason -> reason.outcome() == Outcome.DOES_NOT_HOLD)
                .allMatch(reason -> reason.kind() == Kind.CRASH);
    }

    private static String words(Reason reason) {
        return reason.kind() == Kind.CRASH
                ? "crash on " + reason.on()
                : reason.kind().words() + " " + percent(reason.share()) + " on " + reason.on();
    }

    private static String percent(Figure share) {
        String middle = percent(share.si());
        return share.band()
                .map(b -> middle + " (" + percent(b.low()) + " to " + percent(b.high()) + ")")
                .orElse(middle);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static Section.Table rule(PackSheet sheet, PackLife life) {
        PackSheet.Retire rule = sheet.retire();
        String origin = rule.declared() ? "" : ", common practice";
        var rows = new ArrayList<List<Value>>();
        for (Kind kind : Kind.values()) {
            Optional<Reason> reason =
                    life.reasons().stream().filter(r -> r.kind() == kind).findFirst();
            String limit =
                    switch (kind) {
                        case RESISTANCE -> percent(rule.resistance()) + " of new or more";
                        case CAPACITY -> "less than " + percent(rule.capacity()) + " of new";
                        case SWELLING -> percent(rule.swelling()) + " or more";
                        case CRASH ->
                                "rests "
                                        + LogbookAnswer.counted(
                                                rule.quarantineDays(), "day", "days")
                                        + " after the day of a crash";
                    };
            rows.add(
                    List.of(
                            Value.words("retire-kind", kind.words()),
                            Value.words("retire-limit", limit + origin),
                            Value.words(
                                    "retire-found",
                                    reason.map(Life::words)
                                            .orElse(
                                                    kind == Kind.CRASH
                                                            ? "none written down"
                                                            : "not measured")),
                            Value.words(
                                    "retire-outcome",
                                    reason.map(r -> r.outcome().label()).orElse(""))));
        }
        return new Section.Table(
                "pack-rule",
                "Rule of retirement, and what it says",
                List.of("retire-kind", "retire-limit", "retire-found", "retire-outcome"),
                rows);
    }

    private static Section.Table rows(PackLife life) {
        var rows = new ArrayList<List<Value>>();
        for (Point point : life.points()) {
            PackSheet.Row row = point.row();
            rows.add(
                    List.of(
                            Value.words("pack-row", row.date().toString()),
                            written("pack-resistance", row.resistance()),
                            written("pack-temperature", row.at()),
                            figure("pack-resistance-25", point.at25Ohm()),
                            figure("pack-resistance-share", point.resistanceShare()),
                            written("pack-capacity", row.capacity()),
                            figure("pack-capacity-share", point.capacityShare()),
                            written("pack-swelling", row.swelling()),
                            row.storedDays()
                                    .map(days -> Value.of("pack-stored", days))
                                    .orElseGet(() -> Value.words("pack-stored", "")),
                            written("pack-stored-at", row.charge()),
                            Value.words("pack-note", seen(row))));
        }
        return new Section.Table(
                "pack-life",
                "Its life; " + LogbookAnswer.counted(life.storedDays(), "day", "days") + " stored",
                List.of(
                        "pack-row",
                        "pack-resistance",
                        "pack-temperature",
                        "pack-resistance-25",
                        "pack-resistance-share",
                        "pack-capacity",
                        "pack-capacity-share",
                        "pack-swelling",
                        "pack-stored",
                        "pack-stored-at",
                        "pack-note"),
                rows);
    }

    private static String seen(PackSheet.Row row) {
        var words = new ArrayList<String>();
        if (!row.crash().isEmpty()) {
            words.add("crash: " + row.crash());
        }
        if (!row.note().isEmpty()) {
            words.add(row.note());
        }
        if (!row.by().isEmpty()) {
            words.add("(" + row.by() + ")");
        }
        return String.join(" ", words);
    }

    private static Value written(String field, Optional<Quantity> quantity) {
        return quantity.map(q -> Value.of(field, q.si())).orElseGet(() -> Value.words(field, ""));
    }

    private static Value figure(String field, Optional<Figure> figure) {
        return figure.map(f -> Value.of(field, f.si(), f.band()))
                .orElseGet(() -> Value.words(field, ""));
    }
}
