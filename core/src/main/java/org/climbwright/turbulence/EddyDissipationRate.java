package org.climbwright.turbulence;

import java.io.Serializable;
import org.climbwright.quantity.ModelRange;

/**
 * The cube root of the rate at which turbulent energy is dissipated, in m^(2/3)/s: what automatic
 * reports of turbulence carry.
 *
 * <pre>{@code
 * EddyDissipationRate rate = EddyDissipationRate.ofSi(0.20);
 * rate.intensity(EddyDissipationRate.Edition.AS_QUOTED_IN_2025)               // MODERATE
 * rate.intensity(EddyDissipationRate.Edition.BEFORE)                          // LIGHT
 * }</pre>
 *
 * <p>Limits of use: it belongs to the air and not to the aeroplane. What one of medium size feels
 * as moderate (0.24) may be light for a large one; the words below are those of an automatic
 * report, not of a crew.
 */
public final class EddyDissipationRate implements Comparable<EddyDissipationRate>, Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange RATE =
            new ModelRange(
                    "eddy dissipation rate", 0.0, 5.0, "m^(2/3)/s", "no report has a stronger one");

    private static final ModelRange ENERGY =
            new ModelRange(
                    "rate of energy dissipation", 0.0, 125.0, "m²/s³", "no air has a stronger one");

    /**
     * The edition of the table of ICAO Annex 3, appendix 4, that puts words to the peak rate. Both
     * sets of figures circulate: a caller says which one is meant.
     */
    public enum Edition {
        /**
         * Nil up to 0.10, light below 0.20, moderate below 0.45, severe from 0.45 on.
         *
         * @source ICAO Annex 3, appendix 4, as quoted in a presentation on gridded data at an ICAO
         *     regional meeting (2025); believed to have come with amendment 78 (from memory)
         */
        AS_QUOTED_IN_2025,
        /**
         * Nil up to 0.1, light up to 0.4, moderate up to 0.7, severe above.
         *
         * @source ICAO Annex 3, editions before, from memory
         */
        BEFORE
    }

    private final double rate;

    private EddyDissipationRate(double rate) {
        this.rate = RATE.check(rate) + 0.0;
    }

    /**
     * Returns a rate.
     *
     * @param rate eddy dissipation rate [m^(2/3)/s], 0 to 5
     * @return the value
     * @throws org.climbwright.quantity.OutsideModelException if the rate is out of range
     */
    public static EddyDissipationRate ofSi(double rate) {
        return new EddyDissipationRate(rate);
    }

    /**
     * Returns the rate whose cube is a rate of energy dissipation.
     *
     * @param dissipationM2PerS3 energy dissipated [m²/s³], 0 to 125
     * @return its cube root
     * @throws org.climbwright.quantity.OutsideModelException if the value is out of range
     * @accuracy 1 ulp
     */
    public static EddyDissipationRate ofEnergyDissipation(double dissipationM2PerS3) {
        return new EddyDissipationRate(StrictMath.cbrt(ENERGY.check(dissipationM2PerS3)));
    }

    /**
     * Tells whether a rate can be told here.
     *
     * @param rate eddy dissipation rate [m^(2/3)/s]
     * @return true from 0 to 5
     */
    public static boolean covers(double rate) {
        return RATE.covers(rate);
    }

    /**
     * Returns the rate.
     *
     * @return eddy dissipation rate [m^(2/3)/s]
     */
    public double inSi() {
        return rate;
    }

    /**
     * Returns the rate of energy dissipation.
     *
     * @return energy dissipated [m²/s³]
     */
    public double energyDissipationM2PerS3() {
        return rate * rate * rate;
    }

    /**
     * Returns the word of the table for this rate, as the peak of an automatic report.
     *
     * @param edition which table
     * @return nil, light, moderate or severe; a rate on a bound is where the edition puts it
     * @accuracy the bounds as written
     * @source see {@link Edition}
     */
    public TurbulenceIntensity intensity(Edition edition) {
        return switch (edition) {
            case AS_QUOTED_IN_2025 -> {
                if (rate <= 0.10) {
                    yield TurbulenceIntensity.NIL;
                }
                if (rate < 0.20) {
                    yield TurbulenceIntensity.LIGHT;
                }
                yield rate < 0.45 ? TurbulenceIntensity.MODERATE : TurbulenceIntensity.SEVERE;
            }
            case BEFORE -> {
                if (rate <= 0.1) {
                    yield TurbulenceIntensity.NIL;
                }
                if (rate <= 0.4) {
                    yield TurbulenceIntensity.LIGHT;
                }
                yield rate <= 0.7 ? TurbulenceIntensity.MODERATE : TurbulenceIntensity.SEVERE;
            }
        };
    }

    @Override
    public int compareTo(EddyDissipationRate other) {
        return Double.compare(rate, other.rate);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof EddyDissipationRate that && Double.compare(rate, that.rate) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(rate);
    }

    /**
     * Returns the rate for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return rate + " m^(2/3)/s";
    }

    private Object readResolve() {
        return ofSi(rate);
    }
}
