package org.climbwright.atmosphere;

import java.util.function.DoubleUnaryOperator;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;

/**
 * The air of some day, by pressure: temperature, altitude and humidity. A plug: write your own.
 *
 * <p>Everything above this room takes an atmosphere and never assumes the standard one. Pressure is
 * the coordinate because altimeters and airspeed indicators measure it; one method each answers in
 * SI, NaN meaning "not known", and {@link #at(PressureAltitude)} puts the answers together.
 *
 * <p>Air of your own is four answers, ten lines:
 *
 * <pre>{@code
 * record FrozenMorning() implements Atmosphere {      // -20 °C up to 500 hPa
 *     public ModelRange range() {
 *         return new ModelRange("static pressure", 5e4, 1.02e5, "Pa", "my forecast ends there");
 *     }
 *     public double temperature(double pressurePa) { return 253.15; }
 *     public double vapourPressure(double pressurePa) { return Double.NaN; }    // not known
 *     public double geopotentialAltitude(double pressurePa) {
 *         return 287.05287 / 9.80665 * 253.15 * StrictMath.log(1.02e5 / pressurePa);
 *     }
 * }
 * AirState air = new FrozenMorning().at(PressureAltitude.ofFeet(5000));
 * air.isaDeviation()               // -25.09…, K
 * air.geometricAltitude().get()    // 1411.9…, m
 * air.relativeHumidity()           // Optional.empty
 * new FrozenMorning().at(GeopotentialAltitude.ofMetres(1000)).pressurePa()    // 89123.…, Pa
 * }</pre>
 *
 * <p>Weather that is a temperature at each pressure and one known altitude takes fewer still; the
 * hypsometric equation does the rest:
 *
 * <pre>{@code
 * Atmosphere warmDay = Atmosphere.of(
 *         pressurePa -> StandardAir.temperatureFromPressure(pressurePa) + 15.0,
 *         AltitudeDatum.onQnh(AltimeterSetting.ofHectopascals(1020.0)));
 * warmDay.at(PressureAltitude.ofFeet(30000)).isaDeviation()   // 15.0 K
 * }</pre>
 *
 * <p>An implementation is immutable and takes any pressure of its {@link #range}.
 */
public interface Atmosphere {
    /**
     * Returns the pressures for which this air is known.
     *
     * @return the range of static pressure [Pa]
     */
    ModelRange range();

    /**
     * Returns the temperature at a pressure.
     *
     * @param pressurePa static pressure [Pa], inside {@link #range}
     * @return static air temperature [K]
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    double temperature(double pressurePa);

    /**
     * Returns the geopotential altitude of a pressure.
     *
     * @param pressurePa static pressure [Pa], inside {@link #range}
     * @return geopotential altitude above mean sea level [m]; NaN when not known
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    double geopotentialAltitude(double pressurePa);

    /**
     * Returns the vapour pressure at a pressure.
     *
     * @param pressurePa static pressure [Pa], inside {@link #range}
     * @return vapour pressure [Pa], 0 for dry air; NaN when not known
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is out of range
     */
    double vapourPressure(double pressurePa);

    /**
     * Returns where temperature or humidity changes its slope or becomes known or unknown.
     *
     * <p>Whoever integrates or searches through this air takes the stretches between one by one.
     *
     * @return pressures [Pa] inside {@link #range}, in any order; empty when the air is smooth
     */
    default double[] bendsPa() {
        return new double[0];
    }

    /**
     * Tells whether this air is known at a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return true inside {@link #range}
     */
    default boolean covers(double pressurePa) {
        return range().covers(pressurePa);
    }

