package org.climbwright.atmosphere.altimetry;

import java.io.Serializable;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * The lowest flight level above a transition altitude, and the layer between them.
 *
 * <p>Levels go by 500 ft. How thick the layer must be is a convention that differs between states,
 * and so the caller says which.
 *
 * <pre>{@code
 * AltitudeOnQnh altitude = AltitudeOnQnh.ofFeet(5000);
 * AltimeterSetting qnh = AltimeterSetting.ofHectopascals(996);
 * TransitionLevel.above(altitude, qnh, TransitionLevel.MinimumLayer.NONE).level()
 *         .inFlightLevels()    // 55.0, and the layer is 26 ft thick
 * }</pre>
 *
 * <p>Limits of use: the transition level in use is the one that the air traffic service tells.
 *
 * @param level the transition level
 * @param layer its distance from the transition altitude, as an altimeter counts it
 * @source ICAO Doc 8168 volume III, part on altimeter setting procedures: the level is at or above
 *     the transition altitude, whatever the layer (from memory); a layer of at least 1,000 ft is
 *     common practice in several states, no source
 */
public record TransitionLevel(PressureAltitude level, AltitudeChange layer)
        implements Serializable {
    private static final double STEP_FT = 500.0;

    /** A transition altitude that is a flight level but for rounding is at that level. */
    private static final double ROUNDING_FT = 1e-6;

    /** How thick the transition layer must be at least. */
    public enum MinimumLayer {
        /** No minimum: the level is the next one at or above the transition altitude. */
        NONE(0.0),
        /** So thick that aeroplanes at either end are 1,000 ft apart. */
        ONE_THOUSAND_FEET(1000.0);

        private final double feet;

        MinimumLayer(double feet) {
            this.feet = feet;
        }
    }

    /**
     * Returns the transition level of a transition altitude and a QNH.
     *
     * @param transitionAltitude the altitude at or below which QNH is flown
     * @param qnh altimeter setting
     * @param minimum how thick the layer must be
     * @return the lowest flight level by 500 ft that leaves the layer
     * @accuracy exact, but for a layer that misses its minimum by less than 1e-6 ft
     */
    public static TransitionLevel above(
            AltitudeOnQnh transitionAltitude, AltimeterSetting qnh, MinimumLayer minimum) {
        PressureAltitude altitude = Altimetry.pressureAltitude(transitionAltitude, qnh);
        double lowestFt = altitude.inFeet() + minimum.feet - ROUNDING_FT;
        PressureAltitude level =
                PressureAltitude.ofFeet(StrictMath.ceil(lowestFt / STEP_FT) * STEP_FT);
        return new TransitionLevel(level, level.minus(altitude));
    }
}
