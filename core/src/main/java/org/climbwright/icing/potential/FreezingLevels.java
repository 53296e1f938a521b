package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.IcaoConstants;
import org.climbwright.icing.potential.ProfileSearch.Stretch;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.IsaDeviation;

/**
 * All levels at which some air passes 0 °C, the lowest first.
 *
 * <p>"The" freezing level of a chart is one of them, and charts differ in which: below the lowest
 * the air need not be warm, and above the highest it need not be cold from there on.
 *
 * <pre>{@code
 * FreezingLevels levels = FreezingLevels.in(Atmosphere.standard());
 * levels.all().size()                                  // 1
 * levels.lowest().get().pressureAltitude().inFeet()    // 7571.16…
 * }</pre>
 *
 * <p>Limits of use: the air given and no other; a sounding is one place and hour. A level of 0 °C
 * parts warm air from cold, not "no icing" from icing: an airframe colder than the air, rain that
 * falls into cold air, and intakes and carburettors take ice in air above 0 °C.
 *
 * @param bottom the lowest air that was looked at
 * @param top the highest air that was looked at
 * @param all the passages of 0 °C from the lowest to the highest
 * @source the definition; standard air by ICAO Doc 7488
 */
public record FreezingLevels(AirState bottom, AirState top, List<FreezingLevel> all)
        implements Serializable {
    static final double ICE_POINT_K = 273.15;

    private static final double SEA_LEVEL_EXCESS_K =
            IcaoConstants.SEA_LEVEL_TEMPERATURE_K - ICE_POINT_K;

    private static final double LAPSE_K_PER_M = 0.0065;

    /** From 11 km down to -5 km, the lowest layer of standard air. */
    private static final ModelRange DEVIATION =
            new ModelRange(
                    "ISA deviation",
                    -SEA_LEVEL_EXCESS_K - 5000.0 * LAPSE_K_PER_M,
                    11000.0 * LAPSE_K_PER_M - SEA_LEVEL_EXCESS_K,
                    "K",
                    "only then is 0 °C in the lowest layer of standard air, -5 to 11 km");

    /**
     * Makes it of parts that are there.
     *
     * @param bottom the lowest air that was looked at
     * @param top the highest air that was looked at
     * @param all the passages of 0 °C from the lowest to the highest
     */
    public FreezingLevels {
        Objects.requireNonNull(bottom, "bottom");
        Objects.requireNonNull(top, "top");
        all = List.copyOf(all);
    }

    /**
     * Finds every passage of 0 °C.
     *
     * <p>Air that touches 0 °C and turns back does not pass it; where it stays at exactly 0 °C and
     * then goes on, the passage is the lower edge of that layer. Nothing above 50 hPa, some 20 km,
     * is looked at: at 50 km the warm standard air of a hot day passes 0 °C again.
     *
     * @param air the air
     * @return its levels of 0 °C
     * @accuracy 1e-8 m; between two bends that are told, a layer thinner than an eighth of the
     *     stretch, and than 80 m, may be missed
     */
    public static FreezingLevels in(Atmosphere air) {
        List<FreezingLevel> levels = new ArrayList<>();
        int before = 0;
        double edgePa = Double.NaN;
        for (Stretch stretch : stretchesBySign(air)) {
            if (stretch.state() == 0) {
                continue;
            }
            if (before != 0 && stretch.state() != before) {
                levels.add(
                        new FreezingLevel(
                                IndicationSpan.state(air, edgePa),
                                stretch.state() > 0
                                        ? FreezingLevel.Trend.RISING
                                        : FreezingLevel.Trend.FALLING));
            }
            before = stretch.state();
            edgePa = stretch.topPa();
        }
        return new FreezingLevels(
                IndicationSpan.state(air, air.range().highest()),
                IndicationSpan.state(air, ProfileSearch.topPa(air)),
                levels);
    }

    /** Warm is 1, cold is -1, exactly 0 °C is 0. */
    private static List<Stretch> stretchesBySign(Atmosphere air) {
        return ProfileSearch.of(
                air, pressurePa -> Double.compare(air.temperature(pressurePa), ICE_POINT_K));
    }

    /**
     * Returns the lowest passage.
     *
     * @return the level; empty when there is none, and {@link #inWords} says why
     */
    public Optional<FreezingLevel> lowest() {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /**
     * Returns the highest passage.
     *
     * @return the level; empty when there is none, and {@link #inWords} says why
     */
    public Optional<FreezingLevel> highest() {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /**
     * Returns what was found, for reading.
     *
     * @return one sentence: how many levels there are and where, or why there is none
     */
    public String inWords() {
        if (all.isEmpty()) {
            return "no level of 0 °C between pressure altitudes of "
                    + Words.feet(bottom)
                    + " and "
                    + Words.feet(top)
                    + ", where it is "
                    + Words.celsius(bottom)
                    + " and "
                    + Words.celsius(top)
                    + "; outside nobody looked";
        }
        StringBuilder words = new StringBuilder("0 °C at pressure altitudes of");
        String separator = " ";
        for (FreezingLevel level : all) {
            words.append(separator)
                    .append(Words.feet(level.air()))
                    .append(
                            level.trend() == FreezingLevel.Trend.RISING
                                    ? " (warmer upwards)"
                                    : " (colder upwards)");
            separator = ", ";
        }
        return words.toString();
    }

    /**
     * Tells whether 0 °C is in the lowest layer of standard air with a deviation.
     *
     * @param deviationK how much warmer than standard the air is at each pressure [K]
     * @return true from -47.5 to 56.5 K
     */
    public static boolean coversDeviation(double deviationK) {
        return DEVIATION.covers(deviationK);
    }

    /**
     * Returns where standard air with a deviation has 0 °C: {@code (15 + d) / 0.0065}.
     *
     * @param deviationK how much warmer than standard the air is at each pressure [K], -47.5 to
     *     56.5
     * @return pressure altitude [m]: 2307.69 without a deviation, 0 or less where it is at most 0
     *     °C at 1013.25 hPa
     * @throws org.climbwright.quantity.OutsideModelException if the deviation is out of range
     * @accuracy 2 ulp
     * @source ICAO Doc 7488: 15 °C at mean sea level, 6.5 K/km
     */
    public static double pressureAltitudeInStandardAir(double deviationK) {
        return (SEA_LEVEL_EXCESS_K + DEVIATION.check(deviationK)) / LAPSE_K_PER_M;
    }

    /**
     * Returns where standard air with a deviation has 0 °C.
     *
     * @param deviation how much warmer than standard the air is at each pressure, -47.5 to 56.5 K
     * @return pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if the deviation is out of range
     */
    public static PressureAltitude inStandardAir(IsaDeviation deviation) {
        return PressureAltitude.ofMetres(pressureAltitudeInStandardAir(deviation.inKelvins()));
    }

    /**
     * Returns the levels for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return inWords();
    }
}
