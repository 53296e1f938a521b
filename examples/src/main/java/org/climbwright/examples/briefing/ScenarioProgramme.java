package org.climbwright.examples.briefing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.profile.ClimbProgramme;
import org.climbwright.profile.HeldLevel;
import org.climbwright.profile.HeldRate;
import org.climbwright.profile.NamedPoint;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.unit.QuantityKind;
import org.climbwright.unit.UnitText;

/** How the climb of a scenario is flown, beside its speeds. */
final class ScenarioProgramme {
    private static final String AT = "programme.";

    private ScenarioProgramme() {}

    static Function<SpeedSchedule, ClimbProgramme> read(ScenarioToml toml) {
        double share = toml.value(AT + "acceleration_share", ScenarioNumber::share);
        Optional<CalibratedAirspeed> minimum =
                toml.optional(AT + "minimum_speed", CalibratedAirspeed::parse);
        List<String> rough = texts(toml, "rough_air");
        List<HeldRate> rates = rows(toml, "held_rates", ScenarioProgramme::heldRate);
        List<HeldLevel> levels = rows(toml, "held_levels", ScenarioProgramme::heldLevel);
        List<NamedPoint> points = rows(toml, "points", ScenarioProgramme::point);
        List<String> reduced = texts(toml, "reduced_thrust");
        Function<SpeedSchedule, ClimbProgramme> programme =
                schedule -> {
                    SpeedSchedule speeds = roughAir(schedule, rough);
                    if (minimum.isPresent()) {
                        speeds = speeds.withMinimum(minimum.get());
                    }
                    return ClimbProgramme.of(speeds, share)
                            .withHeldRates(rates)
                            .withHeldLevels(levels)
                            .withPoints(points)
                            .withReducedThrust(reducedThrust(reduced));
                };
        // refused here, with the line, what would be refused on the way
        SpeedSchedule any = SpeedSchedule.of(CalibratedAirspeed.ofKnots(250), Mach.of(0.7));
        toml.checked("programme", () -> programme.apply(any));
        return programme;
    }

    private static List<String> texts(ScenarioToml toml, String field) {
        return toml.has(AT + field) ? toml.values(AT + field, Function.identity()) : List.of();
    }

    private static <T> List<T> rows(
            ScenarioToml toml, String field, Function<List<String>, T> read) {
        return toml.has(AT + field) ? toml.rows(AT + field, read) : List.of();
    }

    private static void requireCells(List<String> cells, int count, String what) {
        if (cells.size() != count) {
            throw new IllegalArgumentException(
                    "must be " + what + ", but had " + cells.size() + " texts");
        }
    }

    private static SpeedSchedule roughAir(SpeedSchedule speeds, List<String> cells) {
        if (cells.isEmpty()) {
            return speeds;
        }
        requireCells(cells, 4, "an airspeed, a Mach number and two levels");
        return speeds.withRoughAir(
                CalibratedAirspeed.parse(cells.get(0)),
                Mach.parse(cells.get(1)),
                PressureAltitude.parse(cells.get(2)),
                PressureAltitude.parse(cells.get(3)));
    }

    private static ReducedThrust reducedThrust(List<String> cells) {
        if (cells.isEmpty()) {
            return ReducedThrust.none();
        }
        requireCells(cells, 3, "a percentage and the levels to which and from which it holds");
        return ReducedThrust.of(
                ScenarioNumber.share(cells.get(0)),
                PressureAltitude.parse(cells.get(1)),
                PressureAltitude.parse(cells.get(2)));
    }

    private static HeldRate heldRate(List<String> cells) {
        requireCells(cells, 4, "two levels, a rate and \"thrust\" or \"speed\"");
        return new HeldRate(
                PressureAltitude.parse(cells.get(0)),
                PressureAltitude.parse(cells.get(1)),
                PressureAltitudeRate.parse(cells.get(2)),
                switch (cells.get(3)) {
                    case "thrust" -> HeldRate.Gives.THRUST;
                    case "speed" -> HeldRate.Gives.SPEED;
                    default ->
                            throw new IllegalArgumentException(
                                    "what gives must be \"thrust\" or \"speed\", but was \""
                                            + cells.get(3)
                                            + "\"");
                });
    }

    /** Until a distance or for a time: the unit tells which. */
    private static HeldLevel heldLevel(List<String> cells) {
        requireCells(cells, 2, "a level and a time or a distance");
        PressureAltitude level = PressureAltitude.parse(cells.get(0));
        if (cells.get(1).endsWith(" NM") || cells.get(1).endsWith(" km")) {
            return HeldLevel.until(level, GroundDistance.parse(cells.get(1)));
        }
        double seconds = UnitText.parse("time", cells.get(1), QuantityKind.TIME);
        return HeldLevel.during(level, Duration.ofNanos(Math.round(seconds * 1e9)));
    }

    private static NamedPoint point(List<String> cells) {
        requireCells(cells, 2, "a name and a distance");
        return new NamedPoint(cells.get(0), GroundDistance.parse(cells.get(1)));
    }
}
