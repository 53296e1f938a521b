package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The airspeed relations")
class PressureRangeTest {
    private static final Map<String, DoubleUnaryOperator> OF_PRESSURE =
            Map.of(
                    "Mach from CAS", p -> AirspeedConversion.machFromCas(0.0, p),
                    "Mach from EAS", p -> AirspeedConversion.machFromEas(0.0, p),
                    "Mach from impact", p -> AirspeedConversion.machFromImpactPressure(0.0, p),
                    "CAS from Mach", p -> AirspeedConversion.casFromMach(0.1, p),
                    "EAS from Mach", p -> AirspeedConversion.easFromMach(0.1, p),
                    "impact from Mach", p -> AirspeedConversion.impactPressureFromMach(0.1, p),
                    "dynamic from Mach", p -> AirspeedConversion.dynamicPressureFromMach(0.1, p),
                    "total from Mach", p -> AirspeedConversion.totalPressureFromMach(0.1, p));

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0.0, -1.0, 0.0999, 1000001.0, Double.POSITIVE_INFINITY})
    @DisplayName("refuse a static pressure in which no aeroplane flies, never with a NaN")
    void refuse(double pressurePa) {
        assertThat(AirspeedConversion.coversPressure(pressurePa)).isFalse();
        assertThat(AirspeedConversion.coversCas(0.0, pressurePa)).isFalse();
        assertThat(AirspeedConversion.coversImpactPressure(0.0, pressurePa)).isFalse();
        OF_PRESSURE.forEach(
                (name, relation) ->
                        assertThatExceptionOfType(OutsideModelException.class)
                                .as(name)
                                .isThrownBy(() -> relation.applyAsDouble(pressurePa))
                                .withMessage(
                                        "static pressure must be from 0.1 to 1000000.0 Pa, but was "
                                                + pressurePa
                                                + " Pa: no aeroplane flies outside"));
    }

    @Test
    @DisplayName("and those of air answer no nonsense with a number")
    void noNonsense() {
        for (double bad : new double[] {Double.NaN, -5.0}) {
            refused(() -> DryAir.density(bad, 288.15));
            refused(() -> MoistAir.relativeHumidity(bad, 288.15));
            refused(() -> MoistAir.virtualTemperature(288.15, bad, 100000.0));
            refused(() -> MoistAir.virtualTemperature(288.15, 1000.0, bad));
            refused(() -> TotalTemperature.fromMach(0.5, bad, 1.0));
        }
        refused(() -> MoistAir.virtualTemperature(288.15, 1000.0, 300.0));
    }

    private static void refused(ThrowingCallable question) {
        assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question);
    }

    @Test
    @DisplayName("have speeds to print even where no calibrated airspeed is known")
    void belowTheSea() {
        AirState deep =
                AirState.of(
                        StaticPressure.ofHectopascals(1100), StaticAirTemperature.ofCelsius(15));
        assertThat(Airspeeds.from(Mach.of(5.0), deep).toString())
                .isEqualTo("M5.0000, CAS beyond Mach 5, TAS 3307.4 kn");
    }

    @Test
    @DisplayName("give equal speeds for equal questions, and others for others")
    void equality() {
        AirState air =
                AirState.of(
                        StaticPressure.ofHectopascals(500), StaticAirTemperature.ofCelsius(-20));
        Airspeeds speeds = Airspeeds.from(Mach.of(0.7), air);
        assertThat(speeds)
                .isEqualTo(Airspeeds.from(Mach.of(0.7), air))
                .hasSameHashCodeAs(Airspeeds.from(Mach.of(0.7), air))
                .isNotEqualTo(Airspeeds.from(Mach.of(0.71), air));
    }
}
