package org.climbwright.icing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Scene;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;

@Label("Icing conditions")
class IcingPropertyTest {
    private static final AltitudeChange FOOT = AltitudeChange.ofFeet(1);

    private static ClimbState point(double kelvins, double humidity) {
        AirState air =
                AirState.of(
                                StaticPressure.ofPascals(60000.0),
                                StaticAirTemperature.ofKelvins(kelvins))
                        .withRelativeHumidity(RelativeHumidity.ofRatio(humidity));
        CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(280);
        double mach = Airspeeds.from(cas, air).mach().number();
        return ClimbState.ofSi(
                air,
                4200.0,
                cas.inMetresPerSecond(),
                mach,
                10.0,
                50000.0,
                Double.NaN,
                Double.NaN,
                0.0,
                0.0);
    }

    @Property
    @Label("never end by getting colder, while it is warmer than the cold end of the rule")
    void colderStays(
            @ForAll @DoubleRange(min = 233.15, max = 300.0) double kelvins,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double share,
            @ForAll @DoubleRange(min = 0.81, max = 1.0) double humidity) {
        VisibleMoisture moisture =
                VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80));
        double colder = 233.15 + share * (kelvins - 233.15);
        for (IcingRule rule : List.of(IcingRule.engine(moisture), IcingRule.airframe(moisture))) {
            if (rule.at(point(kelvins, humidity)) == IcingAnswer.CONDITIONS) {
                assertThat(rule.at(point(colder, humidity))).isEqualTo(IcingAnswer.CONDITIONS);
            }
        }
    }

    @Property(tries = 60)
    @Label("begin and end within a foot of where a threshold is met")
    void endsAtThresholds(
            @ForAll @DoubleRange(min = -30.0, max = 15.0) double warmest,
            @ForAll @DoubleRange(min = 0.5, max = 0.95) double least,
            @ForAll @DoubleRange(min = 2000.0, max = 9000.0) double middleM,
            @ForAll @DoubleRange(min = 300.0, max = 3000.0) double depthM) {
        MoistStandardAir air =
                new MoistStandardAir(
                        h -> Math.max(0.05, 1.0 - Math.abs(h - middleM) / depthM),
                        List.of(middleM - depthM, middleM, middleM + depthM));
        ClimbPath path = Scene.path(Scene.constantRate(1500), air, Winds.calm());
        IcingRule rule =
                IcingRule.engine(
                                VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofRatio(least)))
                        .withWarmestTotal(TotalAirTemperature.ofCelsius(warmest));
        for (IcingSpan span : IcingSpan.along(path, rule)) {
            if (span.bottom().minus(FOOT).compareTo(path.bottom()) > 0) {
                assertThat(rule.at(path.at(span.bottom().minus(FOOT)))).isNotEqualTo(span.answer());
            }
            if (span.depth().compareTo(AltitudeChange.ofFeet(2)) > 0) {
                assertThat(rule.at(path.at(span.bottom().plus(FOOT)))).isEqualTo(span.answer());
                assertThat(rule.at(path.at(span.top().minus(FOOT)))).isEqualTo(span.answer());
            }
            if (span.top().plus(FOOT).compareTo(path.top()) < 0) {
                assertThat(rule.at(path.at(span.top().plus(FOOT)))).isNotEqualTo(span.answer());
            }
            assertThat(span.duration().toNanos() / 1e9)
                    .isCloseTo(span.depth().inFeet() / 25.0, within(1e-3));
        }
    }
}
