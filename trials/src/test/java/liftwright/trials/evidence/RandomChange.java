package liftwright.trials.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;

/** Random changes of a rig file that leave a rig. */
final class RandomChange {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

    private RandomChange() {}

    /**
     * @param changes what was done
     * @param after what came of it
     */
    record Made(List<Change> changes, RigReading after) {}

    static Made of(RigReading before, RandomGenerator random) {
        for (int tries = 0; tries < 200; tries++) {
            var changes = new ArrayList<Change>();
            for (int i = random.nextInt(2); i >= 0; i--) {
                one(before, random).ifPresent(changes::add);
            }
            if (!changes.isEmpty()
                    && before.with(changes) instanceof RigReading.Edit.Changed(var after, var _)
                    && after.rig().isPresent()) {
                return new Made(changes, after);
            }
        }
        throw new AssertionError("no change of 200 left a rig");
    }

    private static Optional<Change> one(RigReading before, RandomGenerator random) {
        var scalars = new ArrayList<Scalar>();
        gather(before.rig().orElseThrow().declaration().root(), List.of(), scalars);
        Scalar scalar = scalars.get(random.nextInt(scalars.size()));
        if (random.nextInt(10) == 0) {
            return Optional.of(new Change.Remove(scalar.at()));
        }
        if (random.nextInt(15) == 0) {
            return Optional.of(new Change.Add(RigPath.of("limits"), "cell at start", "16 °C"));
        }
        Matcher number = NUMBER.matcher(scalar.text());
        if (!number.find()) {
            return Optional.of(new Change.Set(scalar.at(), scalar.text() + "x"));
        }
        double value = Double.parseDouble(number.group());
        String other =
                number.group(1) == null
                        ? String.valueOf((long) value + 1)
                        : String.format(Locale.ROOT, "%.5f", value * random.nextDouble(0.95, 1.05));
        return Optional.of(
                new Change.Set(
                        scalar.at(),
                        scalar.text().substring(0, number.start())
                                + other
                                + scalar.text().substring(number.end())));
    }

    private record Scalar(RigPath at, String text) {}

    private static void gather(Tree tree, List<String> at, List<Scalar> into) {
        switch (tree) {
            case Tree.Text(var text) -> into.add(new Scalar(new RigPath(at), text));
            case Tree.Entries(var byKey) ->
                    byKey.forEach((key, value) -> gather(value, longer(at, key), into));
            case Tree.Items(var items) -> {
                for (int i = 0; i < items.size(); i++) {
                    String step =
                            items.get(i) instanceof Tree.Entries(var byKey)
                                            && byKey.get("id") instanceof Tree.Text(var id)
                                    ? id
                                    : Integer.toString(i + 1);
                    gather(items.get(i), longer(at, step), into);
                }
            }
        }
    }

    private static List<String> longer(List<String> at, String step) {
        var longer = new ArrayList<>(at);
        longer.add(step);
        return longer;
    }
}
