package org.climbwright.examples.briefing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.briefing.plan.Aerodrome;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.PlannedCabin;
import org.climbwright.briefing.plan.PlannedCloud;
import org.climbwright.briefing.plan.PlannedLevelOff;
import org.climbwright.briefing.plan.PlannedTurbulence;
import org.climbwright.briefing.plan.ScheduledSpeeds;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.CabinSchedule;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbRates;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.sounding.SoundingReading;
import org.climbwright.sounding.UnobservedWind;
import org.climbwright.unit.QuantityKind;
import org.climbwright.unit.UnitText;
import org.jspecify.annotations.Nullable;

/** A climb written down by a person, in TOML, every number with its unit. */
final class ScenarioFile {
    private static final String BUNDLED = "scenario.toml";

    private final String text;
    private final ScenarioToml toml;
    private final @Nullable Path folder;
    private final String title;
    private final ClimbPlan plan;
    private final String soundingName;
    private final Optional<String> origin;

    private ScenarioFile(String name, String text, @Nullable Path folder) {
        this.text = text;
        this.toml = ScenarioToml.parse(name, text);
        this.folder = folder;
        this.title = toml.text("title");
        this.plan = readPlan();
        this.soundingName = toml.text("air.sounding");
        this.origin = toml.optional("air.origin", from -> from);
        toml.refuseWhatWasNotAskedFor();
    }

    static ScenarioFile bundled() throws IOException {
        return new ScenarioFile(BUNDLED, String.join("\n", resource(BUNDLED)), null);
    }

    static ScenarioFile read(Path file) throws IOException {
        try {
            return new ScenarioFile(
                    file.toString(), Files.readString(file), file.toAbsolutePath().getParent());
        } catch (NoSuchFileException missing) {
            throw new IOException("there is no scenario " + file, missing);
        } catch (CharacterCodingException foreign) {
            throw new IOException("the scenario " + file + " is not UTF-8 text", foreign);
        } catch (IOException broken) {
            throw new IOException("the scenario " + file + " cannot be read", broken);
        }
    }

    /** The scenario as it was written, line by line. */
    List<String> lines() {
        return text.lines().toList();
    }

    String title() {
        return title;
    }

    ClimbPlan plan() {
        return plan;
    }

    String soundingName() {
        return soundingName;
    }

    /** The name of the sounding, and where it is from if the scenario says so. */
    String soundingTold() {
        return soundingName + origin.map(from -> ", " + from).orElse("");
    }

    SoundingReading sounding() throws IOException {
        return folder == null
                ? SoundingReader.read(resource(soundingName))
                : SoundingFile.read(folder.resolve(soundingName));
    }

    private static List<String> resource(String name) throws IOException {
        try (InputStream in = ScenarioFile.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IOException("the program does not bundle " + name);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        }
    }

    private ClimbPlan readPlan() {
        Aerodrome aerodrome =
                new Aerodrome(
                        toml.text("aerodrome.name"),
                        toml.value("aerodrome.elevation", GeopotentialAltitude::parse),
                        toml.value("aerodrome.transition_altitude", AltitudeOnQnh::parse),
                        toml.optional("aerodrome.qnh", AltimeterSetting::parse));
        ScheduledSpeeds speeds =
                new ScheduledSpeeds(
                        toml.value("speeds.limit", CalibratedAirspeed::parse),
                        toml.value("speeds.limit_below", AltitudeOnQnh::parse),
                        toml.value("speeds.calibrated_airspeed", CalibratedAirspeed::parse),
                        toml.value("speeds.mach", Mach::parse));
        ClimbPlan plan =
                ClimbPlan.of(
                                aerodrome,
                                readMeans(),
                                toml.value("climb.mass", Mass::parse),
                                speeds,
                                toml.value("climb.level", PressureAltitude::parse),
                                toml.value("climb.track", TrueDirection::parse))
                        .withIceProtection(readProtection())
                        .withUnobservedWind(
                                toml.value("air.unobserved_wind", ScenarioFile::unobservedWind))
                        .withSmallestInversion(
                                toml.value("air.smallest_inversion", TemperatureDifference::parse));
        if (toml.has("cabin")) {
            plan = plan.withCabin(readCabin());
        }
        if (toml.has("restrictions")) {
            plan = plan.withRestrictions(toml.rows("restrictions.rows", RestrictionRow::read));
        }
        if (toml.has("level_off")) {
            plan =
                    plan.withLevelOff(
                            new PlannedLevelOff(
                                    toml.value("level_off.rule", RestrictionRow::rule),
                                    toml.value("level_off.lead", RestrictionRow::lead)));
        }
        if (toml.has("cloud")) {
            plan = plan.withCloud(readCloud());
        }
        return toml.has("turbulence") ? plan.withTurbulence(readTurbulence()) : plan;
    }

