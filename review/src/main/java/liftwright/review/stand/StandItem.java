package liftwright.review.stand;

/** What can make a stand read wrong, in the order in which the budget lists it. */
enum StandItem {
    CELL_CLASS("cell, class", "cell/class", "a cell of a better class or of less rating"),
    CREEP("cell, creep", "cell/creep", "shorter runs, with a tare before each"),
    CELL_TEMPERATURE(
            "cell, temperature",
            "cell/warming",
            "a cell out of the sun and the jet, with a tare just before and after each run"),
    ZERO_DRIFT("zero drift", "cell/zero drift", "a tare before and after each run"),
    STEP("display step", "cell/step", "a display with finer steps"),
    CALIBRATION(
            "calibration", "cell/calibration", "a check with better known masses, near full load"),
    FAN_ARM("fan arm", "lever/fan arm", "a longer or better measured arm"),
    CELL_ARM("cell arm", "lever/cell arm", "a longer or better measured arm"),
    ALIGNMENT("alignment", "alignment", "a square and a level while the fan is clamped"),
    JET(
            "jet on the stand",
            "jet on the stand",
            "less in the jet, or the loss measured with a dummy of the same shape"),
    BEHIND(
            "clearance behind",
            "clearance/behind",
            "more room behind the fan, or the doubt measured out of doors"),
    IN_FRONT(
            "clearance in front",
            "clearance/in front",
            "more room in front of the fan, or the doubt measured out of doors"),
    WALLS("walls, measured", "clearance/measured", "more room around the fan"),
    AIR_TEMPERATURE(
            "air temperature", "air/temperature", "a thermometer at the intake, in the shade"),
    AIR_PRESSURE("air pressure", "air/pressure", "a barometer at the stand"),
    REPEATS("repeated runs", "repeats", "more runs, or less scatter from run to run");

    private final String label;
    private final String path;
    private final String advice;

    StandItem(String label, String path, String advice) {
        this.label = label;
        this.path = path;
        this.advice = advice;
    }

    String label() {
        return label;
    }

    /** Where it is declared. */
    String path() {
        return path;
    }

    /** What makes it smaller, in words. */
    String advice() {
        return advice;
    }
}
