package liftwright.rig.book;

import java.util.List;

/** Rest voltages of generic cells. */
final class OpenCircuitCurves {

    private static final String MEASURED =
            "measured at 25 °C on a nickel-rich 21700 cell: example data of pybop-team on GitHub, BSD"
                    + " 3-Clause, © 2023 pybop-team; other cells differ";

    /** In the order of the page. */
    static final List<OpenCircuitCurve> ALL =
            List.of(
                    OpenCircuitCurve.of(
                            "LiPo",
                            List.of(0.0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0),
                            List.of(
                                    3.27, 3.61, 3.69, 3.73, 3.77, 3.80, 3.84, 3.87, 3.95, 4.02,
                                    4.11, 4.20),
                            0.04,
                            "from memory: the table that workshops share for cells charged to 4.20"
                                    + " V; measure yours"),
                    OpenCircuitCurve.of(
                            "LiPo 4.35 V",
                            List.of(0.0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0),
                            List.of(
                                    3.30, 3.62, 3.70, 3.75, 3.79, 3.83, 3.88, 3.95, 4.04, 4.13,
                                    4.23, 4.35),
                            0.06,
                            "from memory, for cells charged to 4.35 V; measure yours"),
                    OpenCircuitCurve.of(
                            "Li-ion",
                            List.of(
                                    0.0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9,
                                    1.0),
                            List.of(
                                    2.872, 3.028, 3.200, 3.324, 3.465, 3.569, 3.631, 3.693, 3.806,
                                    3.907, 4.001, 4.085, 4.175),
                            0.05,
                            MEASURED),
                    OpenCircuitCurve.of(
                            "LiFePO4",
                            List.of(0.0, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 0.95, 1.0),
                            List.of(2.50, 3.10, 3.20, 3.25, 3.28, 3.30, 3.33, 3.34, 3.36, 3.45),
                            0.03,
                            "from memory; measure yours"));

    private OpenCircuitCurves() {}
}