    /**
     * Returns the pressure at a geopotential altitude, the inverse of {@link
     * #geopotentialAltitude}.
     *
     * @param geopotentialAltitudeM geopotential altitude above mean sea level [m]
     * @return static pressure [Pa]
     * @throws org.climbwright.quantity.OutsideModelException if this air does not reach there
     * @throws IllegalStateException if its altitudes are not known
     * @accuracy 1e-9 m in altitude
     */
    default double pressureFromGeopotentialAltitude(double geopotentialAltitudeM) {
        double top = range().lowest();
        double bottom = range().highest();
        double lowest = geopotentialAltitude(bottom);
        double highest = geopotentialAltitude(top);
        if (Double.isNaN(lowest) || Double.isNaN(highest)) {
            throw new IllegalStateException("the altitudes of this air are not known");
        }
        if (!(geopotentialAltitudeM >= lowest && geopotentialAltitudeM <= highest)) {
            throw AltitudeRefusal.of(
                    "geopotential altitude",
                    geopotentialAltitudeM,
                    lowest,
                    highest,
                    range().reason());
        }
        // In ln p altitude is nearly straight. The ends are asked as they are: exp(log(p)) may miss
        // p by an ulp, and with it the sign of the zero wanted.
        double lnTop = StrictMath.log(top);
        double lnBottom = StrictMath.log(bottom);
        DoubleUnaryOperator pressure =
                ln ->
                        ln <= lnTop
                                ? top
                                : ln >= lnBottom
                                        ? bottom
                                        : Math.max(top, Math.min(bottom, StrictMath.exp(ln)));
        double ln =
                BracketingSolver.solve(
                        x ->
                                geopotentialAltitude(pressure.applyAsDouble(x))
                                        - geopotentialAltitudeM,
                        lnBottom,
                        lnTop,
                        1e-15);
        return pressure.applyAsDouble(ln);
    }

    /**
     * Returns the air at a pressure altitude.
     *
     * @param altitude pressure altitude
     * @return the state of the air there
     * @throws org.climbwright.quantity.OutsideModelException if this air does not reach there
     */
    default AirState at(PressureAltitude altitude) {
        double pressurePa = StandardAir.pressureFromAltitude(altitude.inMetres());
        double nearest = Math.max(range().lowest(), Math.min(range().highest(), pressurePa));
        // The pressure altitude of an end of the range gives its pressure back to some ulps only.
        if (!(Math.abs(pressurePa - nearest) <= 1e-12 * pressurePa)) {
            throw AltitudeRefusal.ofPressureAltitude(altitude.inMetres(), range());
        }
        return at(StaticPressure.ofPascals(nearest));
    }

    /**
     * Returns the air at a pressure.
     *
     * @param pressure static pressure
     * @return the state of the air there
     * @throws org.climbwright.quantity.OutsideModelException if this air does not reach there
     */
    default AirState at(StaticPressure pressure) {
        double pressurePa = range().check(pressure.inPascals());
        return AirState.ofSi(
                pressurePa,
                temperature(pressurePa),
                vapourPressure(pressurePa),
                geopotentialAltitude(pressurePa));
    }

    /**
     * Returns the air at a geopotential altitude.
     *
     * @param altitude geopotential altitude above mean sea level
     * @return the state of the air there
     * @throws org.climbwright.quantity.OutsideModelException if this air does not reach there
     */
    default AirState at(GeopotentialAltitude altitude) {
        return at(StaticPressure.ofPascals(pressureFromGeopotentialAltitude(altitude.inMetres())));
    }

    /**
     * Returns the air at a geometric altitude.
     *
     * @param altitude geometric altitude above mean sea level
     * @return the state of the air there
     * @throws org.climbwright.quantity.OutsideModelException if this air does not reach there
     */
    default AirState at(GeometricAltitude altitude) {
        return at(Geopotential.from(altitude));
    }

    /**
     * Returns the ICAO standard atmosphere, which is dry by definition: no cloud and no icing is
     * ever found in it.
     *
     * @return the one instance
     */
    static Atmosphere standard() {
        return StandardAtmosphere.INSTANCE;
    }

