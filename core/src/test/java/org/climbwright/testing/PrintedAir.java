package org.climbwright.testing;

import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.unit.UnitScale;

/** Our standard air, asked in the words and units of a printed table. */
public final class PrintedAir {
    /** What printed tables take density ratios against; ours is 1.5e-8 more. */
    private static final double ROUNDED_DENSITY = 1.225;

    private static final double SQUARE_FOOT = 0.3048 * 0.3048;
    private static final double MILLIMETRE_OF_MERCURY = 133.322387415; // 13.5951 g/cm³, as for inHg

    private final double altitudeM;
    private final double geometricM;
    private final double pressurePa;
    private final double densityKgPerM3;
    private final double temperatureK;
    private final double soundMps;

    private PrintedAir(double altitudeM, double geometricM, boolean usGasConstant) {
        this.altitudeM = altitudeM;
        this.geometricM = geometricM;
        this.temperatureK = StandardAir.temperatureFromAltitude(altitudeM);
        double sound = DryAir.speedOfSound(temperatureK);
        this.pressurePa =
                usGasConstant
                        ? Us76.pressure(altitudeM)
                        : StandardAir.pressureFromAltitude(altitudeM);
        this.densityKgPerM3 =
                usGasConstant
                        ? Us76.density(altitudeM)
                        : StandardAir.densityFromAltitude(altitudeM);
        this.soundMps = usGasConstant ? Us76.speedOfSound(sound) : sound;
    }

    /** The air at what a table counts by: {@code "geometric ft"}, {@code "pressure hPa"}. */
    public static PrintedAir at(String argument, String meaning) {
        return at(Double.parseDouble(argument), meaning, false);
    }

    /** The same, told with the gas constant of the US Standard Atmosphere 1976. */
    public static PrintedAir withUsGasConstant(String argument, String meaning) {
        return at(Double.parseDouble(argument), meaning, true);
    }

    /** The same, told with the gas constant that a source of geometric tables has used. */
    public static PrintedAir of(String source, String argument, String meaning) {
        // found when the tables were checked: this one page took ICAO's
        return source.startsWith("engineeringtoolbox")
                ? at(argument, meaning)
                : withUsGasConstant(argument, meaning);
    }

    private static PrintedAir at(double number, String meaning, boolean usGasConstant) {
        double geopotentialM =
                switch (meaning) {
                    case "geopotential m" -> number;
                    case "geopotential ft" -> UnitScale.FOOT.toSi(number);
                    case "geometric m" -> Geopotential.geopotentialFromGeometric(number);
                    case "geometric ft" ->
                            Geopotential.geopotentialFromGeometric(UnitScale.FOOT.toSi(number));
                    case "pressure hPa" -> StandardAir.altitudeFromPressure(number * 100.0);
                    case "pressure inHg" ->
                            StandardAir.altitudeFromPressure(
                                    UnitScale.INCH_OF_MERCURY.toSi(number));
                    default -> throw new IllegalArgumentException(meaning);
                };
        return new PrintedAir(
                geopotentialM,
                Geopotential.geometricFromGeopotential(geopotentialM),
                usGasConstant);
    }

    /** A quantity of the air in the unit of the table. */
    public double in(String quantity, String unit) {
        double si =
                switch (quantity) {
                    case "T", "T(p)" -> temperatureK;
                    case "p" -> pressurePa;
                    case "a" -> soundMps;
                    case "rho", "rho(p)" -> densityKgPerM3;
                    case "mu" -> DryAir.dynamicViscosity(temperatureK);
                    case "nu" -> DryAir.dynamicViscosity(temperatureK) / densityKgPerM3;
                    case "theta" -> StandardAir.temperatureRatioFromAltitude(altitudeM);
                    case "delta" -> StandardAir.pressureRatioFromAltitude(altitudeM);
                    case "sigma", "rho/rho0" -> densityKgPerM3 / ROUNDED_DENSITY;
                    case "sqrt(sigma)" -> Math.sqrt(densityKgPerM3 / ROUNDED_DENSITY);
                    case "nu/nu0" ->
                            DryAir.dynamicViscosity(temperatureK)
                                    / densityKgPerM3
                                    / (DryAir.dynamicViscosity(288.15) / ROUNDED_DENSITY);
                    case "H", "H(p)" -> altitudeM;
                    case "Z(p)" -> geometricM;
                    default -> throw new IllegalArgumentException(quantity);
                };
        return switch (unit) {
            case "1", "K", "Pa", "Pa s", "m", "m s^-1", "kg m^-3" -> si;
            case "degC" -> UnitScale.CELSIUS.fromSi(si);
            case "degF" -> UnitScale.FAHRENHEIT.fromSi(si);
            case "kt" -> UnitScale.KNOT.fromSi(si);
            case "hPa" -> UnitScale.HECTOPASCAL.fromSi(si);
            case "bar" -> si / 1e5;
            case "psi", "psia" -> UnitScale.POUND_PER_SQUARE_INCH.fromSi(si);
            case "inHg" -> UnitScale.INCH_OF_MERCURY.fromSi(si);
            case "mmHg" -> si / MILLIMETRE_OF_MERCURY;
            case "ft^2 s^-1" -> si / SQUARE_FOOT;
            case "1e-5 m^2 s^-1" -> si / 1e-5;
            default -> throw new IllegalArgumentException(unit);
        };
    }
}
