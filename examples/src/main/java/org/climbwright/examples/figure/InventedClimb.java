package org.climbwright.examples.figure;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.ClimbAir;
import org.climbwright.profile.AeroplaneClimb;
import org.climbwright.profile.ClimbProgramme;
import org.climbwright.profile.HeldLevel;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.sounding.UnobservedWind;

/**
 * The {@link InventedJet} out of an invented aerodrome, towards the north through an observed
 * winter's air.
 *
 * <p>Limits of use: for study, not for use in flight. The flight manual, the operator's procedures,
 * local regulations and licensed practice decide.
 */
public final class InventedClimb {
    /** Where it is to end. */
    public static final PressureAltitude LEVEL = PressureAltitude.ofFlightLevel(350);

    private static final String SOUNDING =
            "/org/climbwright/examples/briefing/norman-january-20.csv";
    private static final GeopotentialAltitude AERODROME = GeopotentialAltitude.ofFeet(1200);
    private static final double SHARE_WHILE_ACCELERATING = 0.4;

    private InventedClimb() {}

    /**
     * Returns what a balloon observed.
     *
     * @return the sounding bundled with the examples
     */
    public static Sounding sounding() {
        try (var stream = InventedClimb.class.getResourceAsStream(SOUNDING)) {
            if (stream == null) {
                throw new IllegalStateException("the examples come with " + SOUNDING);
            }
            var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return SoundingReader.read(reader.lines().toList()).soundings().get(0);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Returns the air along the track.
     *
     * @return air and winds of the sounding
     */
    public static ClimbAir air() {
        Sounding sounding = sounding();
        return ClimbAir.of(
                sounding.atmosphere(),
                sounding.winds(UnobservedWind.NOT_KNOWN),
                TrueDirection.ofDegrees(360));
    }

    /**
     * Returns where it begins.
     *
     * @param air the air of the day
     * @return the pressure altitude of the aerodrome
     */
    public static PressureAltitude bottom(Atmosphere air) {
        return air.at(AERODROME).pressureAltitude();
    }

    /**
     * Returns the altimeter setting.
     *
     * @param air the air of the day
     * @return the QNH that the air gives at the aerodrome
     */
    public static AltimeterSetting qnh(Atmosphere air) {
        return Altimetry.qnh(air.at(AERODROME).staticPressure(), AERODROME);
    }

    /**
     * Returns how it is flown where nothing is in the way.
     *
     * @return 250 kn to 10,000 ft, 290 kn, Mach 0.77
     */
    public static ClimbProgramme programme() {
        SpeedSchedule speeds =
                SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.77))
                        .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000));
        return ClimbProgramme.of(speeds, SHARE_WHILE_ACCELERATING);
    }

    /**
     * Returns how it is flown with a level held for a minute, and restrictions that are invented
     * too.
     *
     * @param qnh altimeter setting of the day
     * @return the programme
     */
    public static ClimbProgramme restricted(AltimeterSetting qnh) {
        return programme()
                .withHeldLevels(
                        List.of(
                                HeldLevel.during(
                                        PressureAltitude.ofFlightLevel(150),
                                        Duration.ofSeconds(60))))
                .withRestrictions(restrictions(), qnh);
    }

    private static List<Restriction> restrictions() {
        return List.of(
                restriction(
                        "ALDER",
                        6,
                        AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(4000)))),
                restriction("BIRCH", 20, AltitudeRestriction.between(level(100), level(130))),
                restriction("CEDAR", 60, AltitudeRestriction.atOrBelow(level(210))),
                restriction("HAZEL", 85, AltitudeRestriction.atOrAbove(level(270))));
    }

    private static Restriction restriction(
            String name, double nauticalMiles, AltitudeRestriction altitude) {
        return Restriction.of(name, GroundDistance.ofNauticalMiles(nauticalMiles), altitude);
    }

    private static Level level(double flightLevel) {
        return Level.of(PressureAltitude.ofFlightLevel(flightLevel));
    }

    /**
     * Returns the climb.
     *
     * @param programme how it is flown
     * @param air air and winds along the track
     * @return what is to be flown
     */
    public static AeroplaneClimb climb(ClimbProgramme programme, ClimbAir air) {
        return new AeroplaneClimb(InventedJet.aeroplane(), InventedJet.MASS, programme, air);
    }
}
