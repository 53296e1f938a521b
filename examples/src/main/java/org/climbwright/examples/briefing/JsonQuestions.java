package org.climbwright.examples.briefing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.briefing.CabinBriefing;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.TurbulenceBriefing;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.AltitudeRestriction;
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
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.turbulence.convection.CloudSpan;
import org.climbwright.turbulence.convection.ParcelAscent;

/** What a briefing answers to the questions of a climb, as JSON. */
final class JsonQuestions {
    private final JsonFields json;
    private final ClimbBriefing briefing;

    JsonQuestions(JsonFields json, ClimbBriefing briefing) {
        this.json = json;
        this.briefing = briefing;
    }

    void write() {
        writeSpans("icingConditions", IcingAnswer.CONDITIONS);
        writeSpans("icingNotKnown", IcingAnswer.NOT_KNOWN);
        writeSpans("icingColderThanTheRule", IcingAnswer.COLDER_THAN_THE_RULE);
        json.object("turbulence", briefing.turbulence(), this::write);
        json.objects(
                "cabinChecks",
                briefing.cabin().map(CabinBriefing::checks).orElse(List.of()),
                this::write);
        json.objects("restrictions", briefing.restrictions().outcomes(), this::write);
        ClimbRequirements needs = briefing.restrictions().fromTheBeginning();
        json.text("steepestRequiredAt", needs.governing().map(JsonQuestions::name));
        json.text("leastAllowedAt", needs.capping().map(JsonQuestions::name));
        json.texts(
                "restrictionConflicts",
                briefing.restrictions().conflicts().stream().map(Conflict::reason).toList());
        json.object("levelOff", briefing.levelOff(), this::write);
        json.object("cloudTop", briefing.cloudTop(), this::write);
    }

    /** A span, and the advice that it is of. */
    private record Advised(ProtectionAdvice advice, IcingSpan span) {}

    private void writeSpans(String field, IcingAnswer answer) {
        json.objects(
                field,
                briefing.iceProtection().stream()
                        .flatMap(
                                advice ->
                                        advice.spans(answer).stream()
                                                .map(span -> new Advised(advice, span)))
                        .toList(),
                this::write);
    }

    private void write(Advised advised) {
        IcingSpan span = advised.span();
        json.text("part", ConstantInWords.of(span.part()));
        json.text("rule", advised.advice().plan().rule().basis());
        json.number("fromFt", span.bottom().inFeet());
        json.text("fromAltitudeText", AltimeterText.of(span.bottom(), briefing));
        json.number("toFt", span.top().inFeet());
        json.text("toAltitudeText", AltimeterText.of(span.top(), briefing));
        json.number("entryTimeS", span.entry().timeS());
        json.number("exitTimeS", span.exit().timeS());
        json.number("entryDistanceNm", miles(span.entry()));
        json.number("exitDistanceNm", miles(span.exit()));
        if (span.isConditions()) {
            // of spans that are too close together to switch off between, the same for all
            ProtectionPeriod period = advised.advice().period(span);
            writeOnBy(period.isOnBeforeClimb() ? Optional.empty() : Optional.of(period.on()));
            Optional<PressureAltitude> off =
                    Optional.of(period.off().pressureAltitude())
                            .filter(level -> !period.isOnAtTop());
            json.number("protectionOffAfterFt", off.map(PressureAltitude::inFeet));
            json.text(
                    "protectionOffAfterAltitudeText",
                    off.map(level -> AltimeterText.of(level, briefing)));
        } else { // if there are conditions, by when
            writeOnBy(span.onBy(briefing.path(), advised.advice().plan().lead()));
        }
        json.number("coldestTotalAirTemperatureC", span.coldestTotal().inCelsius());
        json.number("coldestStaticAirTemperatureC", span.coldestStatic().inCelsius());
        json.text("reason", span.reason());
    }

    private void writeOnBy(Optional<ClimbState> onBy) {
        json.number("protectionOnByFt", onBy.map(state -> state.pressureAltitude().inFeet()));
        json.text(
                "protectionOnByAltitudeText",
                onBy.map(state -> AltimeterText.of(state.pressureAltitude(), briefing)));
        json.number("protectionOnByTimeS", onBy.map(ClimbState::timeS));
        json.number("protectionOnByDistanceNm", onBy.flatMap(JsonQuestions::miles));
        json.flag("protectionOnBeforeClimb", onBy.isEmpty());
    }

    private static Optional<Double> miles(ClimbState state) {
        return state.distance().map(GroundDistance::inNauticalMiles);
    }

    private static String name(ClimbRequirement requirement) {
        return requirement.restriction().name();
    }

    private void write(TurbulenceBriefing turbulence) {
        json.number("leastEnergyJPerKg", turbulence.plan().leastEnergyJPerKg());
        json.number("leastShearKnPer1000Ft", turbulence.plan().leastShearKnotsPer1000Ft());
        json.number("energyJPerKg", turbulence.ascent().value().map(ParcelAscent::energyJPerKg));
        json.text("energyNotKnown", turbulence.ascent().reason());
        Optional<CloudSpan> cloud = turbulence.ascent().then(ParcelAscent::cloud).value();
        json.object("cloud", cloud, this::write);
        json.objects("seatBelts", turbulence.spans(), this::write);
        json.text("advice", turbulence.advice().inWords());
    }

    private void write(CloudSpan cloud) {
        json.number("basePressureAltitudeFt", cloud.base().inFeet());
        json.number("topPressureAltitudeFt", cloud.top().inFeet());
        json.text("basis", cloud.basis());
    }

