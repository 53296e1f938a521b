package org.climbwright.icing.potential;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.icing.potential.ProfileSearch.Stretch;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * The -8D line of a sounding: icing is possible where the air is colder, in degrees Celsius, than
 * minus eight times its dew point depression.
 *
 * <p>The line is drawn beside the curve of temperature; where it lies to the right of it, the rule
 * is met. Saturated air plots on 0 °C. In effect it is a straight line for the frost point: it
 * marks air that is supersaturated over ice, and calls that icing.
 *
 * <p>Limits of use: an indication, not a forecast. The rule is known to mark cirrus, ice without
 * any supercooled water, because nothing in it ends at cold temperatures: give {@link
 * #spansIn(Atmosphere, StaticAirTemperature)} a coldest one. It turns on a few tenths of a degree
 * of dew point, where the humidity sensors of balloons are weak in the cold, and it misses rain and
 * drizzle that fall supercooled into drier air. No span found is not "no icing".
 *
 * @source AMS Glossary of Meteorology, "8D technique"; US Navy Aerographer training manual 14010,
 *     p. 119
 */
public final class MinusEightD {
    private static final double ICE_POINT_K = 273.15;
    private static final double FACTOR = 8.0;

    /** What rounding may leave of exactly on the line. */
    private static final double ROUNDING_K = 1e-9;

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature", 123.0, 332.0, "K", "dew points are told there");

    private static final int COLD = 1;
    private static final int NOT_TOO_COLD = 2;
    private static final int HUMIDITY_KNOWN = 4;
    private static final int BEYOND_LINE = 8;

    private static final int NOTHING = 0;
    private static final int INDICATED = 1;
    private static final int NOT_KNOWN = 2;

    private MinusEightD() {}

    /**
     * Tells whether a temperature and a dew point have an answer.
     *
     * @param temperatureK static air temperature [K]
     * @param dewPointK dew point over liquid water [K]
     * @return true if both are from 123 to 332 K and the dew point is not above the temperature
     */
    public static boolean covers(double temperatureK, double dewPointK) {
        return TEMPERATURE.covers(temperatureK)
                && TEMPERATURE.covers(dewPointK)
                && dewPointK <= temperatureK;
    }

    /**
     * Returns where the -8D line is for some air.
     *
     * @param temperatureK static air temperature [K], 123 to 332
     * @param dewPointK dew point over liquid water [K], 123 to the temperature
     * @return the temperature on the line [K], {@code 273.15 - 8 (T - Td)}: 273.15 in saturated air
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-12 K
     * @source see the class comment
     */
    public static double line(double temperatureK, double dewPointK) {
        TEMPERATURE.check(temperatureK);
        TEMPERATURE.check(dewPointK);
        if (!(dewPointK <= temperatureK)) {
            throw new OutsideModelException(
                    "dew point",
                    dewPointK,
                    TEMPERATURE.lowest(),
                    temperatureK,
                    "K",
                    "saturated air has the temperature as its dew point");
        }
        return ICE_POINT_K - FACTOR * (temperatureK - dewPointK);
    }

    /**
     * Returns how much warmer than the -8D line some air is.
     *
     * @param temperatureK static air temperature [K], 123 to 332
     * @param dewPointK dew point over liquid water [K], 123 to the temperature
     * @return {@code T + 8 (T - Td)} with T in °C [K]; negative where icing is possible
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-12 K
     * @source see the class comment
     */
    public static double excess(double temperatureK, double dewPointK) {
        return temperatureK - line(temperatureK, dewPointK);
    }

    /**
     * Tells whether icing is possible by the rule.
     *
     * @param temperatureK static air temperature [K], 123 to 332
     * @param dewPointK dew point over liquid water [K], 123 to the temperature
     * @return true if the air is colder than the line; false on the line, to 1e-9 K
     * @throws OutsideModelException if a value is out of range
     * @source see the class comment
     */
    public static boolean isIcingPossible(double temperatureK, double dewPointK) {
        return excess(temperatureK, dewPointK) < -ROUNDING_K;
    }

    /**
     * Tells whether icing is possible by the rule.
     *
     * @param temperature static air temperature, 123 to 332 K
     * @param dewPoint dew point over liquid water, 123 K to the temperature
     * @return true if the air is colder than the line; false on the line
     * @throws OutsideModelException if a value is out of range
     */
    public static boolean isIcingPossible(StaticAirTemperature temperature, DewPoint dewPoint) {
        return isIcingPossible(temperature.inKelvins(), dewPoint.inKelvins());
    }

    /**
     * Returns the layers in which icing is possible by the rule, however cold they are, and those
     * below 0 °C whose humidity is not known.
     *
     * @param air the air
     * @return the spans from the lowest to the highest; the rest is not colder than 0 °C, or too
     *     dry by the rule
     * @throws OutsideModelException if the air is somewhere outside 123 to 332 K and moist
     * @throws IllegalArgumentException if the air is somewhere more than saturated
     * @accuracy edges to 1e-8 m of where the rule changes; the dew point to 2e-6 K
     * @source see the class comment
     */
    public static List<IndicationSpan> spansIn(Atmosphere air) {
        return spans(air, 0.0);
    }

    /**
     * Returns the layers in which icing is possible by the rule and the air is not too cold, and
     * those of such temperatures whose humidity is not known.
     *
     * @param air the air
     * @param coldest the lowest temperature that counts, itself included; a training manual of the
     *     US Navy ends icing at -22 °C, and almost all reports of pilots are from 0 to -20 °C
     * @return the spans from the lowest to the highest
     * @throws OutsideModelException if the air is somewhere outside 123 to 332 K and moist
     * @throws IllegalArgumentException if the air is somewhere more than saturated
     * @accuracy edges to 1e-8 m of where the rule changes; the dew point to 2e-6 K
     * @source see the class comment; US Navy training manual 14342A p. 1-23; FAA AC 00-6B 18.3.4
     */
    public static List<IndicationSpan> spansIn(Atmosphere air, StaticAirTemperature coldest) {
        return spans(air, coldest.inKelvins());
    }

    private static List<IndicationSpan> spans(Atmosphere air, double coldestK) {
        List<Stretch> stretches =
                ProfileSearch.joined(
                        ProfileSearch.of(air, pressurePa -> met(air, pressurePa, coldestK)),
                        MinusEightD::kind);
        List<IndicationSpan> spans = new ArrayList<>();
        for (Stretch stretch : stretches) {
            if (stretch.state() != NOTHING) {
                AirState bottom = IndicationSpan.state(air, stretch.bottomPa());
                AirState top = IndicationSpan.state(air, stretch.topPa());
                boolean isKnown = stretch.state() == INDICATED;
                spans.add(
                        new IndicationSpan(
                                isKnown
                                        ? IndicationSpan.Kind.INDICATED
                                        : IndicationSpan.Kind.NOT_KNOWN,
                                bottom,
                                top,
                                reason(bottom, top, isKnown)));
            }
        }
        return List.copyOf(spans);
    }

    /** Which conditions are met: each has an edge of its own, and a layer lies between edges. */
    private static int met(Atmosphere air, double pressurePa, double coldestK) {
        AirState state = IndicationSpan.state(air, pressurePa);
        int met = state.temperatureK() < ICE_POINT_K ? COLD : 0;
        met += state.temperatureK() >= coldestK ? NOT_TOO_COLD : 0;
        met += state.isHumidityKnown() ? HUMIDITY_KNOWN : 0;
        return met + (isBeyondLine(state) ? BEYOND_LINE : 0);
    }

    private static boolean isBeyondLine(AirState state) {
        // drier than any dew point told is far too dry; warmer than 0 °C is too warm in any case
        return state.temperatureK() < ICE_POINT_K
                && state.isHumidityKnown()
                && MoistAir.coversDewPoint(state.vapourPressurePa())
                && state.dewPoint()
                        .filter(
                                dewPoint ->
                                        isIcingPossible(state.temperatureK(), dewPoint.inKelvins()))
                        .isPresent();
    }

    private static int kind(int met) {
        if ((met & COLD) == 0 || (met & NOT_TOO_COLD) == 0) {
            return NOTHING;
        }
        if ((met & HUMIDITY_KNOWN) == 0) {
            return NOT_KNOWN;
        }
        return (met & BEYOND_LINE) == 0 ? NOTHING : INDICATED;
    }

    private static String reason(AirState bottom, AirState top, boolean isKnown) {
        String edges =
                Words.celsius(bottom) + " at its bottom and " + Words.celsius(top) + " at its top";
        return isKnown
                ? edges + ", and colder than minus eight times the dew point depression between"
                : edges + ", colder than 0 °C; humidity is not known, and so the dew point is not";
    }
}
