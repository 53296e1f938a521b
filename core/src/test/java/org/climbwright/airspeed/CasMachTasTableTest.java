package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A calibrated airspeed in standard air")
class CasMachTasTableTest {
    @ParameterizedTest(name = "{1} at {0}")
    @CsvFileSource(resources = "/airspeed/cas-mach-tas.csv", useHeadersInDisplayName = true)
    @DisplayName(
            "is every other speed of the table, in 50-digit arithmetic, and comes back from it")
    void agreesWithTheTable(
            double feet,
            String casKnots,
            String mach,
            String easKnots,
            String casMinusEasKnots,
            String tasKnots,
            String totalCelsius,
            String dynamicPascal) {
        AirState air = Atmosphere.standard().at(PressureAltitude.ofFeet(feet));
        Airspeeds speeds =
                Airspeeds.from(CalibratedAirspeed.ofKnots(Double.parseDouble(casKnots)), air);
        assertThat(speeds.mach().number()).is(computedAs(mach, 15));
        // knots by plain division: inKnots gives whole knots back as they came
        assertThat(knots(speeds.equivalentAirspeed().inMetresPerSecond()))
                .is(computedAs(easKnots, 14));
        // a difference of two speeds: 1e-15 of each, and its own last digit of ten
        assertThat(-knots(speeds.compressibilityCorrection().inMetresPerSecond()))
                .is(closeTo(casMinusEasKnots, 1e-14 * Double.parseDouble(casKnots) + 5e-9));
        assertThat(speeds.compressibilityFactor())
                .isCloseTo(
                        Double.parseDouble(easKnots) / Double.parseDouble(casKnots), within(1e-13));
        assertThat(knots(speeds.trueAirspeed().inMetresPerSecond())).is(computedAs(tasKnots, 14));
        // 12 digits, which below 10 °C are more than 1e-12 of the 200 to 360 K they are computed in
        assertThat(speeds.totalAirTemperature().inKelvins() - 273.15)
                .is(closeTo(totalCelsius, 5e-10));
        assertThat(speeds.dynamicPressure().inPascals()).is(computedAs(dynamicPascal, 12));

        assertThat(cas(Airspeeds.from(Mach.of(Double.parseDouble(mach)), air)))
                .is(computedAs(casKnots, 15));
        double eas = Double.parseDouble(easKnots);
        assertThat(cas(Airspeeds.from(EquivalentAirspeed.ofKnots(eas), air)))
                .is(computedAs(casKnots, 14));
        double tas = Double.parseDouble(tasKnots);
        assertThat(cas(Airspeeds.from(TrueAirspeed.ofKnots(tas), air)))
                .is(computedAs(casKnots, 14));
    }

    private static double cas(Airspeeds speeds) {
        return knots(speeds.calibratedAirspeed().inMetresPerSecond());
    }

    private static double knots(double metresPerSecond) {
        return metresPerSecond / UnitScale.KNOT.toSi(1.0);
    }

    @Test
    @DisplayName("is compared in 174 rows")
    void rows() {
        assertThat(Table.rows("/airspeed/cas-mach-tas.csv")).hasSize(174);
    }
}
