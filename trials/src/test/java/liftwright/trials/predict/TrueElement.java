package liftwright.trials.predict;

import liftwright.rig.Element;

/** A wire, joint, fuse or pole of a chain as it truly is, and how warm it gets. */
public final class TrueElement {

    private static final double ROOM_K = 293.15;

    public final Element declared;
    private final double ohm20;
    private final boolean copper;
    private final double capacityJpK;
    private final double wallJpK;
    private final double wallWpK;
    private final double airWpK;
    private final double airK;

    /** Resistance over what it was, for a fault. */
    public double worn = 1;

    /** Resistance that came on top, for a fault, Ω. */
    public double addedOhm;

    public double kelvin;
    private double wallK;

    public TrueElement(Element element, TrueNumbers draw, double airK) {
        declared = element;
        this.airK = airK;
        kelvin = airK;
        wallK = airK;
        String name = element.declaredAt() + "/";
        switch (element) {
            case Element.Run run -> {
                copper = true;
                double length = draw.of(run.length(), name);
                double area = areaM2(run.gauge());
                // Of one conductor; out and back make two of them.
                ohm20 = 2 * length * ohmpm(run.gauge()) / run.conductors();
                double radius = Math.sqrt(area / Math.PI) * 1.08;
                double wall = run.covering().wall().si();
                double outside = radius + wall;
                double two = 2 * length;
                capacityJpK = two * run.conductors() * area * 8960 * 385;
                wallJpK =
                        two
                                * run.conductors()
                                * Math.PI
                                * (outside * outside - radius * radius)
                                * draw.between(1.3e6, 1.8e6);
                wallWpK =
                        two
                                * run.conductors()
                                * 2
                                * Math.PI
                                * draw.between(0.16, 0.24)
                                / Math.log((radius + wall / 2) / radius);
                airWpK = two * run.conductors() * 2 * Math.PI * outside * draw.between(9, 16);
            }
            case Element.Joint joint -> {
                copper = false;
                ohm20 = draw.of(joint.resistance(), name);
                capacityJpK = 2 * draw.of(joint.heatCapacity(), name + "heat");
                wallJpK = capacityJpK;
                wallWpK = draw.between(0.02, 0.08);
                airWpK = draw.between(0.01, 0.03);
            }
            case Element.Fuse fuse -> {
                copper = false;
                ohm20 = draw.of(fuse.resistance(), name);
                capacityJpK = 2 * draw.of(fuse.heatCapacity(), name + "heat");
                wallJpK = capacityJpK;
                wallWpK = 0.05;
                airWpK = 0.02;
            }
            case Element.Pole pole -> {
                copper = false;
                ohm20 = draw.of(pole.contactor().resistance(), "pole/" + pole.contactor().name());
                capacityJpK = 20;
                wallJpK = 20;
                wallWpK = 0.05;
                airWpK = 0.02;
            }
        }
    }

    /** Largest resistance of tinned wire by FAA AC 43.13-1B, table 11-9, Ω/1000 ft. */
    private static double ohmpm(int gauge) {
        double perThousandFeet =
                switch (gauge) {
                    case 4 -> 0.28;
                    case 8 -> 0.70;
                    case 10 -> 1.26;
                    case 12 -> 2.02;
                    default -> throw new IllegalArgumentException("gauge " + gauge);
                };
        return perThousandFeet / 304.8;
    }

    private static double areaM2(int gauge) {
        double diameter = 0.127e-3 * Math.pow(92, (36 - gauge) / 39.0);
        return Math.PI / 4 * diameter * diameter;
    }

    public double ohm() {
        double warm = copper ? 1 + 0.00393 * (kelvin - ROOM_K) : 1;
        return worn * ohm20 * warm + addedOhm;
    }

    public void warm(double amp, double forS) {
        double across = wallWpK * (kelvin - wallK);
        kelvin += forS * (amp * amp * ohm() - across) / capacityJpK;
        wallK += forS * (across - airWpK * (wallK - airK)) / wallJpK;
    }
}