    private PlannedTurbulence readTurbulence() {
        double energy = toml.value("turbulence.energy", ScenarioNumber::energy);
        CalibratedAirspeed shear =
                toml.value("turbulence.shear_per_1000_ft", CalibratedAirspeed::parse);
        Duration lead = toml.value("turbulence.lead", ScenarioFile::duration);
        Optional<CalibratedAirspeed> speed =
                toml.optional("turbulence.rough_air_speed", CalibratedAirspeed::parse);
        Optional<Mach> mach = toml.optional("turbulence.rough_air_mach", Mach::parse);
        if (speed.isPresent() != mach.isPresent()) {
            throw new IllegalArgumentException(
                    "turbulence must have both rough_air_speed and rough_air_mach, or neither");
        }
        return toml.checked(
                "turbulence",
                () ->
                        new PlannedTurbulence(
                                energy,
                                shear.inKnots(),
                                lead,
                                speed.map(cas -> SpeedSchedule.of(cas, mach.orElseThrow()))));
    }

    /**
     * The engines by the usual rule, the airframe by the regulation's, with thresholds of its own.
     */
    private List<ProtectionPlan> readProtection() {
        VisibleMoisture moisture =
                VisibleMoisture.ofRelativeHumidity(
                        toml.value("icing.relative_humidity", RelativeHumidity::parse));
        Duration minimumOff = toml.value("icing.minimum_off", ScenarioFile::duration);
        IcingRule engine =
                IcingRule.engine(moisture)
                        .withWarmestTotal(
                                toml.value(
                                        "icing.engine.total_air_temperature",
                                        TotalAirTemperature::parse))
                        .withColdest(
                                toml.value(
                                        "icing.engine.coldest_static_air_temperature",
                                        StaticAirTemperature::parse));
        IcingRule airframe =
                IcingRule.airframe(moisture)
                        .withWarmestTotal(
                                toml.value(
                                        "icing.airframe.total_air_temperature",
                                        TotalAirTemperature::parse))
                        .withWarmestStatic(
                                toml.value(
                                        "icing.airframe.static_air_temperature",
                                        StaticAirTemperature::parse));
        return List.of(
                ProtectionPlan.antiIce(
                        engine,
                        toml.value("icing.engine.lead", ScenarioFile::duration),
                        minimumOff),
                toml.value("icing.airframe.method", ScenarioFile::method) == ProtectionMethod.DE_ICE
                        ? ProtectionPlan.deIce(airframe, minimumOff)
                        : ProtectionPlan.antiIce(
                                airframe,
                                toml.value("icing.airframe.lead", ScenarioFile::duration),
                                minimumOff));
    }

    private PlannedCloud readCloud() {
        GeometricAltitude base = toml.value("cloud.base", GeometricAltitude::parse);
        GeometricAltitude top = toml.value("cloud.top", GeometricAltitude::parse);
        GroundDistance near = toml.value("cloud.near_edge", GroundDistance::parse);
        GroundDistance far = toml.value("cloud.far_edge", GroundDistance::parse);
        GeometricRate growth = toml.value("cloud.growth", GeometricRate::parse);
        GroundDistance error = toml.value("cloud.distance_error", GroundDistance::parse);
        return new PlannedCloud(
                toml.checked("cloud", () -> new CloudAhead(base, top, near, far, growth, error)),
                toml.optional("cloud.clearance", AltitudeChange::parse));
    }

    private PlannedCabin readCabin() {
        DifferentialPressure scheduled =
                toml.value("cabin.scheduled_differential", DifferentialPressure::parse);
        DifferentialPressure relief =
                toml.value("cabin.relief_differential", DifferentialPressure::parse);
        DifferentialPressure negative =
                toml.value("cabin.negative_relief", DifferentialPressure::parse);
        CabinAltitudeRate up = toml.value("cabin.rate_up", CabinAltitudeRate::parse);
        CabinAltitudeRate down = toml.value("cabin.rate_down", CabinAltitudeRate::parse);
        return new PlannedCabin(
                readCabinSchedule(),
                toml.checked("cabin", () -> new DifferentialLimits(scheduled, relief, negative)),
                toml.checked("cabin", () -> new CabinRateLimits(up, down)),
                toml.value("cabin.landing_elevation", GeopotentialAltitude::parse),
                toml.value("cabin.landing_qnh", AltimeterSetting::parse),
                toml.value("cabin.margin", AltitudeChange::parse),
                toml.value("cabin.pre_pressurisation", DifferentialPressure::parse),
                toml.value("cabin.first", ScenarioFile::precedence));
    }

