package org.climbwright.airspeed;

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
import org.assertj.core.data.Offset;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.ImpactPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.TrueAirspeed;

@Label("Airspeeds, over their whole range")
class AirspeedPropertyTest {
    /** A few ulp of what comes back: each way rounds five times or so. */
    private static Offset<Double> ulps(int n, double value) {
        return within(n * Math.ulp(value));
    }

    @Provide
    Arbitrary<Double> machs() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(0.0, 1.0).ofScale(12),
                Arbitraries.doubles().between(1.0, 5.0).ofScale(12),
                Arbitraries.doubles().between(-9.0, 0.0).ofScale(9).map(x -> Math.pow(10.0, x)));
    }

    /**
     * From the sea up, where no speed up to Mach 5 has a calibrated airspeed beyond that of Mach 5.
     */
    @Provide
    Arbitrary<Double> levels() {
        return Arbitraries.doubles().between(0.0, 25000.0).ofScale(6);
    }

    @Provide
    Arbitrary<Double> machsOutside() {
        return Arbitraries.of(
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                -1.0,
                -Double.MIN_VALUE,
                Math.nextUp(5.0),
                7.5,
                Double.MAX_VALUE,
                Double.POSITIVE_INFINITY);
    }

    @Property
    @Label("a Mach number comes back from the calibrated airspeed")
    void machAndCas(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double cas = AirspeedConversion.casFromMach(mach, p);
        assertThat(AirspeedConversion.coversCas(cas, p)).isTrue();
        assertThat(AirspeedConversion.machFromCas(cas, p)).isCloseTo(mach, ulps(8, mach));
    }

    @Property
    @Label("Mach 1 and Mach 5 themselves come back, from all of them")
    void machOneAndTheLast(@ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double t = StandardAir.temperatureFromAltitude(altitudeM);
        for (double mach : new double[] {1.0, 5.0}) {
            double tas = AirspeedConversion.tasFromMach(mach, t);
            double eas = AirspeedConversion.easFromMach(mach, p);
            double qc = AirspeedConversion.impactPressureFromMach(mach, p);
            double cas = AirspeedConversion.casFromMach(mach, p);
            assertThat(AirspeedConversion.machFromTas(tas, t)).isCloseTo(mach, ulps(4, mach));
            assertThat(AirspeedConversion.machFromEas(eas, p)).isCloseTo(mach, ulps(4, mach));
            assertThat(AirspeedConversion.machFromImpactPressure(qc, p))
                    .isCloseTo(mach, ulps(4, mach));
            assertThat(AirspeedConversion.machFromCas(cas, p)).isCloseTo(mach, ulps(8, mach));
        }
    }

    @Property
    @Label("a Mach number comes back from the impact pressure")
    void machAndImpactPressure(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double qc = AirspeedConversion.impactPressureFromMach(mach, p);
        double back = AirspeedConversion.machFromImpactPressure(qc, p);
        assertThat(back).isCloseTo(mach, ulps(8, mach));
    }

    @Property
    @Label("a Mach number comes back from equivalent and from true airspeed")
    void machAndEasAndTas(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double t = StandardAir.temperatureFromAltitude(altitudeM);
        double eas = AirspeedConversion.easFromMach(mach, p);
        assertThat(AirspeedConversion.machFromEas(eas, p)).isCloseTo(mach, ulps(4, mach));
        double tas = AirspeedConversion.tasFromMach(mach, t);
        assertThat(AirspeedConversion.machFromTas(tas, t)).isCloseTo(mach, ulps(4, mach));
    }

    @Property
    @Label("a calibrated airspeed comes back by way of every other speed")
    void aroundTheRoom(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        AirState air = Atmosphere.standard().at(PressureAltitude.ofMetres(altitudeM));
        Airspeeds first = Airspeeds.from(Mach.of(Math.min(mach, 4.999)), air);
        Airspeeds byCas = Airspeeds.from(first.calibratedAirspeed(), air);
        Airspeeds byEas = Airspeeds.from(byCas.equivalentAirspeed(), air);
        Airspeeds byTas = Airspeeds.from(byEas.trueAirspeed(), air);
        Airspeeds byQc = Airspeeds.from(byTas.impactPressure(), air);
        double cas = first.calibratedAirspeed().inMetresPerSecond();
        assertThat(byQc.calibratedAirspeed().inMetresPerSecond()).isCloseTo(cas, ulps(20, cas));
    }

    @Property(edgeCases = EdgeCasesMode.NONE)
    @Label("faster is more of everything")
    void faster(
            @ForAll("machs") double one,
            @ForAll("machs") double other,
            @ForAll("levels") double altitudeM) {
        double slow = Math.min(one, other);
        double fast = Math.max(one, other);
        double p = StandardAir.pressureFromAltitude(altitudeM);
        if (fast > slow * (1.0 + 1e-14)) { // nearer than that doubles may not tell
            assertThat(AirspeedConversion.impactPressureFromMach(fast, p))
                    .isGreaterThan(AirspeedConversion.impactPressureFromMach(slow, p));
            assertThat(AirspeedConversion.casFromMach(fast, p))
                    .isGreaterThan(AirspeedConversion.casFromMach(slow, p));
            assertThat(AirspeedConversion.easFromMach(fast, p))
                    .isGreaterThan(AirspeedConversion.easFromMach(slow, p));
            assertThat(AirspeedConversion.tasFromMach(fast, 250.0))
                    .isGreaterThan(AirspeedConversion.tasFromMach(slow, 250.0));
        }
    }

    @Property
    @Label("one step of a double faster is never a lower Mach number or impact pressure")
    void adjacentDoubles(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double cas = 0.999 * AirspeedConversion.casFromMach(mach, p);
        assertThat(AirspeedConversion.machFromCas(Math.nextUp(cas), p))
                .isGreaterThanOrEqualTo(AirspeedConversion.machFromCas(cas, p));
        assertThat(AirspeedConversion.impactPressureFromCas(Math.nextUp(cas)))
                .isGreaterThanOrEqualTo(AirspeedConversion.impactPressureFromCas(cas));
    }

    @Property
    @Label("in standard air at sea level calibrated, equivalent and true airspeed are one")
    void seaLevel(@ForAll("machs") double mach) {
        double tas = AirspeedConversion.tasFromMach(mach, 288.15);
        assertThat(AirspeedConversion.casFromMach(mach, 101325.0)).isCloseTo(tas, ulps(4, tas));
        assertThat(AirspeedConversion.easFromMach(mach, 101325.0)).isCloseTo(tas, ulps(2, tas));
        assertThat(AirspeedConversion.compressibilityCorrectionFromMach(mach, 101325.0))
                .isCloseTo(0.0, ulps(4, tas));
        assertThat(AirspeedConversion.compressibilityFactorFromMach(mach, 101325.0))
                .isCloseTo(1.0, ulps(4, 1.0));
    }

    @Property
    @Label("above sea level equivalent airspeed is no more than calibrated, nor that than true")
    void order(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double t = StandardAir.temperatureFromAltitude(altitudeM);
        double eas = AirspeedConversion.easFromMach(mach, p);
        double cas = AirspeedConversion.casFromMach(mach, p);
        double tas = AirspeedConversion.tasFromMach(mach, t);
        assertThat(eas).isLessThanOrEqualTo(cas + 4 * Math.ulp(cas));
        assertThat(cas).isLessThanOrEqualTo(tas + 4 * Math.ulp(tas));
    }

    @Property
    @Label("slow, all airspeeds obey the rule of incompressible flow: half rho V squared")
    void slow(@ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        double mach = 1e-4;
        double q = AirspeedConversion.dynamicPressureFromMach(mach, p);
        // impact pressure is q (1 + M² / 4 + ...)
        assertThat(AirspeedConversion.impactPressureFromMach(mach, p))
                .isCloseTo(q * (1.0 + 0.25e-8), within(1e-15 * q));
        double t = StandardAir.temperatureFromAltitude(altitudeM);
        double tas = AirspeedConversion.tasFromMach(mach, t);
        double rho = StandardAir.densityFromAltitude(altitudeM);
        assertThat(q).isCloseTo(0.5 * rho * tas * tas, within(1e-14 * q));
    }

    @Property
    @Label("values and plain doubles get the same answer, to the last bit")
    void doorsAgree(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        AirState air = Atmosphere.standard().at(PressureAltitude.ofMetres(altitudeM));
        double p = air.pressurePa();
        double t = air.temperatureK();
        Airspeeds speeds = Airspeeds.from(Mach.of(mach), air);
        double cas = AirspeedConversion.casFromMach(mach, p);
        double eas = AirspeedConversion.easFromMach(mach, p);
        double tas = AirspeedConversion.tasFromMach(mach, t);
        double qc = AirspeedConversion.impactPressureFromMach(mach, p);
        assertThat(speeds.mach().number()).isEqualTo(mach);
        assertThat(speeds.compressibilityCorrection().inMetresPerSecond())
                .isEqualTo(AirspeedConversion.compressibilityCorrectionFromMach(mach, p) + 0.0);
        assertThat(speeds.compressibilityFactor())
                .isEqualTo(AirspeedConversion.compressibilityFactorFromMach(mach, p));
        assertThat(speeds.calibratedAirspeed().inMetresPerSecond()).isEqualTo(cas);
        assertThat(speeds.equivalentAirspeed().inMetresPerSecond()).isEqualTo(eas);
        assertThat(speeds.trueAirspeed().inMetresPerSecond()).isEqualTo(tas);
        assertThat(speeds.impactPressure().inPascals()).isEqualTo(qc);
        assertThat(speeds.dynamicPressure().inPascals())
                .isEqualTo(AirspeedConversion.dynamicPressureFromMach(mach, p));
        assertThat(speeds.totalPressure().inPascals())
                .isEqualTo(AirspeedConversion.totalPressureFromMach(mach, p));
        assertThat(speeds.totalAirTemperature().inKelvins())
                .isEqualTo(TotalTemperature.fromMach(mach, t, 1.0));

        assertThat(machOf(Airspeeds.from(CalibratedAirspeed.ofMetresPerSecond(cas), air)))
                .isEqualTo(AirspeedConversion.machFromCas(cas, p));
        assertThat(machOf(Airspeeds.from(EquivalentAirspeed.ofMetresPerSecond(eas), air)))
                .isEqualTo(AirspeedConversion.machFromEas(eas, p));
        assertThat(machOf(Airspeeds.from(TrueAirspeed.ofMetresPerSecond(tas), air)))
                .isEqualTo(AirspeedConversion.machFromTas(tas, t));
        assertThat(machOf(Airspeeds.from(ImpactPressure.ofPascals(qc), air)))
                .isEqualTo(AirspeedConversion.machFromImpactPressure(qc, p));
    }

    private static double machOf(Airspeeds speeds) {
        return speeds.mach().number();
    }

    @Property
    @Label("every answer inside is a finite number, and not below zero")
    void finiteInside(@ForAll("machs") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        assertThat(AirspeedConversion.coversMach(mach)).isTrue();
        for (double answer :
                new double[] {
                    AirspeedConversion.casFromMach(mach, p),
                    AirspeedConversion.easFromMach(mach, p),
                    AirspeedConversion.tasFromMach(mach, 250.0),
                    AirspeedConversion.impactPressureFromMach(mach, p),
                    AirspeedConversion.dynamicPressureFromMach(mach, p),
                    AirspeedConversion.totalPressureFromMach(mach, p),
                    TotalTemperature.fromMach(mach, 250.0, 0.95)
                }) {
            assertThat(answer).isFinite().isNotNegative();
        }
    }

    @Property
    @Label("every Mach number outside is refused")
    void refusedOutside(@ForAll("machsOutside") double mach) {
        assertThat(AirspeedConversion.coversMach(mach)).isFalse();
        refused(() -> AirspeedConversion.casFromMach(mach, 50000.0));
        refused(() -> AirspeedConversion.easFromMach(mach, 50000.0));
        refused(() -> AirspeedConversion.tasFromMach(mach, 250.0));
        refused(() -> AirspeedConversion.impactPressureFromMach(mach, 50000.0));
        refused(() -> AirspeedConversion.dynamicPressureFromMach(mach, 50000.0));
        refused(() -> AirspeedConversion.totalPressureFromMach(mach, 50000.0));
        refused(() -> AirspeedConversion.crossoverPressure(150.0, mach));
    }

    @Property
    @Label("every speed that would be outside is refused")
    void speedsRefusedOutside(
            @ForAll("machsOutside") double mach, @ForAll("levels") double altitudeM) {
        double p = StandardAir.pressureFromAltitude(altitudeM);
        // a thousandth more than Mach 5 at least; and the smallest below zero is told as -1
        double atLeast = mach > 1.0 ? Math.max(1.001, mach / 5.0) : mach;
        double factor = atLeast == -Double.MIN_VALUE ? -1.0 : atLeast;
        double cas = factor * AirspeedConversion.casFromMach(5.0, p);
        assertThat(AirspeedConversion.coversCas(cas, p)).isFalse();
        refused(() -> AirspeedConversion.machFromCas(cas, p));
        refused(() -> AirspeedConversion.machFromEas(factor * 1701.5, p));
        refused(() -> AirspeedConversion.machFromTas(factor * 1701.5, 288.15));
        refused(() -> AirspeedConversion.machFromImpactPressure(factor * 31.6535 * p, p));
        refused(() -> AirspeedConversion.impactPressureFromCas(factor * 1701.5));
        refused(() -> AirspeedConversion.casFromImpactPressure(factor * 3207300.0));
    }

    private static void refused(Runnable question) {
        assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question::run);
    }
}
