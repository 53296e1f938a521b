package org.climbwright.cabin.dynamics;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.ModelRange;

/**
 * A pressurised hull: its volume, its air, what feeds it and what lets air out.
 *
 * <p>Figures of an aeroplane are yours. Areas are effective ones, the discharge coefficient in
 * them.
 *
 * @param volumeM3 volume under pressure [m³], 0.1 to 10,000
 * @param cabinTemperatureK temperature of the cabin [K], 200 to 350; held where the air is
 *     isothermal, that at the beginning where it is adiabatic
 * @param inflowKgPerS what the air conditioning feeds in [kg/s], 0 to 100
 * @param inflowTemperatureK temperature of that air [K], 200 to 400; matters to adiabatic air alone
 * @param leakAreaM2 effective area of all leaks [m²], 0 to 1
 * @param valveAreaM2 effective area of the outflow valve fully open [m²], above 0 to 10
 * @param air whether the temperature is held
 */
public record CabinHull(
        double volumeM3,
        double cabinTemperatureK,
        double inflowKgPerS,
        double inflowTemperatureK,
        double leakAreaM2,
        double valveAreaM2,
        CabinAir air)
        implements Serializable {
    private static final ModelRange VOLUME =
            new ModelRange("volume of the cabin", 0.1, 1e4, "m³", "no aeroplane has another");

    private static final ModelRange TEMPERATURE =
            new ModelRange("temperature of the cabin", 200.0, 350.0, "K", "nobody could be there");

    private static final ModelRange INFLOW =
            new ModelRange("inflow of the cabin", 0.0, 100.0, "kg/s", "no engine gives more");

    private static final ModelRange INFLOW_TEMPERATURE =
            new ModelRange(
                    "temperature of the inflow",
                    200.0,
                    400.0,
                    "K",
                    "it is that behind the air conditioning");

    private static final ModelRange LEAK =
            new ModelRange(
                    "area of the leaks", 0.0, 1.0, "m²", "more is a hole, which is a failure");

    private static final ModelRange VALVE =
            new ModelRange(
                    "area of the outflow valve", 1e-6, 10.0, "m²", "it is an effective area");

    /**
     * Makes a hull.
     *
     * @param volumeM3 see above
     * @param cabinTemperatureK see above
     * @param inflowKgPerS see above
     * @param inflowTemperatureK see above
     * @param leakAreaM2 see above
     * @param valveAreaM2 see above
     * @param air see above
     * @throws org.climbwright.quantity.OutsideModelException if a number is out of its range
     */
    public CabinHull {
        VOLUME.check(volumeM3);
        TEMPERATURE.check(cabinTemperatureK);
        INFLOW.check(inflowKgPerS);
        INFLOW_TEMPERATURE.check(inflowTemperatureK);
        LEAK.check(leakAreaM2);
        VALVE.check(valveAreaM2);
        Objects.requireNonNull(air, "air");
    }

    /**
     * Returns this hull with its air of the other kind.
     *
     * @param other how its temperature goes
     * @return a copy that differs in it
     */
    public CabinHull withAir(CabinAir other) {
        return new CabinHull(
                volumeM3,
                cabinTemperatureK,
                inflowKgPerS,
                inflowTemperatureK,
                leakAreaM2,
                valveAreaM2,
                other);
    }

    /**
     * Returns this hull with leaks of another area, such as one that a ground test found.
     *
     * @param areaM2 effective area of all leaks [m²], 0 to 1
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if the area is out of range
     */
    public CabinHull withLeak(double areaM2) {
        return new CabinHull(
                volumeM3,
                cabinTemperatureK,
                inflowKgPerS,
                inflowTemperatureK,
                areaM2,
                valveAreaM2,
                air);
    }
}
