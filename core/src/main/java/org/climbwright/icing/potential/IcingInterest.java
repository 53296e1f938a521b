package org.climbwright.icing.potential;

import org.climbwright.quantity.ModelRange;
import org.climbwright.unit.UnitScale;

/**
 * The interest functions of a forecast scheme for icing, in SI doubles: how much each of several
 * figures speaks for icing, from 0 to 1, and the potential that the scheme makes of them.
 *
 * <pre>{@code
 * double initial = IcingInterest.initialPotential(265.15, 0.90, 261.05);    // -8 °C, 90 %
 * double potential = IcingInterest.potential(initial, -0.25, 1e-4, 261.05);
 * potential    // 0.7990…
 * }</pre>
 *
 * <p>The scheme as coded has five oddities, and {@link Form} chooses; without a choice the mended
 * form is taken, since the first two make icing vanish at one exact figure and the third makes an
 * interest greater than 1.
 *
 * <ol>
 *   <li>Temperature: at exactly 268.15 K the code returns 0, between two strict comparisons.
 *       Mended: 1, as on both sides.
 *   <li>Cloud top: at exactly 223.0 K it returns 0 likewise. Mended: 0.2, as on both sides.
 *   <li>Convective available potential energy: the ramp from 1,000 to 2,500 J/kg is divided by
 *       1,400 and not 1,500, and reaches 1.071 before it drops to 1. Mended: divided by 1,500.
 *   <li>Damping of severity: the comment of the code lists a second, warm side, 0 at 268.15 K to 1
 *       at 273.15 K, which the code never computes. Both forms are the code's, 0: it is what the
 *       service computes, which of the two is meant is not known, and less damping is the more
 *       cautious. The comment's side is not offered.
 *   <li>The final clamp of the potential to at most 1 is overwritten by the one to at least 0. It
 *       makes no difference here: of interests from 0 to 1 {@link #potential} is from 0 to 1.
 * </ol>
 *
 * <p>Limits of use: a figure of a scheme and not a probability, not calibrated, made for the grid,
 * the levels and the errors of one forecast model. Fed with a sounding it is a different thing from
 * what the service publishes, which also draws on convection and precipitation. It knows no drop
 * sizes. A potential of 0 is not "no icing".
 *
 * @source post-processor of the US National Centers for Environmental Prediction, public source of
 *     its global forecast icing module (2015); where it does not state a unit (relative humidity
 *     over water, vertical velocity in Pa/s, cloud water in g/kg) the unit here is assumed
 */
public final class IcingInterest {
    private static final ModelRange TEMPERATURE =
            new ModelRange("static air temperature", 100.0, 400.0, "K", "no air is outside");

    private static final ModelRange CLOUD_TOP =
            new ModelRange("cloud top temperature", 100.0, 400.0, "K", "no air is outside");

    private static final ModelRange HUMIDITY =
            new ModelRange("relative humidity", 0.0, 1.0, "", "a ratio: saturated air has 1");

    private static final ModelRange VERTICAL_VELOCITY =
            new ModelRange(
                    "vertical velocity", -1000.0, 1000.0, "Pa/s", "no air rises or sinks faster");

    private static final ModelRange CLOUD_WATER =
            new ModelRange("cloud water", 0.0, 0.1, "kg/kg", "no cloud holds more");

    private static final ModelRange ENERGY =
            new ModelRange(
                    "convective available potential energy",
                    0.0,
                    20000.0,
                    "J/kg",
                    "no air has more");

    private static final ModelRange POTENTIAL =
            new ModelRange("initial potential", 0.0, 1.0, "", "a product of interests");

    private static final double LEAST_CLOUD_WATER = UnitScale.GRAM_PER_KILOGRAM.toSi(0.001);
    private static final double FULL_CLOUD_WATER = UnitScale.GRAM_PER_KILOGRAM.toSi(0.2);

    private static final double LEAST_INITIAL = 0.001;

    private static final double[] DAMPING_K = {
        248.15, 248.65, 249.15, 251.15, 253.15, 255.15, 257.15, 259.15, 261.15
    };
    private static final double[] DAMPING = {
        1.0, 0.8039, 0.7226, 0.5196, 0.3798, 0.2662, 0.1679, 0.0801, 0.0
    };
    private static final double[] CONVECTIVE_K = {
        243.15, 265.15, 269.15, 270.15, 271.15, 272.15, 273.15
    };
    private static final double[] CONVECTIVE = {0.0, 1.0, 1.0, 0.87, 0.71, 0.5, 0.0};

