package org.climbwright.icing;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.humidity.RelativeHumidity;

/** Visible moisture where relative humidity is high enough. */
record MoistureByHumidity(RelativeHumidity least, Phase phase) implements VisibleMoisture {
    private static final double FREEZING_K = 273.15;

    /** A humidity that went through a vapour pressure still meets a threshold of itself. */
    private static final double ROUNDING = 1.0 - 1e-9;

    /** Of what the air is saturated at 100 %. */
    enum Phase {
        WATER("over water"),
        ICE("over ice, over water above 0 °C");

        private final String words;

        Phase(String words) {
            this.words = words;
        }
    }

    MoistureByHumidity {
        Objects.requireNonNull(phase, "phase");
        if (least.inRatio() == 0.0) {
            throw new IllegalArgumentException(
                    "least relative humidity must be above 0.0 %, which all air has, but was "
                            + least);
        }
    }

    @Override
    public Answer at(ClimbState state) {
        OptionalDouble humidity = ratio(state.air());
        if (humidity.isEmpty()) {
            return Answer.NOT_KNOWN;
        }
        return humidity.getAsDouble() >= least.inRatio() * ROUNDING
                ? Answer.PRESENT
                : Answer.ABSENT;
    }

    private OptionalDouble ratio(AirState air) {
        if (!air.isHumidityKnown()) {
            return OptionalDouble.empty();
        }
        if (phase == Phase.WATER || air.temperatureK() > FREEZING_K) {
            return OptionalDouble.of(air.relativeHumidity().orElseThrow().inRatio());
        }
        return OptionalDouble.of(
                air.vapourPressurePa()
                        / MoistAir.saturationVapourPressureOverIce(air.temperatureK()));
    }

    @Override
    public String found(List<ClimbState> states) {
        DoubleSummaryStatistics found =
                states.stream()
                        .map(state -> ratio(state.air()))
                        .filter(OptionalDouble::isPresent)
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .summaryStatistics();
        return String.format(
                Locale.ROOT,
                "relative humidity %s %.0f to %.0f %% (rule: %.0f %% or above)",
                phase.words,
                100.0 * found.getMin(),
                100.0 * found.getMax(),
                least.inPercent());
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "relative humidity %s of %.0f %% or above",
                phase.words,
                least.inPercent());
    }
}
