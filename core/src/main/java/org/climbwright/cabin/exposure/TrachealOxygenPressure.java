package org.climbwright.cabin.exposure;

import java.io.Serializable;
import java.util.Optional;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.unit.UnitScale;

/**
 * The partial pressure of oxygen in the windpipe, where what is breathed has been warmed and
 * moistened: {@code F (p - 47 mmHg)}, of the oxygen fraction F and the pressure of the cabin.
 *
 * <p>Not that in the lungs or in the blood, which is lower. Rules on oxygen equipment are written
 * in it: {@link Required} has their four figures, which are nearly those of a person who breathes
 * air at sea level, 5,000, 10,000 and 14,000 ft.
 *
 * <pre>{@code
 * TrachealOxygenPressure air =
 *         TrachealOxygenPressure.at(CabinAltitude.ofFeet(10000), TrachealOxygenPressure.AIR);
 * air.inMillimetresOfMercury()                                                    // 99.6…, mmHg
 * TrachealOxygenPressure.Required.PASSENGERS_TO_18500_FT.inMillimetresOfMercury() // 100.0
 * }</pre>
 *
 * <p>Limits of use: a mean over a breath of a mask that does not leak. Whether a person is well is
 * not in it. Equipment is certificated, and used as the flight manual says.
 *
 * @source 14 CFR 25.1443 for the quantity; water vapour of 47 mmHg at body temperature and 20.95 %
 *     of oxygen in air from memory
 */