    private void write(TurbulenceBriefing.Span span) {
        json.number("fromFt", span.entry().pressureAltitude().inFeet());
        json.text("fromAltitudeText", AltimeterText.of(span.entry().pressureAltitude(), briefing));
        json.number("toFt", span.exit().pressureAltitude().inFeet());
        json.text("toAltitudeText", AltimeterText.of(span.exit().pressureAltitude(), briefing));
        json.number("entryTimeS", span.entry().timeS());
        json.number("exitTimeS", span.exit().timeS());
        json.number("entryDistanceNm", miles(span.entry()));
        json.number("exitDistanceNm", miles(span.exit()));
        json.texts("reasons", span.reasons());
    }

    private void write(CabinState check) {
        CabinPlan plan = briefing.cabin().orElseThrow().expected().plan();
        json.number("atFt", check.aeroplane().inFeet());
        json.number("timeS", check.time().toNanos() / 1e9);
        json.number("cabinAltitudeFt", check.cabin().inFeet());
        json.number("cabinRateFtPerMin", check.rate().inFeetPerMinute());
        json.number("differentialPsi", check.differential().inPoundsPerSquareInch());
        // the most that is scheduled; where the relief valve opens is another number
        json.number("maxDifferentialPsi", plan.limits().scheduled().inPoundsPerSquareInch());
        json.number("reliefDifferentialPsi", plan.limits().relief().inPoundsPerSquareInch());
        json.text("boundBy", ConstantInWords.of(check.boundBy()));
    }

    private void write(RestrictionOutcome outcome) {
        Restriction restriction = outcome.restriction();
        json.text("name", restriction.name());
        json.number("distanceNm", restriction.distance().inNauticalMiles());
        json.text(
                "required",
                Stream.concat(
                                restriction.altitude().stream().map(Object::toString),
                                restriction.speed().stream().map(Object::toString))
                        .collect(Collectors.joining(", ")));
        json.number("lowerPressureAltitudeFt", bound(restriction, AltitudeRestriction::lower));
        json.number("upperPressureAltitudeFt", bound(restriction, AltitudeRestriction::upper));
        json.number("predictedFt", outcome.reading().map(Level::inFeet));
        json.text("predictedText", outcome.reading().map(AltimeterText::of));
        json.number("marginFt", outcome.altitudeMargin().map(AltitudeChange::inFeet));
        json.number("marginKn", outcome.speedMargin().map(AirspeedDifference::inKnots));
        json.number(
                "requiredGradientFtPerNm",
                outcome.required().map(need -> need.gradient().inFeetPerNauticalMile()));
        json.number(
                "requiredRateFtPerMin",
                outcome.required()
                        .flatMap(ClimbRequirement::instrumentRate)
                        .map(PressureAltitudeRate::inFeetPerMinute));
        json.text("verdict", ConstantInWords.of(outcome.verdict()));
        json.texts("reasons", outcome.reasons());
    }

    private void write(LevelOffPlan plan) {
        json.text("rule", plan.rule().name());
        json.text("lead", plan.lead().toString());
        json.number("arrivalRateFtPerMin", plan.arrival().inFeetPerMinute());
        json.number("rateInForceFtPerMin", plan.rateInForce().inFeetPerMinute());
        json.number("beginsReducingFtToGo", plan.beginsReducing().inFeet());
        json.number("beginsLevellingFtToGo", plan.beginsLevelling().inFeet());
        json.number("timeInForceS", plan.timeInForce().toNanos() / 1e9);
        json.number("costS", plan.cost().toNanos() / 1e9);
        json.texts("remarks", plan.remarks());
        json.object(
                "reducing",
                plan.levelWhereReducing().map(level -> briefing.path().at(level, Side.ABOVE)),
                state -> {
                    json.number("pressureAltitudeFt", state.pressureAltitude().inFeet());
                    json.number("timeS", state.timeS());
                    json.number("distanceNm", miles(state));
                });
    }

    private void write(CloudTop top) {
        CloudAhead cloud = briefing.plan().cloud().orElseThrow().cloud();
        json.text("answer", ConstantInWords.of(top.answer()));
        json.number("nearEdgeMarginFt", top.nearEdge().map(margin -> margin.asGiven().inFeet()));
        json.number("nearEdgeLeastMarginFt", top.nearEdge().map(margin -> margin.least().inFeet()));
        json.number("overCloudMarginFt", top.overCloud().map(margin -> margin.asGiven().inFeet()));
        json.number(
                "overCloudLeastMarginFt", top.overCloud().map(margin -> margin.least().inFeet()));
        json.texts("reasons", top.reasons());
        json.number("nearEdgeNm", cloud.nearEdge().inNauticalMiles());
        json.number("farEdgeNm", cloud.farEdge().inNauticalMiles());
        json.number("basePressureAltitudeFt", level(cloud.base()));
        json.number("topPressureAltitudeFt", level(cloud.top()));
    }

    /** The pressure altitude of a true one; not known outside the sounding. */
    private Optional<Double> level(GeometricAltitude altitude) {
        Atmosphere air = briefing.sounding().atmosphere();
        double geopotentialM = Geopotential.from(altitude).inMetres();
        boolean isKnown =
                geopotentialM >= air.geopotentialAltitude(air.range().highest())
                        && geopotentialM <= air.geopotentialAltitude(air.range().lowest());
        return isKnown
                ? Optional.of(air.at(altitude).pressureAltitude().inFeet())
                : Optional.empty();
    }

    private Optional<Double> bound(
            Restriction restriction, Function<AltitudeRestriction, Optional<Level>> side) {
        return restriction
                .altitude()
                .flatMap(side)
                .map(level -> level.pressureAltitude(briefing.qnh()).inFeet());
    }
}
