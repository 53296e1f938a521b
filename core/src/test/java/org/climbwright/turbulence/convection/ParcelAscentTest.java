package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.sounding.Soundings;
import org.climbwright.turbulence.Answer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A parcel of air that is lifted")
class ParcelAscentTest {
    private static final InventedAir AIR = new InventedAir(18.0, 0.7);

    @Test
    @DisplayName("is not known where its humidity is not")
    void parcelWithoutHumidity() {
        Atmosphere dry = Atmosphere.of(p -> 280.0, AltitudeDatum.standard());
        Answer<AirState> surface = Parcels.surface(dry);
        assertThat(surface.isKnown()).isFalse();
        assertThat(surface.reason().orElseThrow()).startsWith("the humidity is not known at ");
        AirState parcel = AIR.at(StaticPressure.ofPascals(90000.0)).withoutVapour();
        assertThat(ParcelAscent.of(AIR, parcel).reason().orElseThrow())
                .startsWith("the parcel has no condensation level");
        AirState unknown = AirState.of(parcel.staticPressure(), parcel.staticAirTemperature());
        assertThat(ParcelAscent.of(AIR, unknown).reason().orElseThrow())
                .startsWith("the humidity of the parcel at ");
        assertThat(Parcels.mixedLayer(dry, 5000.0).reason().orElseThrow())
                .matches("the humidity is not known all the way from \\d+\\.\\d to \\d+\\.\\d hPa");
        assertThat(Parcels.mostUnstable(dry, 5000.0).isKnown()).isFalse();
    }

    @Test
    @DisplayName("is not known where the air's humidity is not, unless it is too cold to matter")
    void airWithoutHumidity() {
        InventedAir low = new InventedAir(18.0, 0.7, 70000.0, 10000.0);
        Answer<ParcelAscent> answer = surfaceAscent(low);
        assertThat(answer.isKnown()).isFalse();
        assertThat(answer.reason().orElseThrow())
                .isEqualTo("the humidity of the air is not known at 700.0 hPa, where it matters");
        InventedAir high = new InventedAir(18.0, 0.7, 30000.0, 6000.0);
        assertThat(surfaceAscent(high).orElseThrow().energyJPerKg())
                .isCloseTo(
                        surfaceAscent(AIR).orElseThrow().energyJPerKg(),
                        within(5.0)); // dry there instead of 5 % humid
    }

    @Test
    @DisplayName("has no energy for certain where it would not rise even in air taken as dry")
    void stableAirWithoutHumidity() {
        InventedAir stable = new InventedAir(0.0, 0.2, 90000.0, 10000.0);
        ParcelAscent ascent = surfaceAscent(stable).orElseThrow();
        assertThat(ascent.energyJPerKg()).isZero();
        assertThat(ascent.levelOfFreeConvection()).isEmpty();
        assertThat(ascent.inhibitionJPerKg()).isEmpty();
        assertThat(ascent.updraftBound().orElseThrow().atMostInMetresPerSecond()).isZero();
        assertThat(ascent.cloud().reason().orElseThrow())
                .matches("the parcel rises by itself nowhere up to \\d+\\.\\d hPa");
    }

    @Test
    @DisplayName("may be so cold that it is not followed beyond its start")
    void coldParcel() {
        AirState cold = AirState.ofSi(50000.0, 149.0, 1e-6, Double.NaN);
        ParcelAscent ascent = ParcelAscent.of(AIR, cold).orElseThrow();
        assertThat(ascent.energyJPerKg()).isZero();
        assertThat(ascent.isEnergyComplete()).isTrue();
    }

    @Test
    @DisplayName("starts at the surface of the caller's, where air is known below it too")
    void surfaceOfTheCallers() {
        StaticPressure surface = StaticPressure.ofPascals(90000.0);
        assertThat(Parcels.surface(AIR, surface).orElseThrow().pressurePa()).isEqualTo(90000.0);
        assertThat(Parcels.mixedLayer(AIR, surface, 5000.0).orElseThrow().pressurePa())
                .isEqualTo(90000.0);
        assertThat(Parcels.mostUnstable(AIR, surface, 5000.0).orElseThrow().pressurePa())
                .isBetween(85000.0, 90000.0);
        StaticPressure below = StaticPressure.ofPascals(100001.0);
        assertThat(Parcels.surface(AIR, below).reason().orElseThrow())
                .startsWith("the air is not known at the surface, ");
        assertThat(Parcels.mixedLayer(AIR, below, 5000.0).isKnown()).isFalse();
        assertThat(Parcels.mostUnstable(AIR, below, 5000.0).isKnown()).isFalse();
        assertThat(
                        Parcels.surface(Atmosphere.standard(), surface)
                                .then(p -> ParcelAscent.of(AIR, p)))
                .satisfies(
                        answer ->
                                assertThat(answer.reason().orElseThrow())
                                        .startsWith("the parcel has no condensation level"));
    }

