package liftwright.rig.guide;

/**
 * What cells of a chemistry are like, for the first sketch of a pack; from memory, measure yours.
 * Names are those of the open-circuit curves of the parts book.
 */
enum CellKind {
    LIPO("LiPo", "LiPo, full at 4.20 V", "LiPo", 20.6, 7.2e-3, 25, 3.7, 4.2),
    LIPO_HIGH("LiPo 4.35 V", "LiPo, full at 4.35 V", "LiPo", 20.0, 7.2e-3, 25, 3.8, 4.35),
    LI_ION("Li-ion", "Li-ion, round cells", "Li-ion", 14.5, 75e-3, 7, 3.6, 4.2),
    LIFEPO4("LiFePO4", "LiFePO4", "LiFePO4", 30.0, 15e-3, 15, 3.2, 3.65);

    private final String curve;
    private final String label;
    private final String chemistry;
    private final double gramsPerAh;
    private final double ohmAh;
    private final double ratePerHour;
    private final double nominalV;
    private final double fullV;

    /**
     * @param gramsPerAh mass of one cell over its capacity
     * @param ohmAh its resistance times its capacity
     * @param ratePerHour continuous current over its capacity, 1/h
     */
    CellKind(
            String curve,
            String label,
            String chemistry,
            double gramsPerAh,
            double ohmAh,
            double ratePerHour,
            double nominalV,
            double fullV) {
        this.curve = curve;
        this.label = label;
        this.chemistry = chemistry;
        this.gramsPerAh = gramsPerAh;
        this.ohmAh = ohmAh;
        this.ratePerHour = ratePerHour;
        this.nominalV = nominalV;
        this.fullV = fullV;
    }

    static CellKind of(String curve) {
        for (CellKind kind : values()) {
            if (kind.curve.equals(curve)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no cells are called " + curve);
    }

    String curve() {
        return curve;
    }

    String label() {
        return label;
    }

    String chemistry() {
        return chemistry;
    }

    double massKg(double capacityAh) {
        return gramsPerAh * capacityAh / 1000;
    }

    double resistanceOhm(double capacityAh) {
        return ohmAh / capacityAh;
    }

    double continuousA(double capacityAh) {
        return ratePerHour * capacityAh;
    }

    double nominalV() {
        return nominalV;
    }

    double fullV() {
        return fullV;
    }
}
