package org.climbwright.atmosphere.altimetry;

import java.util.Locale;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;

/**
 * What cold air does to an altimeter on QNH: in air colder than standard the aeroplane is lower
 * than the altimeter shows.
 *
 * <p>Two questions, two numbers. A <em>correction</em> belongs to a published height: how much more
 * the altimeter must show, so that the aeroplane truly has that height. An <em>error</em> belongs
 * to an indicated height: how much lower than shown the aeroplane is. At -50 °C and 5,000 ft the
 * table says to add 1,500 ft to the published height, and the error at 5,000 ft indicated is 1,148
 * ft.
 *
 * <p>The corrections come in three forms. {@link #tableCorrection} is what the published table
 * prints, made for an aerodrome at sea level and rounded up to 10 ft; {@link #aerodromeCorrection}
 * is the formula behind it with the elevation of the aerodrome; {@link #exactCorrection} follows
 * from the hydrostatic equation for air that deviates by the same amount at every pressure. With a
 * sounding or any other air, {@link #correctionIn} and {@link #errorIn} need no such assumption.
 *
 * <p>Heights here are above the aerodrome, strictly above the barometer that its QNH comes from.
 *
 * <p>Corrections apply to published minimum altitudes and heights, and only when the air is colder
 * than standard; nothing is ever taken off for warm air. Altitudes that a controller assigns are
 * not the pilot's to correct.
 *
 * <p>Limits of use: whether, from which temperature on and to which altitudes corrections are made
 * is laid down by the state, the aeronautical information and the operator's procedures. These
 * figures know nothing of wind over mountains or of local low pressure.
 *
 * @source ICAO Doc 8168 (PANS-OPS) volume I, part III, section 1, chapter 4 (formula seen in a
 *     public pilots' forum; when and to what it applies, from memory); FAA Aeronautical Information
 *     Manual, table 7-3-1
 */
public final class ColdAir {
    /** Lapse of the formula, 0.00198 °C per foot [K/m]; the standard's is 0.0019812. */
    private static final double FORMULA_LAPSE = 0.00198 / UnitScale.FOOT.toSi(1.0);

    private static final double TEN_FEET_M = UnitScale.FOOT.toSi(10.0);

    /** A correction that is whole tens of feet but for rounding is not rounded up to the next. */
    private static final double ROUNDING = 1e-9;

    /** What rounding may leave of no error at all. */
    private static final double NOTHING_M = 1e-8;

    private static final int MOST_STEPS = 20;

