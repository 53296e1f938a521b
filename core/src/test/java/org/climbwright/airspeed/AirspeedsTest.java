package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.ImpactPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.FiftyDigits;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("One speed through some air")
class AirspeedsTest {
    private static final AirState FL300 =
            Atmosphere.standard().at(PressureAltitude.ofFlightLevel(300));

    @Test
    @DisplayName("is told as the example in its documentation says")
    void example() {
        Airspeeds speeds = Airspeeds.from(CalibratedAirspeed.ofKnots(300), FL300);

        assertThat(speeds.mach()).hasToString("M0.7906383566816955");
        assertThat(speeds.trueAirspeed())
                .hasToString("239.70065396470912 m/s (465.940796043711 kn)");
        assertThat(speeds).hasToString("M0.7906, CAS 300.0 kn, TAS 465.9 kn");
    }

    @Test
    @DisplayName("at rest is zero in every way")
    void rest() {
        Airspeeds rest = Airspeeds.from(CalibratedAirspeed.ofKnots(0), FL300);

        assertThat(rest.mach().number()).isZero();
        assertThat(rest.trueAirspeed().inKnots()).isZero();
        assertThat(rest.equivalentAirspeed().inKnots()).isZero();
        assertThat(rest.impactPressure().inPascals()).isZero();
        assertThat(rest.totalPressure().inPascals()).isEqualTo(FL300.pressurePa());
        assertThat(rest.totalAirTemperature().inKelvins()).isEqualTo(FL300.temperatureK());
    }

    @Test
    @DisplayName("of Mach 5 is the last that is told")
    void machFive() {
        Airspeeds last = Airspeeds.from(Mach.of(5.0), FL300);

        assertThat(last.mach().number()).isEqualTo(5.0);
        assertThat(last.trueAirspeed().inMetresPerSecond())
                .isEqualTo(5.0 * FL300.speedOfSoundMps());
    }

    @Test
    @DisplayName("below the sea goes as far as the calibrated airspeed of Mach 5 at the sea")
    void belowTheSea() {
        double p = 110000.0;
        double cas = AirspeedConversion.casFromMach(4.5, p);
        assertThat(AirspeedConversion.machFromCas(cas, p)).isCloseTo(4.5, within(4e-15));
        assertThat(AirspeedConversion.coversCas(1701.46, p)).isTrue();
        assertThat(AirspeedConversion.machFromCas(1701.46, p)).isBetween(4.79, 4.81);
        assertThat(AirspeedConversion.coversCas(1701.5, p)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AirspeedConversion.machFromCas(1701.5, p))
                .withMessageStartingWith("calibrated airspeed must be from 0.0 to 1701.469940130");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AirspeedConversion.casFromMach(5.0, p))
                .withMessageStartingWith("impact pressure must be from 0.0 to 3207288.28469");
    }

    @Test
    @DisplayName("comes out of a stream as it went in, and is refused when tampered with")
    void stream() throws IOException {
        Airspeeds speeds = Airspeeds.from(Mach.of(0.75), FL300);

        assertThat(Streams.roundTrip(speeds)).hasToString(speeds.toString());
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Streams.tampered(speeds, 0.75, 5.75));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Streams.tampered(speeds, 0.75, Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(speeds, FL300.pressurePa(), -1.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(speeds, FL300.temperatureK(), Double.NaN));
    }

    @Nested
    @DisplayName("is refused")
    class Refuses {
        private static final String WHY = "air is hardly a perfect gas beyond Mach 5";

        @Test
        @DisplayName("above Mach 5, in one sentence")
        void hypersonic() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Airspeeds.from(Mach.of(5.2), FL300))
                    .withMessage(
                            "Mach number must be from 0.0 to 5.0, but was 5.2:"
                                    + " air is hardly a perfect gas beyond");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Airspeeds.from(TrueAirspeed.ofMetresPerSecond(1600), FL300))
                    .withMessageMatching(
                            "true airspeed must be from 0\\.0 to 1515\\.8\\d* m/s, but was 1600\\.0"
                                    + " m/s: "
                                    + WHY);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(
                            () -> Airspeeds.from(EquivalentAirspeed.ofMetresPerSecond(1000), FL300))
                    .withMessageMatching(
                            "equivalent airspeed must be from 0\\.0 to 92\\d\\.\\d* m/s, but was"
                                    + " 1000\\.0 m/s: "
                                    + WHY);
        }

        @Test
        @DisplayName("when the calibrated airspeed is too fast for the altitude")
        void tooFastForTheAltitude() {
            // the speed in the message is that of Mach 5 there, here in 50 digits
            assertThat(FiftyDigits.casOfMach(5.0, FL300.pressurePa()).doubleValue())
                    .isCloseTo(944.7750944106031, within(1e-12));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(
                            () -> Airspeeds.from(CalibratedAirspeed.ofMetresPerSecond(1000), FL300))
                    .withMessage(
                            "calibrated airspeed must be from 0.0 to 944.7750944106032 m/s, but was"
                                    + " 1000.0 m/s: "
                                    + WHY);
        }

        @Test
        @DisplayName("when the speed is no number")
        void noNumber() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> AirspeedConversion.machFromTas(Double.NaN, 288.15))
                    .withMessage(
                            "true airspeed must be from 0.0 to 1701.469940130445 m/s, but was NaN"
                                    + " m/s: "
                                    + WHY);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> AirspeedConversion.machFromCas(Double.NaN, 101325.0))
                    .withMessage(
                            "calibrated airspeed must be from 0.0 to 1701.469940130445 m/s, but"
                                    + " was NaN m/s: "
                                    + WHY);
        }

        @Test
        @DisplayName("when the impact pressure is more than that of Mach 5")
        void impactPressure() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> AirspeedConversion.machFromImpactPressure(32000.0, 1000.0))
                    .withMessageStartingWith("impact pressure must be from 0.0 to 31653.47")
                    .withMessageEndingWith(" Pa, but was 32000.0 Pa: " + WHY);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Airspeeds.from(ImpactPressure.ofPascals(1e6), FL300));
        }

        @Test
        @DisplayName("in air so cold that no formula here is meant for it")
        void temperature() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> AirspeedConversion.tasFromMach(0.5, 99.0))
                    .withMessageStartingWith(
                            "static air temperature must be from 100.0 to 400.0 K");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> AirspeedConversion.machFromTas(100.0, Double.NaN));
        }
    }
}
