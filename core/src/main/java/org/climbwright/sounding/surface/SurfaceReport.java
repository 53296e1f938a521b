package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.ReadingProblem;
import org.climbwright.sounding.Sounding;
import org.jspecify.annotations.Nullable;

/**
 * One weather report of an aerodrome, METAR or SPECI: what was observed, and why the rest was not.
 *
 * <p>Only the observation: a trend forecast behind it is not read. A report names the day of the
 * month and never the month; two reports are equal when their texts are.
 *
 * <pre>{@code
 * SurfaceReport report = SurfaceReportReader.parse("OIFM 011200Z 31008KT CAVOK 40/M05 Q1009");
 * report.qnh().orElseThrow().setting().inHectopascals()                 // 1009.0
 * report.air(GeopotentialAltitude.ofFeet(5000)).isaDeviation()          // 35.13…, K
 * report.whyMissing(ReportElement.PRESENT_WEATHER).isPresent()                // true
 * }</pre>
 *
 * <p>Limits of use: weather for computing and teaching. For a flight the reports, forecasts and
 * settings that count are those of the meteorological and air traffic services.
 *
 * @source WMO-No. 306, Manual on Codes, Volume I.1, FM 15 METAR and FM 16 SPECI (order of the
 *     groups seen in a copy of the code form; regulations from memory); Federal Meteorological
 *     Handbook No. 1, chapter 12, for the forms of US reports (from memory)
 */