    private static final ModelRange HEIGHT =
            new ModelRange(
                    "height above the aerodrome",
                    0.0,
                    10000.0,
                    "m",
                    "corrections are for heights near an aerodrome");
    private static final ModelRange ELEVATION =
            new ModelRange("aerodrome elevation", -500.0, 6000.0, "m", "no aerodrome is outside");
    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "aerodrome temperature",
                    UnitScale.CELSIUS.toSi(-90.0), // 183.15 K would leave out -90 °C by a last bit
                    UnitScale.CELSIUS.toSi(60.0),
                    "K",
                    "no aerodrome is outside");
    private static final ModelRange TABLE_HEIGHT =
            new ModelRange(
                    "height above the aerodrome",
                    UnitScale.FOOT.toSi(200.0),
                    UnitScale.FOOT.toSi(5000.0),
                    "m",
                    "the table is printed from 200 to 5000 ft");
    private static final ModelRange TABLE_TEMPERATURE =
            new ModelRange(
                    "aerodrome temperature",
                    UnitScale.CELSIUS.toSi(-50.0),
                    UnitScale.CELSIUS.toSi(10.0),
                    "K",
                    "the table is printed from -50 to 10 °C");

    private ColdAir() {}

    /**
     * Tells whether the forms with a temperature and an elevation take these values.
     *
     * @param heightM height above the aerodrome, published or indicated [m]
     * @param temperatureK static air temperature at the aerodrome [K]
     * @param elevationM elevation of the aerodrome [m]
     * @return true for 0 to 10000 m, -90 to 60 °C, and -500 to 6000 m
     */
    public static boolean covers(double heightM, double temperatureK, double elevationM) {
        return HEIGHT.covers(heightM)
                && TEMPERATURE.covers(temperatureK)
                && ELEVATION.covers(elevationM);
    }

    /**
     * Tells whether the table is printed for these values.
     *
     * @param heightM height above the aerodrome on the chart [m]
     * @param temperatureK static air temperature at the aerodrome [K]
     * @return true from 200 to 5000 ft and from -50 to 10 °C
     */
    public static boolean coversTable(double heightM, double temperatureK) {
        return TABLE_HEIGHT.covers(heightM) && TABLE_TEMPERATURE.covers(temperatureK);
    }

    /**
     * Returns what the published table adds to a published height: the formula for an aerodrome at
     * sea level, rounded up to 10 ft.
     *
     * <p>Between the heights and temperatures that are printed this is the formula too, and less
     * than the next entry: who enters the printed table at the next colder and higher one adds
     * more.
     *
     * @param publishedHeightM height above the aerodrome on the chart [m], 60.96 to 1524
     * @param temperatureK static air temperature at the aerodrome [K], 223.15 to 283.15
     * @return what to add [m], whole tens of feet
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy exact: all entries of the printed table
     * @source FAA Aeronautical Information Manual, table 7-3-1, from ICAO Doc 8168
     */
    public static double tableCorrection(double publishedHeightM, double temperatureK) {
        double byFormula =
                aerodromeCorrection(
                        TABLE_HEIGHT.check(publishedHeightM),
                        TABLE_TEMPERATURE.check(temperatureK),
                        0.0);
        double tens = StrictMath.ceil(byFormula / TEN_FEET_M - ROUNDING);
        return UnitScale.FOOT.toSi(10.0 * tens); // comes back as whole feet
    }

    /**
     * Returns what the formula adds to a published height: {@code H (15 - t0) / (273 + t0 - L0 (H +
     * Hss) / 2)}, with t0 the aerodrome temperature in °C reduced to sea level by L0.
     *
     * @param publishedHeightM height above the aerodrome on the chart [m], 0 to 10000
     * @param temperatureK static air temperature at the aerodrome [K], 183.15 to 333.15
     * @param elevationM elevation of the aerodrome above mean sea level [m], -500 to 6000
     * @return what to add [m]; negative in air warmer than standard, where nothing is taken off
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy against {@link #exactCorrection}: 5 % down to -50 °C, up to an elevation of 10,000
     *     ft and a height of 5,000 ft; 6 % down to -60 °C and up to a height of 10,000 ft; 10 % at
     *     an elevation of 6000 m; mostly too small; near standard temperature, where little is to
     *     be added, more of that little
     * @source see the class comment
     */
    public static double aerodromeCorrection(
            double publishedHeightM, double temperatureK, double elevationM) {
        // letters as in the source
        double h = HEIGHT.check(publishedHeightM);
        double hss = ELEVATION.check(elevationM);
        double t0 = TEMPERATURE.check(temperatureK) - 273.15 + FORMULA_LAPSE * hss;
        return h * (15.0 - t0) / (273.0 + t0 - 0.5 * FORMULA_LAPSE * (h + hss));
    }

    /**
     * Returns what must be added to a published height in air that deviates from standard by the
     * same amount at every pressure.
     *
     * @param publishedHeightM height above the aerodrome on the chart [m], 0 to 10000
     * @param temperatureK static air temperature at the aerodrome [K], 183.15 to 333.15
     * @param elevationM elevation of the aerodrome above mean sea level [m], -500 to 6000
     * @return what to add [m]; negative in air warmer than standard, where nothing is taken off
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-8 m of the equation; it takes the pressure altitude of the aerodrome for its
     *     elevation, that is a QNH of 1013.25 hPa
     * @source {@link StandardAir#thicknessWithDeviation}, solved for the indicated height
     */
    public static double exactCorrection(
            double publishedHeightM, double temperatureK, double elevationM) {
        HEIGHT.check(publishedHeightM);
        checkAerodrome(temperatureK, elevationM);
        // Newton's steps: a metre of the indication is T / T_ISA true metres
        double indicatedM = publishedHeightM;
        double step = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_STEPS && Math.abs(step) > NOTHING_M / 10.0; i++) {
            double standardK = StandardAir.temperatureFromAltitude(elevationM + indicatedM);
            double deviationK = temperatureK - StandardAir.temperatureFromAltitude(elevationM);
            double excessM = trueHeight(indicatedM, temperatureK, elevationM) - publishedHeightM;
            step = excessM * standardK / (standardK + deviationK);
            indicatedM -= step;
        }
        return indicatedM - publishedHeightM;
    }

    /**
     * Returns how much lower than shown an aeroplane is in air that deviates from standard by the
     * same amount at every pressure.
     *
     * @param indicatedHeightM altitude shown on QNH less the elevation [m], 0 to 10000
     * @param temperatureK static air temperature at the aerodrome [K], 183.15 to 333.15
     * @param elevationM elevation of the aerodrome above mean sea level [m], -500 to 6000
     * @return indicated less true height [m], positive when the altimeter reads too high
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-9 m of the equation; it takes the pressure altitude of the aerodrome for its
     *     elevation, that is a QNH of 1013.25 hPa
     * @source {@link StandardAir#thicknessWithDeviation}
     */
    public static double errorAtIndicatedHeight(
            double indicatedHeightM, double temperatureK, double elevationM) {
        HEIGHT.check(indicatedHeightM);
        checkAerodrome(temperatureK, elevationM);
        return indicatedHeightM - trueHeight(indicatedHeightM, temperatureK, elevationM);
    }

    private static void checkAerodrome(double temperatureK, double elevationM) {
        TEMPERATURE.check(temperatureK);
        ELEVATION.check(elevationM);
    }

    private static double trueHeight(
            double indicatedHeightM, double temperatureK, double elevationM) {
        return StandardAir.thicknessWithDeviation(
                StandardAir.pressureFromAltitude(elevationM),
                StandardAir.pressureFromAltitude(elevationM + indicatedHeightM),
                temperatureK - StandardAir.temperatureFromAltitude(elevationM));
    }

    /**
     * Returns what the published table adds to a published height, made for an aerodrome at sea
     * level.
     *
     * @param published height above the aerodrome on the chart, 200 to 5000 ft
     * @param aerodrome static air temperature at the aerodrome, -50 to 10 °C
     * @return the correction, rounded up to 10 ft
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static ColdAirCorrection tableCorrection(
            Height published, StaticAirTemperature aerodrome) {
        return correction(
                tableCorrection(published.inMetres(), aerodrome.inKelvins()),
                heightOf(published),
                "the formula of the published table, for an aerodrome at sea level, rounded up to"
                        + " 10 ft");
    }

    /**
     * Returns what the formula behind the table adds to a published height.
     *
     * @param published height above the aerodrome on the chart, 0 to 10,000 m
     * @param aerodrome static air temperature at the aerodrome, -90 to 60 °C
     * @param elevation its elevation, -500 to 6000 m
     * @return the correction
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static ColdAirCorrection aerodromeCorrection(
            Height published, StaticAirTemperature aerodrome, GeopotentialAltitude elevation) {
        return correction(
                aerodromeCorrection(
                        published.inMetres(), aerodrome.inKelvins(), elevation.inMetres()),
                heightOf(published),
                "the formula of ICAO Doc 8168 with the elevation of the aerodrome");
    }

    /**
     * Returns what must be added to a published height in air that deviates from standard by the
     * same amount at every pressure.
     *
     * @param published height above the aerodrome on the chart, 0 to 10,000 m
     * @param aerodrome static air temperature at the aerodrome, -90 to 60 °C
     * @param elevation its elevation, -500 to 6000 m
     * @return the correction
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static ColdAirCorrection exactCorrection(
            Height published, StaticAirTemperature aerodrome, GeopotentialAltitude elevation) {
        return correction(
                exactCorrection(published.inMetres(), aerodrome.inKelvins(), elevation.inMetres()),
                heightOf(published),
                "a constant deviation from standard at every pressure");
    }

    private static String heightOf(Height published) {
        return String.format(Locale.ROOT, "height of %,.0f ft", published.inFeet());
    }

    private static ColdAirCorrection correction(double metres, String published, String basis) {
        return new ColdAirCorrection(AltitudeChange.ofMetres(metres), published, basis);
    }

    /**
     * Returns how wrong an altimeter on QNH is in air that deviates from standard by the same
     * amount at every pressure.
     *
     * @param indicated altitude shown less the elevation, 0 to 10,000 m
     * @param aerodrome static air temperature at the aerodrome, -90 to 60 °C
     * @param elevation its elevation, -500 to 6000 m
     * @return by how much it reads too high
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static AltimeterError errorAtIndicatedHeight(
            Height indicated, StaticAirTemperature aerodrome, GeopotentialAltitude elevation) {
        double metres =
                errorAtIndicatedHeight(
                        indicated.inMetres(), aerodrome.inKelvins(), elevation.inMetres());
        String reason =
                metres > NOTHING_M
                        ? "the air below is colder than standard (to a published height of as much,"
                                + " more must be added)"
                        : metres < -NOTHING_M
                                ? "the air below is warmer than standard"
                                : "the air below is as warm as standard";
        return new AltimeterError(AltitudeChange.ofMetres(metres), reason);
    }

    /**
     * Returns what must be added to a published altitude in some air.
     *
     * @param published altitude on the chart; altimeters count in geopotential altitude, and at
     *     10,000 ft the two are 5 ft apart
     * @param qnh altimeter setting; one that is not the air's own puts its error into the figure
     * @param air the air, a sounding's for instance, its altitudes known
     * @return the correction; 0 at the aerodrome when its elevation, pressure and QNH belong
     *     together
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     * @throws IllegalStateException if the altitudes of the air are not known
     */
    public static ColdAirCorrection correctionIn(
            Atmosphere air, GeopotentialAltitude published, AltimeterSetting qnh) {
        double pressurePa = air.pressureFromGeopotentialAltitude(published.inMetres());
        double indicatedM =
                Altimetry.altitudeOnQnh(
                        StandardAir.altitudeFromPressure(pressurePa), qnh.inPascals());
        return correction(
                indicatedM - published.inMetres(),
                String.format(Locale.ROOT, "altitude of %,.0f ft", published.inFeet()),
                String.format(
                        Locale.ROOT, "the air given on a QNH of %.2f hPa", qnh.inHectopascals()));
    }

    /**
     * Returns how wrong an altimeter is in some air.
     *
     * @param indicated what it shows
     * @param qnh what it is set to
     * @param air the air, a sounding's for instance, its altitudes known
     * @return by how much it reads too high against geopotential altitude
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     * @throws IllegalStateException if the altitudes of the air are not known
     */
    public static AltimeterError errorIn(
            Atmosphere air, AltitudeOnQnh indicated, AltimeterSetting qnh) {
        GeopotentialAltitude truth =
                air.at(Altimetry.pressureAltitude(indicated, qnh))
                        .geopotentialAltitude()
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                "the altitudes of this air are not known"));
        double metres = indicated.inMetres() - truth.inMetres();
        return new AltimeterError(
                AltitudeChange.ofMetres(metres),
                Math.abs(metres) > NOTHING_M
                        ? "the air given differs from standard air on this QNH"
                        : "the air given is there as standard air on this QNH is");
    }
}
