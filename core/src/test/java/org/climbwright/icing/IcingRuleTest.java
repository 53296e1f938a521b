package org.climbwright.icing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A rule for icing conditions")
class IcingRuleTest {
    private static final VisibleMoisture MOIST =
            VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80));
    private static final IcingRule ENGINE = IcingRule.engine(MOIST);
    private static final IcingRule AIRFRAME = IcingRule.airframe(MOIST);

    /** A point at 10,000 ft, 250 kn. */
    private static ClimbState point(double celsius, double humidityPercent) {
        AirState air =
                AirState.of(
                        StaticPressure.ofPascals(69682.0), StaticAirTemperature.ofCelsius(celsius));
        return point(
                Double.isNaN(humidityPercent)
                        ? air
                        : air.withRelativeHumidity(RelativeHumidity.ofPercent(humidityPercent)));
    }

    private static ClimbState point(AirState air) {
        double cas = CalibratedAirspeed.ofKnots(250).inMetresPerSecond();
        double mach = Airspeeds.from(CalibratedAirspeed.ofKnots(250), air).mach().number();
        return ClimbState.ofSi(
                air, 3048.0, cas, mach, 10.0, 50000.0, Double.NaN, Double.NaN, 0.0, 0.0);
    }

    /** The static temperature at which that point feels a total one. */
    private static double celsiusThatFeels(double totalCelsius) {
        double low = -60.0;
        double high = 30.0;
        for (int i = 0; i < 80; i++) {
            double middle = 0.5 * (low + high);
            if (point(middle, 90).totalAirTemperature().inCelsius() <= totalCelsius) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Nested
    @DisplayName("for engines")
    class ForEngines {
        @Test
        @DisplayName("holds at 10 °C total air temperature, and not warmer")
        void total() {
            double celsius = celsiusThatFeels(10.0);
            assertThat(ENGINE.at(point(celsius, 90))).isEqualTo(IcingAnswer.CONDITIONS);
            assertThat(ENGINE.at(point(celsius + 1e-9, 90))).isEqualTo(IcingAnswer.NOT_MET);
        }

        @Test
        @DisplayName("holds at -40 °C static air temperature; colder it speaks no more, aloud")
        void cold() {
            assertThat(ENGINE.at(point(-40.0, 90))).isEqualTo(IcingAnswer.CONDITIONS);
            assertThat(ENGINE.at(point(-40.001, 90))).isEqualTo(IcingAnswer.COLDER_THAN_THE_RULE);
            assertThat(ENGINE.withoutColdest().at(point(-40.001, 90)))
                    .isEqualTo(IcingAnswer.CONDITIONS);
            assertThat(ENGINE.at(point(-45.0, 50))).isEqualTo(IcingAnswer.NOT_MET);
        }

        @Test
        @DisplayName("does not take a static air temperature for a total one")
        void noStatic() {
            assertThat(ENGINE.at(point(4.9, 90))).isEqualTo(IcingAnswer.NOT_MET);
        }
    }

    @Nested
    @DisplayName("for airframes")
    class ForAirframes {
        @Test
        @DisplayName("holds at 5 °C static air temperature, where the total one is above 10 °C")
        void staticTemperature() {
            assertThat(point(5.0, 90).totalAirTemperature().inCelsius()).isGreaterThan(10.0);
            assertThat(AIRFRAME.at(point(5.0, 90))).isEqualTo(IcingAnswer.CONDITIONS);
            assertThat(AIRFRAME.at(point(5.000001, 90))).isEqualTo(IcingAnswer.NOT_MET);
        }

        @Test
        @DisplayName("has no end towards the cold")
        void cold() {
            assertThat(AIRFRAME.at(point(-60.0, 90))).isEqualTo(IcingAnswer.CONDITIONS);
        }

        @Test
        @DisplayName(
                "is the one of 14 CFR 121.321, and protects another part than that for engines")
        void basis() {
            assertThat(AIRFRAME.basis()).isEqualTo("14 CFR 121.321");
            assertThat(AIRFRAME.part()).isEqualTo(ProtectedPart.AIRFRAME);
            assertThat(ENGINE.basis()).isEqualTo("common practice, no source");
            assertThat(ENGINE.part()).isEqualTo(ProtectedPart.ENGINE);
        }
    }

    @Test
    @DisplayName("that may last longer than it would begin ends by the static threshold")
    void lasts() {
        IcingRule rule =
                ENGINE.withWarmestTotal(TotalAirTemperature.ofCelsius(8))
                        .withOffAbove(StaticAirTemperature.ofCelsius(4));
        ClimbState between = point(3.9, 90);
        assertThat(rule.at(between)).isEqualTo(IcingAnswer.NOT_MET);
        assertThat(rule.at(between, IcingAnswer.CONDITIONS)).isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(rule.at(point(4.0, 90), IcingAnswer.CONDITIONS))
                .isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(rule.at(point(4.001, 90), IcingAnswer.CONDITIONS))
                .isEqualTo(IcingAnswer.NOT_MET);
        assertThat(rule.at(point(3.9, 70), IcingAnswer.CONDITIONS)).isEqualTo(IcingAnswer.NOT_MET);
    }

    @Test
    @DisplayName("that lasts longer keeps a span open while a climb accelerates and feels warmer")
    void lastsWhileAccelerating() {
        ClimbPath path =
                Scene.path(Scene.constantRate(1500), new MoistStandardAir(h -> 1.0), Winds.calm());
        IcingRule rule = ENGINE.withoutColdest().withWarmestTotal(TotalAirTemperature.ofCelsius(8));
        assertThat(IcingSpan.along(path, rule)).hasSize(2);
        List<IcingSpan> lasting =
                IcingSpan.along(path, rule.withOffAbove(StaticAirTemperature.ofCelsius(5)));
        assertThat(lasting).hasSize(1);
        assertThat(lasting.get(0).entry().totalAirTemperature().inCelsius())
                .isCloseTo(8.0, within(1e-5));
    }

    @Test
    @DisplayName("without a threshold is never met")
    void noThreshold() {
        IcingRule none = IcingRule.of(ProtectedPart.ENGINE, "for the test", MOIST);
        assertThat(none.at(point(-20, 95))).isEqualTo(IcingAnswer.NOT_MET);
    }

    @Test
    @DisplayName("cannot tell where humidity is not known, and says nothing where it is warm")
    void notKnown() {
        assertThat(ENGINE.at(point(-2.0, Double.NaN))).isEqualTo(IcingAnswer.NOT_KNOWN);
        assertThat(ENGINE.at(point(20.0, Double.NaN))).isEqualTo(IcingAnswer.NOT_MET);
    }

    @Nested
    @DisplayName("takes moisture")
    class TakesMoisture {
        @Test
        @DisplayName("over ice where it freezes: 70 % over water is saturated over ice at -38 °C")
        void overIce() {
            ClimbState cirrus = point(-38.0, 70);
            VisibleMoisture overIce =
                    VisibleMoisture.ofRelativeHumidityOverIce(RelativeHumidity.ofPercent(95));
            assertThat(MOIST.at(cirrus)).isEqualTo(VisibleMoisture.Answer.ABSENT);
            assertThat(overIce.at(cirrus)).isEqualTo(VisibleMoisture.Answer.PRESENT);
            // above 0 °C there is no ice to be saturated over
            assertThat(overIce.at(point(3.0, 94))).isEqualTo(VisibleMoisture.Answer.ABSENT);
            assertThat(overIce.at(point(3.0, 95))).isEqualTo(VisibleMoisture.Answer.PRESENT);
            assertThat(overIce.at(point(-3.0, Double.NaN)))
                    .isEqualTo(VisibleMoisture.Answer.NOT_KNOWN);
        }

        @Test
        @DisplayName("from stated bands, their ends included")
        void bands() {
            PressureAltitude tenThousand = PressureAltitude.ofFeet(10000);
            VisibleMoisture upTo = bands(PressureAltitude.ofFeet(5000), tenThousand);
            VisibleMoisture from = bands(tenThousand, PressureAltitude.ofFeet(12000));
            VisibleMoisture above =
                    bands(PressureAltitude.ofFeet(10001), PressureAltitude.ofFeet(12000));
            ClimbState dry = point(-5.0, 20);
            assertThat(upTo.at(dry)).isEqualTo(VisibleMoisture.Answer.PRESENT);
            assertThat(from.at(dry)).isEqualTo(VisibleMoisture.Answer.PRESENT);
            assertThat(above.at(dry)).isEqualTo(VisibleMoisture.Answer.ABSENT);
            assertThat(upTo.found(List.of(dry))).isEqualTo("cloud from 5000 to 10000 ft as stated");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> bands(tenThousand, PressureAltitude.ofFeet(9999)))
                    .withMessageContaining("must be above its base");
        }

        private VisibleMoisture bands(PressureAltitude base, PressureAltitude top) {
            return VisibleMoisture.inBands(
                    List.of(new MoistureBand(MoistureForm.CLOUD, base, top)));
        }

        @Test
        @DisplayName("from either of two: present by one, absent by both, else not known")
        void either() {
            VisibleMoisture cloud =
                    bands(PressureAltitude.ofFeet(9000), PressureAltitude.ofFeet(11000));
            VisibleMoisture none = bands(PressureAltitude.ofFeet(0), PressureAltitude.ofFeet(100));
            ClimbState dry = point(-5.0, 20);
            ClimbState unknown = point(-5.0, Double.NaN);
            assertThat(MOIST.or(cloud).at(dry)).isEqualTo(VisibleMoisture.Answer.PRESENT);
            assertThat(MOIST.or(cloud).at(unknown)).isEqualTo(VisibleMoisture.Answer.PRESENT);
            assertThat(MOIST.or(none).at(dry)).isEqualTo(VisibleMoisture.Answer.ABSENT);
            assertThat(MOIST.or(none).at(unknown)).isEqualTo(VisibleMoisture.Answer.NOT_KNOWN);
            assertThat(MOIST.or(cloud).found(List.of(dry)))
                    .isEqualTo("cloud from 9000 to 11000 ft as stated");
        }
    }

    @Test
    @DisplayName("is read back the same, spans and advice too")
    void readBack() throws Exception {
        IcingRule rule = AIRFRAME.withOffAbove(StaticAirTemperature.ofCelsius(6));
        assertThat(Streams.roundTrip(rule)).isEqualTo(rule).hasSameHashCodeAs(rule);
        assertThat(rule).isNotEqualTo(AIRFRAME);
        ClimbPath path =
                Scene.path(Scene.constantRate(1500), new MoistStandardAir(h -> 1.0), Winds.calm());
        IcingSpan span = IcingSpan.along(path, rule).get(0);
        assertThat(Streams.roundTrip(span)).isEqualTo(span);
    }

    @Test
    @DisplayName("is told with its thresholds")
    void text() {
        assertThat(ENGINE.toString())
                .startsWith(
                        "engine (common practice, no source), TAT to 10.0 °C, not below SAT -40.0"
                                + " °C, ");
    }
}