    private IcingInterest() {}

    /** Which form of the scheme is meant, where its code has an oddity. */
    public enum Form {
        /** What the public code computes, to the letter. */
        AS_CODED,
        /** Without its holes, and with the ramp that its comment describes. */
        MENDED
    }

    /**
     * Tells whether the functions take a temperature, of air or of a cloud top.
     *
     * @param temperatureK temperature [K]
     * @return true from 100 to 400 K
     */
    public static boolean coversTemperature(double temperatureK) {
        return TEMPERATURE.covers(temperatureK);
    }

    /**
     * Tells whether the functions take a relative humidity.
     *
     * @param relativeHumidity over liquid water, a ratio
     * @return true from 0 to 1
     */
    public static boolean coversRelativeHumidity(double relativeHumidity) {
        return HUMIDITY.covers(relativeHumidity);
    }

    /**
     * Tells whether the functions take a vertical velocity.
     *
     * @param verticalVelocityPaPerS change of pressure with time [Pa/s]
     * @return true from -1000 to 1000
     */
    public static boolean coversVerticalVelocity(double verticalVelocityPaPerS) {
        return VERTICAL_VELOCITY.covers(verticalVelocityPaPerS);
    }

    /**
     * Tells whether the functions take an amount of cloud water.
     *
     * @param cloudWaterKgPerKg mass of cloud water per mass of air [kg/kg]
     * @return true from 0 to 0.1
     */
    public static boolean coversCloudWater(double cloudWaterKgPerKg) {
        return CLOUD_WATER.covers(cloudWaterKgPerKg);
    }

    /**
     * Tells whether the functions take an energy.
     *
     * @param energyJPerKg convective available potential energy [J/kg]
     * @return true from 0 to 20,000
     */
    public static boolean coversConvectiveEnergy(double energyJPerKg) {
        return ENERGY.covers(energyJPerKg);
    }

    /**
     * Returns how much a temperature speaks for icing, in the mended form.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @return interest from 0 to 1: {@code ((T - 248.15) / 15)^1.5} up to 263.15 K, 1 up to 268.15
     *     K, {@code ((273.15 - T) / 5)^0.75} up to 273.15 K, else 0
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-12 of the formula; 1e-10 near 273.15 K, where the last digit of the temperature
     *     counts
     * @source see the class comment
     */
    public static double ofTemperature(double temperatureK) {
        return ofTemperature(temperatureK, Form.MENDED);
    }

    /**
     * Returns how much a temperature speaks for icing.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @param form as coded, the interest is 0 at exactly 268.15 K
     * @return interest from 0 to 1
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-12 of the formula; 1e-10 near 273.15 K, where the last digit of the temperature
     *     counts
     * @source see the class comment
     */
    public static double ofTemperature(double temperatureK, Form form) {
        TEMPERATURE.check(temperatureK);
        if (temperatureK <= 248.15 || temperatureK >= 273.15) {
            return 0.0;
        }
        if (temperatureK < 263.15) {
            double share = (temperatureK - 248.15) / 15.0;
            return share * Math.sqrt(share);
        }
        if (temperatureK > 268.15) {
            double root = Math.sqrt((273.15 - temperatureK) / 5.0);
            return root * Math.sqrt(root);
        }
        return temperatureK == 268.15 && form == Form.AS_CODED ? 0.0 : 1.0;
    }

    /**
     * Returns how much a relative humidity speaks for icing.
     *
     * @param relativeHumidity over liquid water, a ratio from 0 to 1
     * @return interest from 0 to 1: {@code ((RH - 0.50) / 0.45)^3} from 50 to 95 %, 0 below and 1
     *     above
     * @throws org.climbwright.quantity.OutsideModelException if the humidity is out of range
     * @accuracy 1e-14 of the formula
     * @source see the class comment
     */
    public static double ofRelativeHumidity(double relativeHumidity) {
        double share = (HUMIDITY.check(relativeHumidity) - 0.50) / 0.45;
        double inside = Math.max(0.0, Math.min(1.0, share));
        return inside * inside * inside;
    }

