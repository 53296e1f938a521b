package org.climbwright.performance;

import static java.util.Map.entry;
import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.unit.UnitScale;

/** The worked examples of the textbooks, put into the functions of the library, by their number. */
final class WorkedExamples {
    static final double FOOT = UnitScale.FOOT.factor();
    static final double POUND_FORCE = UnitScale.POUND_FORCE.factor();

    /** Slugs per cubic foot: a slug is a pound-force second squared per foot. */
    static final double SLUG_PER_CUBIC_FOOT = POUND_FORCE / (FOOT * FOOT * FOOT * FOOT);

    static final double JET_WEIGHT_N = 73000.0 * POUND_FORCE;
    static final double JET_AREA_M2 = 950.0 * FOOT * FOOT;
    static final ParabolicPolar JET_POLAR = ParabolicPolar.ofSi(JET_AREA_M2, 0.015, 0.08);
    static final JetThrust JET_THRUST = JetThrust.ofSi(27700.0 * POUND_FORCE, 0.6);
    static final EngineUse ONE = EngineUse.climb(1);

    /** Any temperature does for a law by density. */
    private static final double TEMPERATURE_K = 260.0;

    /** 85 kt, and 180 hp, as rounded where the example goes on with them. */
    private static final double ROUNDED_SPEED_MPS = 43.7;

    private static final double ROUNDED_POWER_W = 134e3;

    private static final double HORSEPOWER = 550.0 * FOOT * POUND_FORCE;

    private static final double[] TABLE_FEET = {
        0, 1000, 2000, 3000, 4000, 5000, 6000, 7000, 8000, 9000, 10000
    };
    private static final double[] TABLE_FEET_PER_MINUTE = {
        925, 875, 830, 780, 730, 685, 635, 585, 535, 490, 440
    };

    static final Map<String, DoubleSupplier> ANSWERS =
            Map.ofEntries(
                    entry("W01-0", () -> bestClosed(0.002377) / FOOT),
                    entry("W01-10000", () -> bestClosed(0.0017556) / FOOT),
                    entry("W01-T30", () -> jetThrust(8.9068e-4) / POUND_FORCE),
                    entry("W03-10k", () -> 179.9 - 2.52e-3 * fitted(154.7)),
                    entry("W03-t", WorkedExamples::timeOfFit),
                    entry("W04-a", () -> TimeToClimb.linear(5000.0, 6.0, 0.0, 3000.0) / 60.0),
                    entry("W04-b", WorkedExamples::serviceCeiling),
                    entry(
                            "W04-c",
                            () -> TimeToClimb.linear(5000.0, 6.0, 0.0, serviceCeiling()) / 60.0),
                    entry("W06", WorkedExamples::thrustOfClimb),
                    entry("W07-a", () -> 120.0 * 746.0 / 1.33e4),
                    entry("W07-b", WorkedExamples::angleOfExcess),
                    entry("W07-c", WorkedExamples::thrustOfPower),
                    entry("W08-6", () -> timeOfTable(6000.0)),
                    entry("W08-10", () -> timeOfTable(10000.0)),
                    entry("W10", WorkedExamples::thrustOfRate),
                    entry("W11-a", WorkedExamples::bestOfExam),
                    entry("W11-b", WorkedExamples::steepestOfExam),
                    entry(
                            "W11-c",
                            () ->
                                    ParabolicClimb.leastSink(
                                            2000.0 * GRAVITY_MPS2, 20.0, 0.04, 0.08, 1.0)),
                    entry("W12-E60", () -> altitudeByEuler(60)),
                    entry("W12-E120", () -> altitudeByEuler(120)),
                    entry("W12-E180", () -> altitudeByEuler(180)),
                    entry("W12-X60", () -> altitude(60)),
                    entry("W12-X120", () -> altitude(120)),
                    entry("W12-X180", () -> altitude(180)),
                    entry("W13-CP1", WorkedExamples::lightSingle),
                    entry("W13-CJ1", () -> twinJetBest(0.02)));

