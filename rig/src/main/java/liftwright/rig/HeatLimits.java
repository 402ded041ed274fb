package liftwright.rig;

import java.util.Optional;

/**
 * Which temperature each kind of part must stay below.
 *
 * @param limits those in force
 */
public record HeatLimits(Limits limits) {

    /**
     * One limit.
     *
     * @param k temperature, K
     * @param name the limit that decides it
     * @param origin where it comes from, in words
     */
    public record Bound(double k, LimitName name, String origin) {}

    /** The class of a wire's insulation less the distance that is kept. */
    public Bound wire(Covering covering) {
        return new Bound(
                covering.classK() - limits.si(LimitName.WIRE_BELOW_CLASS),
                LimitName.WIRE_BELOW_CLASS,
                (covering.declared()
                                ? "class of its insulation"
                                : "least class there is, since no insulation is declared,")
                        + " less the distance kept; "
                        + limits.origin(LimitName.WIRE_BELOW_CLASS));
    }

    public Bound joint() {
        return named(LimitName.JOINT_TEMPERATURE);
    }

    public Bound controller() {
        return named(LimitName.CONTROLLER_TEMPERATURE);
    }

    public Bound cells() {
        return named(LimitName.CELL_TEMPERATURE);
    }

    /**
     * What is set in the limits, else the class of the winding less the distance, else the default.
     */
    public Bound winding(Heating motor) {
        Optional<Double> ofClass =
                isDeclared(LimitName.WINDING_TEMPERATURE)
                        ? Optional.empty()
                        : motor.windingClassK()
                                .map(k -> k.si() - limits.si(LimitName.WIRE_BELOW_CLASS));
        return ofClass.map(
                        k ->
                                new Bound(
                                        k,
                                        LimitName.WINDING_TEMPERATURE,
                                        "class of the winding less the distance kept; "
                                                + limits.origin(LimitName.WIRE_BELOW_CLASS)))
                .orElseGet(() -> named(LimitName.WINDING_TEMPERATURE));
    }

    /** What is set in the limits, else by the grade of the magnets, else the default. */
    public Bound magnets(Heating motor) {
        return isDeclared(LimitName.MAGNET_TEMPERATURE) || motor.grade().mostK().isEmpty()
                ? named(LimitName.MAGNET_TEMPERATURE)
                : new Bound(
                        motor.grade().mostK().getAsDouble(),
                        LimitName.MAGNET_TEMPERATURE,
                        "highest working temperature of grade "
                                + motor.grade()
                                + ", common practice");
    }

    private boolean isDeclared(LimitName name) {
        return limits.declared().containsKey(name);
    }

    private Bound named(LimitName name) {
        return new Bound(limits.si(name), name, limits.origin(name));
    }
}