    /**
     * Returns how much the temperature at the top of the cloud speaks for icing, in the mended
     * form.
     *
     * @param cloudTopK static air temperature at the top of the cloud [K], 100 to 400
     * @return interest from 0 to 1: 0.2 up to 223 K, {@code 0.2 + 0.8 ((T - 223) / 38)^2} up to 261
     *     K, 1 up to 280 K, 0 above
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-14 of the formula; it jumps at 280 K
     * @source see the class comment
     */
    public static double ofCloudTop(double cloudTopK) {
        return ofCloudTop(cloudTopK, Form.MENDED);
    }

    /**
     * Returns how much the temperature at the top of the cloud speaks for icing.
     *
     * @param cloudTopK static air temperature at the top of the cloud [K], 100 to 400
     * @param form as coded, the interest is 0 at exactly 223.0 K
     * @return interest from 0 to 1
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-14 of the formula; it jumps at 280 K
     * @source see the class comment
     */
    public static double ofCloudTop(double cloudTopK, Form form) {
        CLOUD_TOP.check(cloudTopK);
        if (cloudTopK <= 223.0) {
            return cloudTopK == 223.0 && form == Form.AS_CODED ? 0.0 : 0.2;
        }
        if (cloudTopK < 261.0) {
            double share = (cloudTopK - 223.0) / 38.0;
            return 0.2 + 0.8 * share * share;
        }
        return cloudTopK <= 280.0 ? 1.0 : 0.0;
    }

    /**
     * Returns how much rising air speaks for icing.
     *
     * @param verticalVelocityPaPerS change of pressure with time [Pa/s], negative upwards, -1000 to
     *     1000; the unit is assumed
     * @return interest from 0 to 1: {@code -w / 0.5} from -0.5 to 0 Pa/s, 1 below and 0 above
     * @throws org.climbwright.quantity.OutsideModelException if the velocity is out of range
     * @accuracy exact
     * @source see the class comment
     */
    public static double ofVerticalVelocity(double verticalVelocityPaPerS) {
        double share = -VERTICAL_VELOCITY.check(verticalVelocityPaPerS) / 0.5;
        return Math.max(0.0, Math.min(1.0, share));
    }

    /**
     * Returns how much the water of the cloud speaks for icing.
     *
     * <p>The scheme asks it only where the cloud top is from 259.15 to 273.15 K; {@link #potential}
     * does so.
     *
     * @param cloudWaterKgPerKg mass of supercooled cloud water per mass of air [kg/kg], 0 to 0.1;
     *     the unit is assumed
     * @return interest from 0 to 1: 0 up to 1e-6 kg/kg, then the share of 2e-4 kg/kg, at most 1
     * @throws org.climbwright.quantity.OutsideModelException if the amount is out of range
     * @accuracy 2 ulp; it jumps by 0.005 at 1e-6 kg/kg
     * @source see the class comment
     */
    public static double ofCloudWater(double cloudWaterKgPerKg) {
        CLOUD_WATER.check(cloudWaterKgPerKg);
        return cloudWaterKgPerKg <= LEAST_CLOUD_WATER
                ? 0.0
                : Math.min(1.0, cloudWaterKgPerKg / FULL_CLOUD_WATER);
    }

    /**
     * Returns the potential before vertical velocity and cloud water, in the mended form.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @param relativeHumidity over liquid water, a ratio from 0 to 1
     * @param cloudTopK static air temperature at the top of the cloud [K], 100 to 400
     * @return the product of the three interests, from 0 to 1
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-12 of the formula; 1e-10 near 273.15 K, where the last digit of the temperature
     *     counts
     * @source see the class comment
     */
    public static double initialPotential(
            double temperatureK, double relativeHumidity, double cloudTopK) {
        return ofTemperature(temperatureK)
                * ofRelativeHumidity(relativeHumidity)
                * ofCloudTop(cloudTopK);
    }

