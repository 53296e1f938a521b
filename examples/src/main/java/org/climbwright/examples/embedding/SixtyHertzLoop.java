package org.climbwright.examples.embedding;

import java.util.Locale;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.cabin.dynamics.CabinModel;
import org.climbwright.examples.figure.InventedFlight;
import org.climbwright.gradient.ClimbAngles;
import org.climbwright.gradient.leveling.CaptureLaw;

/**
 * What a tool beside a simulation computes sixty times a second, without an object made: of
 * pressure, temperature and calibrated airspeed the figures to show, a cabin that goes along, and
 * the rate to fly so that a level is met by the rule of the last 1,000 ft.
 *
 * <p>A sample that the models do not cover is asked for by predicates, and no exception is made.
 *
 * <p>Limits of use: for study and simulation. Samples, hull and settings are invented. The flight
 * manual, the operator's procedures, local regulations and licensed practice decide.
 */
public final class SixtyHertzLoop {
    private static final double STEP_S = 1.0 / 60.0;
    private static final double FOOT_M = 0.3048;
    private static final double KNOT_MPS = 1852.0 / 3600.0;
    private static final double FOOT_PER_MINUTE_MPS = FOOT_M / 60.0;

    private static final double LEVEL_M = 10000 * FOOT_M;
    private static final double WANTED_MPS = 2400 * FOOT_PER_MINUTE_MPS;
    private static final double LIMIT_MPS = 1500 * FOOT_PER_MINUTE_MPS;
    private static final double EDGE_M = 1000 * FOOT_M;
    private static final double DECELERATION_MPS2 = 0.5;

    private final CabinModel cabin =
            CabinModel.onGround(InventedFlight.HULL, InventedFlight.plan());

    private double altitudeM = Double.NaN; // not known, and no rate, before the first sample
    private double sinceSampleS;
    private double rateMps;
    private double mach;
    private double tasMps;
    private double totalK;
    private double gradientThroughAir;
    private double commandMps;
    private int refused;

    /**
     * Takes a sample and computes everything anew.
     *
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @param casMps calibrated airspeed [m/s]
     * @return false if a model does not cover the sample: then the figures are those before it;
     *     rate and gradient of the first sample are NaN, since they take two
     */
    public boolean frame(double pressurePa, double temperatureK, double casMps) {
        sinceSampleS += STEP_S;
        if (!isCovered(pressurePa, temperatureK, casMps)) {
            refused++;
            return false;
        }
        double before = altitudeM;
        altitudeM = StandardAir.altitudeFromPressure(pressurePa);
        rateMps = (altitudeM - before) / sinceSampleS;
        sinceSampleS = 0.0;
        mach = AirspeedConversion.machFromCas(casMps, pressurePa);
        tasMps = AirspeedConversion.tasFromMach(mach, temperatureK);
        totalK = TotalTemperature.fromMach(mach, temperatureK, 1.0);
        double trueRate =
                rateMps * VerticalRates.geometricPerPressureAltitude(altitudeM, temperatureK);
        double sine = trueRate / tasMps;
        gradientThroughAir =
                ClimbAngles.coversSine(sine) ? ClimbAngles.gradientFromSine(sine) : Double.NaN;
        if (cabin.covers(STEP_S, altitudeM, temperatureK)) {
            cabin.step(STEP_S, altitudeM, temperatureK);
        }
        commandMps =
                CaptureLaw.captureRate(
                        LEVEL_M - altitudeM,
                        commandMps,
                        WANTED_MPS,
                        LIMIT_MPS,
                        EDGE_M,
                        DECELERATION_MPS2,
                        STEP_S);
        return true;
    }

    private boolean isCovered(double pressurePa, double temperatureK, double casMps) {
        return StandardAir.coversPressure(pressurePa)
                && AirspeedConversion.coversCas(casMps, pressurePa)
                && temperatureK > 150.0 // what a probe of this tool can send
                && temperatureK < 340.0
                && CaptureLaw.coversCapture(
                        LEVEL_M - StandardAir.altitudeFromPressure(pressurePa),
                        commandMps,
                        WANTED_MPS,
                        LIMIT_MPS,
                        EDGE_M,
                        DECELERATION_MPS2,
                        STEP_S);
    }

    /** The rate to fly until the next sample [m/s]. */
    double commandMps() {
        return commandMps;
    }

    /** The rate of pressure altitude from the sample before the last [m/s]; NaN after the first. */
    double rateMps() {
        return rateMps;
    }

    /** The pressure altitude of the last sample [m]. */
    double altitudeM() {
        return altitudeM;
    }

    /** How many samples no model covered. */
    int refused() {
        return refused;
    }

    /** Flies as commanded from sea level, in invented air 10 K warmer than standard, at 250 kn. */
    void fly(int frames) {
        double flownM = Double.isNaN(altitudeM) ? 0.0 : altitudeM;
        for (int i = 0; i < frames; i++) {
            flownM += commandMps * STEP_S;
            frame(
                    StandardAir.pressureFromAltitude(flownM),
                    StandardAir.temperatureFromAltitude(flownM) + 10.0,
                    250.0 * KNOT_MPS);
        }
    }

    private String line() {
        return String.format(
                Locale.ROOT,
                "%5.0f ft %5.0f ft/min  M%.3f  TAS %.1f kn  TAT %.1f °C  %.1f %% through the air "
                        + " cabin %.0f ft, %.2f psi",
                altitudeM / FOOT_M,
                rateMps / FOOT_PER_MINUTE_MPS,
                mach,
                tasMps / KNOT_MPS,
                totalK - 273.15,
                100.0 * gradientThroughAir,
                cabin.cabinAltitudeM() / FOOT_M,
                cabin.differential().inPoundsPerSquareInch());
    }

    /**
     * Climbs from sea level to 10,000 ft and prints a line for each minute.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        SixtyHertzLoop loop = new SixtyHertzLoop();
        for (int minute = 1; minute <= 5; minute++) {
            loop.fly(3600);
            System.out.println(loop.line());
        }
        System.out.println(loop.frame(Double.NaN, 280.0, 120.0) ? "taken" : "NaN is not taken");
    }
}
