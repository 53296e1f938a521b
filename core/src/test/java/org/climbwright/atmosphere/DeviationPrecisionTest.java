package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.error;
import static org.climbwright.testing.Agreement.relativeError;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.testing.FiftyDigits;

/**
 * Holds the accuracy that {@link StandardAir#thicknessWithDeviation} and the two atmospheres of a
 * deviation state. They do better: over 1,500 random values the largest errors were 2.8e-11 m of a
 * thickness, 5.3e-11 m of an altitude, 7.3e-15 of a pressure and 1.2e-13 K.
 */
@Label("Air of a deviation, against the same formulas in 50 digits")
class DeviationPrecisionTest {
    private static final Offset<Double> THICKNESS = within(2e-10);
    private static final Offset<Double> METRES = within(1e-9);
    private static final Offset<Double> PRESSURE = within(1e-13);
    private static final Offset<Double> KELVIN = within(1e-12);

    @Provide
    Arbitrary<Double> altitudes() {
        return Arbitraries.doubles().between(-5000.0, 80000.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> deviations() {
        return Arbitraries.doubles().between(-90.0, 75.0).ofScale(9);
    }

    @Property(tries = 300)
    @Label("has the thickness of the hydrostatic equation")
    void thickness(
            @ForAll("altitudes") double one,
            @ForAll("altitudes") double other,
            @ForAll("deviations") double deviation) {
        double lower = StandardAir.pressureFromAltitude(one);
        double upper = StandardAir.pressureFromAltitude(other);
        assertThat(
                        error(
                                StandardAir.thicknessWithDeviation(lower, upper, deviation),
                                FiftyDigits.thickness(lower, upper, deviation)))
                .isCloseTo(0.0, THICKNESS);
    }

    @Property(tries = 300)
    @Label("at each pressure has the altitude of a pressure, and the pressure of that altitude")
    void atEachPressure(
            @ForAll("altitudes") double pressureAltitude, @ForAll("deviations") double deviation) {
        Atmosphere air = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviation));
        double pascal = StandardAir.pressureFromAltitude(pressureAltitude);
        double altitude = air.geopotentialAltitude(pascal);
        assertThat(error(altitude, FiftyDigits.thickness(101325.0, pascal, deviation)))
                .isCloseTo(0.0, METRES);
        // not the end itself, which the altitude may miss by its last bit
        double inside = Math.max(-4999.0, Math.min(79999.0, pressureAltitude));
        double wanted = air.geopotentialAltitude(StandardAir.pressureFromAltitude(inside));
        double back = air.pressureFromGeopotentialAltitude(wanted);
        assertThat(error(wanted, FiftyDigits.thickness(101325.0, back, deviation)))
                .isCloseTo(0.0, METRES);
    }

    @Property(tries = 300)
    @Label(
            "at each altitude has the pressure and temperature of an altitude, and the altitude"
                    + " back")
    void atEachAltitude(
            @ForAll("altitudes") double altitude, @ForAll("deviations") double deviation) {
        Atmosphere air =
                Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(deviation));
        FiftyDigits.Layers exact = FiftyDigits.warmerBy(deviation);
        double pascal = air.pressureFromGeopotentialAltitude(altitude);
        assertThat(relativeError(pascal, exact.pressure(altitude))).isCloseTo(0.0, PRESSURE);
        assertThat(error(air.geopotentialAltitude(pascal), exact.altitudeOfPressure(pascal)))
                .isCloseTo(0.0, METRES);
        assertThat(error(air.temperature(pascal), exact.temperature(altitude)))
                .isCloseTo(0.0, KELVIN);
    }
}
