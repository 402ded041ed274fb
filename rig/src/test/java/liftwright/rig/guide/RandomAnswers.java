package liftwright.rig.guide;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Answers that a builder may give: some fields each, all allowed. */
public final class RandomAnswers {

    private final RandomGenerator random;
    private final Map<String, String> answers = new HashMap<>();

    private RandomAnswers(RandomGenerator random) {
        this.random = random;
    }

    /** One set. */
    public static Map<String, String> of(RandomGenerator random) {
        return new RandomAnswers(random).make();
    }

    private Map<String, String> make() {
        may("name", "Heron", "a \"quoted\" \\ name: # 1", "Größe 1", "no", "[x]");
        may("body", "male", "female", "nobody");
        may("wearer mass", amount("%.1f kg ± 0.5 kg", 45, 120), amount("%.0f lb", 100, 250));
        may("stature", amount("%.2f m", 1.5, 2.0), "5.8 ft", "178 cm ± 1 cm");
        may("arms", "out", "hanging", "forward");
        may("thrust to weight", amount("%.2f", 1.05, 2));
        may("hover", amount("%.0f s", 10, 300), "2 min");
        double tipMm = random.nextDouble(60, 400);
        boolean tip = random.nextBoolean();
        if (tip) {
            answers.put("tip", text("%.0f mm", tipMm));
        }
        may("fan mass", amount("%.2f kg ± 5 %%", 0.1, 3), amount("%.0f oz", 5, 60));
        if (random.nextInt(3) == 0) {
            answers.put("speed", amount("%.0f rpm", 8000, 40000));
            answers.put("thrust", amount("%.0f N ± 4 %%", 20, 250));
            answers.put("power", amount("%.2f kW ± 5 %%", 1, 15));
        }
        boolean nobody = "nobody".equals(answers.get("body"));
        may("back row", count(1, 8));
        may("arm row", count(1, 6));
        if (nobody) {
            answers.put("back rows", count(1, 4));
            answers.put("arm rows", "0");
        } else {
            may("back rows", count(1, 6));
            may("arm rows", count(0, 3));
        }
        double mm = tip ? tipMm : 180;
        may("spacing", text("%.0f mm", mm + 1 + random.nextInt(100)));
        may("cant", amount("%.1f°", 0, 12), "5° ± 1°");
        may("cell", "LiPo", "LiPo 4.35 V", "Li-ion", "LiFePO4");
        may("capacity", amount("%.1f Ah ± 2 %% each", 2, 40));
        may("cell mass", amount("%.0f g", 40, 600));
        may("cell resistance", amount("%.2f mΩ", 0.3, 20));
        may("series", count(3, 30));
        may("parallel", count(1, 4));
        may("packs", "1");
        may("trunk wire", "8 AWG", "2/0 AWG", "4 AWG");
        may("trunk length", amount("%.0f mm", 50, 900), "1 ft");
        may("branch wire", "10 AWG", "12 AWG");
        may("branch length", amount("%.0f mm ± 10 %%", 50, 900));
        may("fuse", amount("%.0f A", 50, 500));
        may("contactor", "yes", "no");
        may("speed constant", amount("%.0f rpm/V ± 3 %%", 200, 1200));
        may("frame mass", amount("%.1f kg ± 2 %%", 1, 20), amount("%.1f lb", 2, 30));
        may("harness mass", amount("%.1f kg", 0.5, 5));
        may("pod mass", amount("%.1f kg", 0.3, 4));
        may("wire mass", amount("%.1f kg", 0.5, 8));
        may("control", "shared throttle", "flight computer");
        return answers;
    }

    private void may(String key, String... values) {
        if (random.nextInt(3) == 0) {
            answers.put(key, values[random.nextInt(values.length)]);
        }
    }

    private String count(int least, int most) {
        return Integer.toString(random.nextInt(least, most + 1));
    }

    @SuppressWarnings("AnnotateFormatMethod") // formats are constants of this class
    private String amount(String format, double least, double most) {
        return text(format, random.nextDouble(least, most));
    }

    @SuppressWarnings("AnnotateFormatMethod")
    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
