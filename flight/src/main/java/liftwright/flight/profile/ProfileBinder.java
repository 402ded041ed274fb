package liftwright.flight.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.fault.Fault;
import liftwright.plant.fault.Faults;
import liftwright.quantity.Quantity;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Kill;
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

/** Makes a profile of what its file states. */
final class ProfileBinder {

    private final Problems problems;
    private final Rig rig;
    private final List<DefaultUsed> defaults = new ArrayList<>();

    ProfileBinder(Problems problems, Rig rig) {
        this.problems = problems;
        this.rig = rig;
    }

    Optional<Profile> read(Node root) {
        return ProfileKeys.SECTION
                .read(root, Spot.top(root.span()), problems)
                .flatMap(this::profile);
    }

    private Optional<Profile> profile(Fields fields) {
        Optional<Profile.Start> start = start(fields);
        Optional<List<Profile.Step>> steps =
                start.flatMap(
                        from ->
                                fields.get(ProfileKeys.STEPS)
                                        .flatMap(
                                                told ->
                                                        new StepsBinder(this, problems)
                                                                .steps(told, from)));
        Optional<Profile.Limits> limits = limits(fields);
        List<Profile.Abort> aborts =
                fields.get(ProfileKeys.ABORTS).orElse(List.of()).stream()
                        .flatMap(told -> abort(told.value()).stream())
                        .toList();
        double untilS = steps.map(told -> Course.lengthS(told, start.get())).orElse(3600.0);
        Optional<Profile.Press> kill =
                fields.get(ProfileKeys.KILL).flatMap(told -> kill(told, untilS));
        List<Profile.Scripted> faults = faults(fields, untilS);
        Optional<Profile.Wind> wind =
                fields.get(ProfileKeys.WIND).flatMap(told -> wind(told, untilS));
        Optional<Profile.Together> together =
                start.flatMap(
                        from ->
                                fields.get(ProfileKeys.TOGETHER)
                                        .flatMap(told -> together(told, from)));
        if (problems.hasErrors() || steps.isEmpty() || limits.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Profile(
                        fields.get(ProfileKeys.NAME).orElse(""),
                        start.get(),
                        steps.get(),
                        limits.get(),
                        aborts,
                        kill,
                        faults,
                        wind,
                        together,
                        defaults));
    }

    private Optional<Profile.Start> start(Fields fields) {
        if (fields.failed(ProfileKeys.START)) {
            return Optional.empty();
        }
        Fields own = section(fields, ProfileKeys.START);
        Profile.Stand on = or(own, ProfileKeys.ON).orElse(Profile.Stand.GROUND);
        Optional<Double> height = si(own, ProfileKeys.HELD_HEIGHT);
        if (on == Profile.Stand.HELD && height.isEmpty() && !own.failed(ProfileKeys.HELD_HEIGHT)) {
            problems.add(
                    Code.MISSING_KEY,
                    own.spotOf(ProfileKeys.ON),
                    "held, and not how high",
                    "height: the height of its lowest part",
                    "Add for instance “height: 1.5 m”.");
            return Optional.empty();
        }
        if (on != Profile.Stand.HELD && height.isPresent()) {
            contradiction(
                    own,
                    ProfileKeys.HELD_HEIGHT,
                    "a height of a rig that stands on the ground",
                    "“height” only beside “on: held”");
        }
        Optional<Double> charge = si(own, ProfileKeys.CHARGE);
        boolean tethered = own.get(ProfileKeys.TETHERED).orElse(false);
        if (tethered && rig.restraint().tether().isEmpty()) {
            contradiction(
                    own,
                    ProfileKeys.TETHERED,
                    "a tether, and the rig file declares none",
                    "“restraint: {tether: …}” in the rig file");
        }
        return Optional.of(
                new Profile.Start(
                        on,
                        height.orElse(0.0),
                        charge.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        tethered));
    }

    private Optional<Profile.Limits> limits(Fields fields) {
        Fields own = section(fields, ProfileKeys.LIMITS);
        Optional<Double> tilt = or(own, ProfileKeys.TILT).map(Quantity::si);
        Optional<Double> drift = or(own, ProfileKeys.DRIFT).map(Quantity::si);
        Optional<Double> lost = or(own, ProfileKeys.LOST).map(Quantity::si);
        Optional<Double> miss = or(own, ProfileKeys.MISS).map(Quantity::si);
        Optional<Double> landing = or(own, ProfileKeys.LANDING).map(Quantity::si);
        if (tilt.isEmpty()
                || drift.isEmpty()
                || lost.isEmpty()
                || miss.isEmpty()
                || landing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Profile.Limits(tilt.get(), drift.get(), lost.get(), miss.get(), landing.get()));
    }

