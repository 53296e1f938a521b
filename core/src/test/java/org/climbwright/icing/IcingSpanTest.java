package org.climbwright.icing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Icing conditions along a climb")
class IcingSpanTest {
    private static final IcingRule RULE = rule(10, 80);

    private static IcingRule rule(double warmestCelsius, double leastPercent) {
        return IcingRule.engine(
                        VisibleMoisture.ofRelativeHumidity(
                                RelativeHumidity.ofPercent(leastPercent)))
                .withWarmestTotal(TotalAirTemperature.ofCelsius(warmestCelsius))
                .withoutColdest();
    }

    @Test
    @DisplayName("in saturated air begin where total air temperature falls to 10 °C")
    void beginAtTheThreshold() {
        ClimbPath path = climb(new MoistStandardAir(h -> 1.0));
        List<IcingSpan> spans = IcingSpan.along(path, RULE);
        assertThat(spans.get(0).answer()).isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(spans.get(0).entry().totalAirTemperature().inCelsius())
                .isCloseTo(10.0, within(1e-5));
        ClimbState below = path.at(spans.get(0).bottom().minus(oneFoot()));
        assertThat(below.totalAirTemperature().inCelsius()).isGreaterThan(10.0);
    }

    @Test
    @DisplayName("end where the climb accelerates and total air temperature jumps above 10 °C")
    void endWhereItAccelerates() {
        // At 10,000 ft 250 kn has a total air temperature of 5.8 °C, 290 kn one of 9.5 °C.
        IcingRule rule = rule(8, 80);
        List<IcingSpan> spans = IcingSpan.along(climb(new MoistStandardAir(h -> 1.0)), rule);
        assertThat(spans).hasSize(2);
        assertThat(spans.get(0).top()).isEqualTo(PressureAltitude.ofFeet(10000));
        assertThat(spans.get(0).exit().calibratedAirspeed().inKnots()).isEqualTo(250);
        assertThat(spans.get(1).entry().totalAirTemperature().inCelsius())
                .isCloseTo(8.0, within(1e-5));
    }

    @Test
    @DisplayName("follow the moisture: a layer from 4,000 to 5,000 m is one span to its edges")
    void followTheMoisture() {
        // rises through 80 % at 4,000 m and falls through it at 5,000 m
        MoistStandardAir air =
                new MoistStandardAir(
                        h -> Math.max(0.1, 1.0 - Math.abs(h - 4500.0) / 500.0 * 0.2),
                        List.of(2250.0, 4500.0, 6750.0));
        List<IcingSpan> spans = IcingSpan.along(climb(air), RULE);
        assertThat(spans).hasSize(1);
        assertThat(spans.get(0).bottom().inMetres()).isCloseTo(4000.0, within(2e-3));
        assertThat(spans.get(0).top().inMetres()).isCloseTo(5000.0, within(2e-3));
        assertThat(spans.get(0).reason())
                .matches(
                        "total air temperature \\d\\.\\d to -?\\d\\.\\d °C \\(rule: 10\\.0 °C or"
                                + " below\\); relative humidity over water 80 to 100 % \\(rule: 80"
                                + " % or above\\)");
    }

    @Test
    @DisplayName("hold at the thresholds themselves: saturated air meets a rule of 100 %")
    void thresholdsIncluded() {
        IcingRule saturated = rule(40, 100);
        ClimbPath path = climb(new MoistStandardAir(h -> 1.0));
        assertThat(path.at(path.top()).air().relativeHumidity())
                .hasValue(RelativeHumidity.ofPercent(100));
        List<IcingSpan> spans = IcingSpan.along(path, saturated);
        assertThat(spans).hasSize(1);
        assertThat(spans.get(0).bottom()).isEqualTo(path.bottom());
        assertThat(spans.get(0).top()).isEqualTo(path.top());
    }

    @Test
    @DisplayName("are not lost between dry air and air whose humidity is not known")
    void middleKind() {
        MoistStandardAir air =
                new MoistStandardAir(h -> h < 5300.0 ? 0.1 : h < 5700.0 ? 1.0 : Double.NaN);
        List<IcingSpan> spans = IcingSpan.along(climb(air), RULE);
        assertThat(spans).hasSize(2);
        assertThat(spans.get(0).answer()).isEqualTo(IcingAnswer.CONDITIONS);
        assertThat(spans.get(0).bottom().inMetres()).isCloseTo(5300.0, within(2e-3));
        assertThat(spans.get(0).top().inMetres()).isCloseTo(5700.0, within(2e-3));
        assertThat(spans.get(1).answer()).isEqualTo(IcingAnswer.NOT_KNOWN);
    }

    @Test
    @DisplayName("cannot be told in air of one's own that tells no humidity")
    void ownAir() {
        Atmosphere own =
                Atmosphere.of(
                        p -> StandardAir.temperatureFromPressure(p) - 5.0,
                        AltitudeDatum.onQnh(AltimeterSetting.standard()));
        assertThat(IcingSpan.along(climb(own), RULE))
                .isNotEmpty()
                .allMatch(span -> span.answer() == IcingAnswer.NOT_KNOWN);
    }

