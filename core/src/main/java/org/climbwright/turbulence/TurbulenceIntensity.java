package org.climbwright.turbulence;

import org.climbwright.quantity.ModelRange;

/**
 * How strong turbulence is, in the words that reports use.
 *
 * <p>The scales behind the words differ: an eddy dissipation rate belongs to the air, an
 * acceleration to one aeroplane in it, a shear to neither. A word from one of them need not be the
 * word of another.
 *
 * <p>Limits of use: none of the scales says what the cabin will feel; the crew's reports, the
 * flight manual and the operator's procedures decide.
 */
public enum TurbulenceIntensity {
    /** None to speak of; only the scale of eddy dissipation rate has the word. */
    NIL,
    /** Light. */
    LIGHT,
    /** Moderate. */
    MODERATE,
    /** Severe. */
    SEVERE,
    /** Extreme. */
    EXTREME;

    private static final ModelRange ACCELERATION =
            new ModelRange(
                    "change of acceleration", 0.0, 20.0, "g", "its size counts, and no sign");

    private static final ModelRange SHEAR =
            new ModelRange(
                    "vertical wind shear", 0.0, 1000.0, "kn/1000 ft", "its size counts, no sign");

    /**
     * Tells whether the bands of acceleration have such a change.
     *
     * @param changeG change of the accelerometer at the centre of gravity [g]
     * @return true from 0 to 20 g
     */
    public static boolean coversAcceleration(double changeG) {
        return ACCELERATION.covers(changeG);
    }

    /**
     * Returns the word for a change of the accelerometer at the centre of gravity: light below 0.5
     * g, moderate from 0.5 to 1.0 g, severe above.
     *
     * @param changeG change of acceleration from that of steady flight [g], 0 to 20
     * @return light, moderate or severe; both bounds are moderate, as written, and a change of 0 is
     *     light, for the bands have no other word
     * @throws org.climbwright.quantity.OutsideModelException if the change is out of range
     * @accuracy the bounds as written
     * @source acceleration bands of a training page that credits ICAO; not seen in a publication of
     *     ICAO
     */
    public static TurbulenceIntensity ofAcceleration(double changeG) {
        if (ACCELERATION.check(changeG) < 0.5) {
            return LIGHT;
        }
        return changeG <= 1.0 ? MODERATE : SEVERE;
    }

    /**
     * Tells whether the rule of thumb may be asked for a shear.
     *
     * @param shearKnotsPer1000Ft vertical wind shear [kn/1000 ft]
     * @return true from 0 to 1000
     */
    public static boolean coversShear(double shearKnotsPer1000Ft) {
        return SHEAR.covers(shearKnotsPer1000Ft);
    }

    /**
     * Returns the word that a service's rule of thumb has for a vertical wind shear: light for 3 to
     * 5 kn per 1,000 ft, moderate for 6 to 9, severe for 10 to 15, extreme above.
     *
     * <p>The rule is written in whole knots. What lies between two of its bands, or below the
     * lowest, has no word, and none is made up.
     *
     * @param shearKnotsPer1000Ft vertical wind shear [kn/1000 ft], 0 to 1000
     * @return the word; not known between the bands and below them
     * @throws org.climbwright.quantity.OutsideModelException if the shear is out of range
     * @accuracy a rule of thumb: turbulence needs more than shear, see {@link WindShear}
     * @source operational definitions of a naval weather service, as published on a public page
     */
    public static Answer<TurbulenceIntensity> ofShearByRuleOfThumb(double shearKnotsPer1000Ft) {
        double shear = SHEAR.check(shearKnotsPer1000Ft);
        if (shear > 15.0) {
            return Answer.known(EXTREME);
        }
        if (shear >= 10.0) {
            return Answer.known(SEVERE);
        }
        if (shear >= 6.0 && shear <= 9.0) {
            return Answer.known(MODERATE);
        }
        if (shear >= 3.0 && shear <= 5.0) {
            return Answer.known(LIGHT);
        }
        return Answer.notKnown(
                shear
                        + " kn/1000 ft is in no band of the rule of thumb, which has 3 to 5, 6 to 9"
                        + " and 10 to 15 in whole knots, and above 15");
    }
}
