package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;

@Label("Standard air, over its whole range")
class StandardAirPropertyTest {
    private static final double[] BOUNDS = {
        -5000, 0, 11000, 20000, 32000, 47000, 51000, 71000, 80000
    };

    /** p0 / (R T0), and not the rounded 1.225. */
    private static final double SEA_LEVEL_DENSITY = 101325.0 / (287.05287 * 288.15);

    @Provide
    Arbitrary<Double> altitudes() {
        return Arbitraries.doubles()
                .between(-5000.0, 80000.0)
                .ofScale(9)
                .edgeCases(
                        edges -> {
                            for (double bound : BOUNDS) {
                                edges.add(bound);
                                edges.add(Math.max(-5000.0, Math.nextDown(bound)));
                                edges.add(Math.min(80000.0, Math.nextUp(bound)));
                            }
                        });
    }

    @Provide
    Arbitrary<Double> altitudesOutside() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().lessThan(-5000.0).ofScale(9),
                Arbitraries.doubles().greaterThan(80000.0).ofScale(9),
                Arbitraries.of(
                        Double.NaN,
                        Double.NEGATIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Math.nextDown(-5000.0),
                        Math.nextUp(80000.0)));
    }

    @Property
    @Label("the pressure of an altitude has that altitude")
    void altitudeComesBackFromPressure(@ForAll("altitudes") double altitudeM) {
        double back = StandardAir.altitudeFromPressure(StandardAir.pressureFromAltitude(altitudeM));
        // 4 ulp of an altitude of 80 km; seen: 2 ulp
        assertThat(back).isCloseTo(altitudeM, within(4 * Math.ulp(80000.0)));
    }

    @Property
    @Label("the altitude of a pressure has that pressure")
    void pressureComesBackFromAltitude(@ForAll("altitudes") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double altitude = StandardAir.altitudeFromPressure(p);
        if (StandardAir.coversAltitude(altitude)) { // at the ends it may come back one ulp outside
            // 20 ulp; seen: 10 ulp
            assertThat(StandardAir.pressureFromAltitude(altitude))
                    .isCloseTo(p, within(20 * Math.ulp(p)));
        }
    }

    @Property
    @Label("the density of an altitude has that altitude: density altitude is pressure altitude")
    void densityAltitudeIsPressureAltitude(@ForAll("altitudes") double altitudeM) {
        double rho = StandardAir.densityFromAltitude(altitudeM);
        // 4 ulp of an altitude of 80 km; seen: 2 ulp
        assertThat(StandardAir.altitudeFromDensity(rho))
                .isCloseTo(altitudeM, within(4 * Math.ulp(80000.0)));
    }

    @Property
    @Label("the temperature of an altitude is that of its pressure")
    void temperatureBothWays(@ForAll("altitudes") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        assertThat(StandardAir.temperatureFromPressure(p))
                .isCloseTo(StandardAir.temperatureFromAltitude(altitudeM), within(1e-12));
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    @Label("higher is less pressure and less density")
    void higherIsThinner(@ForAll("altitudes") double one, @ForAll("altitudes") double other) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (high - low > 1e-6) { // nearer than that a double may not tell the difference
            assertThat(StandardAir.pressureFromAltitude(high))
                    .isLessThan(StandardAir.pressureFromAltitude(low));
            assertThat(StandardAir.densityFromAltitude(high))
                    .isLessThan(StandardAir.densityFromAltitude(low));
        }
    }

    @Property
    @Label("one step of a double higher is never more pressure, nor the other way round")
    void adjacentDoubles(@ForAll("altitudes") double altitudeM) {
        double above = Math.min(80000.0, Math.nextUp(altitudeM));
        double p = StandardAir.pressureFromAltitude(altitudeM);
        assertThat(StandardAir.pressureFromAltitude(above)).isLessThanOrEqualTo(p);
        if (StandardAir.coversPressure(Math.nextUp(p))) {
            assertThat(StandardAir.altitudeFromPressure(Math.nextUp(p)))
                    .isLessThanOrEqualTo(StandardAir.altitudeFromPressure(p));
        }
    }

    @Property
    @Label("a whole number of feet is the same air as the metres of it")
    void feetAndMetres(@ForAll @IntRange(min = -16404, max = 262467) int feet) {
        AirState byFeet = Atmosphere.standard().at(PressureAltitude.ofFeet(feet));
        AirState byMetres = Atmosphere.standard().at(PressureAltitude.ofMetres(feet * 0.3048));
        assertThat(byFeet).isEqualTo(byMetres);
        assertThat(byFeet.pressureAltitude().inFeet()).isCloseTo(feet, within(1e-9));
    }

    @Property
    @Label("values and plain doubles get the same answer, to the last bit")
    void doorsAgree(@ForAll("altitudes") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        AirState air = Atmosphere.standard().at(PressureAltitude.ofMetres(altitudeM));
        assertThat(air.pressurePa()).isEqualTo(p);
        assertThat(air.staticPressure().inPascals()).isEqualTo(p);
        assertThat(air.temperatureK()).isEqualTo(StandardAir.temperatureFromPressure(p));
        assertThat(air.staticAirTemperature().inKelvins()).isEqualTo(air.temperatureK());
        assertThat(air.pressureAltitude().inMetres())
                .isEqualTo(StandardAir.altitudeFromPressure(p));
        assertThat(air.densityKgPerM3()).isEqualTo(DryAir.density(p, air.temperatureK()));
        assertThat(air.densityAltitude().inMetres())
                .isEqualTo(StandardAir.altitudeFromDensity(air.densityKgPerM3()));
        assertThat(air.speedOfSoundMps()).isEqualTo(DryAir.speedOfSound(air.temperatureK()));
        assertThat(air.dynamicViscosityPaS())
                .isEqualTo(DryAir.dynamicViscosity(air.temperatureK()));
        assertThat(air.kinematicViscosityM2PerS())
                .isEqualTo(DryAir.kinematicViscosity(p, air.temperatureK()));
        assertThat(air.thermalConductivityWPerMK())
                .isEqualTo(DryAir.thermalConductivity(air.temperatureK()));
        assertThat(air.temperatureRatio()).isEqualTo(air.temperatureK() / 288.15);
        assertThat(air.pressureRatio()).isEqualTo(StandardAir.pressureRatioFromAltitude(altitudeM));
        assertThat(air.densityRatio()).isEqualTo(air.densityKgPerM3() / SEA_LEVEL_DENSITY);
        double geometricM =
                Geopotential.geometricFromGeopotential(StandardAir.altitudeFromPressure(p));
        assertThat(air.gravityMps2()).hasValue(Geopotential.gravity(geometricM));
        assertThat(air.isaDeviation().inKelvins()).isZero();
        assertThat(VerticalRates.geopotentialPerPressureAltitude(air)).isEqualTo(1.0);
        assertThat(air.geopotentialAltitude())
                .contains(GeopotentialAltitude.ofMetres(StandardAir.altitudeFromPressure(p)));
        assertThat(Atmosphere.standard().at(StaticPressure.ofPascals(p))).isEqualTo(air);
    }

    @Property
    @Label("every answer inside is a finite, positive number")
    void finiteInside(@ForAll("altitudes") double altitudeM) {
        assertThat(StandardAir.coversAltitude(altitudeM)).isTrue();
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double rho = StandardAir.densityFromAltitude(altitudeM);
        assertThat(p).isPositive().isFinite();
        assertThat(rho).isPositive().isFinite();
        assertThat(StandardAir.coversPressure(p)).isTrue();
        assertThat(StandardAir.coversDensity(rho)).isTrue();
        assertThat(StandardAir.temperatureFromAltitude(altitudeM)).isBetween(186.0, 321.0);
        assertThat(StandardAir.temperatureRatioFromAltitude(altitudeM)).isPositive();
        assertThat(StandardAir.pressureRatioFromAltitude(altitudeM)).isEqualTo(p / 101325.0);
        assertThat(StandardAir.densityRatioFromAltitude(altitudeM)).isPositive().isFinite();
        assertThat(StandardAir.altitudeFromPressure(p)).isFinite();
        assertThat(StandardAir.altitudeFromDensity(rho)).isFinite();
    }

    @Property
    @Label("every question outside is refused")
    void refusedOutside(@ForAll("altitudesOutside") double altitudeM) {
        assertThat(StandardAir.coversAltitude(altitudeM)).isFalse();
        refused(() -> StandardAir.temperatureFromAltitude(altitudeM));
        refused(() -> StandardAir.pressureFromAltitude(altitudeM));
        refused(() -> StandardAir.densityFromAltitude(altitudeM));
        refused(() -> StandardAir.temperatureRatioFromAltitude(altitudeM));
        refused(() -> StandardAir.pressureRatioFromAltitude(altitudeM));
        refused(() -> StandardAir.densityRatioFromAltitude(altitudeM));
    }

    private static void refused(Runnable question) {
        assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question::run);
    }
}