    /**
     * Returns the potential, raised by rising air and by the water of the cloud.
     *
     * <p>{@code P = P0 + (1 - P0) (0.25 W + 0.4 S)}, if P0 is above 0.001, else P0. Whoever does
     * not know one of the two has P0 as a lower bound, and must not put in 0 for it and call that
     * the potential.
     *
     * @param initialPotential {@link #initialPotential}, from 0 to 1
     * @param verticalVelocityPaPerS change of pressure with time [Pa/s], negative upwards, -1000 to
     *     1000
     * @param cloudWaterKgPerKg mass of supercooled cloud water per mass of air [kg/kg], 0 to 0.1
     * @param cloudTopK static air temperature at the top of the cloud [K], 100 to 400; outside
     *     259.15 to 273.15 the cloud water does not count
     * @return from the initial potential to 1
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-14 of the formula
     * @source see the class comment
     */
    public static double potential(
            double initialPotential,
            double verticalVelocityPaPerS,
            double cloudWaterKgPerKg,
            double cloudTopK) {
        POTENTIAL.check(initialPotential);
        CLOUD_TOP.check(cloudTopK);
        double rising = ofVerticalVelocity(verticalVelocityPaPerS);
        double water = ofCloudWater(cloudWaterKgPerKg);
        if (!(cloudTopK >= 259.15 && cloudTopK <= 273.15)) {
            water = 0.0;
        }
        return initialPotential > LEAST_INITIAL
                ? initialPotential + (1.0 - initialPotential) * (0.25 * rising + 0.4 * water)
                : initialPotential;
    }

    /**
     * Returns how much the cold damps the severity of icing.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @return damping from 0 to 1: 1 up to 248.15 K, falling through listed nodes to 0 at 261.15 K,
     *     0 above in either form (the fourth oddity of the class comment)
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy exact at the nodes, straight between; the nodes have four decimals
     * @source see the class comment
     */
    public static double severityDamping(double temperatureK) {
        return straight(DAMPING_K, DAMPING, TEMPERATURE.check(temperatureK));
    }

    /**
     * Returns how much a temperature speaks for icing in convection.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @return interest from 0 to 1: 0 up to 243.15 K, 1 from 265.15 to 269.15 K, 0 from 273.15 K
     *     on, straight between listed nodes
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy exact at the nodes, straight between; the nodes have two decimals
     * @source see the class comment
     */
    public static double ofTemperatureInConvection(double temperatureK) {
        return straight(CONVECTIVE_K, CONVECTIVE, TEMPERATURE.check(temperatureK));
    }

    /**
     * Returns how much the energy of convection speaks for icing, in the mended form.
     *
     * @param energyJPerKg convective available potential energy [J/kg], 0 to 20,000
     * @return interest from 0 to 1: {@code (E - 1000) / 1500} from 1,000 to 2,500 J/kg
     * @throws org.climbwright.quantity.OutsideModelException if the energy is out of range
     * @accuracy exact
     * @source see the class comment
     */
    public static double ofConvectiveEnergy(double energyJPerKg) {
        return ofConvectiveEnergy(energyJPerKg, Form.MENDED);
    }

    /**
     * Returns how much the energy of convection speaks for icing.
     *
     * @param energyJPerKg convective available potential energy [J/kg], 0 to 20,000
     * @param form as coded, the ramp is divided by 1,400 and reaches 1.071 below 2,500 J/kg
     * @return interest from 0 to 1, as coded to 1.071
     * @throws org.climbwright.quantity.OutsideModelException if the energy is out of range
     * @accuracy exact
     * @source see the class comment
     */
    public static double ofConvectiveEnergy(double energyJPerKg, Form form) {
        ENERGY.check(energyJPerKg);
        if (energyJPerKg >= 2500.0) {
            return 1.0;
        }
        double width = form == Form.AS_CODED ? 1400.0 : 1500.0;
        return energyJPerKg <= 1000.0 ? 0.0 : (energyJPerKg - 1000.0) / width;
    }

    /** Straight between nodes, and as at the first and the last one beyond. */
    private static double straight(double[] at, double[] values, double x) {
        int last = at.length - 1;
        if (x <= at[0]) {
            return values[0];
        }
        if (x >= at[last]) {
            return values[last];
        }
        int i = 0;
        while (x >= at[i + 1]) {
            i++;
        }
        double share = (x - at[i]) / (at[i + 1] - at[i]);
        return values[i] + share * (values[i + 1] - values[i]);
    }
}