    private Optional<Profile.Abort> abort(Fields own) {
        Optional<Profile.Then> then = own.get(ProfileKeys.THEN);
        for (Watched watched : Watched.ALL) {
            Optional<Double> level = si(own, watched.key());
            if (level.isPresent() && then.isPresent()) {
                return Optional.of(new Profile.Abort(watched.watch(), level.get(), then.get()));
            }
        }
        return Optional.empty();
    }

    private record Watched(Key<Quantity> key, Profile.Watch watch) {
        static final List<Watched> ALL =
                List.of(
                        new Watched(ProfileKeys.ABORT_TILT, Profile.Watch.TILT),
                        new Watched(ProfileKeys.ABORT_DRIFT, Profile.Watch.DRIFT),
                        new Watched(ProfileKeys.ABORT_HEIGHT, Profile.Watch.HEIGHT),
                        new Watched(ProfileKeys.ABORT_SINK, Profile.Watch.SINK),
                        new Watched(ProfileKeys.ABORT_CHARGE, Profile.Watch.CHARGE),
                        new Watched(ProfileKeys.ABORT_CELL, Profile.Watch.CELL));
    }

    private Optional<Profile.Press> kill(Fields own, double untilS) {
        Optional<Double> at = within(own, ProfileKeys.KILL_AT, untilS);
        Optional<Stated<String>> with = own.stated(ProfileKeys.KILL_WITH);
        List<String> known = rig.wiring().kills().stream().map(Kill::id).toList();
        with.filter(told -> !known.contains(told.value()))
                .ifPresent(
                        told ->
                                noSuch(
                                        told,
                                        known.isEmpty()
                                                ? "a kill; the rig file declares none"
                                                : "a kill of the rig: " + String.join(", ", known),
                                        known));
        return at.flatMap(s -> with.map(told -> new Profile.Press(s, told.value())));
    }

    private List<Profile.Scripted> faults(Fields fields, double untilS) {
        List<Stated<Fields>> told = fields.get(ProfileKeys.FAULTS).orElse(List.of());
        if (told.isEmpty()) {
            return List.of();
        }
        List<Fault> all = Faults.of(rig);
        return told.stream()
                .flatMap(one -> fault(one.value(), all, untilS).stream())
                .sorted(Comparator.comparingDouble(Profile.Scripted::atS))
                .toList();
    }

    private Optional<Profile.Scripted> fault(Fields own, List<Fault> all, double untilS) {
        Optional<Double> at = within(own, ProfileKeys.FAULT_AT, untilS);
        Optional<Stated<String>> part = own.stated(ProfileKeys.FAULT_PART);
        if (part.isEmpty()) {
            return Optional.empty();
        }
        List<Fault> ofPart =
                all.stream().filter(f -> f.part().text().equals(part.get().value())).toList();
        if (ofPart.isEmpty()) {
            noSuch(
                    part.get(),
                    "a part that can fail, by its id as “review failures” prints it",
                    all.stream().map(f -> f.part().text()).distinct().toList());
            return Optional.empty();
        }
        Optional<Fault.Kind> kind = own.get(ProfileKeys.FAULT_KIND);
        if (kind.isEmpty() && own.has(ProfileKeys.FAULT_KIND)) {
            return Optional.empty();
        }
        Optional<Fault> found =
                ofPart.stream().filter(f -> kind.map(f.kind()::equals).orElse(true)).findFirst();
        if (found.isEmpty()) {
            problems.add(
                    Code.NO_SUCH_PART,
                    own.spotOf(ProfileKeys.FAULT_KIND),
                    Problems.quote(words(kind.get())),
                    "what can go wrong with "
                            + part.get().value()
                            + ": "
                            + String.join(", ", ofPart.stream().map(f -> words(f.kind())).toList()),
                    "");
        }
        return at.flatMap(s -> found.map(fault -> new Profile.Scripted(s, fault)));
    }

