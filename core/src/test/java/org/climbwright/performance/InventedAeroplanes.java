package org.climbwright.performance;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.performance.ceiling.BuffetTable;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;

/** Aeroplanes and winds that are nobody's, for tests. */
public final class InventedAeroplanes {
    /** Standard air without wind along a track to the east. */
    public static final ClimbAir CALM =
            ClimbAir.of(Atmosphere.standard(), Winds.calm(), TrueDirection.ofDegrees(90));

    private InventedAeroplanes() {}

    /** A parabolic polar, and thrust in proportion to the pressure; bleed and a stop cost some. */
    public static Aeroplane jet(
            int engines, double areaM2, double zeroLift, double induced, double thrustPerPa) {
        return Aeroplane.of(
                engines,
                (liftN, mach, q, use) ->
                        areaM2 * (zeroLift + 0.002 * (engines - use.operating())) * q
                                + induced * liftN * liftN / (areaM2 * q),
                (mach, pressurePa, temperatureK, use) ->
                        use.operating()
                                * thrustPerPa
                                * pressurePa
                                * (1.0
                                        - (use.bleed().ofEngine() ? 0.03 : 0.0)
                                        - (use.bleed().ofAirframe() ? 0.02 : 0.0)),
                (thrustN, mach, pressurePa, temperatureK, use) -> 1.6e-5 * thrustN);
    }

    /** A twin with limits. */
    public static Aeroplane twin() {
        return jet(2, 120.0, 0.02, 0.045, 1.0)
                .withLimits(
                        AeroplaneLimits.none()
                                .withCertifiedCeiling(PressureAltitude.ofFlightLevel(410))
                                .withMaximumOperatingSpeed(CalibratedAirspeed.ofKnots(350))
                                .withMaximumOperatingMach(Mach.of(0.82))
                                .withBuffetOnset(120.0, buffet()));
    }

    public static BuffetTable buffet() {
        return BuffetTable.of(
                List.of(
                        new BuffetTable.Row(Mach.of(0.1), 1.4),
                        new BuffetTable.Row(Mach.of(0.6), 1.1),
                        new BuffetTable.Row(Mach.of(0.75), 0.85),
                        new BuffetTable.Row(Mach.of(0.82), 0.6),
                        new BuffetTable.Row(Mach.of(0.9), 0.2)));
    }

    public static ClimbConditions conditions(ClimbAir air) {
        return ClimbConditions.of(twin(), air, Mass.ofKilograms(60000.0));
    }

    /** A wind from the west, linear in pressure altitude: from behind on a track to the east. */
    public static Winds tailwind(double groundMps, double perMetre) {
        return new Winds() {
            @Override
            public double eastward(double pressurePa) {
                return groundMps + perMetre * StandardAir.altitudeFromPressure(pressurePa);
            }

            @Override
            public double northward(double pressurePa) {
                return 0.0;
            }

            @Override
            public boolean covers(double pressurePa) {
                return true;
            }
        };
    }

    /** A wind that nobody knows. */
    public static Winds unknown() {
        return new Winds() {
            @Override
            public double eastward(double pressurePa) {
                return Double.NaN;
            }

            @Override
            public double northward(double pressurePa) {
                return Double.NaN;
            }

            @Override
            public boolean covers(double pressurePa) {
                return false;
            }
        };
    }

    public static ClimbAir air(double deviationK, Winds winds) {
        return ClimbAir.of(
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(deviationK)),
                winds,
                TrueDirection.ofDegrees(90));
    }

    /** Aeroplanes of many sizes and of modest thrust. */
    public static Arbitrary<Aeroplane> jets() {
        return Combinators.combine(
                        Arbitraries.doubles().between(20.0, 500.0).ofScale(6),
                        Arbitraries.doubles().between(0.015, 0.03).ofScale(6),
                        Arbitraries.doubles().between(0.03, 0.06).ofScale(6),
                        Arbitraries.doubles().between(0.12, 0.35).ofScale(6))
                .as(
                        (area, zeroLift, induced, thrustOverWeight) ->
                                jet(
                                        2,
                                        area,
                                        zeroLift,
                                        induced,
                                        // of a wing that bears 5000 N/m² at sea level
                                        thrustOverWeight * 5000.0 * area / 2.0 / 101325.0));
    }

    /** The mass at which the wing of one of {@link #jets} bears a load, from its drag alone. */
    public static Mass mass(Aeroplane aeroplane, double newtonsPerM2) {
        // drag without lift at q = 1 Pa is area times a coefficient; thrust tells the area
        double thrust =
                aeroplane.thrust(0.5, 101325.0, 288.15, EngineUse.climb(aeroplane.engines()));
        return Mass.ofKilograms(thrust / 0.25 * newtonsPerM2 / 5000.0 / 9.80665);
    }
}
