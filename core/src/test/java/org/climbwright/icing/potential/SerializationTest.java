package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Serializable;
import java.util.List;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A finding about icing")
class SerializationTest {
    static List<Serializable> findings() {
        ProfileAir air =
                new ProfileAir()
                        .with(0, -3, -3)
                        .with(1500, 4, 4)
                        .with(4000, -20, -20)
                        .with(9500, -50, -90);
        RelativeHumidity cloud = RelativeHumidity.ofPercent(75);
        PressureAltitude start = PressureAltitude.ofMetres(300);
        return List.of(
                FreezingLevels.in(air),
                WarmNose.in(air).get(0),
                MinusEightD.spansIn(air).get(0),
                CloudThresholds.published(),
                CloudThresholds.published().cloudIn(air, start),
                CloudThresholds.published().cloudIn(new HumidAir(h -> Double.NaN), start),
                LayerPotential.in(air, cloud).get(0),
                LayerPotential.in(new ProfileAir().with(0, 1).with(900, -1), cloud).get(0));
    }

    @ParameterizedTest
    @MethodSource("findings")
    @DisplayName("travels in a stream and arrives as it was")
    void travels(Serializable finding) throws IOException {
        Serializable arrived = Streams.roundTrip(finding);
        assertThat(arrived).isEqualTo(finding).hasSameHashCodeAs(finding);
        assertThat(arrived.toString()).isEqualTo(finding.toString());
    }
}
