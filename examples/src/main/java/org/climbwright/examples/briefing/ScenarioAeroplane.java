package org.climbwright.examples.briefing;

import java.util.List;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.JetThrust;
import org.climbwright.performance.ParabolicPolar;
import org.climbwright.performance.Rating;
import org.climbwright.performance.ThrustSpecificFuel;
import org.climbwright.performance.ceiling.BuffetTable;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.TemperatureDifference;

/** The aeroplane of a scenario: a jet of the library's building blocks. */
final class ScenarioAeroplane {
    private static final String AT = "aeroplane.";

    private final ScenarioToml toml;

    private ScenarioAeroplane(ScenarioToml toml) {
        this.toml = toml;
    }

    static Aeroplane read(ScenarioToml toml) {
        ScenarioAeroplane reader = new ScenarioAeroplane(toml);
        int engines = (int) reader.plain("engines");
        Aeroplane bare =
                Aeroplane.of(engines, reader.polar(engines), reader.thrust(), reader.fuel());
        return bare.withLimits(reader.limits());
    }

    private double plain(String field) {
        return toml.value(AT + field, ScenarioNumber::plain);
    }

    private double share(String field) {
        return toml.value(AT + field, ScenarioNumber::share);
    }

    private ParabolicPolar polar(int engines) {
        double wing = toml.value(AT + "wing_area", ScenarioNumber::area);
        double zeroLift = plain("zero_lift_drag");
        double induced = plain("induced_drag");
        double critical = plain("critical_mach");
        double fall = plain("critical_mach_fall");
        double engineOut = toml.value(AT + "engine_out_drag_area", ScenarioNumber::area);
        return toml.checked(
                "aeroplane",
                () ->
                        ParabolicPolar.ofSi(wing, zeroLift, induced)
                                .withCompressibilityRise(critical, fall)
                                .withEngineOutDrag(engines, engineOut));
    }

    private JetThrust thrust() {
        double atRest = toml.value(AT + "static_thrust", ScenarioNumber::force);
        double exponent = plain("density_exponent");
        List<Double> mach = toml.values(AT + "mach_lapse", ScenarioNumber::plain);
        double flat = toml.value(AT + "flat_rating", TemperatureDifference::parse).inKelvins();
        double fall = share("fall_per_kelvin");
        double climb = share("climb_rating");
        double continuous = share("continuous_rating");
        double engine = share("bleed_engine");
        double airframe = share("bleed_airframe");
        return toml.checked(
                "aeroplane",
                () -> {
                    if (mach.size() != 2) {
                        throw new IllegalArgumentException(
                                "mach_lapse must be two numbers, but had " + mach.size());
                    }
                    return JetThrust.ofSi(atRest, exponent)
                            .withMachLapse(mach.get(0), mach.get(1))
                            .withFlatRating(flat, fall)
                            .withRating(Rating.CLIMB, climb)
                            .withRating(Rating.MAXIMUM_CONTINUOUS, continuous)
                            .withBleed(engine, airframe);
                });
    }

    private ThrustSpecificFuel fuel() {
        double atRest = toml.value(AT + "specific_fuel", ScenarioNumber::specificFuel);
        double perMach = toml.value(AT + "specific_fuel_per_mach", ScenarioNumber::specificFuel);
        double idle = toml.value(AT + "idle_fuel", ScenarioNumber::massFlow);
        return toml.checked(
                "aeroplane", () -> ThrustSpecificFuel.ofSi(atRest, perMach).withIdle(idle));
    }

    private AeroplaneLimits limits() {
        PressureAltitude ceiling = toml.value(AT + "certified_ceiling", PressureAltitude::parse);
        CalibratedAirspeed speed =
                toml.value(AT + "maximum_operating_speed", CalibratedAirspeed::parse);
        Mach mach = toml.value(AT + "maximum_operating_mach", Mach::parse);
        double wing = toml.value(AT + "wing_area", ScenarioNumber::area);
        List<BuffetTable.Row> rows = toml.rows(AT + "buffet", ScenarioAeroplane::buffetRow);
        return toml.checked(
                "aeroplane",
                () ->
                        AeroplaneLimits.none()
                                .withCertifiedCeiling(ceiling)
                                .withMaximumOperatingSpeed(speed)
                                .withMaximumOperatingMach(mach)
                                .withBuffetOnset(wing, BuffetTable.of(rows)));
    }

    private static BuffetTable.Row buffetRow(List<String> cells) {
        if (cells.size() != 2) {
            throw new IllegalArgumentException(
                    "a row must be a Mach number and a lift coefficient, but had "
                            + cells.size()
                            + " texts");
        }
        return new BuffetTable.Row(Mach.parse(cells.get(0)), ScenarioNumber.plain(cells.get(1)));
    }
}
