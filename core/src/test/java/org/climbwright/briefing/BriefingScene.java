package org.climbwright.briefing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.climbwright.briefing.plan.Aerodrome;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.PlannedCabin;
import org.climbwright.briefing.plan.ScheduledSpeeds;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbRates;
import org.climbwright.path.Scene;
import org.climbwright.performance.InventedAeroplanes;
import org.climbwright.profile.ClimbProgramme;
import org.climbwright.profile.NamedPoint;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;
import org.climbwright.sounding.UnobservedWind;

/** Invented climbs through invented air; no figure of them is a reference. */
final class BriefingScene {
    static final double NONE = Double.NaN;

    /**
     * Invented air: 2 °C at the ground, an inversion, a second and a third 0 °C level, no moisture
     * aloft.
     */
    static final Sounding AIR =
            Sounding.of(
                    "invented",
                    "",
                    List.of(
                            level(1000, 100, 2, 1, 5),
                            level(950, 530, -1, -1.5, 8),
                            level(900, 980, 3, -5, 10),
                            level(850, 1460, 1, -10, NONE),
                            level(700, 3000, -8, -20, 20),
                            level(500, 5550, -22, -40, 25),
                            level(300, 9100, -46, NONE, 40),
                            level(200, 11750, -56, NONE, 45)));

    static final ClimbRates RATES =
            Scene.rates(Scene.row(-1000, 3000), Scene.row(20000, 2000), Scene.row(37000, 500));

    static SoundingLevel level(
            double hpa, double metres, double celsius, double dewCelsius, double southerlyMps) {
        return SoundingLevel.ofSi(
                hpa * 100.0,
                metres,
                celsius + 273.15,
                dewCelsius + 273.15,
                Double.isNaN(southerlyMps) ? NONE : 0.0,
                southerlyMps);
    }

    static List<ProtectionPlan> protection(double leastPercent) {
        VisibleMoisture moisture =
                VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(leastPercent));
        return List.of(
                ProtectionPlan.antiIce(
                        IcingRule.engine(moisture), Duration.ofSeconds(10), Duration.ZERO));
    }

    static ClimbPlan plan(double levelFeet) {
        return ClimbPlan.of(
                        new Aerodrome(
                                "invented",
                                GeopotentialAltitude.ofMetres(150),
                                AltitudeOnQnh.ofFeet(5000),
                                Optional.empty()),
                        new ClimbMeans.Rates(RATES),
                        Mass.ofKilograms(50000),
                        new ScheduledSpeeds(
                                CalibratedAirspeed.ofKnots(250),
                                AltitudeOnQnh.ofFeet(10000),
                                CalibratedAirspeed.ofKnots(290),
                                Mach.of(0.7)),
                        PressureAltitude.ofFeet(levelFeet),
                        TrueDirection.ofDegrees(0))
                .withIceProtection(protection(80));
    }

    static PlannedCabin cabin(double scheduledPsi) {
        return new PlannedCabin(
                Optional.empty(),
                new DifferentialLimits(
                        DifferentialPressure.ofPoundsPerSquareInch(scheduledPsi),
                        DifferentialPressure.ofPoundsPerSquareInch(scheduledPsi + 0.5),
                        DifferentialPressure.ofPoundsPerSquareInch(-0.5)),
                CabinRateLimits.ofCommonPractice(),
                GeopotentialAltitude.ofMetres(100),
                AltimeterSetting.ofHectopascals(1013.25),
                AltitudeChange.ofFeet(0),
                DifferentialPressure.ofPascals(0),
                CabinPlan.Precedence.DIFFERENTIAL_FIRST);
    }

    private BriefingScene() {}

    /** The same climb by thrust and drag, over a named point. */
    static ClimbPlan byThrust(double levelFeet) {
        ClimbPlan plan = plan(levelFeet);
        return ClimbPlan.of(
                        plan.aerodrome(),
                        new ClimbMeans.Thrust(
                                InventedAeroplanes.twin(),
                                speeds ->
                                        ClimbProgramme.of(
                                                        speeds.withMinimum(
                                                                CalibratedAirspeed.ofKnots(200)),
                                                        0.4)
                                                .withPoints(
                                                        List.of(
                                                                new NamedPoint(
                                                                        "invented point",
                                                                        GroundDistance
                                                                                .ofNauticalMiles(
                                                                                        30))))),
                        Mass.ofKilograms(60000),
                        plan.speeds(),
                        plan.level(),
                        plan.track())
                .withIceProtection(plan.iceProtection())
                .withUnobservedWind(UnobservedWind.CALM);
    }
}
