package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.icing.potential.IndicationSpan.Kind;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Moist layers")
class MoistLayersTest {
    private static final RelativeHumidity EIGHTY = RelativeHumidity.ofPercent(80);

    @ParameterizedTest(name = "{3} from {0} to {2}")
    @CsvFileSource(resources = "/icing/cloud-layer-humidity.csv", useHeadersInDisplayName = true)
    @DisplayName("have a threshold by latitude, north and south alike:")
    void byLatitude(
            double lowestDeg, double withinDeg, double belowDeg, double percent, String source) {
        double justBelow = belowDeg == 90.0 ? belowDeg : belowDeg - 1e-9;
        for (double degrees : new double[] {lowestDeg, withinDeg, justBelow}) {
            assertThat(MoistLayers.thresholdAtLatitude(radians(degrees)))
                    .isEqualTo(percent / 100.0);
            assertThat(MoistLayers.thresholdAtLatitude(radians(-degrees)))
                    .isEqualTo(percent / 100.0);
        }
    }

    @Test
    @DisplayName("have a threshold in 3 bands of latitude")
    void rows() {
        assertThat(Table.rows("/icing/cloud-layer-humidity.csv")).hasSize(3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-90.001, 90.001, Double.NaN})
    @DisplayName("have none beyond the poles")
    void refuses(double degrees) {
        assertThat(MoistLayers.coversLatitude(radians(degrees))).isFalse();
        assertThatThrownBy(() -> MoistLayers.thresholdAtLatitude(radians(degrees)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("latitude must be from -1.57");
    }

    @Test
    @DisplayName("lie between the levels at which the humidity passes the threshold")
    void layers() {
        HumidAir air = new HumidAir(h -> h > 9000.0 ? Double.NaN : 0.7 + 0.2 * Math.sin(h / 500.0));
        List<IndicationSpan> spans = MoistLayers.in(air, EIGHTY);
        // above 80 % where sin > 1/2: five whole humps from 500 pi/6 m on, one in 1,000 pi m; the
        // sixth hump begins above 9,000 m
        assertThat(spans).hasSize(4);
        for (int i = 0; i < 3; i++) {
            double from = 500.0 * (Math.PI / 6.0 + 2.0 * Math.PI * i);
            assertThat(spans.get(i).kind()).isEqualTo(Kind.INDICATED);
            assertThat(spans.get(i).depth().orElseThrow().inMetres())
                    .isCloseTo(500.0 * Math.PI * 2.0 / 3.0, within(1e-5));
            assertThat(spans.get(i).bottom().geopotentialAltitude().orElseThrow().inMetres())
                    .isCloseTo(from, within(1e-5));
            assertThat(spans.get(i).reason())
                    .isEqualTo("relative humidity over water of 80 % or more");
        }
        IndicationSpan last = spans.get(3);
        assertThat(last.kind()).isEqualTo(Kind.NOT_KNOWN);
        assertThat(last.reason()).isEqualTo("humidity is not known");
        assertThat(last.bottom().geopotentialAltitude().orElseThrow().inMetres())
                .isCloseTo(9000.0, within(1e-5));
    }

    @Test
    @DisplayName("take the threshold itself for moist")
    void thresholdIncluded() {
        assertThat(MoistLayers.in(new HumidAir(h -> 1.0), RelativeHumidity.ofPercent(100)))
                .hasSize(1);
        assertThat(MoistLayers.in(new HumidAir(h -> 0.999), RelativeHumidity.ofPercent(100)))
                .isEmpty();
    }

    private static double radians(double degrees) {
        return UnitScale.DEGREE.toSi(degrees);
    }
}
