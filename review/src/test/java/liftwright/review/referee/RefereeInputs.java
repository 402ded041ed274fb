package liftwright.review.referee;

import java.util.LinkedHashMap;
import java.util.Map;

/** The referee's names of inputs, and where the rig file declares them. */
final class RefereeInputs {

    static final Map<String, String> PATHS = paths();

    private RefereeInputs() {}

    private static Map<String, String> paths() {
        Map<String, String> paths = new LinkedHashMap<>();
        String fan = "fan types/fan-a/";
        paths.put("thrust", fan + "at speed/thrust");
        paths.put("shaft power", fan + "at speed/shaft power");
        paths.put("speed constant", fan + "motor/speed constant");
        paths.put("winding resistance", fan + "motor/winding resistance");
        paths.put("no-load current", fan + "motor/no-load current");
        paths.put("on-resistance", fan + "controller/on-resistance");
        paths.put("scatter", fan + "scatter");
        paths.put("installation", fan + "installation");
        paths.put("seller", fan + "data");
        paths.put("free area", fan + "intake/free area");
        paths.put("exit area", fan + "exit area");
        paths.put("mass", fan + "mass");
        paths.put("resistance", "cells/cell-a/resistance");
        paths.put("settling", "cells/cell-a/settling/1/resistance");
        paths.put("cell mass", "cells/cell-a/mass");
        paths.put("extra mass", "packs/p/extra mass");
        paths.put("trunk length", "wiring/feeds/feed/trunk/3/length");
        paths.put("branch length", "wiring/feeds/feed/branch/1/length");
        paths.put("cant", "fans/fan/cant/forward");
        for (int i = 0; i < 4; i++) {
            paths.put("part " + i, "other parts/part-" + (i + 1) + "/mass");
        }
        return paths;
    }
}
