package org.climbwright.profile;

import java.util.Objects;
import java.util.function.UnaryOperator;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Bleed;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.EngineUse;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.TemperatureDifference;

/**
 * One thing that is otherwise about a climb, all else as it was.
 *
 * <p>A change of nothing gives the climb as it was, to the last bit of its figures. A change that
 * cannot be, such as a share below 0 or more off the mass than there is, is refused where it is
 * made of a climb.
 *
 * <p>Limits of use: whether a change may be flown, and what obstacles, limits and clearances say of
 * it, is for the flight manual, the operator and the controller; nothing here asks them.
 */
public final class ClimbChange {
    private static final ModelRange WARMER =
            new ModelRange(
                    "how much warmer the air is",
                    -50.0,
                    50.0,
                    "K",
                    "no day is farther from another at the same place");

    private final String text;
    private final Operation operation;

    /** What becomes of a climb that begins at a level. */
    @FunctionalInterface
    private interface Operation {
        AeroplaneClimb of(AeroplaneClimb climb, PressureAltitude bottom);
    }

    private ClimbChange(String text, Operation operation) {
        this.text = Objects.requireNonNull(text, "text");
        this.operation = operation;
    }

    /**
     * Returns a change of one's own, of whatever a climb is made of.
     *
     * @param text what is changed, in a few words
     * @param operation a climb in, the changed climb out
     * @return the change
     */
    public static ClimbChange of(String text, UnaryOperator<AeroplaneClimb> operation) {
        Objects.requireNonNull(operation, "operation");
        return new ClimbChange(text, (climb, bottom) -> operation.apply(climb));
    }

    /**
     * Returns more mass where the climb begins.
     *
     * @param more how much more
     * @return the change
     */
    public static ClimbChange heavierBy(Mass more) {
        return mass(more.text() + " heavier", more.inKilograms());
    }

    /**
     * Returns less mass where the climb begins.
     *
     * @param less how much less, not more than there is
     * @return the change
     */
    public static ClimbChange lighterBy(Mass less) {
        return mass(less.text() + " lighter", -less.inKilograms());
    }

    private static ClimbChange mass(String text, double moreKg) {
        return new ClimbChange(
                text,
                (climb, bottom) ->
                        new AeroplaneClimb(
                                climb.aeroplane(),
                                Mass.ofKilograms(climb.mass().inKilograms() + moreKg),
                                climb.programme(),
                                climb.air()));
    }

    /**
     * Returns air that is warmer by the same amount at every pressure, whatever air it is.
     *
     * <p>Where the climb begins, pressure and altitude stay; from there the warmer air is thicker.
     * The relative humidity over liquid water stays as it is, so that a warmer day holds more
     * vapour; where it is not known it stays so, and outside the saturation formula's 123 to 332 K
     * it is not known any more.
     *
     * @param more how much warmer, -50 to 50 K; negative for colder
     * @return the change; a climb refuses it where its air would not be from 100 to 400 K
     * @throws org.climbwright.quantity.OutsideModelException if it is out of range
     * @accuracy of the altitudes 1e-6 m, 0.01 m where the air bends
     * @source that the relative humidity stays: a choice of this library, between vapour that stays
     *     and humidity that is lost
     */
    public static ClimbChange warmerBy(TemperatureDifference more) {
        double kelvins = WARMER.check(more.inKelvins());
        return new ClimbChange(
                TemperatureDifference.ofKelvins(Math.abs(kelvins)).text()
                        + (kelvins < 0.0 ? " colder" : " warmer"),
                (climb, bottom) -> inAir(climb, warmer(climb.air(), kelvins, bottom)));
    }

    private static ClimbAir warmer(ClimbAir air, double kelvins, PressureAltitude bottom) {
        ModelRange range = air.air().range();
        double bottomPa = StandardAir.pressureFromAltitude(bottom.inMetres());
        // the pressure altitude of an end of the range gives its pressure back to some ulps only
        double datumPa = Math.max(range.lowest(), Math.min(range.highest(), bottomPa));
        return air.withAir(WarmerAir.of(air.air(), kelvins, datumPa));
    }

    /**
     * Returns the same wind along the track more at every level, whatever winds there are.
     *
     * @param more how much more, positive from behind, negative on the nose
     * @return the change; where the wind is not known it stays so
     */
    public static ClimbChange windBy(AlongTrackWind more) {
        double mps = more.inMetresPerSecond();
        return new ClimbChange(
                AlongTrackWind.ofMetresPerSecond(Math.abs(mps)).text()
                        + (mps < 0.0 ? " more headwind" : " more tailwind"),
                (climb, bottom) -> inAir(climb, windier(climb.air(), mps)));
    }

    private static ClimbAir windier(ClimbAir air, double alongMps) {
        double trackRad = air.track().inRadians();
        Wind more =
                Wind.ofComponents(
                        alongMps * StrictMath.sin(trackRad), alongMps * StrictMath.cos(trackRad));
        return air.withWinds(new MoreWind(air.winds(), more));
    }

