package org.climbwright.performance.ceiling;

import java.util.Optional;
import org.climbwright.gradient.procedure.NetReduction;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.performance.ClimbSpeeds;
import org.climbwright.performance.EngineUse;
import org.climbwright.performance.Rating;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.performance.ceiling.LevelLimit.Kind;
import org.climbwright.performance.ceiling.LevelLimit.Standing;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.AirGradient;

/**
 * A climb with one engine out, the others at maximum continuous thrust, all of it: its gradient,
 * gross and net, and the levels at which they fall to a value.
 *
 * <p>The gross gradient is the one through the air at the speeds given, with their acceleration and
 * with what the wind gains on the way; for still air give conditions with calm winds. The net
 * gradient is that less the reduction of the rules en route, by the number of engines.
 *
 * <p>Limits of use: the flight manual has gross and net data for the aeroplane; these are what the
 * caller's figures make of it, for study.
 *
 * @source 14 CFR 25.123(b) for the reduction, as {@link NetReduction#source} says
 */
public final class EngineOut {
    private final ClimbConditions conditions;
    private final ClimbSpeeds speeds;
    private final int engines;

    private EngineOut(ClimbConditions conditions, ClimbSpeeds speeds, int engines) {
        this.conditions = conditions;
        this.speeds = speeds;
        this.engines = engines;
    }

    /**
     * Returns a climb after the failure of an engine.
     *
     * @param before the climb as it was; its air, mass, bank and bleed stay
     * @param speeds the speed at each level with the engine out
     * @return the climb with one engine less than the aeroplane has
     * @throws IllegalArgumentException if the aeroplane has only one
     */
    public static EngineOut of(ClimbConditions before, ClimbSpeeds speeds) {
        int engines = before.aeroplane().engines();
        if (engines < 2) {
            throw new IllegalArgumentException(
                    "an aeroplane that climbs with an engine out needs two or more, but had "
                            + engines);
        }
        EngineUse use = new EngineUse(engines - 1, Rating.MAXIMUM_CONTINUOUS, before.use().bleed());
        return new EngineOut(
                before.withUse(use).withReducedThrust(ReducedThrust.none()), speeds, engines);
    }

    /**
     * Returns the climb at a level.
     *
     * @param level pressure altitude, inside the air
     * @param side from which side, where air, wind or speed bend there
     * @return the point
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     * @throws IllegalArgumentException if the forces balance at no angle
     */
    public ClimbPoint at(PressureAltitude level, Side side) {
        return conditions.at(level, side, speeds.at(level.inMetres(), side));
    }

    /**
     * Returns the gradient as it is.
     *
     * @param level pressure altitude, inside the air
     * @param side from which side, where air, wind or speed bend there
     * @return gradient through the air; below 0 in a descent
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     * @throws IllegalArgumentException if the forces balance at no angle
     */
    public AirGradient grossGradient(PressureAltitude level, Side side) {
        return at(level, side).airGradient();
    }

    /**
     * Returns by how much the net gradient is less.
     *
     * @return the reduction; empty where the rule has none, for more than four engines
     */
    public Optional<AirGradient> reduction() {
        return engines <= 4
                ? NetReduction.EN_ROUTE_ONE_INOPERATIVE.reduction(engines)
                : Optional.empty();
    }

    /**
     * Returns the gradient reduced as the rules have it.
     *
     * @param level pressure altitude, inside the air
     * @param side from which side, where air, wind or speed bend there
     * @return gradient through the air; empty where the rule has no reduction
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     * @throws IllegalArgumentException if the forces balance at no angle
     */
    public Optional<AirGradient> netGradient(PressureAltitude level, Side side) {
        return reduction()
                .map(
                        less ->
                                AirGradient.ofMetresPerMetre(
                                        grossGradient(level, side).inMetresPerMetre()
                                                - less.inMetresPerMetre()));
    }

    /**
     * Returns the level at which the gross gradient falls to a value.
     *
     * @param from where the search begins, inside the air
     * @param least the gradient, such as 0
     * @return the first such level upwards, or why there is none
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     */
    public LevelLimit grossCeiling(PressureAltitude from, AirGradient least) {
        return ceiling(
                Kind.GROSS_GRADIENT,
                from,
                least.inMetresPerMetre(),
                "a gross gradient of " + least.text());
    }

    /**
     * Returns the level at which the net gradient falls to a value.
     *
     * @param from where the search begins, inside the air
     * @param least the gradient, such as 0
     * @return the first such level upwards, or why there is none
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there
     */
    public LevelLimit netCeiling(PressureAltitude from, AirGradient least) {
        return reduction()
                .map(
                        less ->
                                ceiling(
                                        Kind.NET_GRADIENT,
                                        from,
                                        least.inMetresPerMetre() + less.inMetresPerMetre(),
                                        "a net gradient of " + least.text()))
                .orElse(
                        LevelLimit.none(
                                Kind.NET_GRADIENT,
                                Standing.NOT_KNOWN,
                                "the rule has no reduction for " + engines + " engines"));
    }

    private LevelLimit ceiling(Kind kind, PressureAltitude from, double least, String what) {
        return new LevelSearch(conditions, speeds, from)
                .first(
                        kind,
                        (altitude, side, speed) ->
                                conditions
                                        .ifBalanced(
                                                PressureAltitude.ofMetres(altitude), side, speed)
                                        .map(
                                                point ->
                                                        point.airGradient().inMetresPerMetre()
                                                                - least)
                                        .orElse(Double.NaN),
                        what,
                        LevelSearch.NO_BALANCE);
    }
}
