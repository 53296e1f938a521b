package org.climbwright.atmosphere.altimetry;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.unit.UnitScale;

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
 * <p>The standard setting is 1013.25 hPa: a reported QNH of 1013 hPa is below it, and puts the
 * level 500 ft up.
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
    /**
     * Makes it of parts that are all there.
     *
     * @param level see above
     * @param layer see above
     */
    public TransitionLevel {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(layer, "layer");
    }

    private static final ModelRange TRANSITION_ALTITUDE =
            new ModelRange(
                    "transition altitude",
                    UnitScale.FOOT.toSi(1000.0),
                    UnitScale.FOOT.toSi(30000.0),
                    "m",
                    "no state has one outside 1,000 to 30,000 ft");

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
     * @param transitionAltitude the altitude at or below which QNH is flown, 1,000 to 30,000 ft
     * @param qnh altimeter setting
     * @param minimum how thick the layer must be
     * @return the lowest flight level by 500 ft that leaves the layer
     * @throws org.climbwright.quantity.OutsideModelException if the transition altitude is out of
     *     range
     * @accuracy exact, but for a layer that misses its minimum by less than 1e-6 ft
     */
    public static TransitionLevel above(
            AltitudeOnQnh transitionAltitude, AltimeterSetting qnh, MinimumLayer minimum) {
        TRANSITION_ALTITUDE.check(transitionAltitude.inMetres());
        PressureAltitude altitude = Altimetry.pressureAltitude(transitionAltitude, qnh);
        double lowestFt = altitude.inFeet() + minimum.feet - ROUNDING_FT;
        PressureAltitude level =
                PressureAltitude.ofFeet(StrictMath.ceil(lowestFt / STEP_FT) * STEP_FT);
        return new TransitionLevel(level, level.minus(altitude));
    }
}
