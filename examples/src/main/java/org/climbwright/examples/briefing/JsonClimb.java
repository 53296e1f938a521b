package org.climbwright.examples.briefing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.ClimbEvent;
import org.climbwright.briefing.SpeedBand;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbEffects;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.unit.UnitScale;

/** The climb of a briefing, as JSON. */
final class JsonClimb {
    private final JsonFields json;
    private final ClimbBriefing briefing;

    JsonClimb(JsonFields json, ClimbBriefing briefing) {
        this.json = json;
        this.briefing = briefing;
    }

    void write() {
        json.object("topOfClimb", fields -> writeTop(briefing.topOfClimb()));
        json.objects("levels", briefing.levels(), this::write);
        json.objects(
                "events",
                briefing.levels().stream()
                        .flatMap(
                                level ->
                                        level.events().stream()
                                                .map(event -> new Happening(event, level.state())))
                        .toList(),
                this::write);
        List<ClimbState> along = PathSamples.of(briefing);
        json.object("path", fields -> writePath(along));
        List<ClimbDifference> given = briefing.givenChanges();
        json.objects(
                "changes",
                Stream.concat(given.stream(), briefing.chosenChanges().stream()).toList(),
                this::write);
        json.objects("changedPaths", given, this::writePath);
        json.objects("power", briefing.power(), this::write);
        json.object("speedBand", fields -> writeSpeedBand(briefing.speedBand()));
    }

    /** An event, and the climb there. */
    private record Happening(ClimbEvent event, ClimbState state) {}

    private void writeTop(ClimbState top) {
        json.number("pressureAltitudeFt", top.pressureAltitude().inFeet());
        json.text("altitudeText", AltimeterText.of(top.pressureAltitude(), briefing));
        json.number("timeS", top.timeS());
        json.number("distanceNm", top.distance().map(GroundDistance::inNauticalMiles));
        json.number("fuelKg", briefing.fuelTo(top).map(Mass::inKilograms));
        json.number("massKg", top.mass().inKilograms());
        json.text("endsBecause", briefing.path().endsBecause());
    }

    /** With the rate on both sides, where it jumps. */
    private void write(Happening happening) {
        ClimbState state = happening.state();
        json.text("kind", ConstantInWords.of(happening.event().kind()));
        json.text("text", happening.event().text());
        json.number("pressureAltitudeFt", state.pressureAltitude().inFeet());
        json.number("timeS", state.timeS());
        json.number("distanceNm", state.distance().map(GroundDistance::inNauticalMiles));
        json.number("fuelKg", briefing.fuelTo(state).map(Mass::inKilograms));
        json.number("rateBelowFtPerMin", rate(state, Side.BELOW));
        json.number("rateAboveFtPerMin", rate(state, Side.ABOVE));
    }

    private double rate(ClimbState state, Side side) {
        return briefing.path()
                .at(state.pressureAltitude(), side)
                .pressureAltitudeRate()
                .inFeetPerMinute();
    }

    private static double perMinute(double metresPerSecond) {
        return GeometricRate.ofMetresPerSecond(metresPerSecond).inFeetPerMinute();
    }

    private void write(ClimbDifference change) {
        json.text("change", change.change().text());
        json.number("moreTimeS", change.moreTimeS());
        json.number("moreFuelKg", change.moreFuelKg());
        json.number(
                "moreDistanceNm",
                Double.isNaN(change.moreDistanceM())
                        ? Optional.empty()
                        : Optional.of(UnitScale.NAUTICAL_MILE.fromSi(change.moreDistanceM())));
        json.number("comparedAtFt", change.comparedAt().inFeet());
        json.flag("endsLower", change.endsLower());
    }

    private void write(ClimbEffects effects) {
        ClimbPoint point = effects.asItIs();
        json.number("pressureAltitudeFt", point.pressureAltitude().inFeet());
        json.number("massKg", point.mass().inKilograms());
        json.number("thrustN", point.thrustN());
        json.number("dragN", point.dragN());
        json.number("fuelFlowKgPerH", point.fuelFlow().inKilogramsPerHour());
        json.number("specificExcessPowerFtPerMin", perMinute(point.specificExcessPowerMps()));
        json.number("powerOfClimbFtPerMin", perMinute(point.powerOfClimbMps()));
        json.number("powerOfAccelerationFtPerMin", perMinute(point.powerOfAccelerationMps()));
        json.number(
                "powerOfWindChangeFtPerMin",
                point.powerOfWindChangeMps().isPresent()
                        ? Optional.of(perMinute(point.powerOfWindChangeMps().getAsDouble()))
                        : Optional.empty());
        json.number("powerTakenByBleedFtPerMin", perMinute(effects.powerTakenByBleedMps()));
        json.number("rateFtPerMin", point.pressureAltitudeRate().inFeetPerMinute());
        json.number("accelerationWorthFtPerMin", point.worthOfAcceleration().inFeetPerMinute());
        json.number(
                "windGradientWorthFtPerMin",
                point.worthOfWindGradient().map(PressureAltitudeRate::inFeetPerMinute));
    }

