package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.icing.potential.ForecastCloud.Kind;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The humidity thresholds of a forecast scheme")
class CloudThresholdsTest {
    private static final PressureAltitude START = PressureAltitude.ofMetres(304.8);
    private static final CloudThresholds PUBLISHED = CloudThresholds.published();

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/icing/forecast-cloud.csv", useHeadersInDisplayName = true)
    @DisplayName("are those published, and part cloud from none:")
    void published(String rule, double percent, String source) {
        RelativeHumidity threshold = RelativeHumidity.ofPercent(percent);
        assertThat(rule.startsWith("base") ? PUBLISHED.base() : PUBLISHED.top())
                .isEqualTo(threshold);
        Kind below = PUBLISHED.cloudIn(constant(percent - 0.01), START).kind();
        Kind at = PUBLISHED.cloudIn(constant(percent + 0.01), START).kind();
        assertThat(below).isEqualTo(rule.startsWith("base") ? Kind.NOT_DECIDED : Kind.CLEAR);
        assertThat(at).isEqualTo(rule.startsWith("base") ? Kind.CLOUD : Kind.NOT_DECIDED);
    }

    @Test
    @DisplayName("are compared with 3 rows")
    void rows() {
        assertThat(Table.rows("/icing/forecast-cloud.csv")).hasSize(3);
    }

    @Test
    @DisplayName("find the base at the one and the top at the other")
    void baseAndTop() {
        HumidAir air = new HumidAir(h -> Math.max(0.1, 0.9 - Math.abs(h - 3000.0) / 10000.0));
        ForecastCloud cloud = PUBLISHED.cloudIn(air, START);
        assertThat(cloud.kind()).isEqualTo(Kind.CLOUD);
        assertThat(altitude(cloud.base().orElseThrow().pressurePa()))
                .isCloseTo(2000.0, within(1e-5));
        assertThat(altitude(cloud.top().orElseThrow().pressurePa()))
                .isCloseTo(5000.0, within(1e-5));
        assertThat(cloud.reason())
                .isEqualTo("from the first 80 % above the start to the last 70 % below 300 hPa");
    }

    @Test
    @DisplayName("do not look above 300 hPa, nor below the start")
    void within300() {
        HumidAir air = new HumidAir(h -> h < 300.0 || h > 9800.0 ? 0.95 : 0.3);
        assertThat(PUBLISHED.cloudIn(air, START).kind()).isEqualTo(Kind.CLEAR);
        assertThat(PUBLISHED.cloudIn(air, START).reason())
                .isEqualTo("drier than 70 % from the start up to 300 hPa");
        assertThat(PUBLISHED.cloudIn(air, PressureAltitude.ofMetres(0)).kind())
                .isEqualTo(Kind.CLOUD);
    }

    @Test
    @DisplayName("decide nothing where humidity is not known, unless base and top lie outside")
    void notKnown() {
        ForecastCloud none =
                PUBLISHED.cloudIn(new HumidAir(h -> h > 7000.0 ? Double.NaN : 0.3), START);
        assertThat(none.kind()).isEqualTo(Kind.NOT_DECIDED);
        assertThat(none.reason()).isEqualTo("humidity is not known all the way");
        assertThat(none.base()).isEmpty();
        ForecastCloud noTop =
                PUBLISHED.cloudIn(new HumidAir(h -> h > 7000.0 ? Double.NaN : 0.9), START);
        assertThat(noTop.kind()).isEqualTo(Kind.NOT_DECIDED);
        assertThat(noTop.base()).isPresent();
        assertThat(noTop.top()).isEmpty();
        ForecastCloud around =
                PUBLISHED.cloudIn(
                        new HumidAir(h -> h > 4000.0 && h < 5000.0 ? Double.NaN : 0.9), START);
        assertThat(around.kind()).isEqualTo(Kind.CLOUD);
    }

    @Test
    @DisplayName("find none in the standard atmosphere, which is dry")
    void standardAir() {
        assertThat(PUBLISHED.cloudIn(Atmosphere.standard(), START).kind()).isEqualTo(Kind.CLEAR);
    }

    @Test
    @DisplayName("are the caller's, but the top's is not above the base's")
    void refuses() {
        RelativeHumidity seventy = RelativeHumidity.ofPercent(70);
        RelativeHumidity eighty = RelativeHumidity.ofPercent(80);
        assertThatThrownBy(() -> new CloudThresholds(seventy, eighty))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "relative humidity at the top must be at most that at the base, 70.0"
                                + " %, but was 80.0 %");
        assertThat(new CloudThresholds(eighty, eighty).top()).isEqualTo(eighty);
        assertThatThrownBy(
                        () ->
                                PUBLISHED.cloudIn(
                                        Atmosphere.standard(), PressureAltitude.ofMetres(9200)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the search must begin below 300 hPa");
    }

    private static HumidAir constant(double percent) {
        return new HumidAir(h -> percent / 100.0);
    }

    private static double altitude(double pressurePa) {
        return StandardAir.altitudeFromPressure(pressurePa);
    }
}