    private WorkedExamples() {}

    static double jetThrust(double slugsPerCubicFoot) {
        return JET_THRUST.thrust(
                0.5, pressure(slugsPerCubicFoot * SLUG_PER_CUBIC_FOOT), TEMPERATURE_K, ONE);
    }

    private static double pressure(double density) {
        return density * GAS_CONSTANT_J_PER_KG_K * TEMPERATURE_K;
    }

    /** By the closed form. */
    static double bestClosed(double slugsPerCubicFoot) {
        double density = slugsPerCubicFoot * SLUG_PER_CUBIC_FOOT;
        double thrust = jetThrust(slugsPerCubicFoot);
        double speed =
                ParabolicClimb.speedOfBestClimb(
                        JET_WEIGHT_N, JET_AREA_M2, 0.015, 0.08, density, thrust);
        return ParabolicClimb.rateOfClimb(
                JET_WEIGHT_N, JET_AREA_M2, 0.015, 0.08, density, thrust, speed);
    }

    /** By asking the laws at one speed after another, with lift for weight. */
    static double bestSearched(double slugsPerCubicFoot) {
        double density = slugsPerCubicFoot * SLUG_PER_CUBIC_FOOT;
        double sound = DryAir.speedOfSound(TEMPERATURE_K);
        double pressure = pressure(density);
        return highest(
                speed -> {
                    double mach = speed / sound;
                    double drag =
                            JET_POLAR.drag(JET_WEIGHT_N, mach, 0.5 * density * speed * speed, ONE);
                    double thrust = JET_THRUST.thrust(mach, pressure, TEMPERATURE_K, ONE);
                    return speed * (thrust - drag) / JET_WEIGHT_N;
                },
                50.0,
                600.0);
    }

