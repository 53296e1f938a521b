package org.climbwright.atmosphere;

import java.io.Serializable;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.quantity.altitude.DensityAltitude;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.MixingRatio;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.pressure.VapourPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.FrostPoint;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * The air at one place: four numbers, and everything that follows from them.
 *
 * <p>Pressure and temperature are always known; vapour pressure and altitude may not be, and what
 * needs them is then empty and never a guess. The density of air with unknown humidity is that of
 * dry air, and {@link #isHumidityKnown} tells.
 *
 * <pre>{@code
 * AirState air = Atmosphere.standard().at(PressureAltitude.ofFlightLevel(300));
 * air.staticAirTemperature()   // 228.714 K (-44.43599999999998 °C)
 * }</pre>
 */
public final class AirState implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * What interpolation and rounding may make of exactly saturated air, and the two saturation
     * formulas of water and ice at the triple point, where they meet to 4e-8.
     */
    private static final double ROUNDING = 1e-7;

    /** The same in dew point. */
    private static final double ROUNDING_K = 2e-6;

    private final double pressurePa;
    private final double temperatureK;
    private final double vapourPressurePa;
    private final double geopotentialAltitudeM;

    private AirState(
            double pressurePa,
            double temperatureK,
            double vapourPressurePa,
            double geopotentialAltitudeM) {
        this.pressurePa = pressurePa;
        this.temperatureK = temperatureK;
        // + 0.0 makes -0.0 into 0.0, so that equal numbers are equal air
        this.vapourPressurePa = vapourPressurePa + 0.0;
        this.geopotentialAltitudeM = geopotentialAltitudeM + 0.0;
    }

    /**
     * Returns the air with these values.
     *
     * @param pressurePa static pressure [Pa], above 0, finite
     * @param temperatureK static air temperature [K], above 0, finite
     * @param vapourPressurePa vapour pressure [Pa], 0 or more and below the pressure; NaN when not
     *     known
     * @param geopotentialAltitudeM geopotential altitude [m], finite; NaN when not known
     * @return the state
     * @throws IllegalArgumentException if a value cannot be, or the air would be more than
     *     saturated over liquid water (told from 123 to 332 K; a part in 1e7 is rounding)
     */
    public static AirState ofSi(
            double pressurePa,
            double temperatureK,
            double vapourPressurePa,
            double geopotentialAltitudeM) {
        if (!(pressurePa > 0.0 && pressurePa <= Double.MAX_VALUE)) {
            throw refusal("static pressure", "a finite number above 0.0 Pa", pressurePa, " Pa");
        }
        if (!(temperatureK > 0.0 && temperatureK <= Double.MAX_VALUE)) {
            throw refusal(
                    "static air temperature", "a finite number above 0.0 K", temperatureK, " K");
        }
        if (vapourPressurePa < 0.0 || vapourPressurePa >= pressurePa) {
            throw refusal(
                    "vapour pressure",
                    "from 0.0 Pa to less than the static pressure",
                    vapourPressurePa,
                    " Pa");
        }
        if (isSupersaturated(vapourPressurePa, temperatureK)) {
            throw refusal(
                    "vapour pressure",
                    "at most that of saturation, with a dew point not above the temperature of "
                            .concat(Double.toString(temperatureK))
                            .concat(" K"),
                    vapourPressurePa,
                    " Pa");
        }
        if (Double.isInfinite(geopotentialAltitudeM)) {
            throw refusal("geopotential altitude", "finite", geopotentialAltitudeM, " m");
        }
        return new AirState(pressurePa, temperatureK, vapourPressurePa, geopotentialAltitudeM);
    }

    private static boolean isSupersaturated(double vapourPressurePa, double temperatureK) {
        return vapourPressurePa > 0.0
                && MoistAir.coversWater(temperatureK)
                && vapourPressurePa
                        > MoistAir.saturationVapourPressure(temperatureK) * (1.0 + ROUNDING);
    }

    /**
     * Returns air of a pressure and a temperature, its humidity and its altitude not known.
     *
     * @param pressure static pressure, above 0
     * @param temperature static air temperature, above 0 K
     * @return the state
     * @throws IllegalArgumentException if a value is 0
     */
    public static AirState of(StaticPressure pressure, StaticAirTemperature temperature) {
        double pressurePa = pressure.inPascals();
        double temperatureK = temperature.inKelvins();
        // their types know that they are finite and not below 0
        return pressurePa > 0.0 && temperatureK > 0.0
                ? new AirState(pressurePa, temperatureK, Double.NaN, Double.NaN)
                : ofSi(pressurePa, temperatureK, Double.NaN, Double.NaN);
    }

    /**
     * Returns this air with a dew point.
     *
     * @param dewPoint the dew point over liquid water, at most the temperature
     * @return a copy with its vapour pressure
     * @throws IllegalArgumentException if the dew point is above the temperature
     * @throws org.climbwright.quantity.OutsideModelException outside 123 to 332 K
     */
    public AirState withDewPoint(DewPoint dewPoint) {
        if (dewPoint.inKelvins() > temperatureK) {
            throw new IllegalArgumentException(
                    "dew point must not be above the temperature of "
                            + staticAirTemperature()
                            + ", but was "
                            + dewPoint);
        }
        return withVapourPressure(MoistAir.saturationVapourPressure(dewPoint.inKelvins()));
    }

    /**
     * Returns this air with a frost point.
     *
     * @param frostPoint the temperature at which it would be saturated over ice
     * @return a copy with its vapour pressure
     * @throws IllegalArgumentException if the air would be more than saturated over liquid water
     * @throws org.climbwright.quantity.OutsideModelException outside 110 to 273.16 K
     */
    public AirState withFrostPoint(FrostPoint frostPoint) {
        return withVapourPressure(MoistAir.saturationVapourPressureOverIce(frostPoint.inKelvins()));
    }

    /**
     * Returns this air with a relative humidity.
     *
     * @param humidity relative humidity over liquid water
     * @return a copy with its vapour pressure
     * @throws org.climbwright.quantity.OutsideModelException outside 123 to 332 K
     */
    public AirState withRelativeHumidity(RelativeHumidity humidity) {
        return withVapourPressure(
                MoistAir.vapourPressureFromRelativeHumidity(humidity.inRatio(), temperatureK));
    }

    /**
     * Returns this air with a mixing ratio.
     *
     * @param mixingRatio mass of vapour per mass of dry air
     * @return a copy with its vapour pressure
     * @throws IllegalArgumentException if the air would be more than saturated over liquid water
     */
    public AirState withMixingRatio(MixingRatio mixingRatio) {
        double vapourPa =
                MoistAir.vapourPressureFromMixingRatio(
                        mixingRatio.inKilogramsPerKilogram(), pressurePa);
        return withVapourPressureOf(mixingRatio, "mixing ratio", vapourPa);
    }

    /**
     * Returns this air without vapour.
     *
     * @return a copy that is known to hold no vapour
     */
    public AirState withoutVapour() {
        return withVapourPressure(0.0);
    }

    private AirState withVapourPressureOf(Object told, String term, double vapourPa) {
        if (isSupersaturated(vapourPa, temperatureK)) {
            throw new IllegalArgumentException(
                    term
                            + " must not be above that of saturated air of "
                            + staticAirTemperature()
                            + " and "
                            + staticPressure()
                            + ", but was "
                            + told);
        }
        return withVapourPressure(vapourPa);
    }

    private AirState withVapourPressure(double vapourPa) {
        return ofSi(pressurePa, temperatureK, vapourPa, geopotentialAltitudeM);
    }

    /**
     * Returns this air with an altitude.
     *
     * @param altitude geopotential altitude above mean sea level
     * @return a copy that knows it
     */
    public AirState withGeopotentialAltitude(GeopotentialAltitude altitude) {
        return ofSi(pressurePa, temperatureK, vapourPressurePa, altitude.inMetres());
    }

    private static IllegalArgumentException refusal(
            String term, String range, double value, String unit) {
        return new IllegalArgumentException(
                new StringBuilder(term)
                        .append(" must be ")
                        .append(range)
                        .append(", but was ")
                        .append(value)
                        .append(unit)
                        .toString());
    }

    /**
     * Returns the static pressure.
     *
     * @return static pressure [Pa]
     */
    public double pressurePa() {
        return pressurePa;
    }

    /**
     * Returns the static air temperature.
     *
     * @return static air temperature [K]
     */
    public double temperatureK() {
        return temperatureK;
    }

    /**
     * Returns the vapour pressure.
     *
     * @return vapour pressure [Pa], 0 for dry air; NaN when not known
     */
    public double vapourPressurePa() {
        return vapourPressurePa;
    }

    /**
     * Returns the temperature at which dry air would be as dense; that of dry air if humidity is
     * not known.
     *
     * @return virtual temperature [K]
     * @source {@link MoistAir#virtualTemperature}
     */
    public double virtualTemperatureK() {
        return isHumidityKnown()
                ? MoistAir.virtualTemperature(temperatureK, vapourPressurePa, pressurePa)
                : temperatureK;
    }

    /**
     * Returns the density; that of dry air if humidity is not known.
     *
     * @return density [kg/m³]
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     * @source {@link DryAir#density} with the virtual temperature
     */
    public double densityKgPerM3() {
        return DryAir.density(pressurePa, virtualTemperatureK());
    }

    /**
     * Returns the speed of sound by the dry-air constants that air data uses.
     *
     * @return speed of sound [m/s]
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     * @source {@link DryAir#speedOfSound}
     */
    public double speedOfSoundMps() {
        return DryAir.speedOfSound(temperatureK);
    }

    /**
     * Returns the dynamic viscosity.
     *
     * @return dynamic viscosity [Pa·s]
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     * @source {@link DryAir#dynamicViscosity}
     */
    public double dynamicViscosityPaS() {
        return DryAir.dynamicViscosity(temperatureK);
    }

    /**
     * Returns the kinematic viscosity: dynamic viscosity over density.
     *
     * @return kinematic viscosity [m²/s]
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     * @source {@link DryAir#dynamicViscosity} and {@link #densityKgPerM3}
     */
    public double kinematicViscosityM2PerS() {
        return dynamicViscosityPaS() / densityKgPerM3();
    }

    /**
     * Returns the thermal conductivity.
     *
     * @return thermal conductivity [W/(m·K)]
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     * @source {@link DryAir#thermalConductivity}
     */
    public double thermalConductivityWPerMK() {
        return DryAir.thermalConductivity(temperatureK);
    }

    /**
     * Returns the temperature ratio θ.
     *
     * @return temperature over that of standard air at mean sea level
     */
    public double temperatureRatio() {
        return temperatureK / IcaoConstants.SEA_LEVEL_TEMPERATURE_K;
    }

    /**
     * Returns the pressure ratio δ.
     *
     * @return pressure over that of standard air at mean sea level
     */
    public double pressureRatio() {
        return pressurePa / IcaoConstants.SEA_LEVEL_PRESSURE_PA;
    }

    /**
     * Returns the density ratio σ.
     *
     * @return density over that of standard air at mean sea level, 1.22500001812 kg/m³
     * @throws org.climbwright.quantity.OutsideModelException outside 100 to 400 K
     */
    public double densityRatio() {
        return densityKgPerM3() / IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3;
    }

    /**
     * Returns the acceleration of gravity.
     *
     * @return acceleration [m/s²]; empty when the altitude is not known
     * @source {@link Geopotential#gravity}
     */
    public OptionalDouble gravityMps2() {
        return geometricAltitude()
                .map(z -> OptionalDouble.of(Geopotential.gravity(z.inMetres())))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Tells whether the vapour pressure is known.
     *
     * @return false when dew point and relative humidity are empty because nobody knows them
     */
    public boolean isHumidityKnown() {
        return !Double.isNaN(vapourPressurePa);
    }

    /**
     * Returns the static pressure.
     *
     * @return static pressure
     */
    public StaticPressure staticPressure() {
        return StaticPressure.ofPascals(pressurePa);
    }

    /**
     * Returns the static air temperature.
     *
     * @return static air temperature
     */
    public StaticAirTemperature staticAirTemperature() {
        return StaticAirTemperature.ofKelvins(temperatureK);
    }

    /**
     * Returns the altitude at which the standard atmosphere has this pressure.
     *
     * @return pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     pressure
     */
    public PressureAltitude pressureAltitude() {
        return PressureAltitude.ofMetres(StandardAir.altitudeFromPressure(pressurePa));
    }

    /**
     * Returns the altitude at which the standard atmosphere has this density.
     *
     * @return density altitude, with the humidity in it where that is known
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     density
     */
    public DensityAltitude densityAltitude() {
        return DensityAltitude.ofMetres(StandardAir.altitudeFromDensity(densityKgPerM3()));
    }

    /**
     * Returns how much warmer this air is than standard air of the same pressure.
     *
     * @return the deviation, positive when warmer
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere has no such
     *     pressure
     */
    public IsaDeviation isaDeviation() {
        return IsaDeviation.ofKelvins(
                temperatureK - StandardAir.temperatureFromPressure(pressurePa));
    }

    /**
     * Returns how much warmer this air is than standard air of the same geopotential altitude.
     *
     * <p>Not {@link #isaDeviation}, which performance charts mean: the two differ by what the
     * pressure altitude differs from the altitude, 2 K per 1,000 ft.
     *
     * @return the deviation, positive when warmer; empty when the altitude is not known
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere does not
     *     reach there
     */
    public Optional<IsaDeviationAtAltitude> isaDeviationAtAltitude() {
        return Double.isNaN(geopotentialAltitudeM)
                ? Optional.empty()
                : Optional.of(
                        IsaDeviationAtAltitude.ofKelvins(
                                temperatureK
                                        - StandardAir.temperatureFromAltitude(
                                                geopotentialAltitudeM)));
    }

    /**
     * Returns the geopotential altitude.
     *
     * @return geopotential altitude above mean sea level; empty when not known
     */
    public Optional<GeopotentialAltitude> geopotentialAltitude() {
        return Double.isNaN(geopotentialAltitudeM)
                ? Optional.empty()
                : Optional.of(GeopotentialAltitude.ofMetres(geopotentialAltitudeM));
    }

    /**
     * Returns the true altitude.
     *
     * @return geometric altitude above mean sea level; empty when not known
     */
    public Optional<GeometricAltitude> geometricAltitude() {
        return geopotentialAltitude().map(Geopotential::toGeometric);
    }

    /**
     * Returns the vapour pressure.
     *
     * @return vapour pressure; empty when not known
     */
    public Optional<VapourPressure> vapourPressure() {
        return isHumidityKnown()
                ? Optional.of(VapourPressure.ofPascals(vapourPressurePa))
                : Optional.empty();
    }

    /**
     * Returns the dew point over liquid water.
     *
     * @return the dew point, not above the temperature; empty when humidity is not known or the air
     *     is dry
     * @throws org.climbwright.quantity.OutsideModelException if it is outside 123 to 332 K
     */
    public Optional<DewPoint> dewPoint() {
        if (!(vapourPressurePa > 0.0)) {
            return Optional.empty();
        }
        double dewPointK = MoistAir.dewPoint(vapourPressurePa);
        boolean isSaturated = Math.abs(dewPointK - temperatureK) <= ROUNDING_K;
        return Optional.of(DewPoint.ofKelvins(isSaturated ? temperatureK : dewPointK));
    }

    /**
     * Returns the temperature at which the air would be saturated over ice.
     *
     * @return the frost point; empty when humidity is not known, the air is dry, or so moist that
     *     no ice is warm enough
     * @throws org.climbwright.quantity.OutsideModelException if it is below 110 K
     */
    public Optional<FrostPoint> frostPoint() {
        boolean isBelowTriplePoint =
                vapourPressurePa > 0.0 && vapourPressurePa <= MoistAir.TRIPLE_POINT_PRESSURE_PA;
        return isBelowTriplePoint
                ? Optional.of(FrostPoint.ofKelvins(MoistAir.frostPoint(vapourPressurePa)))
                : Optional.empty();
    }

    /**
     * Returns the relative humidity over liquid water, also below 0 °C.
     *
     * @return 100 % when saturated; empty when humidity is not known
     * @throws org.climbwright.quantity.OutsideModelException outside 123 to 332 K
     */
    public Optional<RelativeHumidity> relativeHumidity() {
        return isHumidityKnown()
                ? Optional.of(
                        RelativeHumidity.ofRatio(
                                Math.min(
                                        1.0,
                                        MoistAir.relativeHumidity(vapourPressurePa, temperatureK))))
                : Optional.empty();
    }

    /**
     * Returns the mass of vapour per mass of dry air.
     *
     * @return the mixing ratio; empty when humidity is not known
     */
    public Optional<MixingRatio> mixingRatio() {
        return isHumidityKnown()
                ? Optional.of(
                        MixingRatio.ofKilogramsPerKilogram(
                                MoistAir.mixingRatio(vapourPressurePa, pressurePa)))
                : Optional.empty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AirState that
                && Double.compare(pressurePa, that.pressurePa) == 0
                && Double.compare(temperatureK, that.temperatureK) == 0
                && Double.compare(vapourPressurePa, that.vapourPressurePa) == 0
                && Double.compare(geopotentialAltitudeM, that.geopotentialAltitudeM) == 0;
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(pressurePa);
        hash = 31 * hash + Double.hashCode(temperatureK);
        hash = 31 * hash + Double.hashCode(vapourPressurePa);
        return 31 * hash + Double.hashCode(geopotentialAltitudeM);
    }

    /**
     * Returns the four numbers for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "air of %.2f hPa and %.2f °C, %s, geopotential altitude %s",
                staticPressure().inHectopascals(),
                Math.rint(staticAirTemperature().inCelsius() * 100.0) / 100.0 + 0.0,
                isHumidityKnown()
                        ? String.format(Locale.ROOT, "vapour pressure %.2f Pa", vapourPressurePa)
                        : "humidity not known",
                geopotentialAltitude()
                        .map(altitude -> String.format(Locale.ROOT, "%.0f ft", altitude.inFeet()))
                        .orElse("not known"));
    }

    private Object readResolve() {
        return ofSi(pressurePa, temperatureK, vapourPressurePa, geopotentialAltitudeM);
    }
}
