package org.climbwright.icing.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.MoistureForm;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The rule for engine icing conditions on the ground")
class GroundIcingRuleTest {
    private static final GroundIcingRule RULE = GroundIcingRule.usual();
    private static final GroundDistance FAR = GroundDistance.ofMetres(9999);

    private static GroundObservation at(double celsius) {
        return GroundObservation.of(StaticAirTemperature.ofCelsius(celsius));
    }

    @Test
    @DisplayName("is met at 10 °C with rain, and not warmer")
    void warm() {
        Set<MoistureForm> rain = Set.of(MoistureForm.RAIN);
        assertThat(RULE.of(at(10).withWeather(rain, FAR)).answer())
                .isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(RULE.of(at(10.001).withWeather(rain, FAR)).answer())
                .isEqualTo(IcingAnswer.NOT_MET);
    }

    @Test
    @DisplayName("is met by fog of a statute mile, and not by thinner fog")
    void fog() {
        Set<MoistureForm> fog = Set.of(MoistureForm.FOG);
        GroundIcingRule.Verdict thick =
                RULE.of(
                        at(3).withWeather(fog, GroundDistance.ofMetres(1609.344))
                                .withSurface(Set.of()));
        assertThat(thick.answer()).isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(thick.reasons())
                .containsExactly(
                        "outside air temperature 3.0 °C is not above the rule's 10.0 °C",
                        "fog with a visibility of 1609 m (rule: 1609 m or less)");
        assertThat(
                        RULE.of(
                                        at(3).withWeather(fog, GroundDistance.ofMetres(1609.35))
                                                .withSurface(Set.of()))
                                .answer())
                .isEqualTo(IcingAnswer.NOT_MET);
    }

    @Test
    @DisplayName("is met by slush alone, whatever the weather")
    void surface() {
        GroundIcingRule.Verdict slush =
                RULE.of(at(1).withSurface(Set.of(SurfaceContaminant.SLUSH)));
        assertThat(slush.answer()).isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(slush.reasons()).contains("slush on ramps, taxiways or runways");
        assertThat(RULE.of(at(1).withSurface(Set.of(SurfaceContaminant.STANDING_WATER))).reasons())
                .contains("standing water on ramps, taxiways or runways");
    }

    @Test
    @DisplayName("cannot be told while weather or surface is not known and nothing else meets it")
    void notKnown() {
        assertThat(RULE.of(at(1)).answer()).isEqualTo(IcingAnswer.NOT_KNOWN);
        assertThat(RULE.of(at(1)).reasons())
                .contains("the weather is not known", "what lies on the surfaces is not known");
        assertThat(RULE.of(at(1).withWeather(Set.of(), FAR)).answer())
                .isEqualTo(IcingAnswer.NOT_KNOWN);
        assertThat(RULE.of(at(1).withWeather(Set.of(), FAR).withSurface(Set.of())).answer())
                .isEqualTo(IcingAnswer.NOT_MET);
        assertThat(RULE.of(at(15)).answer()).isEqualTo(IcingAnswer.NOT_MET);
    }

    @Test
    @DisplayName("takes thresholds of the caller's own")
    void own() {
        GroundIcingRule own =
                new GroundIcingRule(
                        StaticAirTemperature.ofCelsius(5),
                        GroundDistance.ofMetres(1000),
                        Set.of(MoistureForm.SNOW),
                        Set.of());
        GroundObservation snowy =
                at(5).withWeather(Set.of(MoistureForm.SNOW, MoistureForm.RAIN), FAR)
                        .withSurface(Set.of(SurfaceContaminant.SNOW));
        assertThat(own.of(snowy).reasons())
                .containsExactly(
                        "outside air temperature 5.0 °C is not above the rule's 5.0 °C", "snow");
    }

    @Test
    @DisplayName("and an observation are read back the same")
    void readBack() throws Exception {
        GroundObservation observation =
                at(3).withWeather(Set.of(MoistureForm.FOG), FAR).withSurface(Set.of());
        assertThat(Streams.roundTrip(observation))
                .isEqualTo(observation)
                .hasSameHashCodeAs(observation);
        assertThat(Streams.roundTrip(RULE)).isEqualTo(RULE);
    }
}
