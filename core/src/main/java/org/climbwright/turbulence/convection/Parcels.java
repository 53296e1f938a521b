package org.climbwright.turbulence.convection;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.LiftedAir;
import org.climbwright.atmosphere.LiftingCondensationLevel;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.numeric.Quadrature;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.turbulence.Answer;

/**
 * Which air is lifted: that at the surface, a mixture of the lowest, or the most unstable.
 *
 * <p>The surface is the pressure that the caller gives, for air that is known below it too, or else
 * the highest one that the air is known for, as in a sounding. For air of one's own choice hand any
 * {@link AirState} to {@link ParcelAscent#of}.
 *
 * <p>Limits of use: the choice changes the energy several times over; say which it was.
 */
public final class Parcels {
    private static final double REFERENCE_PA = 100000.0;

    /** How far apart the levels are at most among which the most unstable is looked for. */
    private static final double SEARCH_STEP_PA = 500.0;

    private static final ModelRange DEPTH =
            new ModelRange(
                    "depth of the layer",
                    100.0,
                    40000.0,
                    "Pa",
                    "common practice has 50 to 100 hPa mixed, and 300 hPa searched");

    private Parcels() {}

    /**
     * Tells whether a layer of such a depth is taken here.
     *
     * @param depthPa pressure at its bottom less that at its top [Pa]
     * @return true from 100 to 40,000
     */
    public static boolean coversDepth(double depthPa) {
        return DEPTH.covers(depthPa);
    }

    /**
     * Returns the lowest air that is known.
     *
     * @param air the air of the day, known down to the surface
     * @return the parcel; not known without its humidity
     */
    public static Answer<AirState> surface(Atmosphere air) {
        return surface(air, lowest(air));
    }

    /**
     * Returns the air at the surface.
     *
     * @param air the air of the day
     * @param surface the pressure at the surface
     * @return the parcel; not known without its humidity, or where the air is not known
     */
    public static Answer<AirState> surface(Atmosphere air, StaticPressure surface) {
        return air.covers(surface.inPascals())
                ? level(air, surface.inPascals())
                : Answer.notKnown(
                        "the air is not known at the surface, " + Hectopascals.of(surface));
    }

    private static StaticPressure lowest(Atmosphere air) {
        return StaticPressure.ofPascals(air.range().highest());
    }

    private static Answer<AirState> level(Atmosphere air, double pressurePa) {
        AirState parcel = air.at(StaticPressure.ofPascals(pressurePa));
        return parcel.isHumidityKnown()
                ? Answer.known(parcel)
                : Answer.notKnown(
                        "the humidity is not known at " + Hectopascals.of(parcel.staticPressure()));
    }

    /**
     * Returns the lowest air as if it were mixed: the mean potential temperature and the mean
     * mixing ratio of the layer, by mass, brought to the surface.
     *
     * @param air the air of the day
     * @param surface the pressure at the surface
     * @param depthPa how deep the layer is, pressure at its bottom less that at its top [Pa], 100
     *     to 40,000
     * @return the parcel; not known without the humidity of the layer, where the layer is deeper
     *     than the air, or where the mixture is more than saturated
     * @throws org.climbwright.quantity.OutsideModelException if the depth is out of range
     * @accuracy 1e-6 K where the air is straight from bend to bend
     * @source mixed layer of a parcel ascent: common practice, no source
     */
    public static Answer<AirState> mixedLayer(
            Atmosphere air, StaticPressure surface, double depthPa) {
        double bottomPa = surface.inPascals();
        double topPa = bottomPa - DEPTH.check(depthPa);
        if (!air.covers(topPa) || !air.covers(bottomPa)) {
            return Answer.notKnown(
                    "the air is not known all the way " + Hectopascals.between(bottomPa, topPa));
        }
        double[] marks = marks(air, bottomPa, topPa);
        double ratio =
                mean(
                        marks,
                        p ->
                                MoistAir.mixingRatio(vapourOrNothing(air, p), p)
                                        + missing(air.vapourPressure(p)));
        if (Double.isNaN(ratio)) {
            return Answer.notKnown(
                    "the humidity is not known all the way "
                            + Hectopascals.between(bottomPa, topPa));
        }
        double thetaK =
                mean(
                        marks,
                        p ->
                                LiftedAir.unsaturatedTemperature(
                                        air.temperature(p), 0.0, p, REFERENCE_PA));
        double temperatureK = LiftedAir.unsaturatedTemperature(thetaK, 0.0, REFERENCE_PA, bottomPa);
        double vapourPa = MoistAir.vapourPressureFromMixingRatio(ratio, bottomPa);
        if (MoistAir.coversWater(temperatureK)
                && vapourPa > MoistAir.saturationVapourPressure(temperatureK)) {
            return Answer.notKnown("the mixture of the layer would be more than saturated");
        }
        return Answer.known(
                AirState.ofSi(
                        bottomPa, temperatureK, vapourPa, air.geopotentialAltitude(bottomPa)));
    }