    /** The highest value of a function with one summit, by thirds. */
    static double highest(DoubleUnaryOperator function, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 200; i++) {
            double third = (high - low) / 3.0;
            if (function.applyAsDouble(low + third) < function.applyAsDouble(high - third)) {
                low += third;
            } else {
                high -= third;
            }
        }
        return function.applyAsDouble(0.5 * (low + high));
    }

    private static double fitted(double feetPerSecond) {
        double ceiling = 179.9 / 2.52e-3 * FOOT;
        return TimeToClimb.altitudeOfRate(ceiling, 179.9 * FOOT, feetPerSecond * FOOT) / FOOT;
    }

    private static double timeOfFit() {
        double ceiling = 179.9 / 2.52e-3 * FOOT;
        return TimeToClimb.linear(ceiling, 179.9 * FOOT, 0.0, 30000.0 * FOOT) / 60.0;
    }

    /** The row has 30.49 m/min for 100 ft/min, as its course notes do. */
    private static double serviceCeiling() {
        return TimeToClimb.altitudeOfRate(5000.0, 6.0, TimeToClimb.PROPELLER_RATE_MPS);
    }

    private static double thrustOfClimb() {
        double sine = StrictMath.sin(StrictMath.toRadians(17.0 - 2.0));
        return ClimbBalance.thrust(20e3, 70e3 * 9.81 / GRAVITY_MPS2, sine, 0.0, 0.0) / 1e3;
    }

    private static double angleOfExcess() {
        Aeroplane none = aeroplane(1.0);
        double excess = 1.0 + 1.33e4 * 6.7 / ROUNDED_SPEED_MPS;
        double mass = 1.33e4 / GRAVITY_MPS2;
        double sine = ClimbBalance.sine(none, ONE, excess, mass, 0.1, 1.0, 1.0, 1.0, 0.0, 0.0);
        return StrictMath.toDegrees(StrictMath.asin(sine));
    }

    private static double thrustOfPower() {
        PropellerThrust whole = PropellerThrust.ofSi(ROUNDED_POWER_W, 1.0, 1e6);
        return whole.thrust(ROUNDED_SPEED_MPS / DryAir.speedOfSound(288.15), 101325.0, 288.15, ONE);
    }

    private static double timeOfTable(double toFeet) {
        double[] metres = times(TABLE_FEET, FOOT);
        double[] rates = times(TABLE_FEET_PER_MINUTE, FOOT / 60.0);
        return TimeToClimb.tabulated(metres, rates, 0.0, toFeet * FOOT) / 60.0;
    }

    private static double[] times(double[] values, double factor) {
        double[] product = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            product[i] = values[i] * factor;
        }
        return product;
    }

    /** The thrust at which the rate is 20 m/s, by the drag there. */
    private static double thrustOfRate() {
        double drag = ParabolicClimb.drag(180e3, 50.0, 0.016, 0.048, 1.225, 150.0);
        return ClimbBalance.thrust(drag, 180e3 / GRAVITY_MPS2, 20.0 / 150.0, 0.0, 0.0);
    }

    private static double bestOfExam() {
        double weight = 2000.0 * GRAVITY_MPS2;
        double speed = ParabolicClimb.speedOfBestClimb(weight, 20.0, 0.04, 0.08, 1.0, 5000.0);
        return ParabolicClimb.rateOfClimb(weight, 20.0, 0.04, 0.08, 1.0, 5000.0, speed);
    }

    private static double steepestOfExam() {
        double sine = ParabolicClimb.steepestSine(2000.0 * GRAVITY_MPS2, 0.04, 0.08, 5000.0);
        return StrictMath.toDegrees(StrictMath.asin(sine));
    }

    private static double lightSingle() {
        double induced = ParabolicPolar.inducedDragFactor(121.0 / 16.0, 0.8);
        double power = 0.8 * 230.0 * HORSEPOWER;
        return ParabolicClimb.bestRateAtPower(13122.0, 16.0, 0.025, induced, 1.225, power);
    }

    private static double twinJetBest(double zeroLift) {
        double induced = ParabolicPolar.inducedDragFactor(256.0 / 30.0, 0.81);
        double speed =
                ParabolicClimb.speedOfBestClimb(88137.0, 30.0, zeroLift, induced, 1.225, 32470.0);
        return ParabolicClimb.rateOfClimb(88137.0, 30.0, zeroLift, induced, 1.225, 32470.0, speed);
    }

    static double twinJetAt(double tasMps, double zeroLift) {
        double induced = ParabolicPolar.inducedDragFactor(256.0 / 30.0, 0.81);
        return ParabolicClimb.rateOfClimb(88137.0, 30.0, zeroLift, induced, 1.225, 32470.0, tasMps);
    }

    private static Aeroplane aeroplane(double dragN) {
        return Aeroplane.of(
                1,
                (lift, mach, q, use) -> dragN,
                (mach, p, t, use) -> 0.0,
                (thrust, mach, p, t, use) -> 0.0);
    }

    /** The rate of the aeroplane whose thrust and drag are given by altitude. */
    private static double rate(double altitudeM) {
        double drag = 52890.0 - 4.3977 * altitudeM + 0.001 * altitudeM * altitudeM;
        double thrust = 119770.0 - 11.15 * altitudeM;
        double mass = 50e3 * 9.81 / GRAVITY_MPS2;
        return 150.0
                * ClimbBalance.sine(
                        aeroplane(drag), ONE, thrust, mass, 0.4, 1e4, 1.0, 1.0, 0.0, 0.0);
    }

    private static double altitudeByEuler(int seconds) {
        double altitude = 500.0;
        for (int t = 0; t < seconds; t += 60) {
            altitude += 60.0 * rate(altitude);
        }
        return altitude;
    }

    /** Runge and Kutta's classical method, in steps of half a second. */
    private static double altitude(int seconds) {
        double step = 0.5;
        double altitude = 500.0;
        for (int i = 0; i < 2 * seconds; i++) {
            double k1 = rate(altitude);
            double k2 = rate(altitude + 0.5 * step * k1);
            double k3 = rate(altitude + 0.5 * step * k2);
            double k4 = rate(altitude + step * k3);
            altitude += step / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
        }
        return altitude;
    }
}
