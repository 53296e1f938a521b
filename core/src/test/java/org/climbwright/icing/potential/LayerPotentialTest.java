package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.IndicationSpan.Kind;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The potential of a moist layer")
class LayerPotentialTest {
    private static final RelativeHumidity CLOUD = RelativeHumidity.ofPercent(75);

    @Test
    @DisplayName("is greatest where temperature and humidity speak for icing most")
    void strongest() {
        // saturated from 5 °C to -20 °C; a top of -20 °C = 253.15 K has an interest of 0.703614
        ProfileAir air =
                new ProfileAir()
                        .with(0, 5, 5)
                        .with(5000, -20, -20)
                        .with(5001, -20, -45)
                        .with(9000, -45, -70);
        List<LayerPotential> found = LayerPotential.in(air, CLOUD);
        assertThat(found).hasSize(1);
        LayerPotential layer = found.get(0);
        assertThat(layer.initialPotential()).isCloseTo(0.703614, within(1e-4));
        assertThat(layer.strongest().orElseThrow().staticAirTemperature().inCelsius())
                .isBetween(-10.0, -5.0);
        assertThat(layer.reason())
                .startsWith("initial potential of up to 0.70, at -")
                .endsWith(
                        "under a top of -20.0 °C; rising air and cloud water, not known, could"
                                + " raise it");
    }

    @Test
    @DisplayName("is not told where humidity is not known")
    void notKnown() {
        List<LayerPotential> found =
                LayerPotential.in(new ProfileAir().with(0, 5).with(4000, -15), CLOUD);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).layer().kind()).isEqualTo(Kind.NOT_KNOWN);
        assertThat(found.get(0).initialPotential()).isNaN();
        assertThat(found.get(0).strongest()).isEmpty();
        assertThat(found.get(0).reason())
                .isEqualTo("humidity is not known, and so the potential is not");
    }

    @Test
    @DisplayName("is 0 in warm moist air, and dry air has no layer")
    void warmAndDry() {
        List<LayerPotential> warm =
                LayerPotential.in(new ProfileAir().with(0, 25, 25).with(2000, 10, 10), CLOUD);
        assertThat(warm).hasSize(1);
        assertThat(warm.get(0).initialPotential()).isZero();
        assertThat(LayerPotential.in(Atmosphere.standard(), CLOUD)).isEmpty();
    }

    @Test
    @DisplayName("is found in the cold moist layers of the sounding of Aberdeen")
    void recorded() {
        Atmosphere air = RecordedAir.of(RecordedAir.WARM_NOSE);
        List<LayerPotential> known =
                LayerPotential.in(air, CLOUD).stream()
                        .filter(layer -> layer.layer().kind() == Kind.INDICATED)
                        .toList();
        assertThat(known).isNotEmpty();
        for (LayerPotential layer : known) {
            // an independent route: every thousandth of the layer is asked
            double bottomPa = layer.layer().bottom().pressurePa();
            double topPa = layer.layer().top().pressurePa();
            double greatest = 0.0;
            for (int i = 0; i <= 1000; i++) {
                double pressurePa = bottomPa + i / 1000.0 * (topPa - bottomPa);
                double humidity =
                        IndicationSpan.state(air, pressurePa)
                                .relativeHumidity()
                                .orElseThrow()
                                .inRatio();
                greatest =
                        Math.max(
                                greatest,
                                IcingInterest.initialPotential(
                                        air.temperature(pressurePa),
                                        humidity,
                                        layer.layer().top().temperatureK()));
            }
            assertThat(layer.initialPotential()).isCloseTo(greatest, within(2e-3));
        }
    }
}
