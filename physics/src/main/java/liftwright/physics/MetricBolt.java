package liftwright.physics;

/** Metric bolts with coarse thread: the section that bears [ISO898]. */
public enum MetricBolt {
    M5(5, 0.8),
    M6(6, 1),
    M8(8, 1.25),
    M10(10, 1.5),
    M12(12, 1.75);

    private final double diameterM;
    private final double pitchM;

    MetricBolt(double diameterMm, double pitchMm) {
        this.diameterM = diameterMm / 1000;
        this.pitchM = pitchMm / 1000;
    }

    /** Nominal diameter d, m. */
    public double diameterM() {
        return diameterM;
    }

    /** Pitch P of the coarse thread, m. */
    public double pitchM() {
        return pitchM;
    }

    /** Stress area, m². */
    public double stressAreaM2() {
        return Bolt.stressAreaM2(diameterM, pitchM);
    }
}
