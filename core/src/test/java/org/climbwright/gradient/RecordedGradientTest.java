package org.climbwright.gradient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Climbs that recorded their height by satellite beside pressure altitude and temperature. */
@DisplayName("A recorded climb")
class RecordedGradientTest {
    private record Sample(
            double second, double heightM, double altitudeM, double kelvins, double mps) {}

    @ParameterizedTest(name = "of a {0}: {5} %")
    @CsvFileSource(resources = "/gradient/recorded-gradients.csv", useHeadersInDisplayName = true)
    @DisplayName("has the gradient of its height over its ground speed summed up")
    void gradient(
            String climb,
            int rows,
            double seconds,
            String miles,
            String heightFt,
            String percent,
            String feetPerMile,
            String pressureFt,
            String source) {
        List<Sample> samples = samples(climb);
        assertThat(samples).hasSize(rows);
        assertThat(last(samples).second() - samples.get(0).second()).isEqualTo(seconds);
        double way = 0.0;
        for (int i = 1; i < rows; i++) {
            Sample from = samples.get(i - 1);
            Sample to = samples.get(i);
            way += 0.5 * (from.mps() + to.mps()) * (to.second() - from.second());
        }
        GroundDistance distance = GroundDistance.ofMetres(way);
        AltitudeChange gained =
                AltitudeChange.ofMetres(last(samples).heightM() - samples.get(0).heightM());
        GroundGradient gradient = ClimbGradient.required(gained, distance);
        assertThat(distance.inNauticalMiles()).is(printedAs(miles, 6));
        assertThat(gained.inFeet()).is(printedAs(heightFt, 6));
        assertThat(gradient.inPercent()).is(printedAs(percent, 6));
        assertThat(gradient.inFeetPerNauticalMile()).is(printedAs(feetPerMile, 6));
        assertThat(
                        AltitudeChange.ofMetres(
                                        last(samples).altitudeM() - samples.get(0).altitudeM())
                                .inFeet())
                .is(printedAs(pressureFt, 6));
        assertThat(source).isNotBlank();
    }

    /**
     * What the instrument showed, made true by temperature, against satellites. One percent is what
     * a temperature 1 K wrong, air that is moist and pressure that falls along 95 NM can do
     * together; without the temperature the four-engine turboprop would be 4.4 % off.
     */
    @ParameterizedTest(name = "of a {0}")
    @CsvFileSource(resources = "/gradient/recorded-gradients.csv", useHeadersInDisplayName = true)
    @DisplayName("climbed in true height what its instrument and the temperature say, within 1 %")
    void trueHeight(String climb) {
        List<Sample> samples = samples(climb);
        double[] ratios =
                IntStream.range(12, samples.size())
                        .filter(i -> rate(samples, i, false) > 1.0)
                        .mapToDouble(i -> rate(samples, i, true) / shown(samples, i))
                        .sorted()
                        .toArray();
        assertThat(ratios).hasSizeGreaterThan(140);
        assertThat(ratios[ratios.length / 2]).isCloseTo(1.0, within(0.01));
        double[] raw =
                IntStream.range(12, samples.size())
                        .filter(i -> rate(samples, i, false) > 1.0)
                        .mapToDouble(i -> rate(samples, i, true) / rate(samples, i, false))
                        .sorted()
                        .toArray();
        assertThat(Math.abs(raw[raw.length / 2] - 1.0))
                .isGreaterThan(2.0 * Math.abs(ratios[ratios.length / 2] - 1.0));
    }

    /** Over a minute, twelve samples. */
    private static double rate(List<Sample> samples, int at, boolean onTheInstrument) {
        Sample from = samples.get(at - 12);
        Sample to = samples.get(at);
        double gained =
                onTheInstrument ? to.altitudeM() - from.altitudeM() : to.heightM() - from.heightM();
        return gained / (to.second() - from.second());
    }

    /** What the instrument must show for the rate of the satellites, by the air in the middle. */
    private static double shown(List<Sample> samples, int at) {
        Sample middle = samples.get(at - 6);
        return ClimbGradient.instrumentRate(
                rate(samples, at, false), middle.altitudeM(), middle.kelvins());
    }

    /**
     * Four climbs as airliners reported them, without height by satellite: against the thickness of
     * a second computation. Temperatures there are to 0.1 K, of which 0.05 K is 0.02 %; and rows
     * lie up to 600 m apart.
     */
    @ParameterizedTest(name = "{0}: {4} m of {5} m")
    @CsvFileSource(resources = "/sounding/aircraft-climbs.csv", useHeadersInDisplayName = true)
    @DisplayName("has the thickness of its air where only pressure altitude was reported")
    void thickness(
            String climb,
            int levels,
            double lowest,
            double highest,
            double thicknessM,
            double pressureGainM) {
        String resource = "/sounding/" + climb + ".csv";
        List<String> head = Arrays.asList(Table.head(resource).split(","));
        int altitude = head.indexOf("pressure_altitude_m");
        int temperature = head.indexOf("static_air_temperature_c");
        List<String[]> rows = Table.rows(resource).stream().map(row -> row.split(",", -1)).toList();
        assertThat(rows).hasSize(levels);
        double gained = 0.0;
        double shown = 0.0;
        for (int i = 1; i < rows.size(); i++) {
            double from = Double.parseDouble(rows.get(i - 1)[altitude]);
            double to = Double.parseDouble(rows.get(i)[altitude]);
            double below = Double.parseDouble(rows.get(i - 1)[temperature]) + 273.15;
            double above = Double.parseDouble(rows.get(i)[temperature]) + 273.15;
            shown += to - from;
            gained += 0.5 * (to - from) * (geopotential(from, below) + geopotential(to, above));
        }
        assertThat(shown).isCloseTo(pressureGainM, within(1e-9));
        assertThat(gained).isCloseTo(thicknessM, within(0.0005 * thicknessM));
        assertThat(Math.abs(gained - thicknessM)).isLessThan(0.2 * Math.abs(shown - thicknessM));
    }

    /** Geopotential metres in one of the altimeter: by the instrument's rate, gravity left out. */
    private static double geopotential(double altitudeM, double kelvins) {
        double standard = StandardAir.temperatureFromAltitude(altitudeM);
        return ClimbGradient.instrumentRate(1.0, altitudeM, standard)
                / ClimbGradient.instrumentRate(1.0, altitudeM, kelvins);
    }

    private static Sample last(List<Sample> samples) {
        return samples.get(samples.size() - 1);
    }

    private static List<Sample> samples(String climb) {
        return Table.rows("/gradient/recorded-climb-" + climb + ".csv").stream()
                .map(row -> row.split(","))
                .map(
                        row ->
                                new Sample(
                                        Double.parseDouble(row[0]),
                                        Double.parseDouble(row[1]),
                                        Double.parseDouble(row[2]),
                                        Double.parseDouble(row[3]),
                                        Double.parseDouble(row[4])))
                .toList();
    }
}
