package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCases;
import net.jqwik.api.Tuple;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.wind.Wind;

/**
 * Ascents of any shape: from 2 to 20 levels up to 3 hPa, 3 m to 4 km apart, any part of a level but
 * its pressure missing now and then; heights that rise half as fast to twice as fast as they
 * should.
 */
public final class RandomSoundings {
    private RandomSoundings() {}

    /** One step of an ascent; NaN, and null for the wind, for what is not reported at its end. */
    private record Step(
            double lnPressure, double kelvin, double depression, double stretch, Wind wind) {}

    /** Ascents of which every level has a temperature. */
    public static Arbitrary<Sounding> ofAir() {
        Arbitrary<Double> temperature = number(180.0, 320.0);
        return steps(temperature).map(RandomSoundings::sounding);
    }

    /** Ascents in which levels with and without a temperature alternate at random. */
    public static Arbitrary<Sounding> mixed() {
        Arbitrary<Double> temperature =
                number(180.0, 320.0).injectNull(0.4).map(RandomSoundings::nanForNull);
        return steps(temperature).map(RandomSoundings::sounding);
    }

    private static Arbitrary<List<Step>> steps(Arbitrary<Double> temperature) {
        Arbitrary<Double> lnPressure =
                Arbitraries.frequencyOf(
                        Tuple.of(3, number(0.01, 0.3)), Tuple.of(1, number(0.0005, 0.01)));
        Arbitrary<Double> depression =
                number(0.0, 40.0).injectNull(0.3).map(RandomSoundings::nanForNull);
        Arbitrary<Double> stretch =
                number(0.5, 2.0).injectNull(0.4).map(RandomSoundings::nanForNull);
        Arbitrary<Wind> wind =
                Combinators.combine(number(-80.0, 80.0), number(-80.0, 80.0))
                        .as(Wind::ofComponents)
                        .injectNull(0.4);
        return Combinators.combine(lnPressure, temperature, depression, stretch, wind)
                .as(Step::new)
                .list()
                .ofMinSize(2)
                .ofMaxSize(20);
    }

    private static Arbitrary<Double> number(double from, double to) {
        return Arbitraries.doubles().between(from, to).ofScale(6).edgeCases(EdgeCases.Config::none);
    }

    private static double nanForNull(Double value) {
        return value == null ? Double.NaN : value;
    }

    private static Sounding sounding(List<Step> steps) {
        List<SoundingLevel> levels = new ArrayList<>();
        double lnPressure = Math.log(105000.0);
        double altitude = -200.0;
        for (Step step : steps) {
            lnPressure -= step.lnPressure();
            double pressure = Math.exp(lnPressure);
            double dewPoint = step.kelvin() - step.depression();
            boolean moist =
                    dewPoint > 150.0 && MoistAir.saturationVapourPressure(dewPoint) < pressure;
            double rise = step.lnPressure() * 7000.0;
            altitude += rise * (Double.isNaN(step.stretch()) ? 1.0 : step.stretch());
            levels.add(
                    SoundingLevel.ofSi(
                            pressure,
                            Double.isNaN(step.stretch()) ? Double.NaN : altitude,
                            step.kelvin(),
                            moist ? dewPoint : Double.NaN,
                            step.wind() == null ? Double.NaN : step.wind().eastwardMps(),
                            step.wind() == null ? Double.NaN : step.wind().northwardMps()));
        }
        return Sounding.of("", "", levels);
    }
}