    /**
     * Returns the lowest air as if it were mixed, from the lowest that is known.
     *
     * @param air the air of the day, known down to the surface
     * @param depthPa how deep the layer is, pressure at its bottom less that at its top [Pa], 100
     *     to 40,000
     * @return see {@link #mixedLayer(Atmosphere, StaticPressure, double)}
     */
    public static Answer<AirState> mixedLayer(Atmosphere air, double depthPa) {
        return mixedLayer(air, lowest(air), depthPa);
    }

    private static double vapourOrNothing(Atmosphere air, double pressurePa) {
        double vapourPa = air.vapourPressure(pressurePa);
        return Double.isNaN(vapourPa) ? 0.0 : vapourPa;
    }

    private static double missing(double vapourPa) {
        return Double.isNaN(vapourPa) ? Double.NaN : 0.0;
    }

    private static double mean(double[] marks, DoubleUnaryOperator ofPressure) {
        double sum = 0.0;
        for (int i = 1; i < marks.length; i++) {
            sum += Quadrature.integrate(ofPressure, marks[i - 1], marks[i]);
        }
        return sum / (marks[marks.length - 1] - marks[0]);
    }

    /**
     * Returns the air of the lowest layer that would be warmest aloft: of all levels the one whose
     * parcel, lifted to half the pressure at the layer's top, has the highest virtual temperature.
     *
     * @param air the air of the day
     * @param surface the pressure at the surface
     * @param depthPa how deep the layer is, pressure at its bottom less that at its top [Pa], 100
     *     to 40,000
     * @return the parcel; not known where the layer is deeper than the air, or the humidity of one
     *     of its levels is not known
     * @throws org.climbwright.quantity.OutsideModelException if the depth is out of range
     * @accuracy among levels at most 5 hPa apart, the bends of the air included
     * @source most unstable parcel, by equivalent potential temperature: common practice, no
     *     source; the warmth aloft puts parcels in the same order
     */
    public static Answer<AirState> mostUnstable(
            Atmosphere air, StaticPressure surface, double depthPa) {
        double bottomPa = surface.inPascals();
        double topPa = bottomPa - DEPTH.check(depthPa);
        if (!air.covers(topPa) || !air.covers(bottomPa)) {
            return Answer.notKnown(
                    "the air is not known all the way " + Hectopascals.between(bottomPa, topPa));
        }
        Answer<AirState> best = Answer.notKnown("no level of the layer has a condensation level");
        double warmest = Double.NEGATIVE_INFINITY;
        for (double pressurePa : marks(air, bottomPa, topPa)) {
            Answer<AirState> parcel = level(air, pressurePa);
            if (!parcel.isKnown()) {
                return parcel;
            }
            Answer<LiftingCondensationLevel> condensation = parcel.then(Lift::condensationLevel);
            if (condensation.isKnown()) {
                Lift lift = Lift.of(condensation.orElseThrow());
                double aloftPa = 0.5 * topPa;
                double warmth = lift.virtualTemperature(lift.temperature(aloftPa), aloftPa);
                if (warmth > warmest) {
                    warmest = warmth;
                    best = parcel;
                }
            }
        }
        return best;
    }

    /**
     * Returns the air of the lowest layer that would be warmest aloft, from the lowest that is
     * known.
     *
     * @param air the air of the day, known down to the surface
     * @param depthPa how deep the layer is, pressure at its bottom less that at its top [Pa], 100
     *     to 40,000
     * @return see {@link #mostUnstable(Atmosphere, StaticPressure, double)}
     */
    public static Answer<AirState> mostUnstable(Atmosphere air, double depthPa) {
        return mostUnstable(air, lowest(air), depthPa);
    }

    /** From bottom to top, the bends included, close to each other. */
    private static double[] marks(Atmosphere air, double bottomPa, double topPa) {
        int n = (int) Math.ceil((bottomPa - topPa) / SEARCH_STEP_PA);
        return DoubleStream.concat(
                        IntStream.rangeClosed(0, n)
                                .mapToDouble(i -> i == n ? topPa : bottomPa - i * SEARCH_STEP_PA),
                        DoubleStream.of(air.bendsPa()).filter(p -> p < bottomPa && p > topPa))
                .map(p -> -p)
                .sorted()
                .map(p -> -p)
                .distinct()
                .toArray();
    }
}
