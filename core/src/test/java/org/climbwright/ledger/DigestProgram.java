package org.climbwright.ledger;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.path.GroundTrack;

/**
 * Prints a digest of the bits of each function of doubles, over as many points as it is told: the
 * same on every JVM, in every mode and on every processor. Plain code, so that the modes differ in
 * the functions and not in what calls them.
 */
final class DigestProgram {
    /** The numbers of points after which a digest is taken. */
    static final int[] CHECKPOINTS = {300, 10_000, 100_000};

    private static final String[] FUNCTIONS = {
        "StandardAir.temperatureFromAltitude",
        "StandardAir.pressureFromAltitude",
        "StandardAir.densityFromAltitude",
        "StandardAir.temperatureRatioFromAltitude",
        "StandardAir.pressureRatioFromAltitude",
        "StandardAir.densityRatioFromAltitude",
        "StandardAir.altitudeFromPressure",
        "StandardAir.temperatureFromPressure",
        "StandardAir.altitudeFromDensity",
        "StandardAir.thicknessWithDeviation",
        "DryAir.density",
        "DryAir.speedOfSound",
        "DryAir.dynamicViscosity",
        "DryAir.kinematicViscosity",
        "DryAir.thermalConductivity",
        "Geopotential.geopotentialFromGeometric",
        "Geopotential.geometricFromGeopotential",
        "Geopotential.gravity",
        "Geopotential.geometricPerGeopotential",
        "Geopotential.geometricPerGeopotentialAtGeopotential",
        "AirspeedConversion.machFromCas",
        "AirspeedConversion.machFromEas",
        "AirspeedConversion.machFromTas",
        "AirspeedConversion.machFromImpactPressure",
        "AirspeedConversion.casFromMach",
        "AirspeedConversion.compressibilityCorrectionFromMach",
        "AirspeedConversion.compressibilityFactorFromMach",
        "AirspeedConversion.easFromMach",
        "AirspeedConversion.tasFromMach",
        "AirspeedConversion.impactPressureFromMach",
        "AirspeedConversion.dynamicPressureFromMach",
        "AirspeedConversion.totalPressureFromMach",
        "AirspeedConversion.impactPressureFromCas",
        "AirspeedConversion.casFromImpactPressure",
        "AirspeedConversion.crossoverPressure",
        "Crossover.altitude",
        "TotalTemperature.fromMach",
        "TotalTemperature.staticFromMach",
        "TotalTemperature.staticFromTas",
        "TotalTemperature.machFromStatic",
        "TotalTemperature.totalFromRecovery",
        "TotalTemperature.recoveryFromTotal",
        "VerticalRates.geometricPerPressureAltitude",
        "GroundTrack.horizontalAirspeed",
        "GroundTrack.airGradient",
        "GroundTrack.groundSpeed",
        "GroundTrack.alongSurface"
    };

    /** Stands for a point that the function does not take. */
    private static final double REFUSED = Double.NaN;

    private static final double FASTEST_MPS = 5.0 * SEA_LEVEL_SPEED_OF_SOUND_MPS;

    private final Chance chance;

    private DigestProgram(String function) {
        chance = new Chance(function.hashCode());
    }

    /** Prints a line for each function and checkpoint up to the number of points. */
    public static void main(String[] arguments) {
        int points = Integer.parseInt(arguments[0]);
        for (String line : lines(points)) {
            System.out.println(line);
        }
    }

    /** Function, points and digest. */
    static List<String> lines(int points) {
        List<String> lines = new ArrayList<>();
        for (String function : FUNCTIONS) {
            long[] digests = digests(function, points);
            for (int i = 0; i < digests.length; i++) {
                lines.add(function + "," + CHECKPOINTS[i] + "," + Long.toHexString(digests[i]));
            }
        }
        return lines;
    }

    /** The digests after each checkpoint up to the number of points: FNV-1a, by doubles. */
    private static long[] digests(String function, int points) {
        int checkpoints = 0;
        while (checkpoints < CHECKPOINTS.length && CHECKPOINTS[checkpoints] <= points) {
            checkpoints++;
        }
        long[] digests = new long[checkpoints];
        DigestProgram program = new DigestProgram(function);
        long digest = 0xcbf29ce484222325L;
        int next = 0;
        for (int point = 1; next < checkpoints; point++) {
            // one NaN for all: its bits may differ where nothing else does
            digest ^= Double.doubleToLongBits(program.result(function));
            digest *= 0x100000001b3L;
            digest ^= digest >>> 32;
            if (point == CHECKPOINTS[next]) {
                digests[next] = digest;
                next++;
            }
        }
        return digests;
    }

    /** The function of that name at the next point. */
    private double result(String function) {
        return switch (function.charAt(0)) {
            case 'S' -> ofStandardAir(function);
            case 'A', 'C' -> ofSpeeds(function);
            case 'T' -> ofTemperatures(function);
            case 'V' ->
                    VerticalRates.geometricPerPressureAltitude(
                            between(-5000.0, 80000.0, 1000.0), temperature());
            default -> function.startsWith("Ground") ? ofTrack(function) : ofAir(function);
        };
    }

