package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.plant.Plant;
import liftwright.review.wiring.WiringReview;
import org.junit.jupiter.api.Test;

/** A larger fuse is no remedy where it leaves a wire without protection. */
class ExposedWiresTest {

    /** Wires to the fans as thick as the trunk, so that a fuse can look after both. */
    private static Plant fused(String size) {
        return Plant.assemble(
                ExampleRigs.edited(
                        "mudlark",
                        "run: 12 AWG",
                        "run: 4 AWG",
                        "run: 8 AWG",
                        "run: 4 AWG",
                        "fuse: 250 A",
                        "fuse: " + size));
    }

    private static Optional<Sentence> exposed(String before, String after) {
        return WiringReview.newlyExposed(fused(before), fused(after));
    }

    @Test
    void whatALargerFuseLetsBeHarmedIsTold() {
        assertThat(exposed("30 A", "125 A")).isEmpty();
        assertThat(exposed("100 A", "500 A").orElseThrow().toString())
                .contains("wiring/feeds/feed/trunk/2", "feed.p.1.trunk.run be harmed by");
    }

    @Test
    void whatLayOpenBeforeIsNoNews() {
        assertThat(exposed("250 A", "500 A")).isEmpty();
    }
}
