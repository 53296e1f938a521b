package org.climbwright.examples.figure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.path.ClimbState;
import org.climbwright.performance.ClimbAir;
import org.climbwright.profile.ClimbProfile;
import org.climbwright.profile.ClimbProgramme;
import org.climbwright.profile.ProfileEvent;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * Draws a climb by thrust and drag over the distance, with what happens on it and the restrictions
 * on its way: what a restriction forbids is hatched.
 *
 * <p>Limits of use: for study, not for use in flight. The clearance, the flight manual and the
 * operator's procedures decide.
 */
public final class ClimbProfileFigure {
    private static final int WIDTH = 1040;
    private static final int HEIGHT = 750;
    private static final int LEFT = 80;
    private static final int RIGHT = 40;
    private static final int TOP = 90;
    private static final int BOTTOM = 270;
    private static final double LONGEST_NM = 150.0;
    private static final double HIGHEST_FT = 38000.0;
    private static final double GATE_WIDTH = 9.0;
    private static final double ROW = 20.0;

    /** A point of the line each so many seconds. */
    private static final int STRIDE_S = 5;

    private static final String PATH = "stroke=\"black\" stroke-width=\"2.2\"";
    private static final String THIN = "stroke=\"black\" stroke-width=\"1\"";

    private final Svg svg = new Svg(WIDTH, HEIGHT);
    private final AltimeterSetting qnh;
    private final ClimbProfile profile;

    private ClimbProfileFigure() {
        ClimbAir air = InventedClimb.air();
        qnh = InventedClimb.qnh(air.air());
        ClimbProgramme programme = InventedClimb.restricted(qnh);
        profile =
                InventedClimb.climb(programme, air)
                        .between(InventedClimb.bottom(air.air()), InventedClimb.LEVEL);
    }

    /**
     * Writes the figure.
     *
     * @param args the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), draw(), StandardCharsets.UTF_8);
    }

    /**
     * Draws the figure.
     *
     * @return the text of an SVG file
     */
    static String draw() {
        ClimbProfileFigure figure = new ClimbProfileFigure();
        figure.frame();
        figure.minutes();
        figure.gates();
        figure.path();
        figure.events();
        figure.caption();
        return figure.svg.end();
    }

    private void frame() {
        svg.line(
                "<defs><pattern id=\"hatch\" width=\"6\" height=\"6\""
                        + " patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><line"
                        + " x1=\"0\" y1=\"0\" x2=\"0\" y2=\"6\" stroke=\"black\""
                        + " stroke-width=\"1.6\"/></pattern></defs>");
        svg.text(
                WIDTH / 2.0,
                28.0,
                "middle",
                "An invented twin-jet of 60 t climbs to the north through an observed winter's air:"
                        + " 250 kn to 10,000 ft, 290 kn, M0.77");
        for (int miles = 0; miles <= LONGEST_NM; miles += 10) {
            svg.grid(x(miles), y(0.0), x(miles), y(HIGHEST_FT));
            svg.text(x(miles), y(0.0) + 20.0, "middle", Integer.toString(miles));
        }
        for (int feet = 0; feet <= HIGHEST_FT; feet += 5000) {
            svg.grid(x(0.0), y(feet), x(LONGEST_NM), y(feet));
            svg.text(x(0.0) - 8.0, y(feet) + 4.0, "end", thousands(feet));
        }
        svg.text(
                x(LONGEST_NM / 2.0),
                y(0.0) + 40.0,
                "middle",
                "distance over the ground since the beginning [NM]");
        svg.upwards(y(HIGHEST_FT / 2.0), "pressure altitude [ft]");
        svg.straight(x(0.0), y(0.0), x(LONGEST_NM), y(0.0), THIN);
        svg.straight(x(0.0), y(HIGHEST_FT), x(LONGEST_NM), y(HIGHEST_FT), THIN);
    }

    /** Time along the upper edge: near each other where the aeroplane is slow over the ground. */
    private void minutes() {
        double edge = y(HIGHEST_FT);
        for (int minute = 0; minute * 60.0 <= profile.timeS(); minute++) {
            double at = x(miles(profile.at(Duration.ofMinutes(minute))));
            boolean isNamed = minute % 2 == 0;
            svg.straight(at, edge, at, edge - (isNamed ? 9.0 : 5.0), THIN);
            if (isNamed) {
                svg.text(at, edge - 14.0, "middle", Integer.toString(minute));
            }
        }
        svg.text(x(LONGEST_NM / 2.0), edge - 34.0, "middle", "time since the beginning [min]");
    }

    private void path() {
        int last = (int) Math.ceil(profile.timeS() / STRIDE_S);
        svg.through(
                IntStream.rangeClosed(0, last)
                        .mapToDouble(i -> Math.min(profile.timeS(), i * (double) STRIDE_S))
                        .flatMap(this::withBends)
                        .mapToObj(this::at)
                        .map(state -> Svg.point(x(miles(state)), y(feet(state))))
                        .toList(),
                PATH);
    }

    /** A time of the line, and before it those at which a level is reached or left. */
    private DoubleStream withBends(double seconds) {
        return DoubleStream.concat(
                profile.events().stream()
                        .mapToDouble(event -> event.arriving().timeS())
                        .filter(time -> time > seconds - STRIDE_S && time < seconds)
                        .distinct(),
                DoubleStream.of(seconds));
    }

