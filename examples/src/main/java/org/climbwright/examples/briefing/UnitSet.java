package org.climbwright.examples.briefing;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A consistent set of units for all columns and figures of a briefing. */
public enum UnitSet {
    /** Feet, knots, feet per minute, nautical miles, pounds per square inch. */
    FEET_KNOTS(
            "feet-knots",
            FigureUnit.FEET,
            FigureUnit.KNOTS,
            FigureUnit.FEET_PER_MINUTE,
            FigureUnit.NAUTICAL_MILES,
            FigureUnit.FEET_PER_NAUTICAL_MILE,
            FigureUnit.POUNDS_PER_SQUARE_INCH),
    /** Metres, kilometres per hour, metres per second, kilometres, kilopascals. */
    METRIC(
            "metric",
            FigureUnit.METRES,
            FigureUnit.KILOMETRES_PER_HOUR,
            FigureUnit.METRES_PER_SECOND,
            FigureUnit.KILOMETRES,
            FigureUnit.METRES_PER_KILOMETRE,
            FigureUnit.KILOPASCALS);

    private final String option;
    private final FigureUnit altitude;
    private final FigureUnit speed;
    private final FigureUnit verticalRate;
    private final FigureUnit distance;
    private final FigureUnit heightOverDistance;
    private final FigureUnit differential;

    UnitSet(
            String option,
            FigureUnit altitude,
            FigureUnit speed,
            FigureUnit verticalRate,
            FigureUnit distance,
            FigureUnit heightOverDistance,
            FigureUnit differential) {
        this.option = option;
        this.altitude = altitude;
        this.speed = speed;
        this.verticalRate = verticalRate;
        this.distance = distance;
        this.heightOverDistance = heightOverDistance;
        this.differential = differential;
    }

    /** The set that an option names. */
    static UnitSet named(String option) {
        return Arrays.stream(values())
                .filter(set -> set.option.equalsIgnoreCase(option))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "expected "
                                                + Arrays.stream(values())
                                                        .map(UnitSet::toString)
                                                        .collect(Collectors.joining(" or "))
                                                + " but was '"
                                                + option
                                                + "'"));
    }

    /**
     * Returns the unit of altitudes, heights and what is left of them.
     *
     * @return ft or m
     */
    public FigureUnit altitude() {
        return altitude;
    }

    /**
     * Returns the unit of airspeeds, ground speed and wind.
     *
     * @return kn or km/h
     */
    public FigureUnit speed() {
        return speed;
    }

    /**
     * Returns the unit of rates of climb, of the cabin too.
     *
     * @return ft/min or m/s
     */
    public FigureUnit verticalRate() {
        return verticalRate;
    }

    /**
     * Returns the unit of distances over the ground.
     *
     * @return NM or km
     */
    public FigureUnit distance() {
        return distance;
    }

    /**
     * Returns the unit of a gradient that is not in percent.
     *
     * @return ft/NM or m/km
     */
    public FigureUnit heightOverDistance() {
        return heightOverDistance;
    }

    /**
     * Returns the unit of differential pressure.
     *
     * @return psi or kPa
     */
    public FigureUnit differential() {
        return differential;
    }

    /**
     * Returns the unit of temperatures, the same in each set.
     *
     * @return °C
     */
    public FigureUnit temperature() {
        return FigureUnit.DEGREES_CELSIUS;
    }

    /**
     * Returns the unit of differences of temperature, the same in each set.
     *
     * @return K
     */
    public FigureUnit temperatureDifference() {
        return FigureUnit.KELVINS;
    }

    /**
     * Returns the unit of masses and of fuel, the same in each set.
     *
     * @return kg
     */
    public FigureUnit mass() {
        return FigureUnit.KILOGRAMS;
    }

    /**
     * Returns the unit of fuel flow, the same in each set.
     *
     * @return kg/h
     */
    public FigureUnit fuelFlow() {
        return FigureUnit.KILOGRAMS_PER_HOUR;
    }

    /**
     * Returns the unit of altimeter settings, the same in each set.
     *
     * @return hPa
     */
    public FigureUnit altimeterSetting() {
        return FigureUnit.HECTOPASCALS;
    }

    /**
     * Returns the name by which the program knows it.
     *
     * @return the value of its option
     */
    @Override
    public String toString() {
        return option;
    }
}
