package org.climbwright.turbulence.convection;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.PseudoAdiabat;

/**
 * How much warmer a lifted parcel is than the air, level by level, and the areas of it.
 *
 * <p>The levels are those where the air bends, the condensation level, and so many between that the
 * difference is straight in ln p from one to the next.
 */
final class BuoyancyProfile {
    /** A step of ln p, some 80 m. */
    private static final double STEP = 0.01;

    /** No cloud is known to reach higher. */
    private static final double HIGHEST_PA = 5000.0;

    /** A parcel that cold has long been colder than any air around it. */
    private static final double COLDEST_K = 150.0;

    /** What humidity that is not known may do to the virtual temperature at most. */
    private static final double NOT_MATTERING_K = 0.1;

    /** What rounding makes of no difference. */
    private static final double ROUNDING_K = 1e-9;

    private final Lift lift;
    private double[] ln;
    private double[] pressurePa;
    private double[] excessK;
    private final List<Double> withoutHumidityPa = new ArrayList<>();
    private double freeConvectionPa = Double.NaN;
    private double equilibriumPa = Double.NaN;
    private double energy;
    private double inhibition;

    BuoyancyProfile(Atmosphere air, Lift lift) {
        this.lift = lift;
        ln = levels(air);
        // exp(log p) may miss an end by an ulp
        double lowest = air.range().lowest();
        double highest = lift.level().parcel().pressurePa();
        pressurePa =
                DoubleStream.of(ln)
                        .map(x -> Math.max(lowest, Math.min(highest, StrictMath.exp(x))))
                        .toArray();
        excessK = new double[ln.length];
        follow(air);
        measure();
    }

    private double[] levels(Atmosphere air) {
        double bottomPa = lift.level().parcel().pressurePa();
        double topPa = Math.max(air.range().lowest(), Math.min(HIGHEST_PA, lift.levelPa()));
        double[] marks =
                DoubleStream.concat(
                                DoubleStream.of(bottomPa, lift.levelPa(), topPa),
                                DoubleStream.of(air.bendsPa())
                                        .filter(p -> p < bottomPa && p > topPa))
                        .map(p -> -StrictMath.log(p))
                        .sorted()
                        .distinct()
                        .toArray();
        return DoubleStream.concat(
                        DoubleStream.of(-marks[0]),
                        IntStream.range(1, marks.length)
                                .boxed()
                                .flatMapToDouble(i -> steps(-marks[i - 1], -marks[i])))
                .toArray();
    }

    /** The levels after one mark up to the next. */
    private static DoubleStream steps(double from, double to) {
        int n = Math.max(1, (int) Math.ceil((from - to) / STEP));
        return IntStream.rangeClosed(1, n)
                .mapToDouble(i -> i == n ? to : from + (to - from) * ((double) i / n));
    }

    private void follow(Atmosphere air) {
        double saturatedK = lift.levelK();
        double saturatedPa = lift.levelPa();
        for (int i = 0; i < ln.length; i++) {
            double p = pressurePa[i];
            double parcelK;
            if (p >= lift.levelPa()) {
                parcelK = lift.unsaturated(p);
            } else {
                parcelK = PseudoAdiabat.temperature(saturatedK, saturatedPa, p);
                saturatedK = parcelK;
                saturatedPa = p;
            }
            if (i > 0 && parcelK < COLDEST_K) {
                ln = Arrays.copyOf(ln, i);
                pressurePa = Arrays.copyOf(pressurePa, i);
                excessK = Arrays.copyOf(excessK, i);
                return;
            }
            double excess = lift.virtualTemperature(parcelK, p) - virtualTemperature(air, p);
            excessK[i] = Math.abs(excess) < ROUNDING_K ? 0.0 : excess;
        }
    }

    private double virtualTemperature(Atmosphere air, double pressurePa) {
        double temperatureK = air.temperature(pressurePa);
        double vapourPa = air.vapourPressure(pressurePa);
        if (!Double.isNaN(vapourPa)) {
            return MoistAir.virtualTemperature(temperatureK, vapourPa, pressurePa);
        }
        if (!isTooColdToMatter(temperatureK, pressurePa)) {
            withoutHumidityPa.add(pressurePa);
        }
        return temperatureK;
    }

    private static boolean isTooColdToMatter(double temperatureK, double pressurePa) {
        if (!MoistAir.coversWater(temperatureK)) {
            return false;
        }
        double mostPa = MoistAir.saturationVapourPressure(temperatureK);
        return mostPa < pressurePa
                && MoistAir.virtualTemperature(temperatureK, mostPa, pressurePa) - temperatureK
                        < NOT_MATTERING_K;
    }

    private void measure() {
        double lnLevel = StrictMath.log(lift.levelPa());
        double below = 0.0;
        for (int i = 1; i < ln.length; i++) {
            double from = excessK[i - 1];
            double to = excessK[i];
            double depth = ln[i - 1] - ln[i];
            boolean isAbove = ln[i - 1] <= lnLevel;
            double positive = depth * positiveShare(from, to);
            double negative = depth * positiveShare(-from, -to);
            if (isAbove && positive > 0.0) {
                if (Double.isNaN(freeConvectionPa)) {
                    double start = from > 0.0 ? 0.0 : from / (from - to);
                    freeConvectionPa = pressure(i, start);
                    inhibition = below + (from > 0.0 ? 0.0 : negative);
                }
                energy += positive;
                equilibriumPa = to > 0.0 ? pressure(i, 1.0) : pressure(i, from / (from - to));
            }
            below += negative;
        }
    }

    /** The area above zero of a straight line over one unit. */
    private static double positiveShare(double from, double to) {
        if (from >= 0.0 && to >= 0.0) {
            return 0.5 * (from + to);
        }
        double above = Math.max(from, to);
        return above <= 0.0 ? 0.0 : 0.5 * above * (above / Math.abs(from - to));
    }

    private double pressure(int i, double share) {
        double exact = StrictMath.exp(ln[i - 1] + share * (ln[i] - ln[i - 1]));
        return Math.max(topPa(), Math.min(lift.levelPa(), exact));
    }

    Lift lift() {
        return lift;
    }

    /**
     * The lowest level at which the air's humidity is missing and matters; NaN for none. Dry air is
     * the densest and lets a parcel rise farthest: where even in that it does not rise by itself,
     * and above its equilibrium level, the humidity of the air changes nothing.
     */
    double humidityMissingPa() {
        return withoutHumidityPa.stream()
                .mapToDouble(Double::doubleValue)
                .filter(p -> p >= equilibriumPa) // none where that is NaN
                .max()
                .orElse(Double.NaN);
    }

    /** NaN where the parcel rises by itself nowhere. */
    double freeConvectionPa() {
        return freeConvectionPa;
    }

    /** NaN where the parcel rises by itself nowhere. */
    double equilibriumPa() {
        return equilibriumPa;
    }

    double energyJPerKg() {
        return GAS_CONSTANT_J_PER_KG_K * energy;
    }

    double inhibitionJPerKg() {
        return GAS_CONSTANT_J_PER_KG_K * inhibition;
    }

    double topPa() {
        return pressurePa[pressurePa.length - 1];
    }

    boolean isBuoyantAtTop() {
        return excessK[excessK.length - 1] > 0.0;
    }
}
