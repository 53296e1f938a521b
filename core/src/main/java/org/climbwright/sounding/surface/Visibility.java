package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.unit.UnitScale;

/**
 * Prevailing visibility: a distance, and whether it was that, more, or less.
 *
 * <pre>{@code
 * Visibility.parse("2 1/2SM").distance().inMetres()   // 4023.36
 * Visibility.parse("9999")                            // 10000.0 m or more
 * }</pre>
 *
 * @param distance the distance told
 * @param bound what it bounds
 * @source WMO-No. 306, Manual on Codes, FM 15 METAR, regulation 15.6 (steps of 50 m below 800 m, of
 *     100 m to 5000 m, of 1000 m above); Federal Meteorological Handbook No. 1, chapter 12, for
 *     statute miles (both from memory)
 */
public record Visibility(GroundDistance distance, Bound bound) implements Serializable {

    /** What the distance bounds. */
    public enum Bound {
        /** The distance as told; many automatic stations tell 10SM for all that is more. */
        AS_TOLD,
        /** The distance or more: 9999, CAVOK, P6SM. */
        OR_MORE,
        /** Less than the distance: M1/4SM, and 0000, which is less than 50 m. */
        LESS_THAN
    }

    /**
     * Makes a visibility of parts that are there.
     *
     * @param distance the distance told
     * @param bound what it bounds
     */
    public Visibility {
        Objects.requireNonNull(distance, "distance");
        Objects.requireNonNull(bound, "bound");
    }

    private static final double TEN_KILOMETRES_M = 10000.0;

    /** Metric visibility comes in steps of 50 m and is rounded down: 0000 is less than one. */
    private static final double SMALLEST_STEP_M = 50.0;

    /** The statute mile of reports is the international one. */
    private static final double FEET_PER_STATUTE_MILE = 5280.0;

    private static final Pattern METRES = Pattern.compile("(\\d{4})(NDV)?");
    private static final Pattern WHOLE = Pattern.compile("([PM]?)(\\d{1,2})(KM|SM)");
    private static final Pattern FRACTION =
            Pattern.compile("([PM]?)(?:(\\d{1,2}) )?(\\d{1,2})/(\\d{1,2})SM");
    private static final Set<Integer> DENOMINATORS = Set.of(2, 4, 8, 16);

    /**
     * Returns the visibility that a group of a report tells.
     *
     * @param text the group: metres {@code "4000"}, kilometres {@code "8KM"}, statute miles {@code
     *     "10SM"}, {@code "2 1/2SM"}, {@code "M1/4SM"}, {@code "P6SM"}, or {@code "CAVOK"}
     * @return the visibility
     * @throws IllegalArgumentException if the text is no such group, or in metres that are no
     *     multiple of 50 below 800 and of 100 above
     */
    public static Visibility parse(String text) {
        if (text.equals("CAVOK")) {
            return new Visibility(GroundDistance.ofMetres(TEN_KILOMETRES_M), Bound.OR_MORE);
        }
        Matcher metric = METRES.matcher(text);
        if (metric.matches()) {
            return ofMetres(Integer.parseInt(metric.group(1)));
        }
        Matcher whole = WHOLE.matcher(text);
        if (whole.matches()) {
            int number = Integer.parseInt(whole.group(2));
            double metres =
                    whole.group(3).equals("SM")
                            ? statuteMiles(number)
                            : UnitScale.KILOMETRE.toSi(number);
            return new Visibility(GroundDistance.ofMetres(metres), bound(whole.group(1)));
        }
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            int numerator = Integer.parseInt(fraction.group(3));
            int denominator = Integer.parseInt(fraction.group(4));
            // 11/2SM may be eleven halves or one and a half: refused
            if (numerator > 0 && numerator < denominator && DENOMINATORS.contains(denominator)) {
                String before = fraction.group(2);
                double miles =
                        (before == null ? 0 : Integer.parseInt(before))
                                + numerator / (double) denominator;
                return new Visibility(
                        GroundDistance.ofMetres(statuteMiles(miles)), bound(fraction.group(1)));
            }
        }
        throw new IllegalArgumentException("not a visibility: \"" + text + "\"");
    }

    private static double statuteMiles(double miles) {
        return UnitScale.FOOT.toSi(miles * FEET_PER_STATUTE_MILE);
    }

    private static Visibility ofMetres(int metres) {
        return switch (metres) {
            case 0 -> new Visibility(GroundDistance.ofMetres(SMALLEST_STEP_M), Bound.LESS_THAN);
            case 9999 -> new Visibility(GroundDistance.ofMetres(TEN_KILOMETRES_M), Bound.OR_MORE);
            default -> new Visibility(GroundDistance.ofMetres(inSteps(metres)), Bound.AS_TOLD);
        };
    }

    /** Other digits are something else, such as a pressure; more steps are allowed than used. */
    private static int inSteps(int metres) {
        if (metres % (metres < 800 ? 50 : 100) != 0) {
            throw new IllegalArgumentException(
                    "visibility in metres must be 9999, or in steps of 50 m below 800 m and of 100"
                            + " m above, but was "
                            + metres
                            + " m");
        }
        return metres;
    }

    private static Bound bound(String letter) {
        return switch (letter) {
            case "P" -> Bound.OR_MORE;
            case "M" -> Bound.LESS_THAN;
            default -> Bound.AS_TOLD;
        };
    }

    /**
     * Returns distance and bound for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String metres = distance.inMetres() + " m";
        return switch (bound) {
            case AS_TOLD -> metres;
            case OR_MORE -> metres + " or more";
            case LESS_THAN -> "less than " + metres;
        };
    }
}
