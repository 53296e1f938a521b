package org.climbwright.cabin;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * What somebody read on the cabin's instruments at a level: the cabin altitude, and what else was
 * read with it.
 *
 * <pre>{@code
 * CabinReading reading =
 *         CabinReading.of(PressureAltitude.ofFlightLevel(200), CabinAltitude.ofFeet(3200))
 *                 .withRate(CabinAltitudeRate.ofFeetPerMinute(450))
 *                 .withDifferential(DifferentialPressure.ofPoundsPerSquareInch(6.3));
 * reading.time()  // Optional.empty, not read
 * }</pre>
 *
 * <p>Limits of use: it is as good as the instrument and the eye; see {@link CabinCheck} for what
 * becomes of it.
 */
public final class CabinReading implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Stands for what was not read. */
    private static final double NOT_READ = Double.NaN;

    private final double levelM;
    private final double cabinM;
    private final double timeS;
    private final double rateMps;
    private final double differentialPa;

    private CabinReading(
            double levelM, double cabinM, double timeS, double rateMps, double differentialPa) {
        this.levelM = levelM;
        this.cabinM = cabinM;
        this.timeS = timeS;
        this.rateMps = rateMps;
        this.differentialPa = differentialPa;
    }

    /**
     * Returns a reading of the cabin altitude alone.
     *
     * @param aeroplane pressure altitude of the aeroplane, -5000 to 80000 m
     * @param cabin cabin altitude, -5000 to 80000 m
     * @return the reading
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     */
    public static CabinReading of(PressureAltitude aeroplane, CabinAltitude cabin) {
        CabinPressure.differential(cabin, aeroplane); // asked for its checks
        return new CabinReading(
                aeroplane.inMetres(), cabin.inMetres(), NOT_READ, NOT_READ, NOT_READ);
    }

    /**
     * Returns this reading with its time.
     *
     * @param time time since the climb began, 0 or more
     * @return a copy with it
     * @throws IllegalArgumentException if the time is below 0
     */
    public CabinReading withTime(Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException(
                    "the time of a reading must be 0 or more since the climb began, but was "
                            + time);
        }
        double seconds = time.getSeconds() + time.getNano() / 1e9;
        return new CabinReading(levelM, cabinM, seconds, rateMps, differentialPa);
    }

    /**
     * Returns this reading with the cabin's rate.
     *
     * @param rate rate of cabin altitude, climbing positive
     * @return a copy with it
     */
    public CabinReading withRate(CabinAltitudeRate rate) {
        return new CabinReading(levelM, cabinM, timeS, rate.inMetresPerSecond(), differentialPa);
    }

    /**
     * Returns this reading with the differential pressure.
     *
     * @param differential differential as read, not computed from the altitudes
     * @return a copy with it
     */
    public CabinReading withDifferential(DifferentialPressure differential) {
        return new CabinReading(levelM, cabinM, timeS, rateMps, differential.inPascals());
    }

    /**
     * Returns where the aeroplane was.
     *
     * @return pressure altitude
     */
    public PressureAltitude aeroplane() {
        return PressureAltitude.ofMetres(levelM);
    }

    /**
     * Returns the cabin altitude.
     *
     * @return cabin altitude as read
     */
    public CabinAltitude cabin() {
        return CabinAltitude.ofMetres(cabinM);
    }

    /**
     * Returns when it was read.
     *
     * @return time since the climb began; empty when not read
     */
    public Optional<Duration> time() {
        return Double.isNaN(timeS)
                ? Optional.empty()
                : Optional.of(Duration.ofNanos(Math.round(timeS * 1e9)));
    }

    /**
     * Returns the cabin's rate.
     *
     * @return rate as read; empty when not read
     */
    public Optional<CabinAltitudeRate> rate() {
        return Double.isNaN(rateMps)
                ? Optional.empty()
                : Optional.of(CabinAltitudeRate.ofMetresPerSecond(rateMps));
    }

    /**
     * Returns the differential pressure.
     *
     * @return differential as read; empty when not read
     */
    public Optional<DifferentialPressure> differential() {
        return Double.isNaN(differentialPa)
                ? Optional.empty()
                : Optional.of(DifferentialPressure.ofPascals(differentialPa));
    }

    /** The differential that belongs to the two altitudes [Pa]. */
    double ofAltitudesPa() {
        return CabinPressure.differential(cabinM, levelM);
    }

    boolean hasDifferential() {
        return !Double.isNaN(differentialPa);
    }

    /** The differential as read, else that of the two altitudes [Pa]. */
    double bestDifferentialPa() {
        return Double.isNaN(differentialPa) ? ofAltitudesPa() : differentialPa;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CabinReading that && Arrays.equals(numbers(), that.numbers());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(numbers());
    }

    /**
     * Returns the reading as it is said.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "cabin at "
                + InFeet.of(cabinM)
                + " with the aeroplane at "
                + InFeet.of(levelM)
                + ", rate "
                + rate().map(rate -> InFeet.perMinute(rate.inMetresPerSecond())).orElse("not read")
                + ", differential "
                + differential().map(DifferentialPressure::text).orElse("not read");
    }

    private double[] numbers() {
        return new double[] {levelM, cabinM, timeS, rateMps, differentialPa};
    }

    private Object readResolve() {
        CabinReading made = of(aeroplane(), cabin());
        made = Double.isNaN(timeS) ? made : made.withTime(time().orElseThrow());
        made = Double.isNaN(rateMps) ? made : made.withRate(rate().orElseThrow());
        return hasDifferential() ? made.withDifferential(differential().orElseThrow()) : made;
    }
}
