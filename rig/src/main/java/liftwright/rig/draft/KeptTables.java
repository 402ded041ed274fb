package liftwright.rig.draft;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import liftwright.rig.csv.Beside;

/** Tables beside a rig file, fetched once until they are looked at again. */
final class KeptTables implements Beside {

    private final Beside source;
    private final Map<String, Fetched> kept = new HashMap<>();

    KeptTables(Beside source) {
        this.source = source;
    }

    @Override
    public synchronized Fetched fetch(String path) {
        return kept.computeIfAbsent(path, source::fetch);
    }

    /** Fetches all again; whether any is another now. */
    synchronized boolean refresh() {
        boolean changed = false;
        for (var each : kept.entrySet()) {
            Fetched fresh = source.fetch(each.getKey());
            changed |= !same(each.getValue(), fresh);
            each.setValue(fresh);
        }
        return changed;
    }

    private static boolean same(Fetched one, Fetched other) {
        return switch (one) {
            case Fetched.Bytes(var bytes) ->
                    other instanceof Fetched.Bytes(var others) && Arrays.equals(bytes, others);
            case Fetched.Not not -> not.equals(other);
        };
    }
}
