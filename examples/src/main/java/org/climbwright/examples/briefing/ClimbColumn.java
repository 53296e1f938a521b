package org.climbwright.examples.briefing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GroundSpeed;

/**
 * A figure of each line of the climb: what it is called in full and in short, and in which unit.
 */
record ClimbColumn(
        String name,
        String head,
        String second,
        int width,
        Function<UnitSet, FigureUnit> unit,
        Function<BriefingLevel, Optional<Double>> si,
        Style style) {
    static final List<ClimbColumn> ALL =
            List.of(
                    new ClimbColumn(
                            "pressure altitude",
                            "press.",
                            "alt",
                            8,
                            UnitSet::altitude,
                            of(state -> state.pressureAltitude().inMetres()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "altitude on QNH",
                            "on",
                            "QNH",
                            7,
                            UnitSet::altitude,
                            level -> level.altitudeOnQnh().map(AltitudeOnQnh::inMetres),
                            Style.PLAIN),
                    new ClimbColumn(
                            "true altitude",
                            "true",
                            "alt",
                            7,
                            UnitSet::altitude,
                            known(
                                    state ->
                                            state.air()
                                                    .geometricAltitude()
                                                    .map(GeometricAltitude::inMetres)),
                            Style.PLAIN),
                    new ClimbColumn(
                            "static air temperature",
                            "SAT",
                            "",
                            7,
                            UnitSet::temperature,
                            of(state -> state.air().staticAirTemperature().inKelvins()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "ISA deviation",
                            "ISA",
                            "dev",
                            6,
                            UnitSet::temperatureDifference,
                            of(state -> state.air().isaDeviation().inKelvins()),
                            Style.SIGNED),
                    new ClimbColumn(
                            "total air temperature",
                            "TAT",
                            "",
                            7,
                            UnitSet::temperature,
                            of(state -> state.totalAirTemperature().inKelvins()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "calibrated airspeed",
                            "CAS",
                            "",
                            5,
                            UnitSet::speed,
                            of(state -> state.calibratedAirspeed().inMetresPerSecond()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "Mach",
                            "Mach",
                            "",
                            6,
                            units -> FigureUnit.MACH,
                            of(state -> state.mach().number()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "true airspeed",
                            "TAS",
                            "",
                            5,
                            UnitSet::speed,
                            of(state -> state.trueAirspeed().inMetresPerSecond()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "along-track wind",
                            "wind",
                            "",
                            5,
                            UnitSet::speed,
                            known(
                                    state ->
                                            state.alongTrackWind()
                                                    .map(AlongTrackWind::inMetresPerSecond)),
                            Style.SIGNED),
                    new ClimbColumn(
                            "ground speed",
                            "GS",
                            "",
                            5,
                            UnitSet::speed,
                            known(state -> state.groundSpeed().map(GroundSpeed::inMetresPerSecond)),
                            Style.PLAIN),
                    new ClimbColumn(
                            "rate of pressure altitude",
                            "rate",
                            "",
                            7,
                            UnitSet::verticalRate,
                            of(state -> state.pressureAltitudeRate().inMetresPerSecond()),
                            Style.PLAIN),
                    new ClimbColumn(
                            "gradient over the ground",
                            "grad",
                            "",
                            5,
                            units -> FigureUnit.PERCENT,
                            known(
                                    state ->
                                            state.groundGradient()
                                                    .map(GroundGradient::inMetresPerMetre)),
                            Style.PLAIN),
                    new ClimbColumn(
                            "gradient over the ground",
                            "grad",
                            "",
                            6,
                            UnitSet::heightOverDistance,
                            known(
                                    state ->
                                            state.groundGradient()
                                                    .map(GroundGradient::inMetresPerMetre)),
                            Style.PLAIN),
                    new ClimbColumn(
                            "time",
                            "time",
                            "min:s",
                            7,
                            units -> FigureUnit.SECONDS,
                            of(ClimbState::timeS),
                            Style.MINUTES),
                    new ClimbColumn(
                            "distance",
                            "dist",
                            "",
                            7,
                            UnitSet::distance,
                            known(state -> state.distance().map(GroundDistance::inMetres)),
                            Style.PLAIN));

    /** How text writes a figure. */
    private enum Style {
        PLAIN,
        SIGNED,
        MINUTES
    }

    private static Function<BriefingLevel, Optional<Double>> of(
            Function<ClimbState, Double> figure) {
        return level -> Optional.of(figure.apply(level.state()));
    }

    private static Function<BriefingLevel, Optional<Double>> known(
            Function<ClimbState, Optional<Double>> figure) {
        return level -> figure.apply(level.state());
    }

    /** With its unit in brackets, as in {@code "pressure altitude [ft]"}. */
    String inFull(UnitSet units) {
        String label = unit.apply(units).label();
        return label.isEmpty() ? name : name + " [" + label + "]";
    }

    /** The second line of the head, with the unit. */
    String second(UnitSet units) {
        return style == Style.MINUTES ? second : (second + " " + unit.apply(units).label()).strip();
    }

    /** The figure in full; empty where it is not known. */
    Optional<Double> figure(BriefingLevel level, UnitSet units) {
        return si.apply(level).map(value -> unit.apply(units).fromSi(value));
    }

    /** The figure rounded for a reader; a dash where it is not known. */
    String text(BriefingLevel level, UnitSet units) {
        return TextPage.known(
                si.apply(level)
                        .map(
                                value ->
                                        switch (style) {
                                            case PLAIN -> unit.apply(units).number(value);
                                            case SIGNED -> unit.apply(units).signed(value);
                                            case MINUTES -> TextPage.minutes(value);
                                        }));
    }
}
