package org.climbwright.turbulence.convection;

import org.climbwright.atmosphere.LiftedAir;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;

/**
 * The rules that handbooks have for the base of cumulus, by the spread between temperature and dew
 * point at the ground.
 *
 * <p>The rules differ by 4 %; the base by thermodynamics is {@link
 * org.climbwright.atmosphere.LiftingCondensationLevel}, 2 to 4 % above the first of them in the air
 * of an aerodrome.
 *
 * <p>Limits of use: for cumulus that rises from a well mixed layer; layered cloud and fog have
 * nothing to do with them.
 */
public enum SpreadRule {
    /**
     * 400 ft for each degree Celsius of spread, which is 2.5 °C per 1,000 ft.
     *
     * @source {@link LiftedAir#heightByRule}
     */
    FEET_400_PER_CELSIUS {
        @Override
        double height(double temperatureK, double dewPointK) {
            return LiftedAir.heightByRule(temperatureK, dewPointK);
        }
    },
    /**
     * 1,000 ft for each 2.4 °C of spread.
     *
     * @source variant of US Federal Aviation Administration handbooks, seen as quoted elsewhere
     */
    CELSIUS_2_4_PER_1000_FEET {
        @Override
        double height(double temperatureK, double dewPointK) {
            return THOUSAND_FEET_M * ((temperatureK - dewPointK) / 2.4);
        }
    },
    /**
     * 1,000 ft for each 4.4 °F of spread.
     *
     * @source variant of US Federal Aviation Administration handbooks, seen as quoted elsewhere
     */
    FAHRENHEIT_4_4_PER_1000_FEET {
        @Override
        double height(double temperatureK, double dewPointK) {
            return THOUSAND_FEET_M * ((temperatureK - dewPointK) * 1.8 / 4.4);
        }
    };

    private static final double THOUSAND_FEET_M = UnitScale.FOOT.toSi(1000.0);

    private static final ModelRange TEMPERATURE =
            new ModelRange("temperature", 123.0, 332.0, "K", "the rules are for surface air");

    abstract double height(double temperatureK, double dewPointK);

    /**
     * Tells whether the rules take a temperature and a dew point.
     *
     * @param temperatureK static air temperature [K]
     * @param dewPointK dew point over liquid water [K]
     * @return true from 123 to 332 K, the dew point not above the temperature
     */
    public static boolean covers(double temperatureK, double dewPointK) {
        return MoistAir.coversWater(temperatureK)
                && MoistAir.coversWater(dewPointK)
                && dewPointK <= temperatureK;
    }

    /**
     * Returns how far above the ground the base is by this rule.
     *
     * @param temperatureK static air temperature at the ground [K], 123 to 332
     * @param dewPointK dew point there over liquid water [K], 123 K to the temperature
     * @return height above the ground [m], 0 without spread
     * @throws OutsideModelException if a value is out of range, or the spread negative
     * @accuracy 3 ulp of the rule; from 10 % below to 2 % above the condensation level for {@link
     *     #FEET_400_PER_CELSIUS}
     * @source see each rule
     */
    public double heightOfBase(double temperatureK, double dewPointK) {
        TEMPERATURE.check(temperatureK);
        if (!covers(temperatureK, dewPointK)) {
            throw new OutsideModelException(
                    "dew point",
                    dewPointK,
                    TEMPERATURE.lowest(),
                    temperatureK,
                    "K",
                    "the rules need a spread, and none is negative");
        }
        return height(temperatureK, dewPointK);
    }

    /**
     * Returns how far above the ground the base is by this rule.
     *
     * @param temperature static air temperature at the ground
     * @param dewPoint dew point there, not above the temperature
     * @return height above the ground
     * @source {@link #heightOfBase(double, double)}
     */
    public AltitudeChange heightOfBase(StaticAirTemperature temperature, DewPoint dewPoint) {
        return AltitudeChange.ofMetres(heightOfBase(temperature.inKelvins(), dewPoint.inKelvins()));
    }
}
