package org.climbwright.ledger;

import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.testing.FiftyDigits;

/** The rows of the air: standard air by halves, at 20 km, and what needs no more than a formula. */
final class AtmosphereRows {
    private static final double LOWEST_M = -5000.0;
    private static final double MIDDLE_M = 20000.0;
    private static final double HIGHEST_M = 80000.0;
    private static final double[] LOWER_BENDS_M = {0.0, 11000.0};
    private static final double[] UPPER_BENDS_M = {32000.0, 47000.0, 51000.0, 71000.0};

    private static final Axis PRESSURE = Axis.of("pressurePa", 0.1, 1e6).logarithmicFrom(1e-7);
    private static final Axis TEMPERATURE = Axis.of("temperatureK", 100.0, 400.0);
    private static final Axis GEOMETRIC = Axis.of("geometricM", -10000.0, 200000.0).marking(0.0);
    private static final BigDecimal EARTH_RADIUS = new BigDecimal("6356766");

    private AtmosphereRows() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        byAltitude(rows, "temperatureFromAltitude", FiftyDigits::temperature);
        byAltitude(rows, "pressureFromAltitude", FiftyDigits::pressure);
        byAltitude(rows, "densityFromAltitude", FiftyDigits::density);
        byAltitude(
                rows,
                "temperatureRatioFromAltitude",
                h -> over(FiftyDigits.temperature(h), FiftyDigits.seaLevelTemperature()));
        byAltitude(
                rows,
                "pressureRatioFromAltitude",
                h -> over(FiftyDigits.pressure(h), FiftyDigits.seaLevelPressure()));
        byAltitude(
                rows,
                "densityRatioFromAltitude",
                h -> over(FiftyDigits.density(h), FiftyDigits.density(0.0)));
        byPressure(rows);
        rows.addAll(dryAir());
        rows.addAll(geopotential());
        return rows;
    }

    private static void byAltitude(
            List<Row> rows, String function, Function<Double, BigDecimal> exact) {
        for (boolean upper : new boolean[] {false, true}) {
            Axis altitude =
                    upper
                            ? Axis.of("altitudeM", MIDDLE_M, HIGHEST_M)
                            : Axis.of("altitudeM", LOWEST_M, MIDDLE_M);
            for (double bend : upper ? UPPER_BENDS_M : LOWER_BENDS_M) {
                altitude = altitude.marking(bend);
            }
            rows.add(
                    Row.of(StandardAir.class, function, in -> exact.apply(in[0]), altitude)
                            .part(part(upper)));
        }
    }

    private static String part(boolean upper) {
        return upper ? "20 to 80 km" : "-5 to 20 km";
    }

    private static void byPressure(List<Row> rows) {
        for (boolean upper : new boolean[] {false, true}) {
            Axis pressure = along("pressurePa", FiftyDigits::pressure, upper);
            rows.add(
                    Row.of(
                                    StandardAir.class,
                                    "altitudeFromPressure",
                                    in -> FiftyDigits.altitudeOfPressure(in[0]),
                                    pressure)
                            .part(part(upper))
                            .where(in -> StandardAir.coversPressure(in[0]))
                            .toldIn(altitudeMeasures()));
            rows.add(
                    Row.of(
                                    StandardAir.class,
                                    "altitudeFromDensity",
                                    in -> FiftyDigits.altitudeOfDensity(in[0]),
                                    along("densityKgPerM3", FiftyDigits::density, upper))
                            .part(part(upper))
                            .where(in -> StandardAir.coversDensity(in[0]))
                            .toldIn(altitudeMeasures()));
            rows.add(
                    Row.of(
                                    StandardAir.class,
                                    "temperatureFromPressure",
                                    in ->
                                            FiftyDigits.temperature(
                                                    FiftyDigits.altitudeOfPressure(
                                                            new BigDecimal(in[0]))),
                                    pressure)
                            .part(part(upper))
                            .where(in -> StandardAir.coversPressure(in[0])));
        }
        rows.add(
                Row.of(
                                StandardAir.class,
                                "thicknessWithDeviation",
                                in -> FiftyDigits.thickness(in[0], in[1], in[2]),
                                throughout("lowerPa"),
                                throughout("upperPa"),
                                Axis.of("deviationK", -200.0, 200.0).marking(0.0))
                        .where(
                                in ->
                                        StandardAir.coversPressure(in[0])
                                                && StandardAir.coversPressure(in[1]))
                        .toldIn(Measure.metres(2e-10)));
    }

    /** What falls from a bound of a half to the other, marked where the temperature bends. */
    private static Axis along(String name, Function<Double, BigDecimal> fall, boolean upper) {
        double low = fall.apply(upper ? HIGHEST_M : MIDDLE_M).doubleValue();
        double high = fall.apply(upper ? MIDDLE_M : LOWEST_M).doubleValue();
        Axis axis = Axis.of(name, low, high).logarithmicFrom(low / high);
        for (double bend : upper ? UPPER_BENDS_M : LOWER_BENDS_M) {
            axis = axis.marking(fall.apply(bend).doubleValue());
        }
        return axis;
    }

    private static Axis throughout(String name) {
        double low = FiftyDigits.pressure(HIGHEST_M).doubleValue();
        double high = FiftyDigits.pressure(LOWEST_M).doubleValue();
        return Axis.of(name, low, high).logarithmicFrom(low / high);
    }

    private static Measure[] altitudeMeasures() {
        return new Measure[] {
            Measure.metres(Double.NaN),
            Measure.share("1e-11 m or 2 ulp", (in, exact) -> Measure.altitudeBar(exact))
        };
    }

    private static List<Row> dryAir() {
        return List.of(
                Row.of(DryAir.class, "density", in -> density(in[0], in[1]), PRESSURE, TEMPERATURE)
                        .toldIn(Measure.ulps(2.0), Measure.relative(1e-15)),
                Row.of(
                                DryAir.class,
                                "speedOfSound",
                                in -> FiftyDigits.speedOfSound(new BigDecimal(in[0])),
                                TEMPERATURE)
                        .toldIn(Measure.ulps(2.0), Measure.relative(1e-15)),
                Row.of(DryAir.class, "dynamicViscosity", in -> viscosity(in[0]), TEMPERATURE),
                Row.of(
                                DryAir.class,
                                "kinematicViscosity",
                                in -> over(viscosity(in[1]), density(in[0], in[1])),
                                PRESSURE,
                                TEMPERATURE)
                        .toldIn(Measure.ulps(5.0), Measure.relative(1.2e-15)),
                Row.of(
                        DryAir.class,
                        "thermalConductivity",
                        in -> conductivity(in[0]),
                        TEMPERATURE));
    }

    private static BigDecimal density(double pressurePa, double temperatureK) {
        BigDecimal rt = FiftyDigits.gasConstant().multiply(new BigDecimal(temperatureK));
        return over(new BigDecimal(pressurePa), rt);
    }

    private static BigDecimal viscosity(double temperatureK) {
        BigDecimal t = new BigDecimal(temperatureK);
        return over(
                new BigDecimal("1.458e-6").multiply(t).multiply(FiftyDigits.sqrt(t)),
                t.add(new BigDecimal("110.4")));
    }

    private static BigDecimal conductivity(double temperatureK) {
        BigDecimal t = new BigDecimal(temperatureK);
        BigDecimal lnTen = FiftyDigits.log(BigDecimal.TEN);
        BigDecimal power = FiftyDigits.exp(over(lnTen.multiply(new BigDecimal(-12)), t));
        return over(
                new BigDecimal("2.648151e-3").multiply(t).multiply(FiftyDigits.sqrt(t)),
                t.add(new BigDecimal("245.4").multiply(power)));
    }

    private static List<Row> geopotential() {
        Axis geopotential =
                Axis.of(
                                "geopotentialM",
                                geopotential(-10000.0).doubleValue(),
                                geopotential(200000.0).doubleValue())
                        .marking(0.0);
        return Stream.of(
                        Row.of(
                                        Geopotential.class,
                                        "geopotentialFromGeometric",
                                        in -> geopotential(in[0]),
                                        GEOMETRIC)
                                .toldIn(Measure.ulps(2.0), Measure.relative(1e-15)),
                        Row.of(
                                        Geopotential.class,
                                        "geometricFromGeopotential",
                                        in -> geometric(in[0]),
                                        geopotential)
                                .where(in -> Geopotential.coversGeopotential(in[0]))
                                .toldIn(Measure.ulps(2.0), Measure.relative(1e-15)),
                        Row.of(
                                        Geopotential.class,
                                        "gravity",
                                        in -> over(new BigDecimal("9.80665"), stretch(in[0])),
                                        GEOMETRIC)
                                .toldIn(Measure.ulps(3.0), Measure.relative(1e-15)),
                        Row.of(
                                        Geopotential.class,
                                        "geometricPerGeopotential",
                                        in -> stretch(in[0]),
                                        GEOMETRIC)
                                .toldIn(Measure.ulps(3.0), Measure.relative(1e-15)),
                        Row.of(
                                        Geopotential.class,
                                        "geometricPerGeopotentialAtGeopotential",
                                        in -> stretchAtGeopotential(in[0]),
                                        geopotential)
                                .where(in -> Geopotential.coversGeopotential(in[0]))
                                .toldIn(Measure.ulps(3.0), Measure.relative(1e-15)))
                .toList();
    }

    private static BigDecimal geopotential(double geometricM) {
        BigDecimal z = new BigDecimal(geometricM);
        return over(EARTH_RADIUS.multiply(z), EARTH_RADIUS.add(z));
    }

    private static BigDecimal geometric(double geopotentialM) {
        BigDecimal h = new BigDecimal(geopotentialM);
        return over(EARTH_RADIUS.multiply(h), EARTH_RADIUS.subtract(h));
    }

    private static BigDecimal stretch(double geometricM) {
        return over(EARTH_RADIUS.add(new BigDecimal(geometricM)), EARTH_RADIUS).pow(2, DIGITS);
    }

    static BigDecimal stretchAtGeopotential(double geopotentialM) {
        return over(EARTH_RADIUS, EARTH_RADIUS.subtract(new BigDecimal(geopotentialM)))
                .pow(2, DIGITS);
    }

    private static BigDecimal over(BigDecimal a, BigDecimal b) {
        return a.divide(b, DIGITS);
    }
}
