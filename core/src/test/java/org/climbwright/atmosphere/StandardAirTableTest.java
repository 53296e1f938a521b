package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Two tables of one form: one counts in whole metres, the other in whole feet. */
@DisplayName("Standard air, against 50-digit arithmetic")
class StandardAirTableTest {
    /** What the table of density ratios is taken against: the rounded density at sea level. */
    private static final double ROUNDED_DENSITY = 1.225;

    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(
            resources = {
                "/atmosphere/standard-air-metres.csv",
                "/atmosphere/standard-air-feet.csv"
            },
            useHeadersInDisplayName = true)
    @DisplayName("has every quantity of the table, and the altitude back from it")
    void agreesWithTheTable(
            String feet,
            String metres,
            String geometric,
            String kelvin,
            String pascal,
            String inchesOfMercury,
            String density,
            String sound,
            String soundKnots,
            String viscosity,
            String kinematic,
            String conductivity,
            String theta,
            String delta,
            String sigma,
            String gravity) {
        double h = Double.parseDouble(metres);
        double p = StandardAir.pressureFromAltitude(h);
        double t = StandardAir.temperatureFromAltitude(h);
        double rho = StandardAir.densityFromAltitude(h);
        assertThat(t).is(computedAs(kelvin, 17));
        assertThat(p).is(computedAs(pascal, 17));
        assertThat(UnitScale.INCH_OF_MERCURY.fromSi(p)).is(computedAs(inchesOfMercury, 14));
        assertThat(rho).is(computedAs(density, 17));
        assertThat(DryAir.density(p, t)).is(computedAs(density, 17));
        assertThat(DryAir.speedOfSound(t)).is(computedAs(sound, 17));
        assertThat(UnitScale.KNOT.fromSi(DryAir.speedOfSound(t))).is(computedAs(soundKnots, 14));
        assertThat(DryAir.dynamicViscosity(t)).is(computedAs(viscosity, 17));
        assertThat(DryAir.kinematicViscosity(p, t)).is(computedAs(kinematic, 17));
        assertThat(DryAir.thermalConductivity(t)).is(computedAs(conductivity, 12));
        assertThat(StandardAir.temperatureRatioFromAltitude(h)).is(computedAs(theta, 15));
        assertThat(StandardAir.pressureRatioFromAltitude(h)).is(computedAs(delta, 15));
        assertThat(rho / ROUNDED_DENSITY).is(computedAs(sigma, 15));
        // ours is against the density that follows from the constants, 1.5e-8 more
        assertThat(StandardAir.densityRatioFromAltitude(h) * 1.225000018124288 / ROUNDED_DENSITY)
                .is(computedAs(sigma, 15));

        double z = Geopotential.geometricFromGeopotential(h);
        assertThat(z).is(computedAs(geometric, 14));
        assertThat(Geopotential.geopotentialFromGeometric(Double.parseDouble(geometric)))
                .is(closeTo(metres, 1e-9));
        assertThat(Geopotential.gravity(z)).is(computedAs(gravity, 12));

        // at both ends of the model the table's value may be a bit beyond ours, which is the bound
        boolean end = h == -5000.0 || h == 80000.0;
        double tablePressure = end ? p : Double.parseDouble(pascal);
        double tableDensity = end ? rho : Double.parseDouble(density);
        // 1e-9 m is the accuracy that both inverses state
        assertThat(StandardAir.altitudeFromPressure(tablePressure)).is(closeTo(metres, 1e-9));
        assertThat(StandardAir.altitudeFromDensity(tableDensity)).is(closeTo(metres, 1e-9));
        assertThat(StandardAir.temperatureFromPressure(tablePressure)).is(computedAs(kelvin, 17));
        assertThat(UnitScale.FOOT.fromSi(h)).is(computedAs(feet, 14));
    }

    @Test
    @DisplayName("is compared in 58 rows of whole metres and 79 rows of whole feet")
    void rows() {
        assertThat(Table.rows("/atmosphere/standard-air-metres.csv")).hasSize(58);
        assertThat(Table.rows("/atmosphere/standard-air-feet.csv")).hasSize(79);
    }
}
