package liftwright.review.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/** How far the ways to change a rig go. */
class CandidatesTest {

    private static Rig mudlark(String fuse) throws IOException {
        String text = Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml"));
        assertThat(text).contains("{fuse: 250 A, speed: slow}");
        return RigReading.read(
                        "rig.yaml",
                        text.replace("{fuse: 250 A, speed: slow}", fuse)
                                .getBytes(StandardCharsets.UTF_8))
                .rig()
                .orElseThrow();
    }

    /** The mass that is left after so many steps of the way that changes it, kg. */
    private static double leftKg(Candidate candidate) {
        return Double.parseDouble(
                ((Change.Set) candidate.changes().apply(candidate.most()).getFirst())
                        .value()
                        .split(" ", 2)[0]);
    }

    /**
     * A wearer of 62 kg gives way to one of no less than 85 % of that; a frame of 5.8 kg to 40 %.
     */
    @Test
    void aWearerIsChosenAndNotCut() throws IOException {
        List<Candidate> ways = Candidates.forLift(mudlark("{fuse: 250 A}"));
        assertThat(ways.get(0).changes().apply(1).getFirst().at()).hasToString("wearer/mass");
        assertThat(leftKg(ways.get(0)))
                .isCloseTo(0.85 * 62, within(0.11))
                .isGreaterThanOrEqualTo(0.85 * 62);
        assertThat(ways.get(1).changes().apply(1).getFirst().at().toString())
                .startsWith("other parts/");
        assertThat(leftKg(ways.get(1)))
                .isCloseTo(0.4 * 5.8, within(0.11))
                .isGreaterThanOrEqualTo(0.4 * 5.8);
    }

    /** What is offered in place of a fuse, step by step. */
    private static List<String> offered(String fuse) throws IOException {
        Rig rig = mudlark(fuse);
        RigPath at =
                rig.wiring().chains().stream()
                        .flatMap(chain -> chain.elements().stream())
                        .filter(Element.Fuse.class::isInstance)
                        .map(Element::declaredAt)
                        .findFirst()
                        .orElseThrow();
        List<String> sizes = new ArrayList<>();
        for (Candidate way :
                Candidates.forHeat(rig, new Hot(Set.of(), Set.of(), Set.of(at), false, false))) {
            for (int steps = 1; steps <= way.most(); steps++) {
                Change first = way.changes().apply(steps).getFirst();
                if (first.at().equals(at.child("fuse"))) {
                    sizes.add(((Change.Set) first).value());
                }
            }
        }
        return sizes;
    }

    @Test
    void aLargerFuseIsOneThatItsFormHas() throws IOException {
        assertThat(offered("{fuse: 25 A}")).containsExactly("30 A", "35 A", "40 A");
        assertThat(offered("{fuse: 6 A}"))
                .containsExactly("7.5 A", "10 A", "15 A", "20 A", "25 A", "30 A");
        assertThat(offered("{fuse: 40 A}")).isEmpty();
        assertThat(offered("{fuse: 350 A, speed: slow}"))
                .containsExactly("400 A", "450 A", "500 A");
        assertThat(offered("{fuse: 2.5 A, speed: very fast}"))
                .containsExactly("3.15 A", "4 A", "5 A", "6.3 A", "8 A", "10 A");
        assertThat(offered("{fuse: 500 A, speed: slow}")).isEmpty();
    }
}