public final class TrachealOxygenPressure
        implements Comparable<TrachealOxygenPressure>, Serializable {
    private static final long serialVersionUID = 1L;

    /** Oxygen in dry air, as a fraction by volume: 0.2095 (from memory). */
    public static final double AIR = 0.2095;

    private static final double WATER_VAPOUR_PA = UnitScale.MILLIMETRE_OF_MERCURY.toSi(47.0);

    private static final ModelRange CABIN =
            new ModelRange(
                    "cabin altitude",
                    -5000.0,
                    19000.0,
                    "m",
                    "a little higher up, water boils at body temperature");
    private static final ModelRange FRACTION =
            new ModelRange("oxygen fraction", 0.0, 1.0, "", "it is a part of what is breathed");

    /**
     * The least mean tracheal oxygen pressures that continuous flow and demand equipment must give.
     *
     * <p>Limits of use: figures of certification; flows of breathing and exceptions are in the
     * rule.
     *
     * @source 14 CFR 25.1443(a) to (c), text of 2003 and the identical CS 25.1443; 23.1443(b) has
     *     the same for small aeroplanes
     */
    public enum Required {
        /** Crew, continuous flow: 149 mmHg, 25.1443(a). */
        CREW_CONTINUOUS_FLOW("25.1443(a)", 149.0),
        /** Crew, demand equipment, up to a cabin altitude of 35,000 ft: 122 mmHg, 25.1443(b). */
        CREW_DEMAND("25.1443(b)", 122.0),
        /** Passengers, cabin altitude above 10,000 to 18,500 ft: 100 mmHg, 25.1443(c)(1). */
        PASSENGERS_TO_18500_FT("25.1443(c)(1)", 100.0),
        /** Passengers, cabin altitude above 18,500 to 40,000 ft: 83.8 mmHg, 25.1443(c)(2). */
        PASSENGERS_TO_40000_FT("25.1443(c)(2)", 83.8);

        private static final CabinAltitude LOWEST = CabinAltitude.ofFeet(10_000);
        private static final CabinAltitude MIDDLE = CabinAltitude.ofFeet(18_500);
        private static final CabinAltitude HIGHEST = CabinAltitude.ofFeet(40_000);

        private final String paragraph;
        private final double millimetresOfMercury;

        Required(String paragraph, double millimetresOfMercury) {
            this.paragraph = paragraph;
            this.millimetresOfMercury = millimetresOfMercury;
        }

        /**
         * Returns the figure for passengers at a cabin altitude.
         *
         * @param cabin cabin altitude
         * @return the figure, above 10,000 ft and up to and including 40,000 ft, each to 1e-6 m;
         *     empty elsewhere, where the rule has none
         */
        public static Optional<Required> forPassengers(CabinAltitude cabin) {
            if (!isAbove(cabin, LOWEST) || isAbove(cabin, HIGHEST)) {
                return Optional.empty();
            }
            return Optional.of(
                    isAbove(cabin, MIDDLE) ? PASSENGERS_TO_40000_FT : PASSENGERS_TO_18500_FT);
        }

        private static boolean isAbove(CabinAltitude cabin, CabinAltitude level) {
            return Level.isAbove(cabin.inMetres(), level.inMetres());
        }

        /**
         * Returns where the rule has the figure.
         *
         * @return the paragraph
         */
        public String paragraph() {
            return paragraph;
        }

        /**
         * Returns the figure as printed.
         *
         * @return pressure [mmHg]
         */
        public double inMillimetresOfMercury() {
            return millimetresOfMercury;
        }

        /**
         * Returns the figure as a value.
         *
         * @return the pressure
         */
        public TrachealOxygenPressure pressure() {
            return new TrachealOxygenPressure(
                    UnitScale.MILLIMETRE_OF_MERCURY.toSi(millimetresOfMercury));
        }
    }

    private final double pascals;

    private TrachealOxygenPressure(double pascals) {
        this.pascals = pascals;
    }

    /**
     * Tells whether there is a tracheal oxygen pressure.
     *
     * @param cabinAltitudeM cabin altitude [m]
     * @param oxygenFraction oxygen in what is breathed, by volume
     * @return true from -5000 to 19000 m, and from 0 to 1
     */
    public static boolean coversTrachealOxygenPressure(
            double cabinAltitudeM, double oxygenFraction) {
        return CABIN.covers(cabinAltitudeM) && FRACTION.covers(oxygenFraction);
    }

    /**
     * Returns the partial pressure of oxygen in the windpipe: {@code F (p - 47 mmHg)}.
     *
     * @param cabinAltitudeM cabin altitude [m], -5000 to 19000
     * @param oxygenFraction oxygen in what is breathed, by volume and dry, 0 to 1
     * @return partial pressure [Pa]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-13 relative up to 18 km, derived from that of the pressure; the water vapour is
     *     that of 37 °C, and a degree changes it by 2.6 mmHg (from memory)
     * @source see the class comment; the millimetre of mercury is the conventional one,
     *     133.322387415 Pa
     */
    public static double trachealOxygenPressure(double cabinAltitudeM, double oxygenFraction) {
        double pressurePa = StandardAir.pressureFromAltitude(CABIN.check(cabinAltitudeM));
        return FRACTION.check(oxygenFraction) * (pressurePa - WATER_VAPOUR_PA);
    }

    /**
     * Returns the tracheal oxygen pressure at a cabin altitude.
     *
     * @param cabin cabin altitude, -5000 to 19000 m
     * @param oxygenFraction oxygen in what is breathed, by volume and dry, 0 to 1; {@link #AIR}
     *     without a mask
     * @return see {@link #trachealOxygenPressure}
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static TrachealOxygenPressure at(CabinAltitude cabin, double oxygenFraction) {
        return new TrachealOxygenPressure(trachealOxygenPressure(cabin.inMetres(), oxygenFraction));
    }

    /**
     * Returns this pressure in pascals.
     *
     * @return the number [Pa]
     */
    public double inPascals() {
        return pascals;
    }

    /**
     * Returns this pressure in conventional millimetres of mercury.
     *
     * @return the number [mmHg]
     */
    public double inMillimetresOfMercury() {
        return UnitScale.MILLIMETRE_OF_MERCURY.fromSi(pascals);
    }

    @Override
    public int compareTo(TrachealOxygenPressure other) {
        return Double.compare(pascals, other.pascals);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TrachealOxygenPressure that
                && Double.compare(pascals, that.pascals) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(pascals);
    }

    /**
     * Returns the pressure for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return pascals + " Pa (" + inMillimetresOfMercury() + " mmHg)";
    }
}
