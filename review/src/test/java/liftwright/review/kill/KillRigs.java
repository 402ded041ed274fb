package liftwright.review.kill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Kill;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.rig.file.RigReading;

/** Example rigs that are wired and killed anew. */
final class KillRigs {

    private static final Dimension SECOND = new Dimension(0, 0, 1, 0, 0, 0);

    private KillRigs() {}

    /** Its contactor, as this test wants it whatever the example says. */
    static final String MAIN =
            "    main: {poles: 4, resistance: 0.2 mΩ, rating: 200 A, breaks: 4000 A, voltage: 100 V}\n";

    /** Its kill. */
    static final String KILL = "    - {id: remote, opens: [main], by: radio, held by: watcher}\n";

    /** Its crew. */
    static final String CREW =
            "crew:\n  watcher: {reaction: 1.5 s}\n  mate: {role: holds a plug}\n";

    /** Curlew with these three and no rules of control beyond a lost link. */
    static Rig curlew(String... replacements) {
        String text = text("curlew").replace("signal loss: stop, ", "");
        text = replaced(text, "    main: \\{[^\\n]*\\n", MAIN);
        text = replaced(text, "    - \\{id: remote,[^\\n]*\\n", KILL);
        text = replaced(text, "crew:\\n( [^\\n]*\\n?)+", CREW);
        text = replaced(text, "control:\\n( [^\\n]*\\n?)+", CONTROL);
        return read("curlew", text, replacements);
    }

    /** Its control. */
    static final String CONTROL = "control:\n  kind: flight computer\n  link loss: lower\n";

    private static String replaced(String text, String pattern, String by) {
        String after = text.replaceFirst(pattern, java.util.regex.Matcher.quoteReplacement(by));
        if (after.equals(text) && !text.contains(by)) {
            throw new IllegalArgumentException("not there: " + pattern);
        }
        return after;
    }

    static Rig example(String name, String... replacements) {
        return read(name, text(name), replacements);
    }

    private static Rig read(String name, String declared, String... replacements) {
        String text = declared;
        for (int k = 0; k < replacements.length; k += 2) {
            if (!text.contains(replacements[k])) {
                throw new IllegalArgumentException("not in " + name + ": " + replacements[k]);
            }
            text = text.replace(replacements[k], replacements[k + 1]);
        }
        RigReading reading = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig()
                .orElseThrow(() -> new IllegalArgumentException("" + reading.problems()));
    }

    /** The section {@code control} of an example, with what stands in it. */
    static String control(String example) {
        String text = text(example);
        int start = text.indexOf("\ncontrol:") + 1;
        int end = start;
        do {
            end = text.indexOf('\n', end) + 1;
        } while (end > 0 && end < text.length() && text.charAt(end) == ' ');
        return text.substring(start, end);
    }

    private static String text(String example) {
        try {
            return Files.readString(Path.of("..", "examples", example, "rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Quantity seconds(double s) {
        return Quantity.exact(s, SECOND);
    }

    static Rig with(Rig rig, Wiring wiring, Control control) {
        return rig.wired(wiring).under(control);
    }

    static Control control(Rig rig, Control.Kind kind) {
        return new Control(kind, rig.control().groups());
    }

    /**
     * @param coil what feeds its coil; a contactor without one opens by itself
     */
    static Contactor contactor(String name, Optional<String> coil) {
        return new Contactor(
                name,
                100,
                Quantity.exact(1e-4, new Dimension(2, 1, -3, -2, 0, 0)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Quantity.exact(20, new Dimension(2, 1, -2, 0, -1, 0)),
                seconds(0.03),
                coil,
                coil.isEmpty());
    }

    /** Chains that are drawn bit by bit. */
    static final class Draft {
        final Map<String, Contactor> contactors = new TreeMap<>();
        final List<Wiring.Chain> chains = new java.util.ArrayList<>();
        final List<Kill> kills = new java.util.ArrayList<>();

        void contactor(String name, Optional<String> coil) {
            contactors.put(name, KillRigs.contactor(name, coil));
        }

        void chain(String from, String to, List<String> poles) {
            PartId id = new PartId("chain." + (chains.size() + 1));
            RigPath at = RigPath.of("wiring");
            List<Element> elements =
                    poles.stream()
                            .<Element>map(
                                    name ->
                                            new Element.Pole(
                                                    new PartId(id.text() + "." + name),
                                                    at,
                                                    Objects.requireNonNull(contactors.get(name))))
                            .toList();
            chains.add(new Wiring.Chain(id, from, to, elements));
        }

        Wiring wiring() {
            return new Wiring(
                    chains,
                    List.copyOf(contactors.values()),
                    Optional.empty(),
                    kills,
                    List.of(),
                    Optional.empty());
        }
    }

    /** A kill that is declared bit by bit. */
    static final class Switch {
        String id;
        List<String> opens = List.of();
        Kill.Means by = Kill.Means.WIRE;
        Optional<String> heldBy = Optional.empty();
        Kill.Order order = Kill.Order.OPEN_AT_ONCE;
        Optional<String> radio = Optional.empty();
        Optional<String> fedBy = Optional.empty();
        Optional<String> ground = Optional.empty();
        List<String> through = List.of();
        boolean opensOnLoss;

        Switch(String id) {
            this.id = id;
        }

        Kill kill() {
            return new Kill(
                    id,
                    RigPath.of("wiring", "kills", id),
                    opens,
                    by,
                    heldBy,
                    Optional.empty(),
                    seconds(0.05),
                    order,
                    radio,
                    fedBy,
                    ground,
                    through,
                    opensOnLoss);
        }
    }
}
