package org.climbwright.cabin;

import java.io.Serializable;
import java.util.List;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * The cabin altitude that a controller wants at each level of the aeroplane, before any limit.
 *
 * <pre>{@code
 * PressureAltitude cruise = PressureAltitude.ofFlightLevel(350);
 * CabinSchedule schedule =
 *         CabinSchedule.proportional(
 *                 PressureAltitude.ofFeet(0), CabinAltitude.ofFeet(0),
 *                 cruise, CabinAltitude.ofFeet(7000));
 * schedule.cabinAltitude(PressureAltitude.ofFeet(17500)).inFeet()  // 3500.0
 * schedule.inWords()  // "in proportion from 0 ft at 0 ft to 7…
 * }</pre>
 *
 * <p>It knows nothing of what the hull and the ears allow: {@link CabinPlan} limits it. Whoever has
 * a schedule of their own implements this interface.
 *
 * <p>Limits of use: for study and simulation. The flight manual and the operator's procedures tell
 * what the controller of an aeroplane does; local regulations and licensed practice decide.
 */
public interface CabinSchedule extends Serializable {
    /**
     * A point of a schedule.
     *
     * @param aeroplane pressure altitude of the aeroplane
     * @param cabin the cabin altitude wanted there
     */
    record Row(PressureAltitude aeroplane, CabinAltitude cabin) implements Serializable {
        /**
         * Makes a point.
         *
         * @param aeroplane pressure altitude of the aeroplane, -5000 to 80000 m
         * @param cabin the cabin altitude wanted there, -5000 to 80000 m
         * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
         */
        public Row {
            CabinPressure.differential(cabin, aeroplane); // asked for its checks
        }
    }

    /**
     * Returns the cabin altitude wanted.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m]
     * @return cabin altitude [m], not limited by anything
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there
     */
    double cabinAltitudeM(double pressureAltitudeM);

    /**
     * Tells whether the schedule reaches a level.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m]
     * @return true where it answers
     */
    boolean covers(double pressureAltitudeM);

    /**
     * Returns the schedule in the words of the trade.
     *
     * @return a text; may change between versions
     */
    String inWords();

    /**
     * Returns where the schedule bends.
     *
     * <p>Whoever steps along it takes the stretches between one by one.
     *
     * @return pressure altitudes of the aeroplane [m], rising; none for a schedule without a bend
     */
    default double[] bendsM() {
        return new double[0];
    }

    /**
     * Returns the cabin altitude wanted.
     *
     * @param aeroplane pressure altitude of the aeroplane
     * @return cabin altitude, not limited by anything
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there
     */
    default CabinAltitude cabinAltitude(PressureAltitude aeroplane) {
        return CabinAltitude.ofMetres(cabinAltitudeM(aeroplane.inMetres()));
    }

    /**
     * Returns the schedule that holds one cabin altitude.
     *
     * @param cabin the altitude to hold, -5000 to 80000 m
     * @return the schedule, for every level from -5000 to 80000 m
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     */
    static CabinSchedule isobaric(CabinAltitude cabin) {
        return new HeldAltitude(cabin);
    }

    /**
     * Returns the schedule that holds one differential pressure.
     *
     * <p>Alone it blows the cabin to below the field on the ground: what it is for is the climb
     * above the knee of an isobaric one. A differential of 0 is a cabin at the aeroplane's
     * altitude, as far as the rate limits let it.
     *
     * @param differential the differential to hold, 0 or more
     * @return the schedule, for every level at which such a cabin is from -5000 to 80000 m
     * @throws IllegalArgumentException if the differential is below 0
     */
    static CabinSchedule constantDifferential(DifferentialPressure differential) {
        return new HeldDifferential(differential);
    }

    /**
     * Returns the schedule that climbs the cabin in proportion to the aeroplane.
     *
     * <p>In proportion means: straight in altitudes between two pairs, so that each foot of the
     * aeroplane is the same share of a foot in the cabin; not straight in pressures. Below the
     * first pair and above the second the cabin altitude of that pair is held. That controllers
     * climb so is common practice, no source.
     *
     * @param fromAeroplane pressure altitude of the aeroplane at the lower pair
     * @param fromCabin cabin altitude there
     * @param toAeroplane pressure altitude of the aeroplane at the upper pair, above the lower
     * @param toCabin cabin altitude there; may be lower, from a high field
     * @return the schedule, for every level from -5000 to 80000 m
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @throws IllegalArgumentException if the aeroplane does not climb from pair to pair
     */
    static CabinSchedule proportional(
            PressureAltitude fromAeroplane,
            CabinAltitude fromCabin,
            PressureAltitude toAeroplane,
            CabinAltitude toCabin) {
        return new ScheduleRows(
                List.of(new Row(fromAeroplane, fromCabin), new Row(toAeroplane, toCabin)), true);
    }

    /**
     * Returns a schedule of a table, straight between its rows.
     *
     * @param rows two or more, strictly rising in the aeroplane's altitude
     * @return the schedule, from its first row to its last and for no other level
     * @throws IllegalArgumentException if there are fewer, or they do not rise
     */
    static CabinSchedule table(List<Row> rows) {
        return new ScheduleRows(rows, false);
    }

    /**
     * Returns what an automatic controller selects for a flight: in proportion from the departure
     * to the cruise level, where the cabin then is at the higher of the landing field and what the
     * scheduled differential gives.
     *
     * <p>With a margin the differential stays below the scheduled one at the cruise level, so that
     * the aeroplane can rise by the margin before it is reached: the cabin is the one that the
     * scheduled differential gives that much higher. So small departures from the level do not bump
     * against the limit.
     *
     * @param departure pressure altitude of the departure field
     * @param landing pressure altitude of the landing field, see {@link CabinPlan#field}
     * @param cruise pressure altitude of the cruise level, above the departure
     * @param scheduled the scheduled differential, 0 or more
     * @param margin altitude of the aeroplane that the differential keeps in hand, 0 or more; 500
     *     ft in the source
     * @return the schedule, for every level from -5000 to 80000 m
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @throws IllegalArgumentException if the cruise level is not above the departure, or the
     *     differential or the margin is below 0
     * @source that the differential is held below the maximum by 500 ft of aircraft altitude: a
     *     message in the archive of the newsgroup sci.aeronautics, 1997.2427; the rest common
     *     practice, no source
     */
    static CabinSchedule forCruise(
            PressureAltitude departure,
            PressureAltitude landing,
            PressureAltitude cruise,
            DifferentialPressure scheduled,
            AltitudeChange margin) {
        if (!(margin.inMetres() >= 0.0)) {
            throw new IllegalArgumentException(
                    "the margin of a cruise must be 0 ft or more, but was " + margin.text());
        }
        double lowest =
                constantDifferential(scheduled).cabinAltitudeM(cruise.plus(margin).inMetres());
        return proportional(
                departure,
                CabinAltitude.ofMetres(departure.inMetres()),
                cruise,
                CabinAltitude.ofMetres(Math.max(landing.inMetres(), lowest)));
    }
}
