package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;

@Label("A parcel lifted through any invented day")
class ParcelAscentPropertyTest {
    @Property(tries = 200)
    @Label("has an energy that is never negative, and grows when the parcel is warmer or moister")
    void energyGrows(
            @ForAll @DoubleRange(min = 0.0, max = 15.0) double warmerK,
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double humidity,
            @ForAll @DoubleRange(min = 0.1, max = 3.0) double moreK) {
        InventedAir air = new InventedAir(warmerK, humidity);
        AirState surface = Parcels.surface(air).orElseThrow();
        double before = energy(air, surface);
        assertThat(before).isGreaterThanOrEqualTo(0.0);
        AirState warmer =
                AirState.ofSi(
                        surface.pressurePa(),
                        surface.temperatureK() + moreK,
                        surface.vapourPressurePa(),
                        surface.geopotentialAltitude().orElseThrow().inMetres());
        AirState moister =
                AirState.ofSi(
                        surface.pressurePa(),
                        surface.temperatureK(),
                        surface.vapourPressurePa() * 1.05,
                        surface.geopotentialAltitude().orElseThrow().inMetres());
        // what the steps of the levels make of the same area
        double steps = 0.5;
        assertThat(energy(air, warmer)).isGreaterThanOrEqualTo(before - steps);
        assertThat(energy(air, moister)).isGreaterThanOrEqualTo(before - steps);
        if (before > 50.0) {
            assertThat(energy(air, warmer)).isGreaterThan(before);
            assertThat(energy(air, moister)).isGreaterThan(before);
        }
    }

    @Property(tries = 200)
    @Label("condenses below the level of free convection, and that is below the equilibrium level")
    void levelsAreInOrder(
            @ForAll @DoubleRange(min = 5.0, max = 15.0) double warmerK,
            @ForAll @DoubleRange(min = 0.4, max = 0.8) double humidity) {
        InventedAir air = new InventedAir(warmerK, humidity);
        ParcelAscent ascent = ascent(air, Parcels.surface(air).orElseThrow());
        double condensationPa = ascent.condensationLevel().pressure().inPascals();
        if (ascent.levelOfFreeConvection().isEmpty()) {
            assertThat(ascent.energyJPerKg()).isZero();
            assertThat(ascent.inhibitionJPerKg()).isEmpty();
            assertThat(ascent.cloud().isKnown()).isFalse();
            return;
        }
        double freePa = ascent.levelOfFreeConvection().orElseThrow().pressurePa();
        double equilibriumPa = ascent.equilibriumLevel().orElseThrow().pressurePa();
        assertThat(freePa).isBetween(equilibriumPa, condensationPa * (1.0 + 1e-12));
        assertThat(ascent.inhibitionJPerKg().orElseThrow()).isGreaterThanOrEqualTo(0.0);
        CloudSpan cloud = ascent.cloud().orElseThrow();
        assertThat(cloud.overlaps(PressureAltitude.ofMetres(-500.0), cloud.base())).isTrue();
        double bound = ascent.updraftBound().orElseThrow().atMostInMetresPerSecond();
        assertThat(0.5 * bound * bound).isCloseTo(ascent.energyJPerKg(), within(1e-9));
        // the parcel is as warm as the air at both levels
        Lift lift = Lift.of(ascent.condensationLevel());
        for (double pa : new double[] {freePa, equilibriumPa}) {
            if (pa < condensationPa * 0.999) {
                double parcelK = lift.virtualTemperature(lift.temperature(pa), pa);
                assertThat(parcelK).isCloseTo(virtual(air, pa), within(0.002));
            }
        }
    }

    @Property(tries = 100)
    @Label("is the most unstable of the layer: no level of it has more energy to speak of")
    void mostUnstable(
            @ForAll @DoubleRange(min = 5.0, max = 15.0) double warmerK,
            @ForAll @DoubleRange(min = 0.4, max = 0.8) double humidity,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double share) {
        InventedAir air = new InventedAir(warmerK, humidity);
        AirState best = Parcels.mostUnstable(air, 30000.0).orElseThrow();
        AirState other = air.at(StaticPressure.ofPascals(InventedAir.SURFACE_PA - 30000.0 * share));
        assertThat(energy(air, best)).isGreaterThanOrEqualTo(0.995 * energy(air, other) - 1.0);
    }

    private static double virtual(Atmosphere air, double pressurePa) {
        return air.at(StaticPressure.ofPascals(pressurePa)).virtualTemperatureK();
    }

    private static ParcelAscent ascent(Atmosphere air, AirState parcel) {
        return ParcelAscent.of(air, parcel).orElseThrow();
    }

    private static double energy(Atmosphere air, AirState parcel) {
        return ascent(air, parcel).energyJPerKg();
    }
}
