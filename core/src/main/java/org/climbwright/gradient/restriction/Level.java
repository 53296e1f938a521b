package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * A level as it is cleared or published: an altitude on QNH or a flight level, and which of the two
 * it is.
 *
 * <p>There is no order among levels: 10,000 ft on QNH and FL100 are the same surface on 1013.25 hPa
 * alone. The QNH of the day makes a pressure altitude of both, and those compare.
 *
 * <pre>{@code
 * AltimeterSetting qnh = AltimeterSetting.ofHectopascals(1003);
 * Level level = Level.of(AltitudeOnQnh.ofFeet(10000));
 * level.pressureAltitude(qnh).inFeet()                        // 10281.08…
 * level.reading(PressureAltitude.ofFlightLevel(100), qnh)     // 9718.9 ft on QNH
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, not for use in flight. Which reference a level has is
 * a matter of the clearance, the published procedure and the transition altitude of the place.
 */
public final class Level implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Reference reference;
    private final double metres;

    private Level(Reference reference, double metres) {
        this.reference = reference;
        this.metres = metres;
    }

    /** What the altimeter is set to when it shows a level. */
    public enum Reference {
        /** The QNH of the day: the level is an altitude. */
        QNH,
        /** 1013.25 hPa: the level is a flight level. */
        STANDARD
    }

    /**
     * Returns a level that is an altitude.
     *
     * @param altitude altitude on the QNH of the day
     * @return the level
     */
    public static Level of(AltitudeOnQnh altitude) {
        return new Level(Reference.QNH, altitude.inMetres());
    }

    /**
     * Returns a level that is a flight level.
     *
     * @param altitude pressure altitude
     * @return the level
     */
    public static Level of(PressureAltitude altitude) {
        return new Level(Reference.STANDARD, altitude.inMetres());
    }

    /**
     * Returns what the level refers to.
     *
     * @return QNH or 1013.25 hPa
     */
    public Reference reference() {
        return reference;
    }

    /**
     * Returns the number that the altimeter shows at this level, set to its reference.
     *
     * @return feet, as they came in; 10000 for FL100
     */
    public double inFeet() {
        return PressureAltitude.ofMetres(metres).inFeet();
    }

    /**
     * Returns the pressure altitude of this level on a day.
     *
     * @param qnhPa altimeter setting [Pa], 0.886 to 177687; a flight level does not ask for it
     * @return pressure altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m; a flight level's own number
     * @source {@link Altimetry#pressureAltitude(double, double)}
     */
    public double pressureAltitude(double qnhPa) {
        return reference == Reference.QNH ? Altimetry.pressureAltitude(metres, qnhPa) : metres;
    }

    /**
     * Returns the pressure altitude of this level on a day.
     *
     * @param qnh altimeter setting of the day
     * @return pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if the level is out of range
     */
    public PressureAltitude pressureAltitude(AltimeterSetting qnh) {
        return PressureAltitude.ofMetres(pressureAltitude(qnh.inPascals()));
    }

    /**
     * Returns what the altimeter shows at a pressure altitude, set to the reference of this level.
     *
     * @param altitude pressure altitude of the aeroplane
     * @param qnh altimeter setting of the day
     * @return the reading, in the same reference as this level
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     */
    public Level reading(PressureAltitude altitude, AltimeterSetting qnh) {
        return reference == Reference.QNH
                ? of(Altimetry.altitudeOnQnh(altitude, qnh))
                : of(altitude);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Level that
                && reference == that.reference
                && Double.compare(metres, that.metres) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(reference, metres);
    }

    /**
     * Returns the level for reading.
     *
     * @return a text such as {@code "3000 ft on QNH"}, {@code "FL120"} or, between whole levels,
     *     {@code "12050 ft on the standard setting"}; may change between versions
     */
    @Override
    public String toString() {
        if (reference == Reference.QNH) {
            return Figures.feet(metres) + " on QNH";
        }
        double level = PressureAltitude.ofMetres(metres).inFlightLevels();
        boolean isWhole = Math.abs(level - Math.rint(level)) < 0.0005;
        return isWhole
                ? "FL" + String.format(Locale.ROOT, "%03.0f", level)
                : Figures.feet(metres) + " on the standard setting";
    }

    private Object readResolve() {
        return Objects.requireNonNull(reference, "reference") == Reference.QNH
                ? of(AltitudeOnQnh.ofMetres(metres))
                : of(PressureAltitude.ofMetres(metres));
    }
}
