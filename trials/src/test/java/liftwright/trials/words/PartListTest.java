package liftwright.trials.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.PartId;
import org.junit.jupiter.api.Test;

final class PartListTest {

    private static String words(String... ids) {
        return PartList.words(Stream.of(ids).map(PartId::new).toList());
    }

    @Test
    void runsOfNumbersAreDrawnTogether() {
        assertThat(words("a.1", "a.2", "a.3", "b.1", "b.2", "c"))
                .isEqualTo("a.1 to a.3, b.1, b.2, c");
        assertThat(words("p.9", "p.10", "p.11")).isEqualTo("p.9 to p.11");
    }

    @Test
    void whatOnlyLooksLikeARunIsNot() {
        assertThat(words("a.1", "a.3", "a.5")).isEqualTo("a.1, a.3, a.5");
        assertThat(words("a.1", "b.2", "c.3")).isEqualTo("a.1, b.2, c.3");
        assertThat(words("a.x", "a.y", "a.z")).isEqualTo("a.x, a.y, a.z");
        assertThat(PartList.words(List.of())).isEmpty();
    }
}
