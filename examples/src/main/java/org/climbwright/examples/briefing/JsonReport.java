package org.climbwright.examples.briefing;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.CabinBriefing;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.ClimbEvent;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.climbwright.gradient.restriction.ClimbRequirements;
import org.climbwright.gradient.restriction.Conflict;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.unit.UnitText;

/** A briefing as JSON: units in the names, null for what is not known, numbers as they came in. */
final class JsonReport {
    private final JsonGenerator json;

    private JsonReport(JsonGenerator json) {
        this.json = json;
    }

    static String of(String title, String air, ClimbBriefing briefing) {
        StringWriter text = new StringWriter();
        JsonFactory factory =
                JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
        try (JsonGenerator json = factory.createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            new JsonReport(json).write(title, air, briefing);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }

    private void write(String title, String air, ClimbBriefing briefing) throws IOException {
        json.writeStartObject();
        json.writeStringField("title", title);
        json.writeStringField("aerodrome", briefing.plan().aerodrome().name());
        number("elevationFt", briefing.plan().aerodrome().elevation().inFeet());
        number("qnhHpa", briefing.qnh().inHectopascals());
        json.writeStringField("sounding", air);
        writeTop(briefing);
        json.writeArrayFieldStart("levels");
        for (BriefingLevel level : briefing.levels()) {
            write(level, briefing);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("events");
        for (BriefingLevel level : briefing.levels()) {
            writeEvents(level, briefing);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("changes");
        for (ClimbDifference change : briefing.changes()) {
            write(change);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("power");
        for (ClimbPoint point : briefing.power()) {
            write(point);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("freezingLevels");
        for (IsothermCrossing crossing : briefing.freezingLevels()) {
            write(crossing);
        }
        json.writeEndArray();
        write("icingConditions", briefing, IcingAnswer.CONDITIONS);
        write("icingNotKnown", briefing, IcingAnswer.NOT_KNOWN);
        write("icingColderThanTheRule", briefing, IcingAnswer.COLDER_THAN_THE_RULE);
        json.writeArrayFieldStart("cabinChecks");
        if (briefing.cabin().isPresent()) {
            CabinBriefing cabin = briefing.cabin().get();
            for (CabinState check : cabin.checks()) {
                write(check, cabin.expected().plan());
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("restrictions");
        for (RestrictionOutcome outcome : briefing.restrictions().outcomes()) {
            write(outcome);
        }
        json.writeEndArray();
        ClimbRequirements needs = briefing.restrictions().fromTheBeginning();
        name("steepestRequiredAt", needs.governing());
        name("leastAllowedAt", needs.capping());
        texts(
                "restrictionConflicts",
                briefing.restrictions().conflicts().stream().map(Conflict::reason).toList());
        json.writeFieldName("levelOff");
        writeLevelOff(briefing.levelOff());
        json.writeFieldName("cloudTop");
        writeCloudTop(briefing.cloudTop());
        texts("notes", briefing.notes());
        texts("limits", briefing.limits());
        json.writeEndObject();
    }

    private void writeTop(ClimbBriefing briefing) throws IOException {
        ClimbState top = briefing.topOfClimb();
        json.writeObjectFieldStart("topOfClimb");
        number("pressureAltitudeFt", top.pressureAltitude().inFeet());
        number("timeS", top.timeS());
        number("distanceNm", top.distance().map(GroundDistance::inNauticalMiles));
        number("fuelKg", briefing.fuelTo(top).map(Mass::inKilograms));
        number("massKg", top.mass().inKilograms());
        json.writeStringField("endsBecause", briefing.path().endsBecause());
        json.writeEndObject();
    }

    /** One object for each thing that happens, with the rate on both sides where it jumps. */
    private void writeEvents(BriefingLevel level, ClimbBriefing briefing) throws IOException {
        ClimbState state = level.state();
        for (ClimbEvent event : level.events()) {
            json.writeStartObject();
            json.writeStringField(
                    "kind", event.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            json.writeStringField("text", event.text());
            number("pressureAltitudeFt", state.pressureAltitude().inFeet());
            number("timeS", state.timeS());
            number("distanceNm", state.distance().map(GroundDistance::inNauticalMiles));
            number("fuelKg", briefing.fuelTo(state).map(Mass::inKilograms));
            number("rateBelowFtPerMin", rate(briefing, state, Side.BELOW));
            number("rateAboveFtPerMin", rate(briefing, state, Side.ABOVE));
            json.writeEndObject();
        }
    }

    private static double rate(ClimbBriefing briefing, ClimbState state, Side side) {
        return briefing.path()
                .at(state.pressureAltitude(), side)
                .pressureAltitudeRate()
                .inFeetPerMinute();
    }

    private static double perMinute(double metresPerSecond) {
        return GeometricRate.ofMetresPerSecond(metresPerSecond).inFeetPerMinute();
    }

    private void write(ClimbDifference change) throws IOException {
        json.writeStartObject();
        json.writeStringField("change", change.change().text());
        number("moreTimeS", change.moreTimeS());
        number("moreFuelKg", change.moreFuelKg());
        number(
                "moreDistanceNm",
                Double.isNaN(change.moreDistanceM())
                        ? Optional.empty()
                        : Optional.of(change.moreDistanceM() / 1852.0));
        number("comparedAtFt", change.comparedAt().inFeet());
        json.writeBooleanField("endsLower", change.endsLower());
        json.writeEndObject();
    }

    private void write(ClimbPoint point) throws IOException {
        json.writeStartObject();
        number("pressureAltitudeFt", point.pressureAltitude().inFeet());
        number("massKg", point.mass().inKilograms());
        number("thrustN", point.thrustN());
        number("dragN", point.dragN());
        number("fuelFlowKgPerH", point.fuelFlow().inKilogramsPerHour());
        number("specificExcessPowerFtPerMin", perMinute(point.specificExcessPowerMps()));
        number("powerOfClimbFtPerMin", perMinute(point.powerOfClimbMps()));
        number("powerOfAccelerationFtPerMin", perMinute(point.powerOfAccelerationMps()));
        number(
                "powerOfWindChangeFtPerMin",
                point.powerOfWindChangeMps().isPresent()
                        ? Optional.of(perMinute(point.powerOfWindChangeMps().getAsDouble()))
                        : Optional.empty());
        number("rateFtPerMin", point.pressureAltitudeRate().inFeetPerMinute());
        number("accelerationWorthFtPerMin", point.worthOfAcceleration().inFeetPerMinute());
        number(
                "windGradientWorthFtPerMin",
                point.worthOfWindGradient().map(PressureAltitudeRate::inFeetPerMinute));
        json.writeEndObject();
    }

    private void write(BriefingLevel level, ClimbBriefing briefing) throws IOException {
        ClimbState state = level.state();
        json.writeStartObject();
        number("pressureAltitudeFt", state.pressureAltitude().inFeet());
        number("altitudeOnQnhFt", level.altitudeOnQnh().map(AltitudeOnQnh::inFeet));
        number(
                "geopotentialAltitudeFt",
                state.air().geopotentialAltitude().map(GeopotentialAltitude::inFeet));
        number("trueAltitudeFt", state.air().geometricAltitude().map(GeometricAltitude::inFeet));
        number("staticAirTemperatureC", state.air().staticAirTemperature().inCelsius());
        number("isaDeviationK", state.air().isaDeviation().inKelvins());
        number("totalAirTemperatureC", state.totalAirTemperature().inCelsius());
        number("calibratedAirspeedKn", state.calibratedAirspeed().inKnots());
        number("mach", state.mach().number());
        number("trueAirspeedKn", state.trueAirspeed().inKnots());
        number("alongTrackWindKn", state.alongTrackWind().map(AlongTrackWind::inKnots));
        number("groundSpeedKn", state.groundSpeed().map(GroundSpeed::inKnots));
        number("rateFtPerMin", state.pressureAltitudeRate().inFeetPerMinute());
        number("gradientPercent", state.groundGradient().map(GroundGradient::inPercent));
        number(
                "gradientFtPerNm",
                state.groundGradient().map(GroundGradient::inFeetPerNauticalMile));
        number("timeS", state.timeS());
        number("distanceNm", state.distance().map(GroundDistance::inNauticalMiles));
        number("massKg", state.mass().inKilograms());
        number("fuelKg", briefing.fuelTo(state).map(Mass::inKilograms));
        texts("events", level.events().stream().map(ClimbEvent::text).toList());
        json.writeEndObject();
    }

    private void write(IsothermCrossing crossing) throws IOException {
        json.writeStartObject();
        number("pressureAltitudeFt", crossing.pressureAltitude().inFeet());
        number(
                "geopotentialAltitudeFt",
                crossing.air().geopotentialAltitude().map(GeopotentialAltitude::inFeet));
        json.writeStringField(
                "direction",
                switch (crossing.trend()) {
                    case FALLING -> "falling";
                    case RISING -> "rising";
                });
        json.writeEndObject();
    }

    private void write(String field, ClimbBriefing briefing, IcingAnswer answer)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (ProtectionAdvice advice : briefing.iceProtection()) {
            for (IcingSpan span : advice.spans(answer)) {
                json.writeStartObject();
                json.writeStringField("part", span.part().name().toLowerCase(Locale.ROOT));
                json.writeStringField("rule", advice.plan().rule().basis());
                number("fromFt", span.bottom().inFeet());
                number("toFt", span.top().inFeet());
                number("entryTimeS", span.entry().timeS());
                number("exitTimeS", span.exit().timeS());
                if (span.isConditions()) {
                    protection(advice.period(span));
                } else { // if there are conditions, by when
                    Optional<ClimbState> onBy = span.onBy(briefing.path(), advice.plan().lead());
                    number(
                            "protectionOnByFt",
                            onBy.map(state -> state.pressureAltitude().inFeet()));
                    json.writeBooleanField("protectionOnBeforeClimb", onBy.isEmpty());
                }
                number("coldestTotalAirTemperatureC", span.coldestTotal().inCelsius());
                number("coldestStaticAirTemperatureC", span.coldestStatic().inCelsius());
                json.writeStringField("reason", span.reason());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private void write(RestrictionOutcome outcome) throws IOException {
        Restriction restriction = outcome.restriction();
        json.writeStartObject();
        json.writeStringField("name", restriction.name());
        number("distanceNm", restriction.distance().inNauticalMiles());
        json.writeStringField(
                "required",
                Stream.concat(
                                restriction.altitude().stream().map(Object::toString),
                                restriction.speed().stream().map(Object::toString))
                        .collect(Collectors.joining(", ")));
        number("predictedFt", outcome.reading().map(Level::inFeet));
        number("marginFt", outcome.altitudeMargin().map(AltitudeChange::inFeet));
        number("marginKn", outcome.speedMargin().map(AirspeedDifference::inKnots));
        number(
                "requiredGradientFtPerNm",
                outcome.required().map(need -> need.gradient().inFeetPerNauticalMile()));
        number(
                "requiredRateFtPerMin",
                outcome.required()
                        .flatMap(ClimbRequirement::instrumentRate)
                        .map(PressureAltitudeRate::inFeetPerMinute));
        json.writeStringField(
                "verdict", outcome.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        texts("reasons", outcome.reasons());
        json.writeEndObject();
    }

    private void name(String field, Optional<ClimbRequirement> known) throws IOException {
        if (known.isPresent()) {
            json.writeStringField(field, known.get().restriction().name());
        } else {
            json.writeNullField(field);
        }
    }

    private void writeLevelOff(Optional<LevelOffPlan> known) throws IOException {
        if (known.isEmpty()) {
            json.writeNull();
            return;
        }
        LevelOffPlan plan = known.get();
        json.writeStartObject();
        json.writeStringField("rule", plan.rule().name());
        json.writeStringField("lead", plan.lead().toString());
        number("arrivalRateFtPerMin", plan.arrival().inFeetPerMinute());
        number("rateInForceFtPerMin", plan.rateInForce().inFeetPerMinute());
        number("beginsReducingFtToGo", plan.beginsReducing().inFeet());
        number("beginsLevellingFtToGo", plan.beginsLevelling().inFeet());
        number("timeInForceS", plan.timeInForce().toNanos() / 1e9);
        number("costS", plan.cost().toNanos() / 1e9);
        texts("remarks", plan.remarks());
        json.writeEndObject();
    }

    private void writeCloudTop(Optional<CloudTop> known) throws IOException {
        if (known.isEmpty()) {
            json.writeNull();
            return;
        }
        CloudTop top = known.get();
        json.writeStartObject();
        json.writeStringField(
                "answer", top.answer().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        number("nearEdgeMarginFt", top.nearEdge().map(margin -> margin.asGiven().inFeet()));
        number("nearEdgeLeastMarginFt", top.nearEdge().map(margin -> margin.least().inFeet()));
        number("overCloudMarginFt", top.overCloud().map(margin -> margin.asGiven().inFeet()));
        number("overCloudLeastMarginFt", top.overCloud().map(margin -> margin.least().inFeet()));
        texts("reasons", top.reasons());
        json.writeEndObject();
    }

    private void write(CabinState check, CabinPlan plan) throws IOException {
        json.writeStartObject();
        number("atFt", check.aeroplane().inFeet());
        number("timeS", check.time().toNanos() / 1e9);
        number("cabinAltitudeFt", check.cabin().inFeet());
        number("cabinRateFtPerMin", check.rate().inFeetPerMinute());
        number("differentialPsi", check.differential().inPoundsPerSquareInch());
        // the most that is scheduled; where the relief valve opens is another number
        number("maxDifferentialPsi", plan.limits().scheduled().inPoundsPerSquareInch());
        number("reliefDifferentialPsi", plan.limits().relief().inPoundsPerSquareInch());
        json.writeStringField(
                "boundBy", check.boundBy().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.writeEndObject();
    }

    /** Of spans that are too close together to switch off between, the same for all. */
    private void protection(ProtectionPeriod period) throws IOException {
        number(
                "protectionOnByFt",
                period.isOnBeforeClimb()
                        ? Optional.empty()
                        : Optional.of(period.on().pressureAltitude().inFeet()));
        json.writeBooleanField("protectionOnBeforeClimb", period.isOnBeforeClimb());
        number(
                "protectionOffAfterFt",
                period.isOnAtTop()
                        ? Optional.empty()
                        : Optional.of(period.off().pressureAltitude().inFeet()));
    }

    private void texts(String field, List<String> texts) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void number(String field, double value) throws IOException {
        json.writeFieldName(field);
        // What comes back to 1200 ft or 0 °C by way of a pressure may miss it in the twelfth digit.
        double rounded = Math.rint(value * 1e6) / 1e6 + 0.0;
        double told = Math.abs(value - rounded) <= 1e-10 ? rounded : value;
        json.writeNumber(new BigDecimal(UnitText.number(told)));
    }

    private void number(String field, Optional<Double> value) throws IOException {
        if (value.isPresent()) {
            number(field, value.get().doubleValue());
        } else {
            json.writeNullField(field);
        }
    }
}
