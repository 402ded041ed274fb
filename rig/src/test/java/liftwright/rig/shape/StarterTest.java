package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StarterTest {

    @Test
    void theStarterReadsWithoutAnyProblem() {
        Read read = Texts.read(Starter.text());
        assertThat(read.problems()).isEmpty();
        assertThat(read.rig().orElseThrow().fans()).hasSize(24);
    }

    @Test
    void itSaysThatItsValuesArePlaceholders() {
        assertThat(Starter.text()).startsWith("#").contains("PLACEHOLDER").doesNotContain("\r");
        assertThat(Starter.text().lines()).filteredOn(l -> l.contains("#")).hasSizeGreaterThan(20);
    }
}
