package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The factor for a horizontal extent")
class ExtentFactorTableTest {
    private static final String FIGURE_3 = "/icing/envelope/extent-factor.csv";
    private static final String OF_1952 = "/icing/envelope/extent-factor-1952.csv";

    /** What the layer curve of 1952 is at 20 statute miles, to which figure 3 refers it. */
    private static final double AT_20_MILES = 0.829;

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(resources = FIGURE_3, useHeadersInDisplayName = true)
    @DisplayName("is that of figure 3, and 1 at the standard extent")
    void agreesWithTheFigure(
            String envelope, double nauticalMiles, double factor, String status, String source) {
        GroundDistance extent = GroundDistance.ofNauticalMiles(nauticalMiles);
        double ours =
                "CM".equals(envelope)
                        ? ContinuousMaximum.extentFactor(extent)
                        : IntermittentMaximum.extentFactor(extent);
        assertThat(ours).isCloseTo(factor, within(1e-12));
    }

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(resources = OF_1952, useHeadersInDisplayName = true)
    @DisplayName("is that of the report of 1952 from which the figures were drawn")
    void agreesWith1952(
            String curve, double statuteMiles, double factor, String status, String source) {
        double extentM = statuteMiles * 1609.344;
        if (curve.startsWith("IM")) {
            // 0.006 of reading, 0.01 in all
            assertThat(IntermittentMaximum.extentFactor(extentM)).isCloseTo(factor, within(0.01));
        } else {
            // two figures read independently of each other
            assertThat(ContinuousMaximum.extentFactor(extentM))
                    .isCloseTo(factor / AT_20_MILES, within(0.015));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.99, 310.01, Double.NaN, -1.0})
    @DisplayName("is refused where no line is drawn")
    void refused(double nauticalMiles) {
        double extentM = nauticalMiles * 1852.0;
        assertThat(ContinuousMaximum.coversExtent(extentM)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> ContinuousMaximum.extentFactor(extentM))
                .withMessageContaining("horizontal extent must be from 9260.0 to 574120.0 m")
                .withMessageContaining("but was " + extentM + " m");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.259, 5.22, Double.NaN, 0.0})
    @DisplayName("for cumulus is refused where no line was read")
    void refusedForCumulus(double nauticalMiles) {
        double extentM = nauticalMiles * 1852.0;
        assertThat(IntermittentMaximum.coversExtent(extentM)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> IntermittentMaximum.extentFactor(extentM));
    }

    @Test
    @DisplayName("is compared in 16 rows and 16")
    void rows() {
        assertThat(Table.rows(FIGURE_3)).hasSize(16);
        assertThat(Table.rows(OF_1952)).hasSize(16);
        assertThat(Table.rows(OF_1952)).filteredOn(row -> row.startsWith("IM")).hasSize(10);
    }
}
