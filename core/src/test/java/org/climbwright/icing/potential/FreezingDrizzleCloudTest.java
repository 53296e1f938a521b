package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.IndicationSpan.Kind;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Cloud that freezing drizzle may form in")
class FreezingDrizzleCloudTest {
    private static final RelativeHumidity CLOUD = RelativeHumidity.ofPercent(95);

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "from 5 to -9.9 degrees, 5, -9.9, 1",
        "from -3 to -9.9 degrees, -3, -9.9, 1",
        "from -3 to -10.1 degrees, -3, -10.1, 0",
        "from 9 to 0.1 degrees, 9, 0.1, 0",
        "from 9 to -0.1 degrees, 9, -0.1, 1",
        "under an inversion from -10.1 to -2 degrees, -10.1, -2, 0",
    })
    @DisplayName("is below 0 °C somewhere, and nowhere below -10 °C (slide 18: 0 to -10 °C):")
    void temperatures(String what, double bottomC, double topC, int count) {
        List<IndicationSpan> spans = FreezingDrizzleCloud.in(cloud(bottomC, topC), CLOUD);
        assertThat(spans).hasSize(count);
        assertThat(spans).allMatch(span -> span.kind() == Kind.INDICATED);
    }

    @Test
    @DisplayName("is told with its edges and its coldest air")
    void edges() {
        IndicationSpan span = FreezingDrizzleCloud.in(cloud(-2, -6), CLOUD).get(0);
        assertThat(ProfileAir.altitude(span.bottom().pressurePa())).isCloseTo(0, within(1e-6));
        assertThat(ProfileAir.altitude(span.top().pressurePa())).isBetween(1000.0, 1010.0);
        assertThat(span.reason())
                .startsWith("moist, and not colder than -6.0 °C: cloud there may hold no ice");
    }

    @Test
    @DisplayName("cannot be told where humidity is not known from 0 to -10 °C")
    void notKnown() {
        ProfileAir air = new ProfileAir().with(0, 5).with(4000, -15);
        List<IndicationSpan> spans = FreezingDrizzleCloud.in(air, CLOUD);
        assertThat(spans).hasSize(1);
        assertThat(spans.get(0).kind()).isEqualTo(Kind.NOT_KNOWN);
        assertThat(ProfileAir.altitude(spans.get(0).bottom().pressurePa()))
                .isCloseTo(1000, within(1e-5));
        assertThat(ProfileAir.altitude(spans.get(0).top().pressurePa()))
                .isCloseTo(3000, within(1e-5));
        assertThat(spans.get(0).reason())
                .isEqualTo("from 0 to -10 °C; humidity is not known, and so cloud is not");
    }

    @Test
    @DisplayName("is not in dry air")
    void dryAir() {
        assertThat(FreezingDrizzleCloud.in(Atmosphere.standard(), CLOUD)).isEmpty();
    }

    /** Saturated up to 1,000 m, and much drier 100 m above. */
    private static ProfileAir cloud(double bottomC, double topC) {
        return new ProfileAir()
                .with(0, bottomC, bottomC)
                .with(1000, topC, topC)
                .with(1100, topC, topC - 20)
                .with(9000, -50, -70);
    }
}
