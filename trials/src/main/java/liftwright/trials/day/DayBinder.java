package liftwright.trials.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.quantity.Quantity;
import liftwright.rig.CrewMember;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Problem.Code;
import liftwright.rig.Rig;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;
import liftwright.trials.proof.WrittenDate;

/** Makes a day of what its file states. */
final class DayBinder {

    private final Problems problems;
    private final List<String> packs;
    private final List<String> roles;
    private final List<DefaultUsed> defaults = new ArrayList<>();

    DayBinder(Problems problems, Rig rig) {
        this.problems = problems;
        packs = rig.packs().stream().map(pack -> pack.id().text()).toList();
        Set<String> all =
                new LinkedHashSet<>(
                        List.of(Day.WEARER, Day.THROTTLE, Day.KILL, Day.FIRE, Day.LINES));
        rig.crew().stream().map(CrewMember::name).forEach(all::add);
        roles = List.copyOf(all);
    }

    Optional<Day> read(Node root) {
        return DayKeys.SECTION.read(root, Spot.top(root.span()), problems).flatMap(this::day);
    }

    private Optional<Day> day(Fields fields) {
        Optional<LocalDate> date = WrittenDate.read(fields, DayKeys.DATE, problems);
        Optional<LocalTime> start = clock(fields, DayKeys.START);
        Optional<LocalTime> light = clock(fields, DayKeys.LIGHT);
        Optional<Double> wind = fields.get(DayKeys.WIND).map(Quantity::si);
        Optional<Double> gust = fields.get(DayKeys.GUST).map(Quantity::si);
        Map<String, Day.ReadyPack> ready = packs(fields);
        Map<String, Set<String>> people = people(fields);
        if (start.isPresent() && light.isPresent() && !light.get().isAfter(start.get())) {
            contradiction(
                    fields,
                    DayKeys.LIGHT,
                    "dark at " + light.get() + ", before the start",
                    "a time after " + start.get());
        }
        if (wind.isPresent() && gust.isPresent() && gust.get() < wind.get()) {
            contradiction(fields, DayKeys.GUST, "a gust below the mean wind", "at least the wind");
        }
        for (Key<?> key : List.of(DayKeys.PROOF, DayKeys.ABORTS, DayKeys.UNEXPLAINED)) {
            if (!fields.has(key) && key.need() instanceof Need.Open(var means)) {
                defaults.add(new DefaultUsed(fields.spotOf(key).path(), "not told", means));
            }
        }
        double hoursS = hoursS(fields);
        if (problems.hasErrors() || date.isEmpty() || start.isEmpty() || light.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Day(
                        date.get(),
                        start.get(),
                        hoursS,
                        light.get(),
                        fields.get(DayKeys.AIR).orElseThrow().si(),
                        wind.orElseThrow(),
                        gust.orElseThrow(),
                        ready,
                        people,
                        fields.get(DayKeys.PROOF),
                        fields.get(DayKeys.ABORTS).orElse(0),
                        fields.get(DayKeys.UNEXPLAINED).orElse(false),
                        defaults));
    }

    private double hoursS(Fields fields) {
        Optional<Quantity> told = fields.get(DayKeys.HOURS);
        if (told.isPresent() || fields.has(DayKeys.HOURS)) {
            return told.map(Quantity::si).orElse(1.0);
        }
        if (DayKeys.HOURS.need() instanceof Need.Default(var text, var origin)) {
            defaults.add(new DefaultUsed(fields.spotOf(DayKeys.HOURS).path(), text, origin));
            return DayKeys.HOURS
                    .kind()
                    .read(new Node.Scalar(text, false, Spot.NOWHERE), fields.spot(), problems)
                    .map(Quantity::si)
                    .orElseThrow();
        }
        throw new IllegalStateException("the key has a default");
    }

    private Optional<LocalTime> clock(Fields fields, Key<String> key) {
        return fields.stated(key)
                .flatMap(
                        told -> {
                            try {
                                return Optional.of(LocalTime.parse(told.value()));
                            } catch (DateTimeParseException notOne) {
                                problems.add(
                                        Code.WRONG_KIND,
                                        told.spot(),
                                        Problems.quote(told.value()),
                                        DayKeys.CLOCK,
                                        "Hours from 00 to 23 and minutes, two digits each.");
                                return Optional.empty();
                            }
                        });
    }

    private Map<String, Day.ReadyPack> packs(Fields fields) {
        var ready = new LinkedHashMap<String, Day.ReadyPack>();
        fields.get(DayKeys.PACKS)
                .orElse(Map.of())
                .forEach(
                        (id, told) -> {
                            if (!packs.contains(id)) {
                                noSuch(told.spot(), id, "a pack of the rig", packs);
                            }
                            Fields pack = told.value();
                            Optional<Quantity> charge = pack.get(DayKeys.CHARGE);
                            Optional<Quantity> warmth = pack.get(DayKeys.TEMPERATURE);
                            if (charge.isPresent() && warmth.isPresent()) {
                                ready.put(
                                        id,
                                        new Day.ReadyPack(
                                                charge.get().si(),
                                                warmth.get().si(),
                                                pack.get(DayKeys.SPREAD).map(Quantity::si)));
                            }
                        });
        return ready;
    }

    private Map<String, Set<String>> people(Fields fields) {
        var people = new LinkedHashMap<String, Set<String>>();
        fields.get(DayKeys.PEOPLE)
                .orElse(Map.of())
                .forEach((name, told) -> people.put(name, roles(told.value())));
        return people;
    }

    private Set<String> roles(List<Stated<String>> told) {
        var own = new LinkedHashSet<String>();
        for (Stated<String> role : told) {
            if (!roles.contains(role.value())) {
                noSuch(role.spot(), role.value(), "a role: " + String.join(", ", roles), roles);
            }
            own.add(role.value());
        }
        return own;
    }

    private void noSuch(Spot spot, String found, String expected, List<String> known) {
        problems.add(
                Code.NO_SUCH_PART,
                spot,
                Problems.quote(found),
                expected,
                Nearest.to(found, known)
                        .map(near -> "Perhaps “" + near + "” is meant.")
                        .orElse(""));
    }

    private void contradiction(Fields fields, Key<?> key, String found, String expected) {
        problems.add(Code.CONTRADICTION, fields.spotOf(key), found, expected, "");
    }
}