    @Test
    @DisplayName("are none in dry air, and none in air that is too warm")
    void none() {
        assertThat(IcingSpan.along(climb(new MoistStandardAir(h -> 0.5)), RULE)).isEmpty();
        IcingRule never = rule(-90, 80);
        assertThat(IcingSpan.along(climb(new MoistStandardAir(h -> 1.0)), never)).isEmpty();
    }

    @Test
    @DisplayName("cover the whole climb when it is cold and moist from the start")
    void wholeClimb() {
        IcingRule always = rule(40, 80);
        ClimbPath path = climb(new MoistStandardAir(h -> 1.0));
        List<IcingSpan> spans = IcingSpan.along(path, always);
        assertThat(spans).hasSize(1);
        assertThat(spans.get(0).bottom()).isEqualTo(path.bottom());
        assertThat(spans.get(0).top()).isEqualTo(path.top());
    }

    @Nested
    @DisplayName("where humidity is not known")
    class WhereHumidityIsNotKnown {
        @Test
        @DisplayName("cannot be told: a span of its own from where it is cold enough, never none")
        void cannotTell() {
            List<IcingSpan> spans =
                    IcingSpan.along(climb(new MoistStandardAir(h -> Double.NaN)), RULE);
            assertThat(spans).allMatch(span -> span.answer() == IcingAnswer.NOT_KNOWN);
            assertThat(spans.get(0).entry().totalAirTemperature().inCelsius())
                    .isCloseTo(10.0, within(1e-5));
            assertThat(spans.get(0).reason())
                    .endsWith("humidity is not known, and so moisture is not");
        }

        @Test
        @DisplayName("pass into conditions where the humidity becomes known")
        void becomesKnown() {
            double edge = 6000.0;
            MoistStandardAir air =
                    new MoistStandardAir(h -> h < edge ? 1.0 : Double.NaN, List.of(edge));
            List<IcingSpan> spans = IcingSpan.along(climb(air), RULE);
            IcingSpan last = spans.get(spans.size() - 1);
            IcingSpan before = spans.get(spans.size() - 2);
            assertThat(before.answer()).isEqualTo(IcingAnswer.CONDITIONS);
            assertThat(last.answer()).isEqualTo(IcingAnswer.NOT_KNOWN);
            assertThat(before.top()).isEqualTo(last.bottom());
            assertThat(last.bottom().inMetres()).isCloseTo(edge, within(1e-6));
        }
    }

    @Test
    @DisplayName("are found also in air that does not say where its humidity ends")
    void noBends() {
        MoistStandardAir air = new MoistStandardAir(h -> h < 6000.0 ? 1.0 : Double.NaN);
        List<IcingSpan> spans = IcingSpan.along(climb(air), RULE);
        IcingSpan last = spans.get(spans.size() - 1);
        assertThat(last.answer()).isEqualTo(IcingAnswer.NOT_KNOWN);
        assertThat(last.bottom().inMetres()).isCloseTo(6000.0, within(1e-3));
    }

    @Nested
    @DisplayName("give the point for protection")
    class GiveThePoint {
        @Test
        @DisplayName("as long before the entry as the lead")
        void lead() {
            ClimbPath path = climb(new MoistStandardAir(h -> 1.0));
            IcingSpan span = IcingSpan.along(path, RULE).get(0);
            ClimbState onBy = span.onBy(path, Duration.ofSeconds(60)).orElseThrow();
            assertThat(span.entry().timeS() - onBy.timeS()).isCloseTo(60.0, within(1e-6));
            // 60 s at 1,500 ft/min
            assertThat(span.bottom().minus(onBy.pressureAltitude()).inFeet())
                    .isCloseTo(1500.0, within(1e-3));
        }

        @Test
        @DisplayName("as none when it lies before the climb")
        void beforeTheClimb() {
            ClimbPath path = climb(new MoistStandardAir(h -> 1.0));
            IcingSpan span = IcingSpan.along(path, RULE).get(0);
            assertThat(span.onBy(path, Duration.ofHours(1))).isEmpty();
        }
    }

    @Test
    @DisplayName("need a humidity in the rule that not all air has")
    void rule() {
        RelativeHumidity none = RelativeHumidity.ofPercent(0);
        assertThatThrownBy(() -> VisibleMoisture.ofRelativeHumidity(none))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "least relative humidity must be above 0.0 %, which all air has, but was"
                                + " 0.0 (0.0 %)");
    }

    private static ClimbPath climb(Atmosphere air) {
        return Scene.path(Scene.constantRate(1500), air, Winds.calm());
    }

    private static AltitudeChange oneFoot() {
        return AltitudeChange.ofFeet(1);
    }
}
