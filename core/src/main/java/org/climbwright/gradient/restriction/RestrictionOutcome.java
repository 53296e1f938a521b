package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.jspecify.annotations.Nullable;

/**
 * What a predicted climb makes of one restriction: made by {@link Restrictions#along}.
 *
 * <p>Not to meet it is an answer, with what is missing: feet of the altimeter, knots, and gradient.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. Met means by this prediction,
 * in this air and with an exact altimeter; the clearance and the published procedure decide.
 */
public final class RestrictionOutcome implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Restriction restriction;
    private final Verdict altitudeVerdict;
    private final Verdict speedVerdict;
    private final @Nullable PressureAltitude predicted;
    private final @Nullable Level reading;
    private final @Nullable AltitudeChange altitudeMargin;
    private final @Nullable CalibratedAirspeed speed;
    private final @Nullable AirspeedDifference speedMargin;
    private final @Nullable ClimbRequirement required;
    private final @Nullable GroundGradient meanGradient;
    private final String[] reasons; // a list would not say that it can be written out

    private RestrictionOutcome(Making making) {
        this.restriction = making.restriction;
        this.altitudeVerdict = making.altitudeVerdict;
        this.speedVerdict = making.speedVerdict;
        this.predicted = making.predicted;
        this.reading = making.reading;
        this.altitudeMargin = making.altitudeMargin;
        this.speed = making.speed;
        this.speedMargin = making.speedMargin;
        this.required = making.required;
        this.meanGradient = making.meanGradient;
        this.reasons = making.reasons.toArray(new String[0]);
    }

    /** Whether something is met. */
    public enum Verdict {
        /** By the prediction it is, or it does not constrain there. */
        MET,
        /** By the prediction it is not. */
        MISSED,
        /** It cannot be told, and the reasons say why. */
        NOT_KNOWN
    }

    static RestrictionOutcome of(
            ClimbPath path, AltimeterSetting qnh, Restriction restriction, ClimbState start) {
        Making making = new Making(path, qnh, restriction);
        making.require(start);
        making.predict(start);
        restriction.altitude().ifPresent(making::judge);
        restriction.speed().ifPresent(making::judge);
        return new RestrictionOutcome(making);
    }

    /** The outcome while it is made. */
    private static final class Making {
        private final ClimbPath path;
        private final AltimeterSetting qnh;
        private final Restriction restriction;
        private final PointOnPath point;
        private final List<String> reasons = new ArrayList<>();
        private Verdict altitudeVerdict = Verdict.MET;
        private Verdict speedVerdict = Verdict.MET;
        private @Nullable PressureAltitude predicted;
        private @Nullable Level reading;
        private @Nullable AltitudeChange altitudeMargin;
        private @Nullable CalibratedAirspeed speed;
        private @Nullable AirspeedDifference speedMargin;
        private @Nullable ClimbRequirement required;
        private @Nullable GroundGradient meanGradient;

        Making(ClimbPath path, AltimeterSetting qnh, Restriction restriction) {
            this.path = path;
            this.qnh = qnh;
            this.restriction = restriction;
            this.point = PointOnPath.of(path, restriction.distance());
        }

        void require(ClimbState start) {
            double ahead = restriction.distance().inMetres();
            Optional<Level> lower = restriction.altitude().flatMap(AltitudeRestriction::lower);
            if (lower.isPresent() && ClimbRequirement.isAhead(ahead)) {
                required =
                        ClimbRequirement.of(
                                path, qnh.inPascals(), restriction, lower.get(), start, ahead);
            }
        }

        void predict(ClimbState start) {
            ClimbState state = point.state();
            double ahead = restriction.distance().inMetres();
            if (state == null) {
                return;
            }
            predicted = state.pressureAltitude();
            speed = state.calibratedAirspeed();
            if (ClimbRequirement.isAhead(ahead)) {
                double gain =
                        HeightGain.of(path, start, state.pressureAltitude().inMetres()).metres();
                meanGradient = GroundGradient.ofMetresPerMetre(ClimbGradient.required(gain, ahead));
            }
        }

        void judge(AltitudeRestriction altitude) {
            if (!altitude.constrains()) {
                reasons.add(altitude + " constrains nothing");
            }
            if (predicted == null) {
                if (altitude.constrains()) {
                    altitudeVerdict = Verdict.NOT_KNOWN;
                    reasons.add(altitude + ": not known, " + point.reason());
                }
                return;
            }
            reading = altitude.readBy().reading(predicted, qnh);
            altitudeMargin = altitude.margin(predicted, qnh).orElse(null);
            if (altitudeMargin == null) {
                return;
            }
            double marginM = altitudeMargin.inMetres();
            String levelOff = point.isLevelOff() ? ", levelled off before," : "";
            String found = altitude + ": predicted " + reading + levelOff;
            if (marginM >= 0.0) {
                reasons.add(found + " with " + Figures.feet(marginM) + " in hand");
                return;
            }
            altitudeVerdict = Verdict.MISSED;
            boolean isLow = predicted.inMetres() < altitude.lowest(qnh.inPascals());
            reasons.add(
                    found + " is " + Figures.feet(-marginM) + (isLow ? " too low" : " too high"));
            altitude.emptyBecause(qnh).ifPresent(reasons::add);
            shortfall()
                    .ifPresent(
                            gradient ->
                                    reasons.add(
                                            "the gradient falls short by "
                                                    + Figures.percent(
                                                            gradient.inMetresPerMetre())));
        }

        private Optional<GroundGradient> shortfall() {
            return RestrictionOutcome.shortfall(altitudeMargin, required, meanGradient);
        }

        void judge(SpeedRestriction limit) {
            if (speed == null || predicted == null) {
                speedVerdict = Verdict.NOT_KNOWN;
                reasons.add(limit + ": not known, " + point.reason());
                return;
            }
            if (!limit.appliesAt(predicted, qnh)) {
                reasons.add(limit + " does not apply as high as there");
                return;
            }
            speedMargin = limit.margin(speed);
            double marginMps = speedMargin.inMetresPerSecond();
            String found =
                    limit
                            + ": predicted "
                            + Figures.knots(speed.inMetresPerSecond())
                            + (point.isLevelOff() ? ", if kept from the level-off," : "");
            if (marginMps >= 0.0) {
                reasons.add(found + " with " + Figures.knots(marginMps) + " in hand");
            } else {
                speedVerdict = Verdict.MISSED;
                reasons.add(found + " is " + Figures.knots(-marginMps) + " too fast");
            }
        }
    }

    private static Optional<GroundGradient> shortfall(
            @Nullable AltitudeChange margin,
            @Nullable ClimbRequirement required,
            @Nullable GroundGradient flown) {
        if (margin == null || margin.inMetres() >= 0.0 || required == null || flown == null) {
            return Optional.empty();
        }
        double missing = required.gradientMpm() - flown.inMetresPerMetre();
        return missing > 0.0
                ? Optional.of(GroundGradient.ofMetresPerMetre(missing))
                : Optional.empty();
    }

    /**
     * Returns the restriction asked about.
     *
     * @return the restriction
     */
    public Restriction restriction() {
        return restriction;
    }

    /**
     * Returns whether altitude and speed are met.
     *
     * @return missed where one of both is, else not known where one of both is not, else met
     */
    public Verdict verdict() {
        if (altitudeVerdict == Verdict.MISSED || speedVerdict == Verdict.MISSED) {
            return Verdict.MISSED;
        }
        return altitudeVerdict == Verdict.MET ? speedVerdict : altitudeVerdict;
    }

    /**
     * Returns whether the altitude is met.
     *
     * @return met also where it is not restricted
     */
    public Verdict altitudeVerdict() {
        return altitudeVerdict;
    }

    /**
     * Returns whether the speed is met.
     *
     * @return met also where it is not restricted
     */
    public Verdict speedVerdict() {
        return speedVerdict;
    }

    /**
     * Returns the level predicted over the point.
     *
     * @return pressure altitude, that of the top where the climb levels off before; empty where not
     *     known
     * @accuracy 1e-6 m, of the search on the path
     */
    public Optional<PressureAltitude> predicted() {
        return Optional.ofNullable(predicted);
    }

    /**
     * Returns what the altimeter is predicted to show over the point, on the reference of the
     * restriction.
     *
     * @return the reading; in a window of two references on that of its lower level; empty where
     *     not known or the altitude is not restricted
     */
    public Optional<Level> reading() {
        return Optional.ofNullable(reading);
    }

    /**
     * Returns how much altitude is in hand, or missing.
     *
     * @return the altimeter's own feet, see {@link AltitudeRestriction#margin(PressureAltitude,
     *     AltimeterSetting)}; empty where not known or nothing constrains
     * @accuracy 1e-6 m, of the search on the path
     */
    public Optional<AltitudeChange> altitudeMargin() {
        return Optional.ofNullable(altitudeMargin);
    }

    /**
     * Returns the speed predicted over the point.
     *
     * @return calibrated airspeed, that of the top where the climb levels off before; where it
     *     jumps, the one after; empty where not known
     */
    public Optional<CalibratedAirspeed> speed() {
        return Optional.ofNullable(speed);
    }

    /**
     * Returns how much speed is in hand, or too much.
     *
     * @return below zero where too fast; empty where not known or no limit applies there
     */
    public Optional<AirspeedDifference> speedMargin() {
        return Optional.ofNullable(speedMargin);
    }

    /**
     * Returns what the restriction takes from where the climb begins.
     *
     * @return gradient and rate to its lower level; empty where it has none, or is where the climb
     *     begins
     */
    public Optional<ClimbRequirement> required() {
        return Optional.ofNullable(required);
    }

    /**
     * Returns what the climb does to the point.
     *
     * @return mean gradient over the ground from where the climb begins, a level-off included;
     *     empty where not known, or the point is where the climb begins
     */
    public Optional<GroundGradient> meanGradient() {
        return Optional.ofNullable(meanGradient);
    }

    /**
     * Returns by how much the climb is not steep enough.
     *
     * @return required less mean gradient, where the point is crossed too low; else empty
     */
    public Optional<GroundGradient> gradientShortfall() {
        return shortfall(altitudeMargin, required, meanGradient);
    }

    /**
     * Returns what was found, in words with figures.
     *
     * @return a sentence for each thing; may change between versions
     */
    public List<String> reasons() {
        return List.of(reasons);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RestrictionOutcome that
                && restriction.equals(that.restriction)
                && altitudeVerdict == that.altitudeVerdict
                && speedVerdict == that.speedVerdict
                && Objects.equals(predicted, that.predicted)
                && Objects.equals(altitudeMargin, that.altitudeMargin)
                && Objects.equals(speed, that.speed)
                && Objects.equals(speedMargin, that.speedMargin)
                && Objects.equals(required, that.required)
                && Objects.equals(meanGradient, that.meanGradient)
                && Arrays.equals(reasons, that.reasons);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                restriction, predicted, altitudeMargin, speed, Arrays.hashCode(reasons));
    }

    /**
     * Returns the outcome in words.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String verdict = verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return restriction.where() + " " + verdict + ": " + String.join("; ", reasons);
    }
}
