package org.climbwright.examples.briefing;

import java.util.List;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.sounding.Inversion;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.sounding.Sounding;

/** The air of a briefing, as JSON. */
final class JsonAir {
    private final JsonFields json;
    private final ClimbBriefing briefing;

    JsonAir(JsonFields json, ClimbBriefing briefing) {
        this.json = json;
        this.briefing = briefing;
    }

    void write() {
        Sounding sounding = briefing.sounding();
        json.objects("freezingLevels", briefing.freezingLevels(), this::write);
        json.objects(
                "inversions",
                sounding.inversions(briefing.plan().smallestInversion()),
                this::write);
        json.number(
                "tropopauseFt", sounding.tropopause().map(air -> air.pressureAltitude().inFeet()));
        json.objects("altimeterMarks", AltimeterMark.along(briefing), this::write);
        json.object("air", fields -> writeLevels(sounding.airAtLevels()));
    }

    private void writeLevels(List<AirState> levels) {
        json.column(
                "pressureAltitudeFt", levels, air -> Optional.of(air.pressureAltitude().inFeet()));
        json.column(
                "staticAirTemperatureC",
                levels,
                air -> Optional.of(air.staticAirTemperature().inCelsius()));
        json.column(
                "relativeHumidityPercent",
                levels,
                air -> air.relativeHumidity().map(RelativeHumidity::inPercent));
    }

    private void write(AltimeterMark mark) {
        json.number("pressureAltitudeFt", mark.level().inFeet());
        json.text("text", mark.text());
    }

    private void write(Inversion inversion) {
        json.number("basePressureAltitudeFt", inversion.base().pressureAltitude().inFeet());
        json.number("topPressureAltitudeFt", inversion.top().pressureAltitude().inFeet());
        json.number("warmerK", inversion.rise().inKelvins());
    }

    private void write(IsothermCrossing crossing) {
        json.number("pressureAltitudeFt", crossing.pressureAltitude().inFeet());
        json.number(
                "geopotentialAltitudeFt",
                crossing.air().geopotentialAltitude().map(GeopotentialAltitude::inFeet));
        json.text(
                "direction",
                switch (crossing.trend()) {
                    case FALLING -> "falling";
                    case RISING -> "rising";
                });
    }
}
