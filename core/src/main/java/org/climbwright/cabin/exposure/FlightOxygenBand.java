package org.climbwright.cabin.exposure;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * The flight altitudes for which a requirement of oxygen holds: above one, which is not part of it
 * itself, and up to and including another.
 *
 * <p>Not {@link CabinOxygenBand}: the altitude is the aeroplane's, as a flight level has it,
 * whatever the cabin has.
 *
 * <p>Limits of use: see {@link OxygenRequirement}.
 */
public final class FlightOxygenBand implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double aboveM;
    private final double upToM;
    private final OxygenRequirement requirement;

    private FlightOxygenBand(double aboveM, double upToM, OxygenRequirement requirement) {
        this.aboveM = aboveM;
        this.upToM = upToM;
        this.requirement = Objects.requireNonNull(requirement, "requirement");
    }

    /**
     * Returns a band with two ends.
     *
     * @param above the lower end, not part of the band
     * @param upTo the upper end, part of the band
     * @param requirement what is required there
     * @return the band
     * @throws IllegalArgumentException if the upper end is not above the lower one
     */
    public static FlightOxygenBand between(
            PressureAltitude above, PressureAltitude upTo, OxygenRequirement requirement) {
        if (above.compareTo(upTo) >= 0) {
            throw new IllegalArgumentException(
                    "a band must end above its lower end, but ran from " + above + " to " + upTo);
        }
        return new FlightOxygenBand(above.inMetres(), upTo.inMetres(), requirement);
    }

    /**
     * Returns a band without an upper end.
     *
     * @param above the lower end, not part of the band
     * @param requirement what is required there
     * @return the band
     */
    public static FlightOxygenBand above(PressureAltitude above, OxygenRequirement requirement) {
        return new FlightOxygenBand(above.inMetres(), Double.POSITIVE_INFINITY, requirement);
    }

    /**
     * Returns the lower end, which is not part of the band.
     *
     * @return the flight altitude
     */
    public PressureAltitude above() {
        return PressureAltitude.ofMetres(aboveM);
    }

    /**
     * Returns the upper end, which is part of the band.
     *
     * @return the flight altitude; empty where the band has no upper end
     */
    public Optional<PressureAltitude> upToAndIncluding() {
        return upToM < Double.POSITIVE_INFINITY
                ? Optional.of(PressureAltitude.ofMetres(upToM))
                : Optional.empty();
    }

    /**
     * Returns what is required in the band.
     *
     * @return the requirement
     */
    public OxygenRequirement requirement() {
        return requirement;
    }

    /**
     * Tells whether a flight altitude lies in the band.
     *
     * @param altitude the flight altitude
     * @return true strictly above the lower end, and up to and including the upper one; an altitude
     *     within 1e-6 m of an end is at it
     */
    public boolean contains(PressureAltitude altitude) {
        return Level.isAbove(altitude.inMetres(), aboveM)
                && !Level.isAbove(altitude.inMetres(), upToM);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FlightOxygenBand that
                && Double.compare(aboveM, that.aboveM) == 0
                && Double.compare(upToM, that.upToM) == 0
                && requirement.equals(that.requirement);
    }

    @Override
    public int hashCode() {
        return Objects.hash(aboveM, upToM, requirement);
    }

    /**
     * Returns the band for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String end =
                upToAndIncluding().map(upTo -> " up to and including " + upTo.text()).orElse("");
        return "flight altitude above " + above().text() + end + ": " + requirement;
    }
}
