package org.climbwright.icing.accretion;

import java.util.function.DoubleUnaryOperator;

/**
 * How the water of a cloud is shared among drop sizes: the assumed distributions A to E of Langmuir
 * and Blodgett, in seven classes about the median volume diameter.
 *
 * <p>In A all drops are as large; the others are ever wider. Further distributions that are named F
 * to J in print were not seen and are absent.
 *
 * @source Langmuir and Blodgett, AAF Technical Report 5418 (1946), table IX; DOT/FAA/CT-88/8-1,
 *     table 1-1
 */
public enum DropDistribution {
    /** All drops of one size. */
    LANGMUIR_A(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0),
    /** A narrow one. */
    LANGMUIR_B(0.56, 0.72, 0.84, 1.0, 1.17, 1.32, 1.49),
    /** Wider than B. */
    LANGMUIR_C(0.42, 0.61, 0.77, 1.0, 1.26, 1.51, 1.81),
    /** Wider than C; the one that advisory material recommends. */
    LANGMUIR_D(0.31, 0.52, 0.71, 1.0, 1.37, 1.74, 2.22),
    /** The widest. */
    LANGMUIR_E(0.23, 0.44, 0.65, 1.0, 1.48, 2.0, 2.71);

    private static final double[] SHARES = {0.05, 0.1, 0.2, 0.3, 0.2, 0.1, 0.05};

    @SuppressWarnings("ImmutableEnumChecker") // never handed out, never written
    private final double[] ratios;

    DropDistribution(double... ratios) {
        this.ratios = ratios;
    }

    /**
     * Returns the number of classes.
     *
     * @return 7
     */
    public int classes() {
        return ratios.length;
    }

    /**
     * Returns the diameter of a class over the median volume diameter.
     *
     * @param index which class, from 0 for the smallest drops
     * @return the ratio
     * @throws IndexOutOfBoundsException if there is no such class
     */
    public double diameterRatio(int index) {
        return ratios[index];
    }

    /**
     * Returns the share of a class in the liquid water.
     *
     * @param index which class, from 0 for the smallest drops
     * @return the share; all add up to 1
     * @throws IndexOutOfBoundsException if there is no such class
     */
    public double waterShare(int index) {
        return SHARES[index];
    }

    /**
     * Returns the mean of what depends on drop size, such as a collection efficiency, weighted by
     * the water.
     *
     * @param medianVolumeDiameterM half of the water is in smaller drops [m]
     * @param ofDiameter what depends on a drop diameter in metres
     * @return the sum over the classes of share times value
     * @accuracy a few ulp beyond that of the function
     * @source DOT/FAA/CT-88/8-1, example 2-3
     */
    public double mean(double medianVolumeDiameterM, DoubleUnaryOperator ofDiameter) {
        double sum = 0.0;
        for (int i = 0; i < ratios.length; i++) {
            sum += SHARES[i] * ofDiameter.applyAsDouble(ratios[i] * medianVolumeDiameterM);
        }
        return sum;
    }
}
