package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.util.Locale;
import org.climbwright.numeric.Quadrature;
import org.climbwright.quantity.ModelRange;

/**
 * Air of any temperature profile, moist where the profile tells its vapour: the altitudes are
 * integrated once, in steps of ln p.
 */
final class HypsometricAtmosphere implements Atmosphere {
    /** A step of ln p, some 80 m: a bend inside it costs less than 0.01 m. */
    private static final double STEP = 0.01;

    private final TemperatureProfile profile;
    private final AltitudeDatum datum;
    private final ModelRange range;
    private final double lnBottom;
    private final double step;
    private final double[] altitudeM;

    HypsometricAtmosphere(TemperatureProfile profile, AltitudeDatum datum) {
        this.profile = profile;
        this.datum = datum;
        this.range = profile.range();
        this.lnBottom = StrictMath.log(range.highest());
        double depth = lnBottom - StrictMath.log(range.lowest());
        int steps = Math.max(1, (int) Math.ceil(depth / STEP));
        this.step = depth / steps;
        this.altitudeM = new double[steps + 1];
        for (int i = 0; i < steps; i++) {
            altitudeM[i + 1] = altitudeM[i] + thickness(i * step, (i + 1) * step);
        }
        double shift =
                datum.altitude().inMetres()
                        - geopotentialAltitude(range.check(datum.pressure().inPascals()));
        for (int i = 0; i <= steps; i++) {
            altitudeM[i] += shift;
        }
    }

    @Override
    public ModelRange range() {
        return range;
    }

    @Override
    public double temperature(double pressurePa) {
        double temperatureK = profile.temperature(range.check(pressurePa));
        if (!DryAir.coversTemperature(temperatureK)) {
            throw new IllegalArgumentException(
                    "a temperature profile must give 100.0 to 400.0 K, but gave "
                            + temperatureK
                            + " K at "
                            + pressurePa
                            + " Pa");
        }
        return temperatureK;
    }

    @Override
    public double geopotentialAltitude(double pressurePa) {
        double depth = lnBottom - StrictMath.log(range.check(pressurePa));
        int i = Math.max(0, Math.min((int) (depth / step), altitudeM.length - 2));
        return altitudeM[i] + thickness(i * step, depth);
    }

    @Override
    public double vapourPressure(double pressurePa) {
        return profile.vapourPressure(range.check(pressurePa));
    }

    @Override
    public double[] bendsPa() {
        return profile.bendsPa();
    }

    private double thickness(double fromDepth, double toDepth) {
        return GAS_CONSTANT_J_PER_KG_K
                / GRAVITY_MPS2
                * Quadrature.integrate(
                        depth -> virtualTemperature(pressure(depth)), fromDepth, toDepth);
    }

    private double virtualTemperature(double pressurePa) {
        double vapourPa = vapourPressure(pressurePa);
        return Double.isNaN(vapourPa)
                ? temperature(pressurePa)
                : MoistAir.virtualTemperature(temperature(pressurePa), vapourPa, pressurePa);
    }

    private double pressure(double depth) {
        double pressurePa = StrictMath.exp(lnBottom - depth);
        // exp(log p) may miss an end of the range by an ulp
        return Math.max(range.lowest(), Math.min(range.highest(), pressurePa));
    }

    /**
     * Returns the atmosphere for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "air of a temperature profile from %.2f to %.2f hPa, %s",
                range.highest() / 100.0,
                range.lowest() / 100.0,
                datum);
    }
}
