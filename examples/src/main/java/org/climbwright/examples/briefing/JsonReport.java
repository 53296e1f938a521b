package org.climbwright.examples.briefing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.briefing.CheckPoint;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.Expectation;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.ScheduledSpeeds;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;

/**
 * A briefing as JSON: units in the names, null for what is not known, numbers as they came in. Its
 * schema is {@link #schema}, and {@link #VERSION} counts what breaks it.
 */
public final class JsonReport {
    /** Raised when a field is renamed, dropped or means something else; new fields leave it. */
    static final int VERSION = 1;

    private final JsonFields json;
    private final ClimbBriefing briefing;

    private JsonReport(JsonFields json, ClimbBriefing briefing) {
        this.json = json;
        this.briefing = briefing;
    }

    /**
     * Returns a briefing as JSON.
     *
     * @param title what it is called
     * @param air where its air is from
     * @param briefing the briefing
     * @param input what it was made from, line by line
     * @return the document
     */
    public static String of(String title, String air, ClimbBriefing briefing, List<String> input) {
        return JsonFields.document(
                json -> {
                    new JsonReport(json, briefing).write(title, air);
                    json.texts("input", input);
                });
    }

    /**
     * Returns the JSON Schema of the document, draft 2020-12.
     *
     * @return the schema, as JSON
     */
    public static String schema() {
        try (InputStream in = JsonReport.class.getResourceAsStream("briefing.schema.json")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void write(String title, String air) {
        json.text("schema", "climbwright-briefing");
        json.number("version", VERSION);
        json.text("title", title);
        writePlan(briefing.plan());
        json.number("qnhHpa", briefing.qnh().inHectopascals());
        json.text("sounding", air);
        json.objects("whatByWhen", briefing.expectations(), this::write);
        json.objects("checkCard", briefing.checkCard(), this::write);
        new JsonClimb(json, briefing).write();
        new JsonAir(json, briefing).write();
        new JsonQuestions(json, briefing).write();
        json.texts("notes", briefing.notes());
        json.texts("limits", briefing.limits());
        json.texts("sources", briefing.sources());
    }

    private void writePlan(ClimbPlan plan) {
        json.text("aerodrome", plan.aerodrome().name());
        json.number("elevationFt", plan.aerodrome().elevation().inFeet());
        json.number("transitionAltitudeFt", plan.aerodrome().transitionAltitude().inFeet());
        json.number("levelFt", plan.level().inFeet());
        json.number("trackDegTrue", plan.track().inDegrees());
        json.number("massKg", plan.mass().inKilograms());
        ScheduledSpeeds speeds = plan.speeds();
        json.object(
                "speeds",
                fields -> {
                    json.number("limitKn", speeds.limit().inKnots());
                    json.number("limitBelowFt", speeds.limitBelow().inFeet());
                    json.text("limitBelowText", AltimeterText.of(Level.of(speeds.limitBelow())));
                    json.number("calibratedAirspeedKn", speeds.calibratedAirspeed().inKnots());
                    json.number("mach", speeds.mach().number());
                });
    }

    private void write(Expectation item) {
        json.number("number", item.number());
        json.text("kind", ConstantInWords.of(item.kind()));
        json.text("what", item.what());
        writePoint(item.at());
        json.object("latest", item.latest(), this::writePoint);
        json.text("figure", item.figure());
        json.text("reason", item.reason());
    }

    private void write(CheckPoint point) {
        json.text("name", point.name());
        writePoint(point.state());
        json.number(
                "timeToleranceS",
                point.toleranceS().isPresent()
                        ? Optional.of(point.toleranceS().getAsDouble())
                        : Optional.empty());
        Optional<CabinState> cabin = point.cabin();
        json.number("cabinAltitudeFt", cabin.map(read -> read.cabin().inFeet()));
        json.number("cabinRateFtPerMin", cabin.map(read -> read.rate().inFeetPerMinute()));
        json.number(
                "differentialPsi", cabin.map(read -> read.differential().inPoundsPerSquareInch()));
        json.number("fuelKg", point.fuel().map(Mass::inKilograms));
    }

    /** Where and when, and what the altimeter shows there. */
    private void writePoint(ClimbState state) {
        json.number("pressureAltitudeFt", state.pressureAltitude().inFeet());
        json.text("altitudeText", AltimeterText.of(state.pressureAltitude(), briefing));
        json.number("timeS", state.timeS());
        json.number("distanceNm", state.distance().map(GroundDistance::inNauticalMiles));
    }
}