    private void write(BriefingLevel level) {
        ClimbState state = level.state();
        json.number("pressureAltitudeFt", state.pressureAltitude().inFeet());
        json.number("altitudeOnQnhFt", level.altitudeOnQnh().map(AltitudeOnQnh::inFeet));
        json.number(
                "geopotentialAltitudeFt",
                state.air().geopotentialAltitude().map(GeopotentialAltitude::inFeet));
        json.number(
                "trueAltitudeFt", state.air().geometricAltitude().map(GeometricAltitude::inFeet));
        json.number("staticAirTemperatureC", state.air().staticAirTemperature().inCelsius());
        json.number("isaDeviationK", state.air().isaDeviation().inKelvins());
        json.number("totalAirTemperatureC", state.totalAirTemperature().inCelsius());
        json.number("calibratedAirspeedKn", state.calibratedAirspeed().inKnots());
        json.number("mach", state.mach().number());
        json.number("trueAirspeedKn", state.trueAirspeed().inKnots());
        json.number("alongTrackWindKn", state.alongTrackWind().map(AlongTrackWind::inKnots));
        json.number("groundSpeedKn", state.groundSpeed().map(GroundSpeed::inKnots));
        json.number("rateFtPerMin", state.pressureAltitudeRate().inFeetPerMinute());
        json.number("gradientPercent", state.groundGradient().map(GroundGradient::inPercent));
        json.number(
                "gradientFtPerNm",
                state.groundGradient().map(GroundGradient::inFeetPerNauticalMile));
        json.number("timeS", state.timeS());
        json.number("distanceNm", state.distance().map(GroundDistance::inNauticalMiles));
        json.number("massKg", state.mass().inKilograms());
        json.number("fuelKg", briefing.fuelTo(state).map(Mass::inKilograms));
        json.texts("events", level.events().stream().map(ClimbEvent::text).toList());
    }

    /** A column for each figure, so that a point of the climb is one index. */
    private void writePath(List<ClimbState> along) {
        writeWay(along);
        json.textColumn(
                "altitudeText",
                along,
                state -> AltimeterText.of(state.pressureAltitude(), briefing));
        json.column(
                "altitudeOnQnhFt",
                along,
                state ->
                        Optional.of(
                                Altimetry.altitudeOnQnh(state.pressureAltitude(), briefing.qnh())
                                        .inFeet()));
        json.column(
                "trueAltitudeFt",
                along,
                state -> state.air().geometricAltitude().map(GeometricAltitude::inFeet));
        json.column(
                "staticAirTemperatureC",
                along,
                state -> Optional.of(state.air().staticAirTemperature().inCelsius()));
        json.column(
                "totalAirTemperatureC",
                along,
                state -> Optional.of(state.totalAirTemperature().inCelsius()));
        json.column(
                "isaDeviationK",
                along,
                state -> Optional.of(state.air().isaDeviation().inKelvins()));
        json.column(
                "relativeHumidityPercent",
                along,
                state -> state.air().relativeHumidity().map(RelativeHumidity::inPercent));
        json.column(
                "calibratedAirspeedKn",
                along,
                state -> Optional.of(state.calibratedAirspeed().inKnots()));
        json.column("mach", along, state -> Optional.of(state.mach().number()));
        json.column("trueAirspeedKn", along, state -> Optional.of(state.trueAirspeed().inKnots()));
        json.column(
                "alongTrackWindKn",
                along,
                state -> state.alongTrackWind().map(AlongTrackWind::inKnots));
        json.column("groundSpeedKn", along, state -> state.groundSpeed().map(GroundSpeed::inKnots));
        json.column(
                "rateFtPerMin",
                along,
                state -> Optional.of(state.pressureAltitudeRate().inFeetPerMinute()));
        json.column(
                "gradientPercent",
                along,
                state -> state.groundGradient().map(GroundGradient::inPercent));
        json.column("massKg", along, state -> Optional.of(state.mass().inKilograms()));
        json.column("fuelKg", along, state -> briefing.fuelTo(state).map(Mass::inKilograms));
        json.column(
                "cabinAltitudeFt",
                along,
                state -> briefing.cabinAt(state).map(cabin -> cabin.cabin().inFeet()));
        json.column(
                "cabinRateFtPerMin",
                along,
                state -> briefing.cabinAt(state).map(cabin -> cabin.rate().inFeetPerMinute()));
        json.column(
                "differentialPsi",
                along,
                state ->
                        briefing.cabinAt(state)
                                .map(cabin -> cabin.differential().inPoundsPerSquareInch()));
    }

    private void writePath(ClimbDifference changed) {
        List<ClimbState> along = PathSamples.of(changed.after());
        json.text("change", changed.change().text());
        writeWay(along);
    }

    /** Where, how far and when. */
    private void writeWay(List<ClimbState> along) {
        json.column("timeS", along, state -> Optional.of(state.timeS()));
        json.column(
                "distanceNm",
                along,
                state -> state.distance().map(GroundDistance::inNauticalMiles));
        json.column(
                "pressureAltitudeFt",
                along,
                state -> Optional.of(state.pressureAltitude().inFeet()));
    }

    /** Both sides of every line, as columns. */
    private void writeSpeedBand(List<SpeedBand> bands) {
        json.column(
                "pressureAltitudeFt",
                bands,
                band -> Optional.of(band.state().pressureAltitude().inFeet()));
        json.column("minimumKn", bands, band -> band.minimum().map(CalibratedAirspeed::inKnots));
        json.column("roughAirKn", bands, band -> band.roughAir().map(CalibratedAirspeed::inKnots));
        json.column(
                "scheduleKn",
                bands,
                band -> Optional.of(band.state().calibratedAirspeed().inKnots()));
        json.column("limitKn", bands, band -> band.limit().map(CalibratedAirspeed::inKnots));
        json.column(
                "buffetLowKn", bands, band -> band.slowBuffet().map(CalibratedAirspeed::inKnots));
        json.column(
                "buffetHighKn", bands, band -> band.fastBuffet().map(CalibratedAirspeed::inKnots));
        json.number("buffetLoadFactor", SpeedBand.LOAD_FACTOR);
    }
}