    private Optional<CabinSchedule> readCabinSchedule() {
        String kind = toml.value("cabin.schedule", ScenarioFile::scheduleKind);
        return switch (kind) {
            case "isobaric" ->
                    Optional.of(
                            CabinSchedule.isobaric(
                                    toml.value("cabin.cabin_altitude", CabinAltitude::parse)));
            case "table" -> {
                List<CabinSchedule.Row> rows = toml.rows("cabin.rows", ScenarioFile::cabinRow);
                yield Optional.of(toml.checked("cabin.rows", () -> CabinSchedule.table(rows)));
            }
            default -> Optional.empty();
        };
    }

    private static String scheduleKind(String text) {
        if (!List.of("automatic", "isobaric", "table").contains(text)) {
            throw new IllegalArgumentException(
                    "must be \"automatic\", \"isobaric\" or \"table\", but was \"" + text + "\"");
        }
        return text;
    }

    private static CabinSchedule.Row cabinRow(List<String> cells) {
        if (cells.size() != 2) {
            throw new IllegalArgumentException(
                    "a row must be the aeroplane's altitude and the cabin's, but had "
                            + cells.size()
                            + " texts");
        }
        return new CabinSchedule.Row(
                PressureAltitude.parse(cells.get(0)), CabinAltitude.parse(cells.get(1)));
    }

    private static CabinPlan.Precedence precedence(String text) {
        return switch (text) {
            case "differential" -> CabinPlan.Precedence.DIFFERENTIAL_FIRST;
            case "rate" -> CabinPlan.Precedence.RATE_FIRST;
            default ->
                    throw new IllegalArgumentException(
                            "must be \"differential\" or \"rate\", but was \"" + text + "\"");
        };
    }

    private static ProtectionMethod method(String text) {
        return switch (text) {
            case "anti-ice" -> ProtectionMethod.ANTI_ICE;
            case "de-ice" -> ProtectionMethod.DE_ICE;
            default ->
                    throw new IllegalArgumentException(
                            "must be \"anti-ice\" or \"de-ice\", but was \"" + text + "\"");
        };
    }

    /** One of the two: a table of rates, or an aeroplane with its programme. */
    private ClimbMeans readMeans() {
        if (toml.has("rates") == toml.has("aeroplane")) {
            throw new IllegalArgumentException(
                    "a scenario must have either [rates] or [aeroplane] with [programme]");
        }
        return toml.has("rates")
                ? new ClimbMeans.Rates(readRates())
                : new ClimbMeans.Thrust(ScenarioAeroplane.read(toml), ScenarioProgramme.read(toml));
    }

    private ClimbRates readRates() {
        ClimbRates.Kind kind = toml.value("rates.kind", ScenarioFile::kind);
        List<Mass> masses = toml.values("rates.masses", Mass::parse);
        List<ClimbRates.Row> rows = toml.rows("rates.rows", cells -> row(kind, cells));
        IsaDeviation deviation = toml.value("rates.isa_deviation", IsaDeviation::parse);
        return toml.checked("rates", () -> ClimbRates.of(kind, deviation, masses, rows));
    }

    private static ClimbRates.Row row(ClimbRates.Kind kind, List<String> cells) {
        return new ClimbRates.Row(
                PressureAltitude.parse(cells.get(0)),
                cells.stream()
                        .skip(1)
                        .map(
                                text ->
                                        switch (kind) {
                                            case PRESSURE_ALTITUDE ->
                                                    PressureAltitudeRate.parse(text)
                                                            .inMetresPerSecond();
                                            case GEOMETRIC ->
                                                    GeometricRate.parse(text).inMetresPerSecond();
                                        })
                        .toList());
    }

    private static ClimbRates.Kind kind(String text) {
        return switch (text) {
            case "pressure altitude" -> ClimbRates.Kind.PRESSURE_ALTITUDE;
            case "geometric" -> ClimbRates.Kind.GEOMETRIC;
            default ->
                    throw new IllegalArgumentException(
                            "must be \"pressure altitude\" or \"geometric\", but was \""
                                    + text
                                    + "\"");
        };
    }

    private static UnobservedWind unobservedWind(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "not known" -> UnobservedWind.NOT_KNOWN;
            case "hold lowest" -> UnobservedWind.HOLD_LOWEST;
            case "calm" -> UnobservedWind.CALM;
            default ->
                    throw new IllegalArgumentException(
                            "must be \"not known\", \"hold lowest\" or \"calm\", but was \""
                                    + text
                                    + "\"");
        };
    }

    private static Duration duration(String text) {
        double seconds = UnitText.parse("time", text, QuantityKind.TIME);
        if (!(seconds >= 0.0 && seconds <= 86400.0)) {
            throw new IllegalArgumentException(
                    "must be from 0.0 to 86400.0 s, but was " + seconds + " s");
        }
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }
}
