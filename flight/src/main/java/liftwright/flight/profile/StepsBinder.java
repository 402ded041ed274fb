package liftwright.flight.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;

/** Steps, and whether each can follow on the one before. */
final class StepsBinder {

    /** Longer flights nobody flies with what is declared here; files are untrusted. */
    private static final double LONGEST_S = 3600;

    private final ProfileBinder binder;
    private final Problems problems;

    /** Where the rig is after a step. */
    private enum Now {
        DEAD,
        IDLES,
        FLIES
    }

    StepsBinder(ProfileBinder binder, Problems problems) {
        this.binder = binder;
        this.problems = problems;
    }

    Optional<List<Profile.Step>> steps(List<Stated<Fields>> told, Profile.Start start) {
        Now now = start.on() == Profile.Stand.HELD ? Now.FLIES : Now.DEAD;
        var steps = new ArrayList<Profile.Step>();
        for (int k = 0; k < told.size(); k++) {
            Stated<Fields> one = told.get(k);
            int before = problems.errors();
            Optional<Profile.Step> step = step(one.value());
            // a step that nobody could read is left out of the list, and was told
            boolean first = one.spot().step().equals(Integer.toString(k + 1));
            if (step.isEmpty() || !first) {
                return Optional.empty();
            }
            now = after(step.get(), now, one.spot());
            if (problems.errors() > before) {
                return Optional.empty(); // what follows on a wrong step is not judged by it
            }
            steps.add(step.get());
        }
        if (Course.lengthS(steps, start) > LONGEST_S) {
            problems.add(
                    Code.OUT_OF_RANGE,
                    told.getLast().spot(),
                    "a flight of " + ProfileKeys.seconds(Course.lengthS(steps, start)),
                    "at most " + ProfileKeys.seconds(LONGEST_S) + " together",
                    "");
        }
        return Optional.of(steps);
    }

    private Optional<Profile.Step> step(Fields own) {
        List<Optional<? extends Profile.Step>> kinds =
                List.of(
                        time(own, ProfileKeys.MAKE_LIVE).map(Profile.Step.MakeLive::new),
                        own.get(ProfileKeys.LIFT).flatMap(this::lift),
                        time(own, ProfileKeys.HOLD).map(Profile.Step.Hold::new),
                        own.get(ProfileKeys.MOVE).flatMap(this::move),
                        own.get(ProfileKeys.TURN).flatMap(this::turn),
                        time(own, ProfileKeys.LAND).map(Profile.Step.Land::new),
                        time(own, ProfileKeys.MAKE_DEAD).map(Profile.Step.MakeDead::new));
        List<? extends Profile.Step> found = kinds.stream().flatMap(Optional::stream).toList();
        return found.size() == 1 ? Optional.of(found.getFirst()) : Optional.empty();
    }

    private Optional<Double> time(Fields own, Key<Quantity> key) {
        return binder.si(own, key);
    }

    private Optional<Profile.Step> lift(Fields own) {
        Optional<Double> to = binder.si(own, ProfileKeys.TO);
        Optional<Double> climb = binder.or(own, ProfileKeys.CLIMB).map(Quantity::si);
        return to.flatMap(height -> climb.map(fast -> new Profile.Step.Lift(height, fast)));
    }

    private Optional<Profile.Step> move(Fields own) {
        Optional<Double> forward = binder.or(own, ProfileKeys.FORWARD).map(Quantity::si);
        Optional<Double> right = binder.or(own, ProfileKeys.RIGHT).map(Quantity::si);
        Optional<Double> height = binder.si(own, ProfileKeys.HEIGHT);
        Optional<Double> speed = binder.or(own, ProfileKeys.SPEED).map(Quantity::si);
        if (forward.isEmpty() || right.isEmpty() || speed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Profile.Step.Move(
                        forward.get(),
                        right.get(),
                        height.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        speed.get()));
    }

    private Optional<Profile.Step> turn(Fields own) {
        Optional<Double> by = binder.si(own, ProfileKeys.BY);
        Optional<Double> rate = binder.or(own, ProfileKeys.RATE).map(Quantity::si);
        return by.flatMap(angle -> rate.map(fast -> new Profile.Step.Turn(angle, fast)));
    }

    private Now after(Profile.Step step, Now now, Spot spot) {
        return switch (step) {
            case Profile.Step.MakeLive _ -> {
                ask(now == Now.DEAD, spot, "made live while it is live", "“make live” once");
                yield Now.IDLES;
            }
            case Profile.Step.Lift _ -> {
                ask(now != Now.DEAD, spot, "a lift of a dead rig", "“make live” before it");
                yield Now.FLIES;
            }
            case Profile.Step.Hold _ -> flying(now, spot, "a hold on the ground");
            case Profile.Step.Move _ -> flying(now, spot, "a move on the ground");
            case Profile.Step.Turn _ -> flying(now, spot, "a turn on the ground");
            case Profile.Step.Land _ -> {
                flying(now, spot, "a landing of a rig that does not fly");
                yield Now.IDLES;
            }
            case Profile.Step.MakeDead _ -> {
                ask(
                        now == Now.IDLES,
                        spot,
                        now == Now.FLIES ? "made dead in the air" : "made dead while it is dead",
                        "“land” before it; what is pressed in the air is “kill”");
                yield Now.DEAD;
            }
        };
    }

    private Now flying(Now now, Spot spot, String found) {
        ask(now == Now.FLIES, spot, found, "“lift” before it");
        return Now.FLIES;
    }

    private void ask(boolean holds, Spot spot, String found, String expected) {
        if (!holds) {
            problems.add(Code.CONTRADICTION, spot, found, expected, "");
        }
    }
}
