package org.climbwright.airspeed;

/**
 * The polynomials of {@link PitotTube}, written by the program {@code KernelPolynomials} of the
 * tests in 60-digit arithmetic: change that, not this.
 *
 * <p>An error is the largest that the rounded coefficients leave, relative to what the kernel
 * computes. What rounding adds is for the kernel to tell.
 *
 * @source the formulas of {@link PitotTube}
 */
final class PitotPolynomials {
    private PitotPolynomials() {}

    /** To which (q + 1) / M² falls as the Mach number grows. */
    static final double SLOPE = 1.2875597357914668;

    /** To which M² / (q + 1) rises. */
    static final double INVERSE_SLOPE = 0.7766629945019965;

    /** One over the square of the speed of sound at sea level [s²/m²]. */
    static final double INVERSE_SOUND_SQUARE = 8.635578711531408E-6;

    /** The square of the equivalent airspeed of Mach 1 over pressure [m²/(s²·Pa)]. */
    static final double SQUARE_PER_PASCAL = 1.1428571259481866;

    /** The largest 1 / (q + 1) of Rayleigh's formula, at M² = 1/2. */
    static final double BRANCH = 0.6697959533607681;

    static final double SUBSONIC_RATIO_EXCESS_CENTRE = 0.5;

    /**
     * What the impact ratio over the square of the Mach number, x, exceeds 1, up to Mach 1. Of x
     * from 0 to 1, taken from its centre; degree 9, error 9.8E-18.
     */
    static double subsonicRatioExcess(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double c8to9 = Math.fma(x, 1.724248574508282E-11, -1.715961621227204E-10);
        double c6to7 = Math.fma(x, 1.8658905318672822E-9, -2.331866060636455E-8);
        double c6to9 = Math.fma(x2, c8to9, c6to7);
        double c4to5 = Math.fma(x, 3.564031646787324E-7, -7.76256310910419E-6);
        double c2to3 = Math.fma(x, 4.2102116433806973E-4, 0.018143644260809288);
        double c2to5 = Math.fma(x2, c4to5, c2to3);
        double c2to9 = Math.fma(x4, c6to9, c2to5);
        double c0to1 = Math.fma(x, 0.19282388114234988, -0.2080708461710566);
        return Math.fma(x2, c2to9, c0to1);
    }

    static final double SUBSONIC_SQUARE_EXCESS_CENTRE = 0.4375;

    /**
     * What the square of the Mach number over the impact ratio, x, exceeds 1, up to Mach 1. Of x
     * from 0 to 0.892929, taken from its centre; degree 19, error 1.7E-17.
     */
    static double subsonicSquareExcess(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c18to19 = Math.fma(x, -3.619710709701825E-5, 6.190320514872785E-5);
        double c16to17 = Math.fma(x, -5.952161936273523E-5, 8.628377659157764E-5);
        double c14to15 = Math.fma(x, -1.4903788561000702E-4, 2.346760182602937E-4);
        double c14to17 = Math.fma(x2, c16to17, c14to15);
        double c12to13 = Math.fma(x, -3.646382578843278E-4, 5.753018311340665E-4);
        double c10to11 = Math.fma(x, -9.15666201264088E-4, 0.0014694305813894642);
        double c10to13 = Math.fma(x2, c12to13, c10to11);
        double c10to17 = Math.fma(x4, c14to17, c10to13);
        double c10to19 = Math.fma(x8, c18to19, c10to17);
        double c8to9 = Math.fma(x, -0.002382597321940752, 0.003912229458421405);
        double c6to7 = Math.fma(x, -0.0065245707302232885, 0.011097990538619117);
        double c6to9 = Math.fma(x2, c8to9, c6to7);
        double c4to5 = Math.fma(x, -0.019371642859645904, 0.03503327323501345);
        double c2to3 = Math.fma(x, -0.06671968801618001, 0.13806109491588248);
        double c2to5 = Math.fma(x2, c4to5, c2to3);
        double c2to9 = Math.fma(x4, c6to9, c2to5);
        double c2to19 = Math.fma(x8, c10to19, c2to9);
        double c0to1 = Math.fma(x, -0.3342809205384325, 0.2486116485743254);
        return Math.fma(x2, c2to19, c0to1);
    }

    /**
     * What the impact ratio exceeds SLOPE M², of x = 1 / (7 M² - 1). Of x from 0.00574713 to
     * 0.166667; degree 8, error 5.4E-17.
     */
    static double supersonicRatioRest(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c6to7 = Math.fma(x, 1.8675709907420697E-4, -4.474233763891769E-4);
        double c4to5 = Math.fma(x, 0.0012572155517316234, -0.0050295199417442855);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.050295301810817095, 0.40236241744181817);
        double c0to1 = Math.fma(x, 0.8047248348696124, -0.5401572372173333);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, -6.557417904309901E-5, c0to7);
    }

    static final double SUPERSONIC_SQUARE_REST_CENTRE = 0.37618368604126634;

    static final double SUPERSONIC_SQUARE_REST_HEAD = 0.30649496569650964;

    /**
     * What M² exceeds INVERSE_SLOPE q, of x = sqrt(BRANCH - 1 / (q + 1)), less its head. Of x from
     * 0.376184 to 0.799483, taken from its centre; degree 14, error 1.2E-17.
     */
    static double supersonicSquareRest(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        double c12to13 = Math.fma(x, 0.013618562172982358, -0.030402497609122208);
        double c12to14 = Math.fma(x2, -0.0031174874579522637, c12to13);
        double c10to11 = Math.fma(x, 0.04832506838145671, -0.06448556702976592);
        double c8to9 = Math.fma(x, 0.07970245114009823, -0.09600202024762756);
        double c8to11 = Math.fma(x2, c10to11, c8to9);
        double c8to14 = Math.fma(x4, c12to14, c8to11);
        double c6to7 = Math.fma(x, 0.1149187640694098, -0.13744774617936367);
        double c4to5 = Math.fma(x, 0.1644497560311184, -0.19692470661316222);
        double c4to7 = Math.fma(x2, c6to7, c4to5);
        double c2to3 = Math.fma(x, 0.23622506030020549, -0.2845688162813611);
        double c0to1 = Math.fma(x, 0.34766707044224554, 3.935413871484314E-17);
        double c0to3 = Math.fma(x2, c2to3, c0to1);
        double c0to7 = Math.fma(x4, c4to7, c0to3);
        return Math.fma(x8, c8to14, c0to7);
    }
}
