package org.climbwright.atmosphere;

import java.io.Serializable;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * Where lifted air becomes saturated: the base of cumulus that rises from it.
 *
 * <pre>{@code
 * StaticPressure pressure = StaticPressure.ofHectopascals(1000);
 * AirState surface = AirState.of(pressure, StaticAirTemperature.ofCelsius(30))
 *         .withDewPoint(DewPoint.ofCelsius(20));
 * LiftingCondensationLevel base = LiftingCondensationLevel.of(surface);
 * base.height().inFeet()             // 4197.55…, in well mixed air
 * base.heightByRule().inFeet()       // 3999.99…, by 400 ft for each degree of spread
 * }</pre>
 *
 * <p>Limits of use: real air mixes as it rises, and the air below a cloud need not be well mixed;
 * layered cloud has nothing to do with this level.
 *
 * @source {@link LiftedAir}
 */
public final class LiftingCondensationLevel implements Serializable {
    private static final long serialVersionUID = 1L;

    private final AirState parcel;

    private LiftingCondensationLevel(AirState parcel) {
        this.parcel = parcel;
    }

    /**
     * Returns the level of lifted air.
     *
     * @param parcel the air before it is lifted, its humidity known
     * @return its condensation level
     * @throws IllegalArgumentException if its humidity is not known
     * @throws org.climbwright.quantity.OutsideModelException if it is dry, or so dry that it would
     *     condense below 123 K, or warmer than 332 K
     */
    public static LiftingCondensationLevel of(AirState parcel) {
        if (!parcel.isHumidityKnown()) {
            throw new IllegalArgumentException(
                    "a condensation level needs the humidity, but it is not known: " + parcel);
        }
        LiftingCondensationLevel level = new LiftingCondensationLevel(parcel);
        level.condensation(); // refuses what has no level
        return level;
    }

    /**
     * Returns the air before it is lifted.
     *
     * @return the parcel
     */
    public AirState parcel() {
        return parcel;
    }

    /**
     * Returns the temperature of the air when it becomes saturated.
     *
     * @return temperature and dew point at the level
     * @source {@link LiftedAir#condensationTemperature}
     */
    public StaticAirTemperature temperature() {
        return StaticAirTemperature.ofKelvins(condensation());
    }

    private double condensation() {
        return LiftedAir.condensationTemperature(
                parcel.temperatureK(), parcel.vapourPressurePa(), parcel.pressurePa());
    }

    /**
     * Returns the pressure at the level.
     *
     * @return static pressure, not above that of the parcel
     * @source {@link LiftedAir#condensationPressure}
     */
    public StaticPressure pressure() {
        return StaticPressure.ofPascals(
                LiftedAir.condensationPressure(
                        parcel.temperatureK(), parcel.vapourPressurePa(), parcel.pressurePa()));
    }

    /**
     * Returns how far above the parcel the level is in air as well mixed as the parcel.
     *
     * @return geopotential height above the parcel, 0 for saturated air
     * @source {@link LiftedAir#heightToCondensation}
     */
    public AltitudeChange height() {
        return AltitudeChange.ofMetres(
                LiftedAir.heightToCondensation(
                        parcel.temperatureK(), parcel.vapourPressurePa(), parcel.pressurePa()));
    }

    /**
     * Returns how far above the parcel the level is by the rule of 400 ft per degree of spread.
     *
     * @return height above the parcel, 0 for saturated air
     * @source {@link LiftedAir#heightByRule}
     */
    public AltitudeChange heightByRule() {
        double dewPointK = parcel.dewPoint().orElseThrow().inKelvins();
        return AltitudeChange.ofMetres(LiftedAir.heightByRule(parcel.temperatureK(), dewPointK));
    }

    /**
     * Returns the error of the rule.
     *
     * @return its height less {@link #height}, negative when it is too low
     */
    public AltitudeChange errorOfRule() {
        return heightByRule().minus(height());
    }

    /**
     * Returns the air that surrounds the level in some atmosphere, which need not be well mixed.
     *
     * @param atmosphere the air
     * @return its state at the pressure of the level, with its altitude
     * @throws org.climbwright.quantity.OutsideModelException if it does not reach there
     */
    public AirState airIn(Atmosphere atmosphere) {
        return atmosphere.at(pressure());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LiftingCondensationLevel that && parcel.equals(that.parcel);
    }

    @Override
    public int hashCode() {
        return parcel.hashCode() + 1;
    }

    /**
     * Returns pressure and temperature of the level for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "lifting condensation level at " + pressure() + " and " + temperature();
    }

    private Object readResolve() {
        return of(parcel);
    }
}
