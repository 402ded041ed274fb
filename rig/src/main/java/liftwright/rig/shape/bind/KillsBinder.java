package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import liftwright.rig.Kill;
import liftwright.rig.Problem.Code;
import liftwright.rig.SignalGround;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.KillKeys;

/** Kills and signal grounds. */
final class KillsBinder {

    private final Ledger ledger;
    private final Parts parts;
    private final SupplyBinder supplies;
    private final Set<String> people;
    private final Set<String> contactors;
    private final Set<String> grounds = new HashSet<>();

    /**
     * @param people names of the crew, and the wearer's where there is one
     * @param contactors names of all contactors
     */
    KillsBinder(Ledger ledger, Parts parts, Set<String> people, Set<String> contactors) {
        this.ledger = ledger;
        this.parts = parts;
        this.supplies = new SupplyBinder(ledger, parts);
        this.people = Set.copyOf(people);
        this.contactors = Set.copyOf(contactors);
    }

    /** Signal grounds; before the kills, which name them. */
    List<SignalGround> grounds(List<Stated<Fields>> declared) {
        var made = new ArrayList<SignalGround>();
        for (Stated<Fields> stated : declared) {
            Fields fields = stated.value();
            String id = ledger.value(fields, KillKeys.GROUND_ID);
            grounds.add(id);
            String from = ledger.value(fields, KillKeys.GROUND_FROM);
            String to = ledger.value(fields, KillKeys.GROUND_TO);
            boolean starts = fields.stated(KillKeys.GROUND_FROM).filter(parts::exists).isPresent();
            boolean ends = fields.stated(KillKeys.GROUND_TO).filter(parts::exists).isPresent();
            if (starts && ends && from.equals(to)) {
                contradiction(
                        fields,
                        KillKeys.GROUND_TO,
                        "a ground line from " + Problems.quote(to) + " to itself",
                        "two different ends",
                        "");
            }
            made.add(
                    new SignalGround(
                            id,
                            fields.spot().path(),
                            from,
                            to,
                            ledger.value(fields, KillKeys.GROUND_RESISTANCE)));
        }
        return made;
    }

    List<Kill> kills(List<Stated<Fields>> declared) {
        return declared.stream().map(stated -> kill(stated.value())).toList();
    }

    private Kill kill(Fields fields) {
        Kill.Means by = ledger.value(fields, KillKeys.BY);
        List<String> opens = opens(fields);
        boolean opensNothing = !fields.has(KillKeys.OPENS);
        Kill.Order order =
                ledger.computed(
                        fields,
                        KillKeys.ORDER,
                        opensNothing ? "command zero only" : "open at once",
                        opensNothing ? "it opens no contactor" : "common practice");
        if (opensNothing && order != Kill.Order.COMMAND_ZERO_ONLY) {
            contradiction(
                    fields,
                    KillKeys.ORDER,
                    "a kill that opens, and no contactor that it opens",
                    "“opens” beside it, or “command zero only”",
                    "Say which contactors it opens, as in “opens: [main]”.");
        }
        if (!opensNothing && order == Kill.Order.COMMAND_ZERO_ONLY) {
            contradiction(
                    fields,
                    KillKeys.ORDER,
                    "“command zero only” beside contactors that it opens",
                    "“command zero then open”, or no “opens”",
                    "");
        }
        if (fields.has(KillKeys.RADIO) && by != Kill.Means.RADIO && !fields.failed(KillKeys.BY)) {
            contradiction(
                    fields,
                    KillKeys.RADIO,
                    "a radio link of a kill that does not act by radio",
                    "“radio” only with “by: radio”",
                    "Write “by: radio”, or take the link out.");
        }
        return new Kill(
                ledger.value(fields, KillKeys.KILL_ID),
                fields.spot().path(),
                opens,
                by,
                fields.stated(KillKeys.HELD_BY).flatMap(this::person),
                fields.get(KillKeys.REACTION),
                ledger.value(fields, KillKeys.DELAY),
                order,
                fields.get(KillKeys.RADIO),
                supplies.of(fields, KillKeys.FED_BY),
                fields.stated(KillKeys.KILL_GROUND).flatMap(this::ground),
                fields.get(KillKeys.THROUGH).orElse(List.of()).stream()
                        .map(Stated::value)
                        .distinct()
                        .toList(),
                ledger.value(fields, KillKeys.OPENS_ON_LOSS));
    }

    private List<String> opens(Fields fields) {
        var opens = new ArrayList<String>();
        for (Stated<String> name : fields.get(KillKeys.OPENS).orElse(List.of())) {
            named(
                            name,
                            contactors,
                            "the name of a contactor",
                            "Contactors stand under “contactors”.")
                    .filter(n -> !opens.contains(n))
                    .ifPresent(opens::add);
        }
        return opens;
    }

    private Optional<String> person(Stated<String> name) {
        return named(
                name,
                people,
                "one of the crew, or the wearer",
                name.value().equals(Kill.WEARER)
                        ? "Nobody wears this rig."
                        : "People stand under “crew”.");
    }

    private Optional<String> ground(Stated<String> name) {
        return named(name, grounds, "the id of a signal ground", "They stand under “grounds”.");
    }

    private Optional<String> named(
            Stated<String> name, Set<String> known, String expected, String otherwise) {
        if (known.contains(name.value())) {
            return Optional.of(name.value());
        }
        String advice = Nearest.advice(name.value(), known);
        ledger.problems()
                .add(
                        Code.NO_SUCH_PART,
                        name.spot(),
                        Problems.quote(name.value()),
                        expected,
                        advice.isEmpty() ? known(known) + otherwise : advice);
        return Optional.empty();
    }

    /** What could stand there, where that is not much. */
    private static String known(Set<String> names) {
        return names.isEmpty() || names.size() > 6
                ? ""
                : "Declared so far: " + String.join(", ", new TreeSet<>(names)) + ". ";
    }

    private void contradiction(
            Fields fields, Key<?> key, String found, String expected, String advice) {
        ledger.problems().add(Code.CONTRADICTION, fields.spotOf(key), found, expected, advice);
    }
}
