package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import liftwright.rig.RiskMatrix.Likelihood;
import liftwright.rig.shape.kind.Ident;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;

/** The section {@code risk matrix}: which risk a severity with a likelihood makes. */
public final class RiskKeys {

    public static final Key<String> SOURCE =
            required(
                            "source",
                            new Text("where the matrix comes from"),
                            "Where the matrix comes from.",
                            "rules of our club of 2025")
                    .readBy(Key.Question.FAILURES);

    /** One row for each likelihood. */
    public static final Map<Likelihood, Key<List<Stated<String>>>> ROWS = rows();

    public static final Section SECTION = section();

    private RiskKeys() {}

    private static Map<Likelihood, Key<List<Stated<String>>>> rows() {
        var keys = new EnumMap<Likelihood, Key<List<Stated<String>>>>(Likelihood.class);
        for (Likelihood level : Likelihood.values()) {
            String name = level.name().toLowerCase(Locale.ROOT);
            var kind = new ListOf<>("risks, from catastrophic to negligible", new Ident(), 4, 4);
            String meaning =
                    "Risks of what is "
                            + name
                            + " (level "
                            + level.letter()
                            + "): of catastrophic, critical, marginal, negligible mishaps.";
            String example = "[high, serious, medium, low]";
            Key<List<Stated<String>>> key =
                    level == Likelihood.ELIMINATED
                            ? open(name, kind, meaning, example, "“eliminated” in all four")
                            : required(name, kind, meaning, example);
            keys.put(level, key.readBy(Key.Question.FAILURES));
        }
        return Collections.unmodifiableMap(keys);
    }

    private static Section section() {
        var keys = new ArrayList<Key<?>>();
        keys.add(SOURCE);
        keys.addAll(ROWS.values());
        return Section.of(
                "risk matrix",
                "Which risk a severity with a likelihood makes, in words of your own.",
                keys.toArray(Key<?>[]::new));
    }
}