    @Test
    @DisplayName("has an energy that is a lower bound where the air ends while it still rises")
    void airThatEnds() {
        ParcelAscent cut = surfaceAscent(new InventedAir(18.0, 0.7, 0.0, 50000.0)).orElseThrow();
        ParcelAscent whole = surfaceAscent(AIR).orElseThrow();
        assertThat(cut.isEnergyComplete()).isFalse();
        assertThat(whole.isEnergyComplete()).isTrue();
        assertThat(cut.energyJPerKg()).isBetween(1.0, whole.energyJPerKg());
        assertThat(cut.equilibriumLevel().reason().orElseThrow())
                .isEqualTo("the parcel still rises by itself at 500.0 hPa, the top");
        assertThat(cut.updraftBound().isKnown()).isFalse();
        assertThat(cut.cloud().isKnown()).isFalse();
        assertThat(cut).asString().contains("at least");
        assertThat(surfaceAscent(new InventedAir(18.0, 0.7, 0.0, 98000.0)).reason().orElseThrow())
                .startsWith("the air is not known at the condensation level");
    }

    @Test
    @DisplayName("is cooler from a mixed layer, whose mixing ratio is the mean")
    void mixedLayer() {
        AirState mixed = Parcels.mixedLayer(AIR, 10000.0).orElseThrow();
        AirState surface = Parcels.surface(AIR).orElseThrow();
        assertThat(mixed.pressurePa()).isEqualTo(InventedAir.SURFACE_PA);
        assertThat(mixed.vapourPressurePa()).isLessThan(surface.vapourPressurePa());
        double sum = 0.0;
        int n = 10000;
        for (int i = 0; i < n; i++) { // the midpoint rule, by mass
            double p = 100000.0 - 10000.0 * (i + 0.5) / n;
            sum += MoistAir.mixingRatio(AIR.vapourPressure(p), p);
        }
        assertThat(MoistAir.mixingRatio(mixed.vapourPressurePa(), mixed.pressurePa()))
                .isCloseTo(sum / n, within(1e-9));
        assertThat(Parcels.mixedLayer(new InventedAir(0.0, 0.5, 0.0, 95000.0), 6000.0).isKnown())
                .isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Parcels.mixedLayer(AIR, 0.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Parcels.mostUnstable(AIR, 50000.0));
    }

    /**
     * Recorded at Norman before a day of storms: warm and very moist below, a lid of warm air
     * above, with much energy beyond it.
     */
    @Test
    @DisplayName("has to be lifted through the lid of a capped sounding before it rises by itself")
    void cappedSounding() {
        Atmosphere air = Soundings.profile("w72357_oun_20110522_capped").atmosphere();
        ParcelAscent ascent = surfaceAscent(air).orElseThrow();
        assertThat(ascent.inhibitionJPerKg().orElseThrow()).isGreaterThan(20.0);
        assertThat(ascent.levelOfFreeConvection().orElseThrow().pressurePa())
                .isLessThan(ascent.condensationLevel().pressure().inPascals() - 10000.0);
        double mixed =
                Parcels.mixedLayer(air, 10000.0)
                        .then(parcel -> ParcelAscent.of(air, parcel))
                        .orElseThrow()
                        .energyJPerKg();
        double most =
                Parcels.mostUnstable(air, 30000.0)
                        .then(parcel -> ParcelAscent.of(air, parcel))
                        .orElseThrow()
                        .energyJPerKg();
        assertThat(most).isGreaterThanOrEqualTo(ascent.energyJPerKg() - 1.0);
        assertThat(mixed).isLessThan(most);
    }

    /** Half the step changes little: the accuracy that the Javadoc states. */
    @Test
    @DisplayName("has the same energy by a finer sum of its own")
    void finerSum() {
        ParcelAscent ascent = surfaceAscent(AIR).orElseThrow();
        Lift lift = Lift.of(ascent.condensationLevel());
        double from = StrictMath.log(lift.levelPa());
        double to = StrictMath.log(6000.0);
        int n = 4000;
        double sum = 0.0;
        for (int i = 0; i < n; i++) {
            double p = StrictMath.exp(from + (to - from) * (i + 0.5) / n);
            double excess =
                    lift.virtualTemperature(lift.temperature(p), p)
                            - AIR.at(StaticPressure.ofPascals(p)).virtualTemperatureK();
            sum += Math.max(0.0, excess) * (from - to) / n;
        }
        assertThat(ascent.energyJPerKg()).isCloseTo(287.05287 * sum, within(1.0));
    }

    private static Answer<ParcelAscent> surfaceAscent(Atmosphere air) {
        return Parcels.surface(air).then(parcel -> ParcelAscent.of(air, parcel));
    }
}
