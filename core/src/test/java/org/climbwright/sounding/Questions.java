package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;

/** Asks a sounding everything it can be asked; what it must answer whatever it holds. */
final class Questions {
    private Questions() {}

    /**
     * Nothing but an IllegalStateException comes back, and that only where fewer than two levels
     * make air; the answers are possible ones.
     */
    static void ask(Sounding sounding) {
        boolean hasAir = Soundings.levelsOfAir(sounding).size() >= 2;
        List<Consumer<Sounding>> ofTheAir =
                List.of(
                        Questions::askForAir,
                        Questions::askForCrossings,
                        Questions::askForInversions,
                        Questions::askForWarmLayers,
                        Questions::askForDeviations,
                        Questions::askForTropopause);
        for (Consumer<Sounding> question : ofTheAir) {
            if (hasAir) {
                question.accept(sounding);
            } else {
                assertThatIllegalStateException().isThrownBy(() -> question.accept(sounding));
            }
        }
        askForWinds(sounding);
    }

    private static void askForAir(Sounding sounding) {
        Atmosphere air = sounding.atmosphere();
        double altitudeBelow = Double.NEGATIVE_INFINITY;
        for (double pressure : pressures(air)) {
            AirState state = air.at(StaticPressure.ofPascals(pressure));
            assertThat(state.temperatureK()).isBetween(100.0, 400.0);
            assertThat(state.pressureAltitude().inMetres()).isFinite();
            double altitude = air.geopotentialAltitude(pressure);
            if (!Double.isNaN(altitude)) {
                assertThat(altitude).isGreaterThanOrEqualTo(altitudeBelow);
                altitudeBelow = altitude;
            }
        }
    }

    /** Every level of the air and one pressure between each two, the highest first. */
    private static List<Double> pressures(Atmosphere air) {
        List<Double> pressures = new ArrayList<>();
        double below = Double.NaN;
        for (double level : air.bendsPa()) {
            if (!Double.isNaN(below)) {
                pressures.add(Math.sqrt(below * level));
            }
            pressures.add(level);
            below = level;
        }
        return pressures;
    }

    private static void askForCrossings(Sounding sounding) {
        for (double celsius : new double[] {0.0, -20.0, 10.0}) {
            Optional<IsothermCrossing> before = Optional.empty();
            for (IsothermCrossing crossing :
                    sounding.isothermCrossings(StaticAirTemperature.ofCelsius(celsius))) {
                assertThat(Math.abs(crossing.air().temperatureK() - (celsius + 273.15)))
                        .isLessThanOrEqualTo(tolerance(sounding, crossing.air().pressurePa()));
                before.ifPresent(
                        last -> {
                            assertThat(crossing.air().pressurePa())
                                    .isLessThan(last.air().pressurePa());
                            assertThat(crossing.trend()).isNotEqualTo(last.trend());
                        });
                assertThat(crossing.pressureAltitude().inMetres()).isFinite();
                before = Optional.of(crossing);
            }
        }
        assertThat(sounding.freezingLevels())
                .isEqualTo(sounding.isothermCrossings(StaticAirTemperature.ofCelsius(0.0)));
    }

    /** 1e-9 K; more where levels so near that ulps of ln p count differ by many kelvins. */
    private static double tolerance(Sounding sounding, double pressurePa) {
        List<SoundingLevel> levels = Soundings.levelsOfAir(sounding);
        int above = 1;
        while (levels.get(above).pressurePa() > pressurePa) {
            above++;
        }
        SoundingLevel low = levels.get(above - 1);
        SoundingLevel high = levels.get(above);
        double depth = Math.log(low.pressurePa()) - Math.log(high.pressurePa());
        double fourUlps = 4.0 * Math.ulp(Math.log(low.pressurePa()));
        return 1e-9 + Math.abs(low.temperatureK() - high.temperatureK()) * fourUlps / depth;
    }

    private static void askForInversions(Sounding sounding) {
        double smallestRise = 0.5;
        for (Inversion inversion :
                sounding.inversions(TemperatureDifference.ofKelvins(smallestRise))) {
            assertThat(inversion.rise().inKelvins()).isGreaterThanOrEqualTo(smallestRise);
            assertThat(inversion.top().pressurePa()).isLessThan(inversion.base().pressurePa());
            inversion.depth().ifPresent(depth -> assertThat(depth.inMetres()).isNotNegative());
        }
    }

    private static void askForWarmLayers(Sounding sounding) {
        double below = Double.POSITIVE_INFINITY;
        for (WarmLayer layer : sounding.warmLayers(StaticAirTemperature.ofCelsius(0.0))) {
            assertThat(layer.bottom().pressurePa())
                    .isLessThanOrEqualTo(below)
                    .isGreaterThan(layer.top().pressurePa());
            assertThat(layer.warmest().temperatureK()).isGreaterThan(273.15);
            assertThat(layer.warmest().pressurePa())
                    .isBetween(layer.top().pressurePa(), layer.bottom().pressurePa());
            layer.depth().ifPresent(depth -> assertThat(depth.inMetres()).isNotNegative());
            below = layer.top().pressurePa();
        }
    }

    private static void askForDeviations(Sounding sounding) {
        double largest = Math.abs(sounding.largestIsaDeviation().isaDeviation().inKelvins());
        for (AirState air : sounding.airAtLevels()) {
            assertThat(Math.abs(air.isaDeviation().inKelvins())).isLessThanOrEqualTo(largest);
        }
    }

    private static void askForTropopause(Sounding sounding) {
        sounding.tropopause()
                .ifPresent(air -> assertThat(air.pressurePa()).isLessThanOrEqualTo(50000.0));
    }

    private static void askForWinds(Sounding sounding) {
        for (UnobservedWind rule : UnobservedWind.values()) {
            Winds winds = sounding.winds(rule);
            for (double pressure = 1.0; pressure < 110000.0; pressure *= 1.3) {
                double east = winds.eastward(pressure);
                double north = winds.northward(pressure);
                assertThat(winds.covers(pressure))
                        .isEqualTo(!Double.isNaN(east))
                        .isEqualTo(!Double.isNaN(north));
            }
            for (double pressure : winds.bendsPa()) {
                assertThat(winds.covers(pressure)).isTrue();
            }
        }
    }
}
