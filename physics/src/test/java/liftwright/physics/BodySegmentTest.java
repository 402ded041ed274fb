package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.physics.BodySegment.Axis;
import liftwright.physics.BodySegment.Reference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BodySegmentTest {

    /**
     * De Leva, J. Biomechanics 29 (1996) 1223–1230, Table 4 (a copy): length mm, mass %, centre %,
     * radii % sagittal, transverse, longitudinal; male then female.
     */
    @ParameterizedTest
    @CsvSource({
        "HEAD, 203.3, 6.94, 59.76, 36.2, 37.6, 31.2, 200.2, 6.68, 58.94, 33.0, 35.9, 31.8",
        "TRUNK, 531.9, 43.46, 44.86, 37.2, 34.7, 19.1, 529.3, 42.57, 41.51, 35.7, 33.9, 17.1",
        "UPPER_TRUNK, 170.7, 15.96, 29.99, 71.6, 45.4, 65.9,"
                + " 142.5, 15.45, 20.77, 74.6, 50.2, 71.8",
        "MIDDLE_TRUNK, 215.5, 16.33, 45.02, 48.2, 38.3, 46.8,"
                + " 205.3, 14.65, 45.12, 43.3, 35.4, 41.5",
        "LOWER_TRUNK, 145.7, 11.17, 61.15, 61.5, 55.1, 58.7,"
                + " 181.5, 12.47, 49.20, 43.3, 40.2, 44.4",
        "UPPER_ARM, 281.7, 2.71, 57.72, 28.5, 26.9, 15.8, 275.1, 2.55, 57.54, 27.8, 26.0, 14.8",
        "FOREARM, 268.9, 1.62, 45.74, 27.6, 26.5, 12.1, 264.3, 1.38, 45.59, 26.1, 25.7, 9.4",
        "HAND, 86.2, 0.61, 79.00, 62.8, 51.3, 40.1, 78.0, 0.56, 74.74, 53.1, 45.4, 33.5",
        "THIGH, 422.2, 14.16, 40.95, 32.9, 32.9, 14.9, 368.5, 14.78, 36.12, 36.9, 36.4, 16.2",
        "SHANK, 434.0, 4.33, 44.59, 25.5, 24.9, 10.3, 432.3, 4.81, 44.16, 27.1, 26.7, 9.3",
        "FOOT, 258.1, 1.37, 44.15, 25.7, 24.5, 12.4, 228.3, 1.29, 40.14, 29.9, 27.9, 13.9",
    })
    void asPrinted(
            BodySegment segment,
            double length,
            double mass,
            double centre,
            double sagittal,
            double transverse,
            double longitudinal,
            double lengthF,
            double massF,
            double centreF,
            double sagittalF,
            double transverseF,
            double longitudinalF) {
        row(segment, Reference.MALE, length, mass, centre, sagittal, transverse, longitudinal);
        row(
                segment,
                Reference.FEMALE,
                lengthF,
                massF,
                centreF,
                sagittalF,
                transverseF,
                longitudinalF);
    }

    private static void row(
            BodySegment segment,
            Reference body,
            double length,
            double mass,
            double centre,
            double sagittal,
            double transverse,
            double longitudinal) {
        assertThat(segment.lengthM(body, body.statureM())).isCloseTo(length / 1000, within(1e-9));
        assertThat(segment.massShare(body)).isCloseTo(mass / 100, within(1e-12));
        assertThat(segment.centreShare(body)).isCloseTo(centre / 100, within(1e-12));
        assertThat(segment.gyrationShare(body, Axis.SAGITTAL))
                .isCloseTo(sagittal / 100, within(1e-12));
        assertThat(segment.gyrationShare(body, Axis.TRANSVERSE))
                .isCloseTo(transverse / 100, within(1e-12));
        assertThat(segment.gyrationShare(body, Axis.LONGITUDINAL))
                .isCloseTo(longitudinal / 100, within(1e-12));
    }

    /** Reference bodies of the same table. */
    @Test
    void referenceBodies() {
        assertThat(Reference.MALE.statureM()).isEqualTo(1.741);
        assertThat(Reference.MALE.massKg()).isEqualTo(73.0);
        assertThat(Reference.FEMALE.statureM()).isEqualTo(1.735);
        assertThat(Reference.FEMALE.massKg()).isEqualTo(61.9);
    }

    /** Head, trunk and twice the limbs make one body: male 1.0000, female 0.9999. */
    @ParameterizedTest
    @CsvSource({"MALE, 1.0000", "FEMALE, 0.9999"})
    void segmentsMakeABody(Reference body, double sum) {
        double total =
                BodySegment.HEAD.massShare(body)
                        + BodySegment.TRUNK.massShare(body)
                        + 2 * (arm(body) + leg(body));
        assertThat(total).isCloseTo(sum, within(5e-5));
        double trunk =
                BodySegment.UPPER_TRUNK.massShare(body)
                        + BodySegment.MIDDLE_TRUNK.massShare(body)
                        + BodySegment.LOWER_TRUNK.massShare(body);
        assertThat(trunk).isCloseTo(BodySegment.TRUNK.massShare(body), within(1e-9));
    }

    /** One arm 4.94 % / 4.49 %, one leg 19.86 % / 20.88 %. */
    @ParameterizedTest
    @CsvSource({"MALE, 0.0494, 0.1986", "FEMALE, 0.0449, 0.2088"})
    void limbs(Reference body, double arm, double leg) {
        assertThat(arm(body)).isCloseTo(arm, within(1e-9));
        assertThat(leg(body)).isCloseTo(leg, within(1e-9));
    }

    private static double arm(Reference body) {
        return BodySegment.UPPER_ARM.massShare(body)
                + BodySegment.FOREARM.massShare(body)
                + BodySegment.HAND.massShare(body);
    }

    private static double leg(Reference body) {
        return BodySegment.THIGH.massShare(body)
                + BodySegment.SHANK.massShare(body)
                + BodySegment.FOOT.massShare(body);
    }

    @ParameterizedTest
    @EnumSource(Reference.class)
    void lengthsScaleWithStature(Reference body) {
        for (BodySegment segment : BodySegment.values()) {
            assertThat(segment.lengthM(body, 2 * body.statureM()))
                    .isCloseTo(2 * segment.lengthM(body, body.statureM()), within(1e-12));
        }
    }

    /** Joint spacings over stature (from memory): 0.1085 and 0.0525 each side. */
    @Test
    void jointSpacings() {
        assertThat(BodySegment.SHOULDER_HALF_SPACING).isEqualTo(0.1085);
        assertThat(BodySegment.HIP_HALF_SPACING).isEqualTo(0.0525);
    }
}
