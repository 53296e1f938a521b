package org.climbwright.sounding;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.util.List;
import java.util.Locale;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.pressure.StaticPressure;

/**
 * The levels of an ascent that have a temperature, as an atmosphere.
 *
 * <p>Arrays by level, the highest pressure first. The thickness of a stretch is quadratic in ln p,
 * since its virtual temperature is linear there; one factor for the stretch between two reported
 * heights makes it meet both.
 */
final class SoundingAtmosphere implements Atmosphere {
    private static final double METRES_PER_KELVIN = GAS_CONSTANT_J_PER_KG_K / GRAVITY_MPS2;

    private final PressureLevels levels;
    private final double[] temperatureK;
    private final double[] dewPointK;
    private final double[] virtualTemperatureK;
    private final double[] hypsometricM;
    private final double[] altitudeM;
    private final ModelRange range;

    private SoundingAtmosphere(List<SoundingLevel> reported) {
        levels =
                new PressureLevels(
                        reported.stream().mapToDouble(SoundingLevel::pressurePa).toArray());
        temperatureK = reported.stream().mapToDouble(SoundingLevel::temperatureK).toArray();
        dewPointK = reported.stream().mapToDouble(SoundingLevel::dewPointK).toArray();
        int n = levels.size();
        virtualTemperatureK = new double[n];
        for (int i = 0; i < n; i++) {
            virtualTemperatureK[i] = virtualTemperature(i);
        }
        hypsometricM = new double[n];
        for (int i = 1; i < n; i++) {
            hypsometricM[i] = hypsometricM[i - 1] + thickness(i - 1, levels.ln(i));
        }
        altitudeM =
                fitted(
                        hypsometricM,
                        reported.stream()
                                .mapToDouble(SoundingLevel::geopotentialAltitudeM)
                                .toArray());
        range =
                new ModelRange(
                        "static pressure",
                        levels.pressure(n - 1),
                        levels.pressure(0),
                        "Pa",
                        "the sounding has no temperature outside");
    }

    static SoundingAtmosphere of(Sounding sounding) {
        List<SoundingLevel> levels = levelsOfAir(sounding);
        if (!isKnownOf(sounding)) {
            throw new IllegalStateException(
                    "an atmosphere needs two levels with pressure and temperature, but there are "
                            + levels.size()
                            + ": "
                            + sounding);
        }
        return new SoundingAtmosphere(levels);
    }

    static boolean isKnownOf(Sounding sounding) {
        return levelsOfAir(sounding).size() >= 2;
    }

    private static List<SoundingLevel> levelsOfAir(Sounding sounding) {
        return sounding.levels().stream()
                .filter(level -> !Double.isNaN(level.pressurePa()))
                .filter(level -> !Double.isNaN(level.temperatureK()))
                .toList();
    }

    @Override
    public ModelRange range() {
        return range;
    }

    @Override
    public double temperature(double pressure) {
        return levels.interpolate(temperatureK, range.check(pressure));
    }

    @Override
    public double vapourPressure(double pressure) {
        double dewPoint = levels.interpolate(dewPointK, range.check(pressure));
        if (Double.isNaN(dewPoint)) {
            return dewPoint;
        }
        double vapour = MoistAir.saturationVapourPressure(dewPoint);
        // Between two levels of nearly pure vapour the dew point's line would ask for more of it.
        return vapour < pressure ? vapour : Double.NaN;
    }

    @Override
    public double geopotentialAltitude(double pressure) {
        int i = levels.below(range.check(pressure));
        double ln = StrictMath.log(pressure);
        if (ln == levels.ln(i + 1)) {
            return altitudeM[i + 1]; // the highest level meets its height to the last bit too
        }
        double above = thickness(i, ln);
        double whole = hypsometricM[i + 1] - hypsometricM[i];
        return altitudeM[i] + above * ((altitudeM[i + 1] - altitudeM[i]) / whole);
    }

    @Override
    public double[] bendsPa() {
        return levels.pressures();
    }

    int size() {
        return levels.size();
    }

    double pressureAt(int level) {
        return levels.pressure(level);
    }

    double temperatureAt(int level) {
        return temperatureK[level];
    }

    double altitudeAt(int level) {
        return altitudeM[level];
    }

    AirState stateAt(int level) {
        return at(StaticPressure.ofPascals(levels.pressure(level)));
    }

    /** Whether its lowest air that does not just have a temperature is warmer. */
    boolean beginsWarmerThan(double kelvin) {
        for (double temperature : temperatureK) {
            if (temperature != kelvin) {
                return temperature > kelvin;
            }
        }
        return false;
    }

    /** The pressure on a stretch where the temperature, linear in ln p, has a value. */
    double pressureOfTemperature(int level, double wantedK) {
        if (wantedK == temperatureK[level + 1]) {
            return levels.pressure(level + 1);
        }
        double share =
                (wantedK - temperatureK[level]) / (temperatureK[level + 1] - temperatureK[level]);
        double ln = levels.ln(level) + share * (levels.ln(level + 1) - levels.ln(level));
        // exp(log p) may miss a level by an ulp
        return Math.max(
                levels.pressure(level + 1), Math.min(levels.pressure(level), StrictMath.exp(ln)));
    }

    private double virtualTemperature(int i) {
        return Double.isNaN(dewPointK[i])
                ? temperatureK[i]
                : MoistAir.virtualTemperature(
                        temperatureK[i],
                        MoistAir.saturationVapourPressure(dewPointK[i]),
                        levels.pressure(i));
    }

    /** The hypsometric thickness from a level up to a pressure of the stretch above it. */
    private double thickness(int i, double ln) {
        double whole = levels.ln(i) - levels.ln(i + 1);
        double part = levels.ln(i) - ln;
        double slope = (virtualTemperatureK[i + 1] - virtualTemperatureK[i]) / whole;
        return METRES_PER_KELVIN * part * (virtualTemperatureK[i] + 0.5 * slope * part);
    }

    /** The hypsometric altitudes, stretched between reported ones and shifted beyond them. */
    private static double[] fitted(double[] hypsometric, double[] reported) {
        int n = hypsometric.length;
        double[] fitted = new double[n];
        int last = -1;
        for (int i = 0; i < n; i++) {
            if (!Double.isNaN(reported[i])) {
                for (int k = last + 1; k <= i; k++) {
                    fitted[k] =
                            last < 0
                                    ? reported[i] - (hypsometric[i] - hypsometric[k])
                                    : reported[last]
                                            + (hypsometric[k] - hypsometric[last])
                                                    * ((reported[i] - reported[last])
                                                            / (hypsometric[i] - hypsometric[last]));
                }
                fitted[i] = reported[i];
                last = i;
            }
        }
        for (int k = last + 1; k < n; k++) {
            fitted[k] =
                    last < 0 ? Double.NaN : reported[last] + (hypsometric[k] - hypsometric[last]);
        }
        return fitted;
    }

    /**
     * Returns the air for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "air of a sounding from %.1f to %.1f hPa, %d levels",
                range.highest() / 100.0,
                range.lowest() / 100.0,
                size());
    }
}
