package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;
import org.climbwright.unit.UnitScale;
import org.jspecify.annotations.Nullable;

/**
 * The wind of a report: an average over minutes, with its gust and the range of its direction.
 *
 * <p>Not a {@link Wind}, which always has a direction and one speed; {@link #wind} gives one where
 * the report does. Two are equal when they are told in the same words.
 *
 * <pre>{@code
 * SurfaceWind wind = SurfaceWind.parse("34013G26KT 300V360");
 * wind.speed().inKnots()                      // 13.0
 * wind.direction().orElseThrow().inDegrees()  // 340.0, true, from where it comes
 * }</pre>
 *
 * @accuracy direction to 10 degrees, speed to one unit of the report (from memory)
 * @source WMO-No. 306, Manual on Codes, FM 15 METAR, regulation 15.5 (from memory)
 */
public final class SurfaceWind implements Serializable {
    private static final long serialVersionUID = 1L;

    /** As much as a sounding may have. */
    private static final double HIGHEST_MPS = 200.0;

    private static final Pattern GROUP =
            Pattern.compile(
                    "(\\d{3}|VRB|///)(P?)(\\d{2,3})(?:G(?:(P?)(\\d{2,3})|//))?(KT|MPS|KMH)"
                            + "(?: (\\d{3})V(\\d{3}))?");

    private final String text;
    private final transient @Nullable TrueDirection direction;
    private final transient boolean variable;
    private final transient WindSpeed speed;
    private final transient boolean speedMoreThan;
    private final transient @Nullable WindSpeed gust;
    private final transient boolean gustMoreThan;
    private final transient @Nullable TrueDirection rangeFrom;
    private final transient @Nullable TrueDirection rangeTo;

    private SurfaceWind(String text) {
        Matcher group = GROUP.matcher(text);
        if (!group.matches()) {
            throw new IllegalArgumentException("not a wind: \"" + text + "\"");
        }
        this.text = text;
        String unit = group.group(6);
        this.speed = speed(group.group(3), unit);
        this.speedMoreThan = !group.group(2).isEmpty();
        this.gust = group.group(5) == null ? null : speed(group.group(5), unit);
        this.gustMoreThan = gust != null && !group.group(4).isEmpty();
        this.variable = group.group(1).equals("VRB");
        this.direction = isNumber(group.group(1)) && !isCalm() ? degrees(group.group(1)) : null;
        this.rangeFrom = group.group(7) == null ? null : degrees(group.group(7));
        this.rangeTo = group.group(8) == null ? null : degrees(group.group(8));
        if (direction != null && direction.inDegrees() == 0.0) {
            throw new IllegalArgumentException(
                    "a wind from 000 has no speed, north is 360: \"" + text + "\"");
        }
        if (gust != null && gust.inMetresPerSecond() < speed.inMetresPerSecond()) {
            throw new IllegalArgumentException("a gust below the wind: \"" + text + "\"");
        }
    }

    /**
     * Returns the wind that the groups of a report tell.
     *
     * @param text one group or two: {@code "27005MPS"}, {@code "27005MPS 250V320"}
     * @return the wind
     * @throws IllegalArgumentException if the text is no such group, or tells what cannot be
     */
    public static SurfaceWind parse(String text) {
        return new SurfaceWind(text);
    }

    private static boolean isNumber(String direction) {
        return Character.isDigit(direction.charAt(0));
    }

    private static TrueDirection degrees(String digits) {
        TrueDirection direction = TrueDirection.ofDegrees(Integer.parseInt(digits));
        if (!digits.endsWith("0")) {
            throw new IllegalArgumentException(
                    "direction must be in tens of degrees, but was " + digits + " deg");
        }
        return direction;
    }

    private static WindSpeed speed(String digits, String unit) {
        int number = Integer.parseInt(digits);
        WindSpeed speed =
                switch (unit) {
                    case "KT" -> WindSpeed.ofKnots(number);
                    case "MPS" -> WindSpeed.ofMetresPerSecond(number);
                    default ->
                            WindSpeed.ofMetresPerSecond(UnitScale.KILOMETRE_PER_HOUR.toSi(number));
                };
        if (speed.inMetresPerSecond() > HIGHEST_MPS) {
            throw new IllegalArgumentException(
                    "wind speed must be up to " + HIGHEST_MPS + " m/s, but was " + speed);
        }
        return speed;
    }

    /**
     * Returns where the wind comes from.
     *
     * @return the direction from true north; empty for a calm, a variable wind, or slashes
     */
    public Optional<TrueDirection> direction() {
        return Optional.ofNullable(direction);
    }

    /**
     * Tells whether the direction is variable.
     *
     * @return true for VRB
     */
    public boolean isVariable() {
        return variable;
    }

    /**
     * Tells whether there is no wind.
     *
     * @return true when the speed is told as 0
     */
    public boolean isCalm() {
        return speed.inMetresPerSecond() == 0.0 && !speedMoreThan;
    }

    /**
     * Returns how fast it is on average.
     *
     * @return the speed; a lower bound if {@link #isSpeedMoreThan}
     */
    public WindSpeed speed() {
        return speed;
    }

    /**
     * Tells whether the wind is faster than its speed says.
     *
     * @return true for P99KT and its like
     */
    public boolean isSpeedMoreThan() {
        return speedMoreThan;
    }

    /**
     * Returns the highest speed of the last minutes.
     *
     * @return the gust; empty when none is told, or slashes
     */
    public Optional<WindSpeed> gust() {
        return Optional.ofNullable(gust);
    }

    /**
     * Tells whether the gust is faster than its speed says.
     *
     * @return true for GP99KT and its like
     */
    public boolean isGustMoreThan() {
        return gustMoreThan;
    }

    /**
     * Returns where the range of directions begins, clockwise.
     *
     * @return the direction from true north; empty when no range is told
     */
    public Optional<TrueDirection> rangeFrom() {
        return Optional.ofNullable(rangeFrom);
    }

    /**
     * Returns where the range of directions ends, clockwise.
     *
     * @return the direction from true north; empty when no range is told
     */
    public Optional<TrueDirection> rangeTo() {
        return Optional.ofNullable(rangeTo);
    }

    /**
     * Returns the average wind as one to compute with.
     *
     * @return the wind; empty where the direction is not one number, or the speed a lower bound
     */
    public Optional<Wind> wind() {
        if (isCalm()) {
            return Optional.of(Wind.ofComponents(0.0, 0.0));
        }
        return speedMoreThan ? Optional.empty() : direction().map(from -> Wind.from(from, speed));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SurfaceWind that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /**
     * Returns the groups as they stand in the report.
     *
     * @return a text such as {@code "34013G26KT 300V360"}
     */
    @Override
    public String toString() {
        return text;
    }

    private Object readResolve() {
        return parse(text);
    }
}
