package liftwright.logbook.entry;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.FolderGuard;
import liftwright.trials.CardId;

/**
 * Texts of a file that mean a day, a digest, a card or a file, read or told.
 *
 * @param problems where what is wrong goes
 */
record Stating(Problems problems) {

    static final String DATE = "a day of the calendar as in 2026-03-14";

    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    Optional<LocalDate> date(Fields fields, Key<String> key) {
        return fields.stated(key).flatMap(this::date);
    }

    private Optional<LocalDate> date(Stated<String> stated) {
        try {
            if (DAY.matcher(stated.value()).matches()) {
                return Optional.of(LocalDate.parse(stated.value()));
            }
        } catch (DateTimeParseException e) {
            // told below, as whatever is no date
        }
        problems.add(Code.NOT_A_QUANTITY, stated.spot(), Problems.quote(stated.value()), DATE, "");
        return Optional.empty();
    }

    Optional<String> digest(Fields fields, Key<String> key) {
        Optional<Stated<String>> stated = fields.stated(key);
        if (stated.isEmpty() || DIGEST.matcher(stated.get().value()).matches()) {
            return stated.map(Stated::value);
        }
        problems.add(
                Code.NOT_A_QUANTITY,
                stated.get().spot(),
                Problems.quote(stated.get().value()),
                "sha256: and 64 digits from 0 to f",
                "");
        return Optional.empty();
    }

    Optional<CardId> card(Fields fields, Key<String> key) {
        Optional<Stated<String>> stated = fields.stated(key);
        Optional<CardId> card =
                stated.flatMap(
                        s -> CardId.parse(s.value()).filter(id -> id.text().equals(s.value())));
        if (stated.isPresent() && card.isEmpty()) {
            problems.add(
                    Code.UNKNOWN_WORD,
                    stated.get().spot(),
                    Problems.quote(stated.get().value()),
                    "the name of a card such as “hop” or “pod.left pod”",
                    "`liftwright card` lists those of a rig.");
        }
        return card;
    }

    /** A name of a file below the folder of the entry, and nowhere else. */
    Optional<String> file(Fields fields, Key<String> key) {
        Optional<Stated<String>> stated = fields.stated(key);
        Optional<String> objection = stated.flatMap(name -> FolderGuard.objection(name.value()));
        if (objection.isEmpty()) {
            return stated.map(Stated::value);
        }
        problems.add(
                Code.OUTSIDE_FOLDER,
                stated.orElseThrow().spot(),
                Problems.quote(stated.orElseThrow().value()) + ", " + objection.get(),
                "the name of a file in the folder of the entry",
                "");
        return Optional.empty();
    }

    /** A text that says something. */
    Optional<String> words(Fields fields, Key<String> key) {
        Optional<Stated<String>> stated = fields.stated(key);
        if (stated.isEmpty() || !stated.get().value().isBlank()) {
            return stated.map(Stated::value);
        }
        problems.add(
                Code.WRONG_KIND,
                stated.get().spot(),
                "nothing",
                key.kind().expectation(),
                "Write a value or take the key out.");
        return Optional.empty();
    }

    static List<String> texts(Fields fields, Key<List<Stated<String>>> key) {
        return fields.get(key).orElse(List.of()).stream().map(Stated::value).toList();
    }

    static List<Fields> sections(Fields fields, Key<List<Stated<Fields>>> key) {
        return fields.get(key).orElse(List.of()).stream().map(Stated::value).toList();
    }
}
