package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.text.Node;

/**
 * Gives values to the binders and writes down every default that stands in.
 *
 * <p>A value that is missing or wrong has been reported by the reader. Binding goes on with the
 * key's example in its place, so that problems further on are found in the same run; a rig with
 * errors is never handed out.
 */
final class Ledger {

    private final Problems problems;
    private final List<DefaultUsed> defaults = new ArrayList<>();

    Ledger(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    List<DefaultUsed> defaults() {
        return List.copyOf(defaults);
    }

    /** The value of a key that is required or has a default. */
    <T> T value(Fields fields, Key<T> key) {
        Optional<T> stated = fields.get(key);
        if (stated.isPresent()) {
            return stated.get();
        }
        if (key.need() instanceof Need.Default(var text, var origin)) {
            if (!fields.failed(key)) {
                defaults.add(used(fields, key, text, origin));
            }
            return parse(key, text);
        }
        return parse(key, key.example());
    }

    /**
     * The value of a key whose default is worked out.
     *
     * @param text the default as it would be written
     */
    <T> T computed(Fields fields, Key<T> key, String text, String origin) {
        Optional<T> stated = fields.get(key);
        if (stated.isPresent()) {
            return stated.get();
        }
        note(fields, key, text, origin);
        return parse(key, text);
    }

    /** Writes down a default that leaves no value behind. */
    void note(Fields fields, Key<?> key, String text, String origin) {
        if (!fields.has(key)) {
            defaults.add(used(fields, key, text, origin));
        }
    }

    private static DefaultUsed used(Fields fields, Key<?> key, String text, String origin) {
        return new DefaultUsed(
                fields.spotOf(key).path(),
                text,
                origin,
                key.usedBy().map(Ledger::reader).orElse(DefaultUsed.Reader.ANY));
    }

    private static DefaultUsed.Reader reader(Key.Question question) {
        return switch (question) {
            case LIFT, ENDURANCE, BALANCE -> DefaultUsed.Reader.ANY;
            case HEAT -> DefaultUsed.Reader.HEAT;
            case FAILURES -> DefaultUsed.Reader.FAILURES;
            case RESTRAINT -> DefaultUsed.Reader.RESTRAINT;
            case FLIGHT -> DefaultUsed.Reader.FLIGHT;
        };
    }

    void note(Spot spot, String text, String origin) {
        defaults.add(new DefaultUsed(spot.path(), text, origin));
    }

    /** The middle of a value whose doubt no question reads yet, which is said. */
    double middle(Quantity quantity, Spot spot) {
        if (!quantity.tolerance().isNone()) {
            problems.add(
                    Code.USED_BY_NO_QUESTION_YET,
                    spot,
                    "a doubt",
                    "nothing else: it is part of the format",
                    "The value is used; its doubt is read, and used by no question yet.");
        }
        return quantity.si();
    }

    /** A section of its own, empty where it is not written. */
    static Fields section(Fields fields, Key<Fields> key) {
        return fields.get(key)
                .orElseGet(
                        () ->
                                Fields.none(
                                        (liftwright.rig.shape.kind.Section) key.kind(),
                                        fields.spotOf(key)));
    }

    private static <T> T parse(Key<T> key, String text) {
        var own = new Problems("");
        return key.kind()
                .read(new Node.Scalar(text, false, Spot.NOWHERE), Spot.top(Spot.NOWHERE), own)
                .orElseThrow(() -> new IllegalStateException(key.name() + ": " + own.inOrder()));
    }
}
