package liftwright.rig;

import java.util.Map;

/**
 * The limits in force.
 *
 * @param declared those that the file sets, SI; the others take their default
 */
public record Limits(Map<LimitName, Double> declared) {

    public Limits {
        declared = Map.copyOf(declared);
    }

    public double si(LimitName name) {
        Double own = declared.get(name);
        return own == null ? name.defaultSi() : own;
    }

    /** Where the value comes from, in words. */
    public String origin(LimitName name) {
        return declared.containsKey(name)
                ? "declared in the rig file"
                : "default, " + name.origin();
    }
}