    /**
     * Returns air with a temperature of its own, its altitudes by the hypsometric equation with
     * virtual temperature; its humidity is not known unless the profile tells it, and counts as
     * none then.
     *
     * @param temperature the temperature at each pressure, and how far it reaches
     * @param datum one pressure whose altitude is known
     * @return the atmosphere
     * @throws IllegalArgumentException if the temperature is not from 100 to 400 K somewhere
     * @accuracy altitudes: 1e-6 m where the temperature is smooth, 0.01 m where it bends
     * @source hydrostatic equation and perfect gas, {@code dH = -(R T / g0) d(ln p)}
     */
    static Atmosphere of(TemperatureProfile temperature, AltitudeDatum datum) {
        return new HypsometricAtmosphere(temperature, datum);
    }

    /**
     * Returns air that is warmer than standard by the same amount <em>at every pressure</em>, as
     * altimetry and performance charts mean "ISA+20".
     *
     * <p>The tropopause keeps its pressure, 226.3 hPa, and rises in warm air. Not {@link
     * #withDeviationAtEachAltitude}: at FL300 and 20 K the two are 4.1 K and 250 ft apart.
     *
     * @param deviation how much warmer, -90 to 75 K
     * @param datum one pressure whose altitude is known
     * @return the air; its humidity is not known
     * @throws org.climbwright.quantity.OutsideModelException if the deviation is out of range
     * @accuracy 1e-9 m in altitude; with no deviation and the standard datum, the figures of {@link
     *     #standard} to the last bit
     * @source hydrostatic equation, {@link StandardAir#thicknessWithDeviation}
     */
    static Atmosphere withDeviationAtEachPressure(IsaDeviation deviation, AltitudeDatum datum) {
        return new DeviationAtPressure(deviation.inKelvins(), datum);
    }

    /**
     * Returns air that is warmer than standard by the same amount at every pressure, with 1013.25
     * hPa at mean sea level.
     *
     * @param deviation how much warmer, -90 to 75 K
     * @return the air; its humidity is not known
     * @throws org.climbwright.quantity.OutsideModelException if the deviation is out of range
     */
    static Atmosphere withDeviationAtEachPressure(IsaDeviation deviation) {
        return withDeviationAtEachPressure(deviation, AltitudeDatum.standard());
    }

    /**
     * Returns air that is warmer than standard by the same amount <em>at every geopotential
     * altitude</em>.
     *
     * <p>The tropopause keeps its altitude, 11 km, and its pressure rises in warm air. Not {@link
     * #withDeviationAtEachPressure}, which performance charts mean.
     *
     * @param deviation how much warmer, -90 to 75 K
     * @param datum one pressure whose altitude is known, from -5 to 80 km
     * @return the air; its humidity is not known
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m in altitude; with no deviation and the standard datum, the figures of {@link
     *     #standard} to the last bit
     * @source the equations of {@link StandardAir} with every base temperature raised
     */
    static Atmosphere withDeviationAtEachAltitude(
            IsaDeviationAtAltitude deviation, AltitudeDatum datum) {
        boolean isStandard = deviation.inKelvins() == 0.0 && datum.equals(AltitudeDatum.standard());
        return isStandard
                ? new DeviationAtPressure(0.0, datum)
                : new DeviationAtAltitude(deviation.inKelvins(), datum);
    }

    /**
     * Returns air that is warmer than standard by the same amount at every geopotential altitude,
     * with 1013.25 hPa at mean sea level.
     *
     * @param deviation how much warmer, -90 to 75 K
     * @return the air; its humidity is not known
     * @throws org.climbwright.quantity.OutsideModelException if the deviation is out of range
     */
    static Atmosphere withDeviationAtEachAltitude(IsaDeviationAtAltitude deviation) {
        return withDeviationAtEachAltitude(deviation, AltitudeDatum.standard());
    }

    /**
     * Returns this air, and above its top the standard atmosphere with the deviation that this air
     * has there, up to 80 km.
     *
     * <p>A guess, made only where somebody asks for it: nothing was observed above the top.
     * Humidity is not carried on.
     *
     * @return air that reaches higher; the same as this one up to its top, and itself if it reaches
     *     as high as the standard atmosphere
     */
    default Atmosphere withDeviationCarriedOnAboveTop() {
        return range().lowest() <= StandardAir.pressureRange().lowest()
                ? this
                : new DeviationCarriedOn(this);
    }
}
