package org.climbwright.ledger;

import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import java.util.List;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.path.GroundTrack;
import org.climbwright.testing.FiftyDigits;

/** The rates and gradients of a climb. */
final class PathRows {
    private static final Axis TAS = Axis.of("tasMps", 1.0, 1000.0);
    private static final Axis RATE = Axis.of("geometricRateMps", -500.0, 500.0).marking(0.0);
    private static final Axis WIND = Axis.of("alongTrackWindMps", -100.0, 100.0).marking(0.0);
    private static final Axis ACROSS = Axis.of("acrossTrackWindMps", -100.0, 100.0).marking(0.0);

    private PathRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                                VerticalRates.class,
                                "geometricPerPressureAltitude",
                                in ->
                                        new BigDecimal(in[1])
                                                .divide(FiftyDigits.temperature(in[0]), DIGITS)
                                                .multiply(
                                                        AtmosphereRows.stretchAtGeopotential(
                                                                in[0])),
                                Axis.of("pressureAltitudeM", -5000.0, 80000.0).marking(11000.0),
                                Axis.of("temperatureK", 100.0, 400.0))
                        .toldIn(Measure.ulps(6.0), Measure.relative(1e-15)),
                Row.of(
                                GroundTrack.class,
                                "horizontalAirspeed",
                                in -> horizontal(in[0], in[1]),
                                TAS,
                                RATE)
                        .where(in -> Math.abs(in[1]) <= in[0])
                        .toldIn(ofAirspeed(2.0)),
                Row.of(
                                GroundTrack.class,
                                "airGradient",
                                in ->
                                        new BigDecimal(in[1])
                                                .divide(horizontal(in[0], in[1]), DIGITS),
                                TAS,
                                RATE)
                        .where(in -> Math.abs(in[1]) <= 0.5 * in[0])
                        .part("rate to half the airspeed")
                        .toldIn(Measure.ulps(4.0), Measure.relative(1e-15)),
                Row.of(
                                GroundTrack.class,
                                "groundSpeed",
                                in -> new BigDecimal(in[1]).add(horizontal(in[0], in[2])),
                                Axis.of("horizontalAirspeedMps", 100.0, 1000.0),
                                WIND,
                                ACROSS)
                        .where(in -> in[1] + horizontal(in[0], in[2]).doubleValue() > 1.0)
                        .toldIn(ofAirspeed(3.0)),
                Row.of(
                                GroundTrack.class,
                                "alongSurface",
                                in ->
                                        new BigDecimal(in[0])
                                                .divide(
                                                        FiftyDigits.sqrt(new BigDecimal(in[1])),
                                                        DIGITS),
                                Axis.of("groundSpeedMps", 1.0, 1000.0),
                                Axis.of("geometricPerGeopotential", 0.998, 1.026))
                        .toldIn(Measure.ulps(2.0)));
    }

    private static Measure ofAirspeed(double ulps) {
        return Measure.share(ulps + " ulp of the airspeed", (in, exact) -> ulps * Math.ulp(in[0]));
    }

    private static BigDecimal horizontal(double airspeed, double other) {
        BigDecimal one = new BigDecimal(airspeed);
        BigDecimal two = new BigDecimal(other);
        return FiftyDigits.sqrt(one.subtract(two).multiply(one.add(two)));
    }
}