    private double ofTrack(String function) {
        double tas = between(1.0, 1000.0, 100.0);
        double share = between(-0.99, 0.99, 0.1);
        return switch (function) {
            case "GroundTrack.horizontalAirspeed" ->
                    GroundTrack.horizontalAirspeed(tas, share * tas);
            case "GroundTrack.airGradient" -> GroundTrack.airGradient(tas, share * tas);
            case "GroundTrack.alongSurface" -> GroundTrack.alongSurface(tas, 1.0 + share * share);
            case "GroundTrack.groundSpeed" -> GroundTrack.groundSpeed(tas, tas, share * tas);
            default -> throw new IllegalArgumentException(function);
        };
    }

    private double ofStandardAir(String function) {
        double h = between(-5000.0, 80000.0, 1000.0);
        // hardly inside of the bounds, which are computed
        double p = between(0.88627223858, 177687.045714, 25.0);
        double rho = between(1.57004211334e-5, 1.93046809797, 0.1);
        boolean hasPressure = StandardAir.coversPressure(p);
        return switch (function) {
            case "StandardAir.temperatureFromAltitude" -> StandardAir.temperatureFromAltitude(h);
            case "StandardAir.pressureFromAltitude" -> StandardAir.pressureFromAltitude(h);
            case "StandardAir.densityFromAltitude" -> StandardAir.densityFromAltitude(h);
            case "StandardAir.temperatureRatioFromAltitude" ->
                    StandardAir.temperatureRatioFromAltitude(h);
            case "StandardAir.pressureRatioFromAltitude" ->
                    StandardAir.pressureRatioFromAltitude(h);
            case "StandardAir.densityRatioFromAltitude" -> StandardAir.densityRatioFromAltitude(h);
            case "StandardAir.altitudeFromPressure" ->
                    hasPressure ? StandardAir.altitudeFromPressure(p) : REFUSED;
            case "StandardAir.temperatureFromPressure" ->
                    hasPressure ? StandardAir.temperatureFromPressure(p) : REFUSED;
            case "StandardAir.altitudeFromDensity" ->
                    StandardAir.coversDensity(rho) ? StandardAir.altitudeFromDensity(rho) : REFUSED;
            case "StandardAir.thicknessWithDeviation" ->
                    hasPressure
                            ? StandardAir.thicknessWithDeviation(
                                    p, between(1.0, 177000.0, 25.0), between(-200.0, 200.0, 10.0))
                            : REFUSED;
            default -> throw new IllegalArgumentException(function);
        };
    }

    private double ofAir(String function) {
        double p = pressure();
        double t = temperature();
        double z = between(-10000.0, 200000.0, 1000.0);
        double h = between(-10015.0, 193899.0, 1000.0);
        return switch (function) {
            case "DryAir.density" -> DryAir.density(p, t);
            case "DryAir.speedOfSound" -> DryAir.speedOfSound(t);
            case "DryAir.dynamicViscosity" -> DryAir.dynamicViscosity(t);
            case "DryAir.kinematicViscosity" -> DryAir.kinematicViscosity(p, t);
            case "DryAir.thermalConductivity" -> DryAir.thermalConductivity(t);
            case "Geopotential.geopotentialFromGeometric" ->
                    Geopotential.geopotentialFromGeometric(z);
            case "Geopotential.geometricFromGeopotential" ->
                    Geopotential.geometricFromGeopotential(h);
            case "Geopotential.gravity" -> Geopotential.gravity(z);
            case "Geopotential.geometricPerGeopotential" ->
                    Geopotential.geometricPerGeopotential(z);
            case "Geopotential.geometricPerGeopotentialAtGeopotential" ->
                    Geopotential.geometricPerGeopotentialAtGeopotential(h);
            default -> throw new IllegalArgumentException(function);
        };
    }

