package liftwright.rig.guide;

import java.util.ArrayList;
import java.util.List;

/**
 * Which fans hang on which pack: mirror images together, so that a pack that fails takes as little
 * balance with it as can be.
 */
final class Feeding {

    private Feeding() {}

    /** Fans in an order in which mirror images are neighbours. */
    static List<String> inPairs(int backRows, int inRow, int onArm) {
        var order = new ArrayList<String>();
        for (int row = 0; row < backRows; row++) {
            for (int i = 0; i < inRow - 1 - i; i++) {
                order.add("back." + (row * inRow + i + 1));
                order.add("back." + (row * inRow + inRow - i));
            }
        }
        for (int k = 1; k <= onArm; k++) {
            order.add("left." + k);
            order.add("right." + k);
        }
        // Those in the middle plane last, so that they part no pair.
        for (int row = 0; row < backRows && inRow % 2 == 1; row++) {
            order.add("back." + (row * inRow + inRow / 2 + 1));
        }
        return order;
    }

    /**
     * The fans of each pack.
     *
     * @param packs at least 1 and at most as many as there are fans
     */
    static List<List<String>> of(List<String> fans, int packs) {
        var fed = new ArrayList<List<String>>();
        for (int pack = 0; pack < packs; pack++) {
            fed.add(fans.subList(pack * fans.size() / packs, (pack + 1) * fans.size() / packs));
        }
        return fed;
    }
}
