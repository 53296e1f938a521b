package org.climbwright.sounding;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;

/**
 * One ascent of a weather balloon: its levels, and the air and the winds that they make.
 *
 * <p>Between two levels temperature and dew point are linear in the logarithm of pressure; above
 * the highest and below the lowest nothing is known. An ascent takes an hour or more and drifts
 * with the wind: it is the air of its time and place, and the climb's is another.
 *
 * <pre>{@code
 * Sounding sounding = SoundingReader.read(path).soundings().get(0);
 * sounding.freezingLevels()      // every 0 °C level, with its direction
 * sounding.atmosphere().at(PressureAltitude.ofFeet(5000)).staticAirTemperature()
 * }</pre>
 */
public final class Sounding implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String station;
    private final String launch;

    @SuppressWarnings("serial") // of List.copyOf, which is serializable
    private final List<SoundingLevel> levels;

    private Sounding(String station, String launch, List<SoundingLevel> levels) {
        this.station = station;
        this.launch = launch;
        this.levels = List.copyOf(levels);
    }

    /**
     * Returns an ascent.
     *
     * @param station what the file calls the station; may be empty
     * @param launch the nominal time of the launch, {@code "2010-06-01T00"}; may be empty
     * @param levels levels with pressure, in the order of falling pressure, then those without
     * @return the ascent
     * @throws IllegalArgumentException if pressures do not fall from level to level by a part in
     *     1e9 at least, their heights do not rise, or a level with pressure follows one without
     */
    public static Sounding of(String station, String launch, List<SoundingLevel> levels) {
        LevelOrder.check(levels);
        return new Sounding(station, launch, levels);
    }

    /**
     * Returns what the file calls the station.
     *
     * @return the identifier; empty when the format has none
     */
    public String station() {
        return station;
    }

    /**
     * Returns the nominal time of the launch.
     *
     * @return year, month, day and hour, UTC: {@code "2010-06-01T00"}; empty when not told
     */
    public String launch() {
        return launch;
    }

    /**
     * Returns the levels.
     *
     * @return those with pressure, the highest pressure first, then those with a height only
     */
    public List<SoundingLevel> levels() {
        return levels;
    }

    /**
     * Returns the air of this ascent.
     *
     * <p>Altitudes follow the hypsometric equation with virtual temperature between the reported
     * heights, which they meet; where no height was reported they follow it alone. Air without a
     * reported dew point counts as dry in them.
     *
     * @return an atmosphere from the lowest to the highest level with a temperature
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     * @accuracy of the interpolation: exact at the levels; the reported heights differ from a
     *     hypsometric integration of the same levels by up to 19 m in the ascents it is tested with
     * @source WMO-No. 8, Guide to Instruments and Methods of Observation, part on upper-air
     *     observations (hypsometric equation; from memory)
     */
    public Atmosphere atmosphere() {
        return SoundingAtmosphere.of(this);
    }

    /**
     * Returns the winds of this ascent, with a rule for where none was observed.
     *
     * <p>Between two levels with a wind the components are linear in the logarithm of pressure. A
     * wind that was reported by height stands at the pressure that {@link #atmosphere} has there;
     * where it has none, below or above its heights, that wind is left out.
     *
     * @param elsewhere what to take outside the observed winds
     * @return the winds on levels of their own
     */
    public Winds winds(UnobservedWind elsewhere) {
        return SoundingWinds.of(this, elsewhere);
    }

    /**
     * Returns the levels at which the air passes a temperature.
     *
     * <p>A crossing is a change of sign inside the column: a lowest level of exactly that
     * temperature is none.
     *
     * @param temperature the temperature
     * @return the crossings from the lowest to the highest; empty when there is none
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     */
    public List<IsothermCrossing> isothermCrossings(StaticAirTemperature temperature) {
        return IsothermCrossing.in(SoundingAtmosphere.of(this), temperature.inKelvins());
    }

    /**
     * Returns the levels at which the air passes 0 °C; there may be several, or none.
     *
     * @return the crossings from the lowest to the highest
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     */
    public List<IsothermCrossing> freezingLevels() {
        return isothermCrossings(StaticAirTemperature.ofCelsius(0.0));
    }

    /**
     * Returns the layers that are warmer than a temperature.
     *
     * <p>Their edges are the {@link #isothermCrossings}, and the ends of the ascent where those are
     * warm. A level of exactly that temperature between warmer ones does not part a layer.
     *
     * @param temperature the temperature, 0 °C as a rule
     * @return the layers from the lowest to the highest; empty when it is nowhere warmer
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     */
    public List<WarmLayer> warmLayers(StaticAirTemperature temperature) {
        return WarmLayer.in(SoundingAtmosphere.of(this), temperature.inKelvins());
    }

    /**
     * Returns the layers in which it gets warmer upwards.
     *
     * @param smallestRise how much warmer the top must be than the base to count
     * @return the inversions from the lowest to the highest
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     */
    public List<Inversion> inversions(TemperatureDifference smallestRise) {
        return Inversion.in(SoundingAtmosphere.of(this), smallestRise.inKelvins());
    }

    /**
     * Returns the tropopause by the WMO definition.
     *
     * @return the air at the lowest reported level, at 500 hPa or above, from which it cools by 2
     *     K/km or less, and on average to every level of the next 2 km; empty when no level is, or
     *     the ascent ends before that can be told, or its altitudes are not known
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     * @source WMO International Meteorological Vocabulary, WMO-No. 182, "tropopause": "the lowest
     *     level at which the lapse rate decreases to 2 °C/km or less, provided also the average
     *     lapse rate between this level and all higher levels within 2 km does not exceed 2 °C/km"
     *     (first tropopause; as quoted in glossaries). That nothing below 500 hPa counts, where a
     *     deep inversion could meet it, is common practice, no source
     */
    public Optional<AirState> tropopause() {
        return Tropopause.in(SoundingAtmosphere.of(this));
    }

    /**
     * Returns the air at each level that has pressure and temperature: the profile of temperature,
     * humidity and ISA deviation, each with its altitudes.
     *
     * @return the states from the lowest to the highest
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     */
    public List<AirState> airAtLevels() {
        SoundingAtmosphere air = SoundingAtmosphere.of(this);
        return IntStream.range(0, air.size()).mapToObj(air::stateAt).toList();
    }

    /**
     * Returns the air where it is farthest from the standard atmosphere, warmer or colder.
     *
     * <p>All of the ascent is searched, not its levels only: standard air bends at 11 km, and
     * between two levels it is not straight in ln p as the observed air is.
     *
     * @return the state there, the lowest where several are as far; its {@link
     *     AirState#isaDeviation} is the deviation
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     * @accuracy 1e-9 K in the deviation
     * @source derived: temperature straight in ln p less that of ICAO Doc 7488/3
     */
    public AirState largestIsaDeviation() {
        return LargestIsaDeviation.in(SoundingAtmosphere.of(this));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sounding that
                && station.equals(that.station)
                && launch.equals(that.launch)
                && levels.equals(that.levels);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * station.hashCode() + launch.hashCode()) + levels.hashCode();
    }

    /**
     * Returns station, launch and number of levels for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String name = (station + " " + launch).trim();
        return "sounding"
                + (name.isEmpty() ? "" : " of " + name)
                + ", "
                + levels.size()
                + " levels";
    }

    private Object readResolve() {
        return of(station, launch, levels);
    }
}
