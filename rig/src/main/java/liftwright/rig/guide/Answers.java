package liftwright.rig.guide;

import liftwright.quantity.Quantity;

/** Everything that was answered, read. */
record Answers(
        String name,
        boolean worn,
        Body body,
        Task task,
        FanSaid fan,
        Layout layout,
        Packs packs,
        Wires wires,
        Masses masses,
        String control) {

    record Body(Said<Quantity> mass, Said<Quantity> stature, String table, Arms arms) {}

    /** How the arms are held. */
    enum Arms {
        HANGING("{flexion: 0°, abduction: 5°}", "0°"),
        OUT("{flexion: 10°, abduction: 15°}", "5°"),
        FORWARD("{flexion: 20°, abduction: 10°}", "60°");

        private final String shoulders;
        private final String elbows;

        Arms(String shoulders, String elbows) {
            this.shoulders = shoulders;
            this.elbows = elbows;
        }

        String shoulders() {
            return shoulders;
        }

        String elbows() {
            return elbows;
        }
    }

    record Task(Said<Quantity> thrustToWeight, Said<Quantity> hover) {}

    record FanSaid(
            Said<Quantity> tip,
            Said<Quantity> mass,
            Said<Quantity> thrust,
            Said<Quantity> speed,
            Said<Quantity> power,
            Said<Quantity> speedConstant) {}

    record Layout(
            Said<Integer> backRows,
            Said<Integer> inBackRow,
            Said<Integer> armRows,
            Said<Integer> inArmRow,
            Said<Quantity> spacing,
            Said<Quantity> cant) {

        int back() {
            return backRows.value() * inBackRow.value();
        }

        /** On one arm. */
        int arm() {
            return armRows.value() * inArmRow.value();
        }

        int fans() {
            return back() + 2 * arm();
        }
    }

    record Packs(
            CellKind cell,
            Said<Quantity> capacity,
            Said<Quantity> cellMass,
            Said<Quantity> cellResistance,
            Said<Integer> series,
            Said<Integer> parallel,
            Said<Integer> count) {

        double nominalV() {
            return series.value() * cell.nominalV();
        }

        double fullV() {
            return series.value() * cell.fullV();
        }

        /** How many fans the pack with most of them feeds. */
        int perPack(int fans) {
            return (fans + count.value() - 1) / count.value();
        }
    }

    record Wires(
            Said<Integer> trunk,
            Said<Quantity> trunkLength,
            Said<Integer> branch,
            Said<Quantity> branchLength,
            Said<Quantity> fuse,
            boolean contactor) {}

    record Masses(
            Said<Quantity> frame,
            Said<Quantity> harness,
            Said<Quantity> shell,
            Said<Quantity> wires) {}
}
