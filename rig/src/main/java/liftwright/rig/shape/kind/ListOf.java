package liftwright.rig.shape.kind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * A list.
 *
 * @param what what it lists, in the plural
 * @param item what each entry is
 * @param least fewest entries
 * @param most most entries
 */
public record ListOf<E>(String what, Kind<E> item, int least, int most)
        implements Kind<List<Stated<E>>> {

    /** No list of a rig is longer; files are untrusted. */
    public static final int LONGEST = 500;

    public static <E> ListOf<E> any(String what, Kind<E> item) {
        return new ListOf<>(what, item, 0, LONGEST);
    }

    @Override
    public Optional<List<Stated<E>>> read(Node node, Spot spot, Problems problems) {
        if (!(node instanceof Node.Items(var items, var _))) {
            return Scalars.wrong(Scalars.name(node), spot, this, problems);
        }
        if (items.size() < least || items.size() > most) {
            problems.add(Code.OUT_OF_RANGE, spot, entries(items.size()), expectation(), "");
            return Optional.empty();
        }
        var read = new ArrayList<Stated<E>>(items.size());
        var ids = new HashMap<String, Integer>();
        boolean whole = true;
        for (int i = 0; i < items.size(); i++) {
            Node entry = items.get(i);
            Spot at = spot.child(step(entry, i, ids, spot, problems), entry.span());
            var value = item.read(entry, at, problems);
            value.ifPresent(v -> read.add(new Stated<>(at, v)));
            whole &= value.isPresent();
        }
        // entries that could not be read are left out; that they were there has been reported
        return whole || item instanceof Section ? Optional.of(read) : Optional.empty();
    }

    /** Paths call an entry by its id, or by its number from 1. */
    private String step(
            Node entry, int index, Map<String, Integer> ids, Spot spot, Problems problems) {
        if (item instanceof Section section
                && section.hasId()
                && entry instanceof Node.Entries map
                && map.value(Section.ID).orElse(null) instanceof Node.Scalar id
                && !id.value().isEmpty()) {
            Integer first = ids.putIfAbsent(id.value(), index + 1);
            if (first != null) {
                problems.add(
                        Code.DUPLICATE_ID,
                        spot.child(id.value(), entry.span()).child(Section.ID, id.span()),
                        Problems.quote(id.value()),
                        "an id that entry " + first + " does not have",
                        "Ids name parts for ever: give each its own.");
            }
            return id.value();
        }
        return Integer.toString(index + 1);
    }

    private static String entries(int n) {
        return n == 1 ? "a list of 1 entry" : "a list of " + n + " entries";
    }

    @Override
    public String expectation() {
        if (least == most) {
            return "a list of " + least + " " + what;
        }
        return least == 0 ? "a list of " + what : "a list of " + what + ", at least " + least;
    }
}
