package liftwright.rig.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.rig.FuseOpening.Speed;
import org.junit.jupiter.api.Test;

class FuseSeriesTest {

    @Test
    void ratingsRise() {
        for (FuseSeries series : FuseSeries.values()) {
            assertThat(series.ratingsA()).isSorted().doesNotHaveDuplicates().hasSizeGreaterThan(10);
            assertThat(series.largerThan(series.greatestA())).isEmpty();
            assertThat(series.largerThan(0)).isEqualTo(series.ratingsA());
        }
    }

    /** ISO 3: ten sizes to a decade in one ratio, rounded by no more than 1.6 %. */
    @Test
    void cartridgesFollowTheTenthRootOfTen() {
        List<Double> sizes = FuseSeries.CARTRIDGE.ratingsA();
        for (int k = 0; k < sizes.size(); k++) {
            double ratio = sizes.get(k) / Math.pow(10, k / 10.0);
            assertThat(ratio).as("%s A", sizes.get(k)).isBetween(0.984, 1.016);
        }
    }

    /** Every form of the page is sold from its smallest to its largest common rating. */
    @Test
    void theFormHasTheRatingsThatThePageSays() {
        for (BookFuse form : BookFuse.ALL) {
            FuseSeries series =
                    switch (form.form()) {
                        case "blade" -> FuseSeries.BLADE;
                        case "DC cartridge" -> FuseSeries.CARTRIDGE;
                        default -> FuseSeries.LARGE;
                    };
            assertThat(series.ratingsA()).as(form.form()).contains(form.leastA(), form.mostA());
        }
    }

    @Test
    void aFormGoesByCurveAndRating() {
        assertThat(FuseSeries.of(Speed.FAST, 40)).isEqualTo(FuseSeries.BLADE);
        assertThat(FuseSeries.of(Speed.FAST, 41)).isEqualTo(FuseSeries.LARGE);
        assertThat(FuseSeries.of(Speed.SLOW, 30)).isEqualTo(FuseSeries.LARGE);
        assertThat(FuseSeries.of(Speed.VERY_FAST, 30)).isEqualTo(FuseSeries.CARTRIDGE);
        assertThat(FuseSeries.LARGE.largerThan(70)).startsWith(80.0, 100.0);
        assertThat(FuseSeries.BLADE.largerThan(40)).isEmpty();
    }
}