    private static String words(Fault.Kind kind) {
        return kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    private Optional<Profile.Wind> wind(Fields own, double untilS) {
        Optional<Double> mean = si(own, ProfileKeys.MEAN);
        Optional<Double> from = or(own, ProfileKeys.FROM).map(Quantity::si);
        Optional<Double> length = or(own, ProfileKeys.GUST_LENGTH).map(Quantity::si);
        Optional<Boolean> rough = or(own, ProfileKeys.ROUGH);
        double gust = si(own, ProfileKeys.GUST).orElse(0.0);
        double gustAt = within(own, ProfileKeys.GUST_AT, untilS).orElse(0.0);
        if (mean.isEmpty() || from.isEmpty() || length.isEmpty() || rough.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Profile.Wind(mean.get(), from.get(), gust, gustAt, length.get(), rough.get()));
    }

    private Optional<Profile.Together> together(Fields own, Profile.Start start) {
        Optional<Double> apart = or(own, ProfileKeys.APART).map(Quantity::si);
        List<Profile.Module> modules = new ArrayList<>();
        for (Stated<Fields> told : own.get(ProfileKeys.MODULES).orElse(List.of())) {
            module(told.value(), start).ifPresent(modules::add);
        }
        return apart.isEmpty() || modules.isEmpty()
                ? Optional.empty()
                : Optional.of(new Profile.Together(apart.get(), modules));
    }

    private Optional<Profile.Module> module(Fields own, Profile.Start start) {
        Optional<String> name = own.get(ProfileKeys.MODULE_NAME);
        Optional<Double> forward = or(own, ProfileKeys.MODULE_FORWARD).map(Quantity::si);
        Optional<Double> right = or(own, ProfileKeys.MODULE_RIGHT).map(Quantity::si);
        Optional<Double> after = or(own, ProfileKeys.MODULE_AFTER).map(Quantity::si);
        Optional<List<Profile.Step>> steps =
                own.get(ProfileKeys.MODULE_STEPS)
                        .flatMap(told -> new StepsBinder(this, problems).steps(told, start));
        if (name.isEmpty() || forward.isEmpty() || right.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Profile.Module(name.get(), forward.get(), right.get(), after.get(), steps));
    }

    /** A moment of the flight. */
    private Optional<Double> within(Fields own, Key<Quantity> key, double untilS) {
        Optional<Double> at = si(own, key);
        if (at.isPresent() && at.get() > untilS) {
            contradiction(
                    own,
                    key,
                    "a moment after the end of the last step",
                    "a time before " + ProfileKeys.seconds(untilS));
        }
        return at;
    }

    /** The value; a ± would be passed over, so that it is refused. */
    Optional<Double> si(Fields fields, Key<Quantity> key) {
        Optional<Quantity> value = fields.get(key);
        value.ifPresent(told -> plain(fields, key, told));
        return value.map(Quantity::si);
    }

    private void plain(Fields fields, Key<?> key, Quantity told) {
        if (!told.tolerance().isNone()) {
            contradiction(
                    fields, key, "a ± behind “" + key.name() + "”", "the value that is wanted");
        }
    }

    /** The value, or what stands in for it, which is told. Empty where it could not be read. */
    <T> Optional<T> or(Fields fields, Key<T> key) {
        if (fields.has(key)) {
            Optional<T> told = fields.get(key);
            if (told.isPresent() && told.get() instanceof Quantity quantity) {
                plain(fields, key, quantity);
            }
            return told;
        }
        if (key.need() instanceof Need.Default(var text, var origin)) {
            defaults.add(new DefaultUsed(fields.spotOf(key).path(), text, origin));
            return key.kind()
                    .read(new Node.Scalar(text, false, Spot.NOWHERE), fields.spot(), problems);
        }
        throw new IllegalStateException("the key has a default");
    }

    private static Fields section(Fields fields, Key<Fields> key) {
        return fields.get(key)
                .orElseGet(
                        () ->
                                Fields.none(
                                        key.equals(ProfileKeys.START)
                                                ? ProfileKeys.START_SECTION
                                                : ProfileKeys.LIMITS_SECTION,
                                        fields.spotOf(key)));
    }

    void contradiction(Fields fields, Key<?> key, String found, String expected) {
        problems.add(Code.CONTRADICTION, fields.spotOf(key), found, expected, "");
    }

    private void noSuch(Stated<String> told, String expected, List<String> known) {
        problems.add(
                Code.NO_SUCH_PART,
                told.spot(),
                Problems.quote(told.value()),
                expected,
                Nearest.advice(told.value(), known));
    }
}