    private ClimbState at(double seconds) {
        return profile.at(Duration.ofNanos((long) (seconds * 1e9)));
    }

    private void gates() {
        List<RestrictionOutcome> outcomes =
                Restrictions.along(profile, qnh, profile.climb().programme().restrictions())
                        .outcomes();
        double row = keyRow(0);
        svg.text(
                x(94.0), row, "start", "restrictions; hatched: not allowed there; numbers: margin");
        for (RestrictionOutcome outcome : outcomes) {
            GroundDistance distance = outcome.restriction().distance();
            AltitudeRestriction altitude = outcome.restriction().altitude().orElseThrow();
            double at = x(distance.inNauticalMiles());
            double lowest = feet(altitude.lowest(qnh.inPascals()));
            double highest = feet(altitude.highest(qnh.inPascals()));
            if (lowest > 0.0) {
                hatched(at, 0.0, lowest);
            }
            if (highest < HIGHEST_FT) {
                hatched(at, highest, HIGHEST_FT);
            }
            String name = outcome.restriction().name();
            svg.text(at + GATE_WIDTH, y(0.0) - 6.0, "start", name);
            double predicted = outcome.predicted().orElseThrow().inFeet();
            double margin = outcome.altitudeMargin().orElseThrow().inFeet();
            svg.text(at + GATE_WIDTH, y(predicted) + 19.0, "start", signed(margin) + " ft");
            row += ROW;
            svg.text(x(94.0), row, "start", outcome.restriction() + ": " + inWords(margin));
        }
    }

    private void hatched(double at, double fromFt, double toFt) {
        svg.line(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"white\"/>",
                at - GATE_WIDTH / 2.0, y(toFt), GATE_WIDTH, y(fromFt) - y(toFt));
        svg.line(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"url(#hatch)\""
                        + " stroke=\"black\"/>",
                at - GATE_WIDTH / 2.0, y(toFt), GATE_WIDTH, y(fromFt) - y(toFt));
    }

    private static String signed(double feet) {
        return Math.abs(feet) < 0.5 ? "0" : number("%+,.0f", feet).replace('-', '\u2212');
    }

    private static String inWords(double feet) {
        return feet >= 0.0 ? "met" : "missed by " + thousands(-feet) + " ft";
    }

    private void events() {
        double header = keyRow(0);
        String[] columns = {"min", "NM", "ft", "ft/min"};
        double[] ends = {LEFT + 60.0, LEFT + 110.0, LEFT + 170.0, LEFT + 275.0};
        for (int i = 0; i < columns.length; i++) {
            svg.text(ends[i], header, "end", columns[i]);
        }
        int number = 0;
        for (ProfileEvent event : profile.events()) {
            number++;
            ClimbState state = event.arriving();
            double x = x(miles(state));
            double y = y(feet(state));
            svg.line("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"black\"/>", x, y);
            boolean isLeft = event.kind() == ProfileEvent.Kind.LEVEL_LEFT;
            numbered(x - 7.0, isLeft ? y + 16.0 : y - 16.0, number); // off the gate that was held
            double row = keyRow(number);
            numbered(LEFT + 10.0, row - 4.0, number);
            svg.text(ends[0], row, "end", number("%.1f", state.timeS() / 60.0));
            svg.text(ends[1], row, "end", number("%.1f", miles(state)));
            svg.text(ends[2], row, "end", thousands(feet(state)));
            svg.text(ends[3], row, "end", rates(event));
            svg.text(ends[3] + 16.0, row, "start", event.text());
        }
    }

    private void numbered(double x, double y, int number) {
        svg.line(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"8.5\" fill=\"white\" stroke=\"black\"/>",
                x, y);
        svg.line(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"11\">%d</text>",
                x, y + 4.0, number);
    }

    private static String rates(ProfileEvent event) {
        String before = thousands(event.arriving().pressureAltitudeRate().inFeetPerMinute());
        String after = thousands(event.leaving().pressureAltitudeRate().inFeetPerMinute());
        return before.equals(after) ? before : before + " → " + after;
    }

    private static double keyRow(int row) {
        return HEIGHT - BOTTOM + 74.0 + row * ROW;
    }

    private void caption() {
        svg.text(
                x(94.0),
                keyRow(6),
                "start",
                number("%.1f min, ", profile.timeS() / 60.0)
                        + thousands(profile.fuel().inKilograms())
                        + " kg of fuel; QNH "
                        + number("%.0f hPa", qnh.inHectopascals()));
        svg.text(x(94.0), keyRow(7), "start", "Aeroplane, aerodrome and points are invented.");
        svg.text(x(94.0), keyRow(8), "start", "For study, not for use in flight.");
    }

    private static double miles(ClimbState state) {
        return state.distance().orElseThrow().inNauticalMiles();
    }

    private static double feet(ClimbState state) {
        return state.pressureAltitude().inFeet();
    }

    private static double feet(double metres) {
        return Double.isInfinite(metres) ? metres : PressureAltitude.ofMetres(metres).inFeet();
    }

    private static String thousands(double number) {
        return number("%,.0f", number);
    }

    private static String number(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }

    private static double x(double miles) {
        return LEFT + miles / LONGEST_NM * (WIDTH - LEFT - RIGHT);
    }

    private static double y(double feet) {
        return HEIGHT - BOTTOM - feet / HIGHEST_FT * (HEIGHT - TOP - BOTTOM);
    }
}