    /**
     * Returns another calibrated airspeed below the crossover; Mach number, limit, rough air and
     * minimum stay.
     *
     * @param more how much faster; negative for slower
     * @return the change
     */
    public static ClimbChange calibratedAirspeedBy(AirspeedDifference more) {
        double mps = more.inMetresPerSecond();
        return new ClimbChange(
                AirspeedDifference.ofMetresPerSecond(Math.abs(mps)).text()
                        + (mps < 0.0 ? " slower" : " faster"),
                (climb, bottom) -> {
                    SpeedSchedule speeds = climb.programme().speeds();
                    double casMps = speeds.calibratedAirspeed().inMetresPerSecond() + mps;
                    return flown(
                            climb,
                            climb.programme()
                                    .withSpeeds(
                                            speeds.withSpeeds(
                                                    CalibratedAirspeed.ofMetresPerSecond(casMps),
                                                    speeds.mach())));
                });
    }

    /**
     * Returns another Mach number above the crossover; calibrated airspeed, limit, rough air and
     * minimum stay.
     *
     * @param more difference of Mach number; negative for slower
     * @return the change
     */
    public static ClimbChange machBy(double more) {
        return new ClimbChange(
                Mach.of(Math.abs(more)).text() + (more < 0.0 ? " slower" : " faster"),
                (climb, bottom) -> {
                    SpeedSchedule speeds = climb.programme().speeds();
                    Mach mach = Mach.of(speeds.mach().number() + more);
                    return flown(
                            climb,
                            climb.programme()
                                    .withSpeeds(
                                            speeds.withSpeeds(speeds.calibratedAirspeed(), mach)));
                });
    }

    /**
     * Returns another share of the excess power that climbs while the aeroplane accelerates.
     *
     * @param more difference of the share; negative for less climb and more acceleration
     * @return the change; a climb refuses it where its share would not be from 0 to 0.95
     */
    public static ClimbChange accelerationShareBy(double more) {
        if (!Double.isFinite(more)) {
            throw new IllegalArgumentException(
                    "a difference of the share must be finite, but was " + more);
        }
        return new ClimbChange(
                Math.abs(more)
                        + (more < 0.0 ? " less" : " more")
                        + " of the excess power climbs while accelerating",
                (climb, bottom) ->
                        flown(
                                climb,
                                climb.programme()
                                        .withAccelerationShare(
                                                climb.programme().accelerationShare() + more)));
    }

    /**
     * Returns bleed for ice protection all the way, besides what is on anyway.
     *
     * @param bleed what hot air is taken for
     * @return the change
     */
    public static ClimbChange bleedAllTheWay(Bleed bleed) {
        String text =
                bleed == Bleed.NONE
                        ? "no more bleed for anti-ice"
                        : ProfileTexts.bleed(bleed) + " all the way";
        return new ClimbChange(
                text,
                (climb, bottom) -> {
                    ClimbProgramme programme = climb.programme();
                    EngineUse use =
                            programme
                                    .engines()
                                    .orElseGet(() -> EngineUse.climb(climb.aeroplane().engines()));
                    Bleed both =
                            Bleed.of(
                                    use.bleed().ofEngine() || bleed.ofEngine(),
                                    use.bleed().ofAirframe() || bleed.ofAirframe());
                    return flown(climb, programme.withEngines(use.withBleed(both)));
                });
    }

    /**
     * Returns another reduction of thrust in place of that of the programme.
     *
     * @param reduced the reduction; none for all of the thrust
     * @return the change
     */
    public static ClimbChange thrust(ReducedThrust reduced) {
        return new ClimbChange(
                reduced.toString(),
                (climb, bottom) -> flown(climb, climb.programme().withReducedThrust(reduced)));
    }

    private static AeroplaneClimb flown(AeroplaneClimb climb, ClimbProgramme programme) {
        return new AeroplaneClimb(climb.aeroplane(), climb.mass(), programme, climb.air());
    }

    private static AeroplaneClimb inAir(AeroplaneClimb climb, ClimbAir air) {
        return new AeroplaneClimb(climb.aeroplane(), climb.mass(), climb.programme(), air);
    }

    /**
     * Returns a climb with this change.
     *
     * @param climb the climb as it was
     * @param bottom where it begins, inside the air
     * @return the climb that differs in one thing
     * @throws IllegalArgumentException if it cannot be
     */
    public AeroplaneClimb of(AeroplaneClimb climb, PressureAltitude bottom) {
        return operation.of(climb, bottom);
    }

    /**
     * Returns what is changed.
     *
     * @return a few words; may change between versions
     */
    public String text() {
        return text;
    }

    /**
     * Returns what is changed, for reading.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return text;
    }
}