public final class SurfaceReport implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String text;

    // follows from the text, and does so again on reading
    private final transient ReportContent content;

    private SurfaceReport(String text) {
        this.text = text;
        this.content = ReportParser.parse(text);
    }

    /** The report that a text is; refuses a text that is none. */
    static SurfaceReport of(String text) {
        return new SurfaceReport(text);
    }

    /**
     * Returns the report as it came.
     *
     * @return the text, without blanks around it
     */
    public String text() {
        return text;
    }

    /**
     * Returns the station.
     *
     * @return its location indicator of four letters or digits
     */
    public String station() {
        return content.head().station();
    }

    /**
     * Returns the day of the observation, UTC.
     *
     * @return the day of a month that the report does not name, 1 to 31; empty only in a NIL report
     */
    public OptionalInt dayOfMonth() {
        return content.head().time() == null
                ? OptionalInt.empty()
                : OptionalInt.of(content.head().dayOfMonth());
    }

    /**
     * Returns the time of the observation, UTC.
     *
     * @return hour and minute; empty only in a NIL report
     */
    public Optional<LocalTime> timeUtc() {
        return Optional.ofNullable(content.head().time());
    }

    /**
     * Tells whether no human had a part in it.
     *
     * @return true for AUTO
     */
    public boolean isAutomatic() {
        return content.automatic();
    }

    /**
     * Tells whether it corrects an earlier report.
     *
     * @return true for COR, and CCA and its like
     */
    public boolean isCorrected() {
        return content.corrected();
    }

    /**
     * Tells whether the station reports nothing.
     *
     * @return true for NIL
     */
    public boolean isNil() {
        return content.nil();
    }

    /**
     * Returns the wind.
     *
     * @return the wind; empty when {@link #whyMissing} says why
     */
    public Optional<SurfaceWind> wind() {
        return Optional.ofNullable(content.wind());
    }

    /**
     * Returns the prevailing visibility.
     *
     * <p>Where CAVOK stands beside a visibility below 10 km, the lower of the two is told, and
     * nothing of the sky.
     *
     * @return the visibility; empty when {@link #whyMissing} says why
     */
    public Optional<Visibility> visibility() {
        return Optional.ofNullable(content.visibility());
    }

    /**
     * Returns the groups of present weather.
     *
     * @return groups such as {@code -RA}, {@code VCSH}, as they stand; empty when none does
     */
    public List<String> presentWeather() {
        return content.weather();
    }

    /**
     * Returns what is told of the sky as a whole.
     *
     * <p>Better a cloud too many than none: a statement of no cloud is left out where a layer is
     * told as well; where a group of cloud beside it cannot be read, or CAVOK has a visibility
     * below 10 km beside it, nothing is told of the sky.
     *
     * @return the kind of statement; {@link Sky#NOT_REPORTED} when {@link #whyMissing} says why
     */
    public Sky sky() {
        return content.sky();
    }

    /**
     * Returns the layers of cloud.
     *
     * @return the layers in the order of the report; empty when none is told
     */
    public List<CloudLayer> cloudLayers() {
        return content.layers();
    }

    /**
     * Returns how far one sees upwards into an obscured sky.
     *
     * @return height above the aerodrome; empty when not told
     */
    public Optional<Height> verticalVisibility() {
        return Optional.ofNullable(content.verticalVisibility());
    }

    /**
     * Returns the air temperature.
     *
     * @return static air temperature; empty when {@link #whyMissing} says why
     * @accuracy a whole degree; a tenth where the remarks of a US report have one that rounds to
     *     the whole degree. M00, which is from -0.5 °C to 0, is 0 °C here, as 00 is
     * @source the group of tenths: AFMAN 15-111, 12 March 2019, remark 30 (example 03/M01 and
     *     T00261015)
     */
    public Optional<StaticAirTemperature> staticAirTemperature() {
        return Optional.ofNullable(content.temperature());
    }

    /**
     * Returns the dew point.
     *
     * @return dew point, over liquid water as codes have it (from memory); empty when {@link
     *     #whyMissing} says why
     * @accuracy as {@link #staticAirTemperature}
     */
    public Optional<DewPoint> dewPoint() {
        return Optional.ofNullable(content.dewPoint());
    }

    /**
     * Returns the altimeter setting QNH.
     *
     * @return the first one of the report, with its unit; empty when {@link #whyMissing} says why
     */
    public Optional<ReportedQnh> qnh() {
        return Optional.ofNullable(content.qnh());
    }

    /**
     * Returns the groups that are known and make no element here: runway visual range, state of a
     * runway, minimum visibility with its direction, recent weather, wind shear, state of the sea,
     * colour state, kind of automatic station.
     *
     * @return the groups as they stand
     */
    public List<String> otherGroups() {
        return content.others();
    }

    /**
     * Returns what of the observation could not be used.
     *
     * @return problems, their lines counted within this report; empty for a flawless one
     */
    public List<ReadingProblem> problems() {
        return content.problems();
    }

    /**
     * Returns why an element is not told.
     *
     * @param element the element
     * @return the reason; empty when the element is told
     */
    public Optional<Absence> whyMissing(ReportElement element) {
        return Optional.ofNullable(content.absences().get(element));
    }

    /**
     * Returns the air at the aerodrome.
     *
     * <p>Its pressure is that of standard air as far above the level of QNH as the aerodrome is
     * above the sea; its humidity is unknown if the dew point is.
     *
     * @param elevation elevation of the aerodrome; standard air counts in geopotential altitude,
     *     and at 1000 m the two are 0.16 m apart
     * @return the air, its altitude the elevation
     * @throws IllegalStateException if the report has no temperature or no QNH; the message says
     *     why not
     * @throws org.climbwright.quantity.OutsideModelException if standard air does not reach there
     * @accuracy QNH is rounded down: the pressure is up to 1 hPa too low (27 ft near the sea), 0.34
     *     hPa where it came in inches; temperature and dew point to half a degree, or to 0.05
     * @source ICAO Annex 3 and Doc 8896 for QNH as the setting that shows the elevation (definition
     *     from memory)
     */
    public AirState air(GeopotentialAltitude elevation) {
        return SurfaceAir.of(this, elevation);
    }

    /**
     * Returns an ascent that begins with this report: its air at the aerodrome, and above it the
     * levels of an ascent that have a lower pressure.
     *
     * <p>Levels of the pressure at the aerodrome, to 1 Pa, or more are left out, and so is what was
     * told by height only at or below the elevation. The first level left may be told as no higher
     * than the aerodrome: up to 1 hPa from the report that is the rounding of QNH, and the level is
     * left out; farther away the two do not belong together. Nor do they where the first height
     * above is not where pressures, temperatures and dew points put it, within one step of the QNH,
     * half a hectopascal, 1 m and 1 % of the thickness: 14 m and 1 % near the sea.
     *
     * <p>Between the report and the first level above it, temperature is a straight line over an
     * hour, or many kilometres, that nobody observed.
     *
     * @param sounding the ascent, best of a place and an hour nearby
     * @param elevation elevation of the aerodrome
     * @return the ascent with the lowest level from this report, under its own names
     * @throws IllegalStateException if the report has no temperature or no QNH
     * @throws IllegalArgumentException if a level of lower pressure is reported at or below the
     *     elevation, more than 1 hPa from the report, or the first height above does not fit
     * @accuracy see {@link #air}
     */
    public Sounding joinedWith(Sounding sounding, GeopotentialAltitude elevation) {
        return SurfaceAir.joined(this, sounding, elevation);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SurfaceReport that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /**
     * Returns the report as it came.
     *
     * @return its text
     */
    @Override
    public String toString() {
        return text;
    }

    private Object readResolve() {
        return of(text);
    }
}
