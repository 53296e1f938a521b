package org.climbwright.performance.ceiling;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.climbwright.path.Side;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbSpeed;
import org.climbwright.performance.ClimbSpeeds;
import org.climbwright.performance.ceiling.LevelLimit.Kind;
import org.climbwright.performance.ceiling.LevelLimit.Standing;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * How high an aeroplane can climb: the lowest of its certified ceiling, the level at which thrust
 * leaves a residual rate and no more, and the level of buffet at a load factor.
 *
 * <p>Which rate and which load factor are the caller's to say; 300 or 100 ft/min and 1.3 g are
 * common practice, no source. The rate is that of pressure altitude at the speeds given, with the
 * acceleration and the winds that they meet; the mass stays. Buffet is that of level flight at the
 * load factor, be the wings level or not.
 *
 * <p>The level of a limit is the first, from the start upwards, that a climb does not get beyond.
 * Buffet is looked for from the first level whose Mach number is not below those of which its
 * beginning is known; the reason says so. Where the forces balance at no angle of climb, as with a
 * thrust above the weight, the level of thrust is {@link Standing#NOT_KNOWN}.
 *
 * <p>Limits of use: the flight manual and the operator's procedures decide how high to climb. Where
 * a limit is not known, the lowest of the others is only the lowest known.
 *
 * @param parts the three limits, in the order of the first sentence
 * @accuracy of a level 1e-6 m, or 1e-12 of what decides it
 * @source definitions, see above
 */
public record MaximumLevel(List<LevelLimit> parts) implements Serializable {
    private static final ModelRange LOAD_FACTOR =
            new ModelRange("load factor", 1.0, 12.0, "", "less is no level flight");
    private static final ModelRange RESIDUAL =
            new ModelRange("residual rate", 0.0, 100.0, "m/s", "a climb goes up");

    /**
     * Makes it of parts that nobody can change.
     *
     * @param parts see above
     */
    public MaximumLevel {
        parts = List.copyOf(parts);
    }

    /**
     * Returns the limits of a climb.
     *
     * @param conditions aeroplane, air, mass and engines
     * @param speeds the speed at each level
     * @param from where the search begins, inside the air and below its end
     * @param residual the least rate of pressure altitude, 0 to 100 m/s
     * @param loadFactor lift over weight at which buffet may begin, 1 to 12
     * @return the limits
     * @throws org.climbwright.quantity.OutsideModelException if an argument is out of range
     */
    public static MaximumLevel of(
            ClimbConditions conditions,
            ClimbSpeeds speeds,
            PressureAltitude from,
            PressureAltitudeRate residual,
            double loadFactor) {
        double least = RESIDUAL.check(residual.inMetresPerSecond());
        LOAD_FACTOR.check(loadFactor);
        LevelSearch search = new LevelSearch(conditions, speeds, from);
        LevelLimit thrust =
                search.first(
                        Kind.THRUST,
                        (altitude, side, speed) -> rate(conditions, altitude, side, speed) - least,
                        "a rate of climb of " + residual.text(),
                        LevelSearch.NO_BALANCE);
        return new MaximumLevel(
                List.of(
                        certified(conditions.aeroplane().limits(), from),
                        thrust,
                        new BuffetSearch(conditions, speeds, from, loadFactor).limit()));
    }

    private static double rate(
            ClimbConditions conditions, double altitude, Side side, ClimbSpeed speed) {
        return conditions
                .ifBalanced(PressureAltitude.ofMetres(altitude), side, speed)
                .map(point -> point.pressureAltitudeRate().inMetresPerSecond())
                .orElse(Double.NaN);
    }

    private static LevelLimit certified(AeroplaneLimits limits, PressureAltitude from) {
        return limits.certifiedCeiling()
                .map(
                        ceiling ->
                                ceiling.compareTo(from) < 0
                                        ? LevelLimit.none(
                                                Kind.CERTIFIED_CEILING,
                                                Standing.BELOW_THE_START,
                                                "the limit given for the aeroplane, "
                                                        + ceiling.text()
                                                        + ", is below the start at "
                                                        + from.text())
                                        : LevelLimit.at(
                                                Kind.CERTIFIED_CEILING,
                                                ceiling.inMetres(),
                                                "the limit given for the aeroplane"))
                .orElse(
                        LevelLimit.none(
                                Kind.CERTIFIED_CEILING,
                                Standing.NOT_KNOWN,
                                "no certified ceiling was given for the aeroplane"));
    }

    /**
     * Returns a limit.
     *
     * @param kind which
     * @return the limit of that kind
     * @throws IllegalArgumentException if this has none of that kind
     */
    public LevelLimit part(Kind kind) {
        return parts.stream()
                .filter(part -> part.kind() == kind)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("no part of a maximum level: " + kind));
    }

    /**
     * Returns the limit that decides.
     *
     * @return one that not even the start of the search meets, else the one with the lowest level;
     *     empty where none has a level
     */
    public Optional<LevelLimit> limiting() {
        Optional<LevelLimit> never =
                parts.stream()
                        .filter(part -> part.standing() == Standing.BELOW_THE_START)
                        .findFirst();
        return never.isPresent()
                ? never
                : parts.stream()
                        .filter(part -> part.standing() == Standing.FOUND)
                        .min(
                                (one, other) ->
                                        one.level()
                                                .orElseThrow()
                                                .compareTo(other.level().orElseThrow()));
    }

    /**
     * Returns the highest level that all known limits allow.
     *
     * @return the level of {@link #limiting}; empty where that has none
     */
    public Optional<PressureAltitude> level() {
        return limiting().flatMap(LevelLimit::level);
    }

    /**
     * Tells whether all limits are known.
     *
     * @return false if one could not be told, and so may be lower than {@link #level}
     */
    public boolean isComplete() {
        return parts.stream().noneMatch(part -> part.standing() == Standing.NOT_KNOWN);
    }

    /**
     * Returns the level and what limits for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String highest =
                level().map(level -> String.format(Locale.ROOT, "%.0f ft", level.inFeet()))
                        .orElse(limiting().isPresent() ? "below the start" : "not known");
        return parts.stream()
                .map(LevelLimit::toString)
                .collect(
                        Collectors.joining(
                                "; ",
                                "maximum level "
                                        + highest
                                        + (isComplete() ? ": " : " by the limits that are known: "),
                                ""));
    }
}
