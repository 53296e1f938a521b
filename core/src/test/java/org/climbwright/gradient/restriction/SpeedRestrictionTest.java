package org.climbwright.gradient.restriction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.gradient.restriction.PublishedSpeedLimits.AirspaceClass;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Scene;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A restriction of the speed")
class SpeedRestrictionTest {
    private static final AltimeterSetting STANDARD = AltimeterSetting.standard();

    @ParameterizedTest(name = "{0}: {1}, {2} {3}")
    @CsvFileSource(resources = "/gradient/speed-rules.csv", numLinesToSkip = 1)
    @DisplayName("has the published figure")
    void published(
            String id, String rule, String value, String unit, String condition, String source) {
        assertThat(source).isNotBlank();
        SpeedRestriction ours =
                switch (id) {
                    case "L09" -> PublishedSpeedLimits.belowTenThousandFeet();
                    case "L10" ->
                            PublishedSpeedLimits.nearPrimaryAerodrome(AltitudeOnQnh.ofFeet(0));
                    default -> PublishedSpeedLimits.beneathClassB();
                };
        if (unit != null && unit.equals("KIAS")) {
            assertThat(ours.highest().inKnots()).isEqualTo(Double.parseDouble(value));
        } else {
            assertThat(id).isIn("L12", "L13"); // rules in words, said below
        }
    }

    @Test
    @DisplayName("below 10,000 ft does not hold at it; at or below 2,500 ft above the surface does")
    void edges() {
        SpeedRestriction below = PublishedSpeedLimits.belowTenThousandFeet();
        SpeedRestriction upTo =
                PublishedSpeedLimits.nearPrimaryAerodrome(AltitudeOnQnh.ofFeet(600));
        for (double hectopascals : new double[] {1013.25, 1003, 1030}) {
            AltimeterSetting qnh = AltimeterSetting.ofHectopascals(hectopascals);
            assertThat(below.appliesAt(onQnh(9999, qnh), qnh)).isTrue();
            assertThat(below.appliesAt(onQnh(10000, qnh), qnh)).isFalse();
            assertThat(below.appliesAt(onQnh(10001, qnh), qnh)).isFalse();
            assertThat(upTo.appliesAt(onQnh(3099, qnh), qnh)).isTrue();
            assertThat(upTo.appliesAt(onQnh(3100, qnh), qnh)).isTrue();
            assertThat(upTo.appliesAt(onQnh(3101, qnh), qnh)).isFalse();
        }
        assertThat(PublishedSpeedLimits.beneathClassB().appliesAt(onQnh(9000, STANDARD), STANDARD))
                .isTrue();
        assertThat(below.margin(CalibratedAirspeed.ofKnots(250)).inKnots()).isZero();
        assertThat(below.margin(CalibratedAirspeed.ofKnots(251)).inKnots())
                .isCloseTo(-1.0, within(1e-9));
    }

    private static PressureAltitude onQnh(double feet, AltimeterSetting qnh) {
        return Level.of(AltitudeOnQnh.ofFeet(feet)).pressureAltitude(qnh);
    }

    @Test
    @DisplayName("gives way to a minimum safe airspeed that is higher, not to a lower one")
    void minimumSafe() {
        SpeedRestriction limit = PublishedSpeedLimits.belowTenThousandFeet();
        assertThat(limit.orMinimumSafe(CalibratedAirspeed.ofKnots(265)).highest().inKnots())
                .isEqualTo(265.0);
        assertThat(limit.orMinimumSafe(CalibratedAirspeed.ofKnots(210))).isEqualTo(limit);
    }

    @Test
    @DisplayName("of ICAO is for visual flight in C to G and instrument flight in D to G")
    void icao() {
        String visual = "";
        String instrument = "";
        for (AirspaceClass airspace : AirspaceClass.values()) {
            visual += PublishedSpeedLimits.icaoAppliesTo(airspace, false) ? airspace : "";
            instrument += PublishedSpeedLimits.icaoAppliesTo(airspace, true) ? airspace : "";
        }
        assertThat(visual).isEqualTo("CDEFG");
        assertThat(instrument).isEqualTo("DEFG");
    }

    @Test
    @DisplayName("is met all along a climb at 250 kn to FL100, but not where the QNH is low")
    void alongAClimb() {
        ClimbPath path = Scene.calmStandardClimb(); // 250 kn to FL100, then 290 kn
        SpeedRestriction limit = PublishedSpeedLimits.belowTenThousandFeet();
        assertThat(limit.leastMargin(path, STANDARD).orElseThrow().inKnots()).isZero();
        // on QNH 1003 the altitude of 10,000 ft is at FL103, and the climb is at 290 kn by then
        assertThat(
                        limit.leastMargin(path, AltimeterSetting.ofHectopascals(1003))
                                .orElseThrow()
                                .inKnots())
                .isCloseTo(-40.0, within(1e-9));
        assertThat(
                        limit.leastMargin(path, AltimeterSetting.ofHectopascals(1030))
                                .orElseThrow()
                                .inKnots())
                .isZero();
        SpeedRestriction never =
                SpeedRestriction.below(AltitudeOnQnh.ofFeet(900), CalibratedAirspeed.ofKnots(1));
        assertThat(never.leastMargin(path, STANDARD)).isEmpty();
        ClimbPath low =
                Scene.climb(Scene.constantRate(1500), Atmosphere.standard(), Winds.calm())
                        .between(PressureAltitude.ofFeet(1000), PressureAltitude.ofFeet(5000));
        assertThat(limit.leastMargin(low, STANDARD).orElseThrow().inKnots()).isZero();
    }

    @Test
    @DisplayName("refuses a speed that is none")
    void refuses() {
        SpeedRestriction limit = PublishedSpeedLimits.belowTenThousandFeet();
        for (double each : new double[] {Double.NaN, -1.0, 2000.0}) {
            assertThat(SpeedRestriction.coversMargin(each)).isFalse();
            assertThatThrownBy(() -> limit.margin(each))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("calibrated airspeed");
        }
    }
}
