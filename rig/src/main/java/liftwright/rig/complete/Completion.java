package liftwright.rig.complete;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * What could stand at a place of a rig file.
 *
 * @param from where what is chosen goes, UTF-16 units
 * @param to end of what it replaces
 * @param options what may be chosen, the likeliest first; not yet narrowed by what stands there
 */
public record Completion(int from, int to, List<Option> options) {

    /** Most options: more nobody reads. */
    private static final int MOST = 1000;

    public Completion {
        options = List.copyOf(options);
    }

    /**
     * @param label what it is
     * @param insert what is written
     * @param detail what it means, from the table of keys or from the file
     */
    public record Option(String label, String insert, String detail) {}

    /**
     * The options at {@code offset} of a text, which may be broken there and elsewhere. Never
     * throws; where nothing is known nothing is offered.
     *
     * @param text as it stands in the editor
     * @param offset of the cursor; outside of the text means its nearest end
     */
    public static Completion at(String text, int offset) {
        int cursor = Math.clamp(offset, 0, text.length());
        var slot = Slot.at(text, cursor);
        if (slot.isEmpty()) {
            return new Completion(cursor, cursor, List.of());
        }
        var byLabel = new LinkedHashMap<String, Option>();
        for (Slot.Attempt attempt : slot.get().attempts(text)) {
            var found = Marked.find(attempt.text());
            if (found.isPresent() && found.get().asKey() == attempt.asKey()) {
                var offers = new Offers(found.get(), slot.get());
                offers.all().forEach(option -> byLabel.putIfAbsent(option.label(), option));
                if (!byLabel.isEmpty()) {
                    break; // the others would be ways to read a line that can be read
                }
            }
        }
        var options = new ArrayList<>(byLabel.values());
        return new Completion(
                slot.get().from(),
                slot.get().to(),
                options.subList(0, Math.min(MOST, options.size())));
    }
}