    private double ofSpeeds(String function) {
        double p = pressure();
        double t = temperature();
        double mach = between(0.0, 5.0, 1.0);
        double cas = between(0.0, FASTEST_MPS, SEA_LEVEL_SPEED_OF_SOUND_MPS);
        boolean hasCas = AirspeedConversion.hasCas(mach, p);
        double slower = cas * StrictMath.sqrt(Math.min(1.0, p / SEA_LEVEL_PRESSURE_PA));
        double eas = cas * StrictMath.sqrt(p / SEA_LEVEL_PRESSURE_PA);
        double impact = p * between(0.0, 31.65, 1.0);
        return switch (function) {
            case "AirspeedConversion.machFromCas" ->
                    AirspeedConversion.coversCas(slower, p)
                            ? AirspeedConversion.machFromCas(slower, p)
                            : REFUSED;
            case "AirspeedConversion.machFromEas" ->
                    AirspeedConversion.coversEas(eas, p)
                            ? AirspeedConversion.machFromEas(eas, p)
                            : REFUSED;
            case "AirspeedConversion.machFromTas" ->
                    AirspeedConversion.coversTas(cas, t)
                            ? AirspeedConversion.machFromTas(cas, t)
                            : REFUSED;
            case "AirspeedConversion.machFromImpactPressure" ->
                    AirspeedConversion.coversImpactPressure(impact, p)
                            ? AirspeedConversion.machFromImpactPressure(impact, p)
                            : REFUSED;
            case "AirspeedConversion.casFromMach" ->
                    hasCas ? AirspeedConversion.casFromMach(mach, p) : REFUSED;
            case "AirspeedConversion.compressibilityCorrectionFromMach" ->
                    hasCas
                            ? AirspeedConversion.compressibilityCorrectionFromMach(mach, p)
                            : REFUSED;
            case "AirspeedConversion.compressibilityFactorFromMach" ->
                    hasCas ? AirspeedConversion.compressibilityFactorFromMach(mach, p) : REFUSED;
            case "AirspeedConversion.easFromMach" -> AirspeedConversion.easFromMach(mach, p);
            case "AirspeedConversion.tasFromMach" -> AirspeedConversion.tasFromMach(mach, t);
            case "AirspeedConversion.impactPressureFromMach" ->
                    AirspeedConversion.impactPressureFromMach(mach, p);
            case "AirspeedConversion.dynamicPressureFromMach" ->
                    AirspeedConversion.dynamicPressureFromMach(mach, p);
            case "AirspeedConversion.totalPressureFromMach" ->
                    AirspeedConversion.totalPressureFromMach(mach, p);
            case "AirspeedConversion.impactPressureFromCas" ->
                    AirspeedConversion.impactPressureFromCas(cas);
            case "AirspeedConversion.casFromImpactPressure" ->
                    AirspeedConversion.casFromImpactPressure(between(0.0, 3207288.0, 1000.0));
            case "AirspeedConversion.crossoverPressure" ->
                    AirspeedConversion.hasCrossover(cas, mach)
                            ? AirspeedConversion.crossoverPressure(cas, mach)
                            : REFUSED;
            case "Crossover.altitude" ->
                    Crossover.hasAltitude(cas, mach) ? Crossover.altitude(cas, mach) : REFUSED;
            default -> throw new IllegalArgumentException(function);
        };
    }

    private double ofTemperatures(String function) {
        double t = temperature();
        double tas = between(0.0, 2000.0, 100.0);
        double mach = between(0.0, 5.0, 1.0);
        double recovery = between(0.0, 1.0, 0.1);
        double felt = t * (1.0 + 0.2 * recovery * mach * mach);
        double total = t * (1.0 + 0.2 * mach * mach);
        double feltAtTas = t + recovery * tas * tas / 2009.37;
        boolean covers = TotalTemperature.coversMach(felt, mach, recovery);
        return switch (function) {
            case "TotalTemperature.fromMach" -> TotalTemperature.fromMach(mach, t, recovery);
            case "TotalTemperature.staticFromMach" ->
                    covers ? TotalTemperature.staticFromMach(felt, mach, recovery) : REFUSED;
            case "TotalTemperature.totalFromRecovery" ->
                    covers ? TotalTemperature.totalFromRecovery(felt, mach, recovery) : REFUSED;
            case "TotalTemperature.recoveryFromTotal" ->
                    TotalTemperature.coversMach(total, mach, 1.0)
                            ? TotalTemperature.recoveryFromTotal(total, mach, recovery)
                            : REFUSED;
            case "TotalTemperature.staticFromTas" ->
                    TotalTemperature.coversTas(feltAtTas, tas, recovery)
                            ? TotalTemperature.staticFromTas(feltAtTas, tas, recovery)
                            : REFUSED;
            case "TotalTemperature.machFromStatic" ->
                    TotalTemperature.hasMach(felt, t, recovery)
                            ? TotalTemperature.machFromStatic(felt, t, recovery)
                            : REFUSED;
            default -> throw new IllegalArgumentException(function);
        };
    }

    private double pressure() {
        return between(0.1, 1e6, 25.0);
    }

    private double temperature() {
        return between(100.0, 400.0, 1.0);
    }

    /**
     * A number of a range: now and then a bound, or a multiple of the step or a double within two
     * of it, otherwise anything, half of the time near the lower bound by some power of two.
     */
    private double between(double low, double high, double step) {
        long bits = chance.nextLong();
        double share = chance.next();
        int kind = (int) (bits & 15);
        double value;
        if (kind == 0) {
            value = low;
        } else if (kind == 1) {
            value = high;
        } else if (kind <= 3) {
            value = Math.rint((low + share * (high - low)) / step) * step;
            value += Math.ulp(value) * (((bits >>> 4) & 7) - 3); // -3 to 4, 0 among them
        } else if (kind <= 9) {
            value = low + share * (high - low) / (1L << ((bits >>> 4) & 31));
        } else {
            value = low + share * (high - low);
        }
        return Math.max(low, Math.min(high, value));
    }
}
