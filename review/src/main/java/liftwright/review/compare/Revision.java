package liftwright.review.compare;

import java.util.Map;
import liftwright.rig.Rig;

/**
 * One revision of a rig.
 *
 * @param name as the reader calls it: a file, a test of the logbook, "as saved"
 * @param rig what it declares
 * @param digest of its file and tables
 * @param tables digests of the tables beside it, by path
 */
public record Revision(String name, Rig rig, String digest, Map<String, String> tables) {
    public Revision {
        tables = Map.copyOf(tables);
    }
}
