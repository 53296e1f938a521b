package org.climbwright.icing;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.climbwright.path.ClimbState;

/** Visible moisture in bands that somebody states. */
record MoistureInBands(List<MoistureBand> bands) implements VisibleMoisture {
    MoistureInBands {
        bands = List.copyOf(bands);
    }

    @Override
    public Answer at(ClimbState state) {
        return bands.stream().anyMatch(band -> band.holds(state.pressureAltitude()))
                ? Answer.PRESENT
                : Answer.ABSENT;
    }

    @Override
    public double[] edgesM() {
        return bands.stream()
                .flatMapToDouble(
                        band -> DoubleStream.of(band.base().inMetres(), band.top().inMetres()))
                .toArray();
    }

    @Override
    public String found(List<ClimbState> states) {
        String met =
                bands.stream()
                        .filter(
                                band ->
                                        states.stream()
                                                .anyMatch(s -> band.holds(s.pressureAltitude())))
                        .map(MoistureBand::words)
                        .collect(Collectors.joining(" and "));
        return met.isEmpty()
                ? "outside the bands of moisture that were stated"
                : met + " as stated";
    }

    @Override
    public String toString() {
        return bands.stream().map(MoistureBand::words).collect(Collectors.joining(" and "))
                + " as stated";
    }
}
