package org.climbwright.turbulence.convection;

import java.io.Serializable;
import java.util.Locale;
import org.climbwright.quantity.ModelRange;
import org.climbwright.unit.UnitScale;

/**
 * The fastest that a parcel could rise if all of its energy went into its speed: an upper bound of
 * the updraft, as a true airspeed.
 *
 * <p>Not a gust velocity, and no load factor takes it: an updraft is kilometres wide, and the rule
 * for gusts has figures of its own.
 *
 * <pre>{@code
 * UpdraftBound bound = UpdraftBound.ofEnergy(1500.0);      // CAPE, J/kg
 * bound.atMostInMetresPerSecond()                                // 54.77…
 * }</pre>
 *
 * <p>Limits of use: the parcel neither mixes nor carries water. Real updrafts commonly reach half
 * of the bound, rarely more than all of it; with wind they may. No updraft found is not "no
 * turbulence".
 *
 * @source {@code sqrt(2 CAPE)}, relation quoted in J. M. Peters et al. (2023), arXiv 2301.04712
 */
public final class UpdraftBound implements Comparable<UpdraftBound>, Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange ENERGY =
            new ModelRange(
                    "convective available potential energy",
                    0.0,
                    2e4,
                    "J/kg",
                    "it is never negative; inhibition is another figure");

    private final double energyJPerKg;

    private UpdraftBound(double energyJPerKg) {
        this.energyJPerKg = ENERGY.check(energyJPerKg) + 0.0;
    }

    /**
     * Returns the bound of an energy.
     *
     * @param energyJPerKg convective available potential energy, CAPE [J/kg], 0 to 20,000
     * @return the bound
     * @throws org.climbwright.quantity.OutsideModelException if the energy is negative, or out of
     *     range
     */
    public static UpdraftBound ofEnergy(double energyJPerKg) {
        return new UpdraftBound(energyJPerKg);
    }

    /**
     * Tells whether an energy has a bound here.
     *
     * @param energyJPerKg convective available potential energy, CAPE [J/kg]
     * @return true from 0 to 20,000
     */
    public static boolean covers(double energyJPerKg) {
        return ENERGY.covers(energyJPerKg);
    }

    /**
     * Returns the upper bound of the updraft: {@code sqrt(2 CAPE)}.
     *
     * @param energyJPerKg convective available potential energy, CAPE [J/kg], 0 to 20,000
     * @return true airspeed [m/s], 0 or more
     * @throws org.climbwright.quantity.OutsideModelException if the energy is negative, or out of
     *     range
     * @accuracy 1 ulp of the relation, which is a bound and no estimate
     * @source see the class comment
     */
    public static double idealUpdraft(double energyJPerKg) {
        return Math.sqrt(2.0 * ENERGY.check(energyJPerKg));
    }

    /**
     * Returns the energy.
     *
     * @return convective available potential energy [J/kg]
     */
    public double energyJPerKg() {
        return energyJPerKg;
    }

    /**
     * Returns the bound.
     *
     * @return true airspeed [m/s]
     */
    public double atMostInMetresPerSecond() {
        return idealUpdraft(energyJPerKg);
    }

    /**
     * Returns the bound as a rate of climb of the air.
     *
     * @return true airspeed [ft/min]
     */
    public double atMostInFeetPerMinute() {
        return UnitScale.FOOT_PER_MINUTE.fromSi(atMostInMetresPerSecond());
    }

    @Override
    public int compareTo(UpdraftBound other) {
        return Double.compare(energyJPerKg, other.energyJPerKg);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UpdraftBound that
                && Double.compare(energyJPerKg, that.energyJPerKg) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(energyJPerKg);
    }

    /**
     * Returns the bound for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "updraft of %.1f m/s at most, by %.0f J/kg",
                atMostInMetresPerSecond(),
                energyJPerKg);
    }

    private Object readResolve() {
        return ofEnergy(energyJPerKg);
    }
}
