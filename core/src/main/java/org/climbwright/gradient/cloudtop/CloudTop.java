package org.climbwright.gradient.cloudtop;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.path.ClimbPath;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.jspecify.annotations.Nullable;

/**
 * What a climb makes of a cloud ahead: whether it comes over the top by a clearance that the caller
 * gives, and the margins.
 *
 * <pre>{@code
 * ClimbRates rates =
 *         ClimbRates.of(
 *                 ClimbRates.Kind.PRESSURE_ALTITUDE,
 *                 IsaDeviation.ofKelvins(0),
 *                 List.of(Mass.ofKilograms(50000)),
 *                 List.of(
 *                         new ClimbRates.Row(PressureAltitude.ofFeet(0), List.of(10.0)),
 *                         new ClimbRates.Row(PressureAltitude.ofFeet(45000), List.of(10.0))));
 * ClimbPath path =
 *         new Climb(
 *                         rates,
 *                         Mass.ofKilograms(50000),
 *                         SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.76)),
 *                         Atmosphere.standard(),
 *                         Winds.calm(),
 *                         TrueDirection.ofDegrees(0))
 *                 .between(PressureAltitude.ofFeet(10000), PressureAltitude.ofFeet(36000));
 * CloudAhead cloud =
 *         new CloudAhead(
 *                 GeometricAltitude.ofFeet(5000),
 *                 GeometricAltitude.ofFeet(20000),
 *                 GroundDistance.ofNauticalMiles(50),
 *                 GroundDistance.ofNauticalMiles(60),
 *                 GeometricRate.ofFeetPerMinute(500),
 *                 GroundDistance.ofNauticalMiles(1));
 * CloudTop.along(path, cloud).answer()                                     // NO_VERDICT
 * CloudTop.along(path, cloud, AltitudeChange.ofFeet(5000)).answer()        // TOPS_BY_LESS
 * }</pre>
 *
 * <p>The answer goes by the worst margin: over all of the cloud, grown until the aeroplane is
 * there, and as near and as far as the error of its distance allows. Without a clearance there are
 * margins and no verdict.
 *
 * <p>Limits of use: for study and simulation. A clearance that is met is a figure met, no more:
 * there is turbulence and hail beside and above clouds, and the air and the growth will be others
 * than given. The clearance, and whether to go over at all, are the operator's and the crew's; the
 * flight manual, local regulations and licensed practice decide.
 */
public final class CloudTop implements Serializable {
    private static final long serialVersionUID = 1L;

    /** What came of it. */
    public enum Answer {
        /** The worst margin is at least the clearance. */
        TOPS_BY_CLEARANCE,
        /** The worst margin is above 0 and less than the clearance. */
        TOPS_BY_LESS,
        /** The worst margin is 0 or less. */
        DOES_NOT_TOP,
        /** What would be needed is not known, as the reasons say. */
        CANNOT_BE_TOLD,
        /** No clearance was given: margins only. */
        NO_VERDICT
    }

    /** Where the aeroplane is at the near edge of the cloud, as the cloud was given. */
    public enum AtNearEdge {
        /** Above the top. */
        ABOVE,
        /** Between base and top, these included: it enters the cloud. */
        INSIDE,
        /** Below the base. */
        BELOW,
        /** Not known. */
        NOT_KNOWN
    }

    /**
     * True height above the top of the cloud as it has grown until then; negative below it.
     *
     * <p>Limits of use: those of {@link CloudTop}.
     *
     * @param asGiven for the cloud where it was given; over the whole cloud the least of these
     * @param least the least anywhere, for any distance within its error
     * @param most the most anywhere, for any distance within its error
     */
    public record Margin(AltitudeChange asGiven, AltitudeChange least, AltitudeChange most)
            implements Serializable {
        /**
         * Makes a margin.
         *
         * @param asGiven for the cloud where it was given
         * @param least the least
         * @param most the most
         */
        public Margin {
            Objects.requireNonNull(asGiven, "asGiven");
            Objects.requireNonNull(least, "least");
            Objects.requireNonNull(most, "most");
        }
    }

    private final Answer answer;
    private final AtNearEdge atNearEdge;
    private final @Nullable Margin nearEdge;
    private final @Nullable Margin overCloud;
    private final @Nullable AltitudeChange growth;
    private final String[] reasons; // a list would not say that it can be written out

    CloudTop(
            Answer answer,
            AtNearEdge atNearEdge,
            @Nullable Margin nearEdge,
            @Nullable Margin overCloud,
            @Nullable AltitudeChange growth,
            List<String> reasons) {
        this.answer = answer;
        this.atNearEdge = atNearEdge;
        this.nearEdge = nearEdge;
        this.overCloud = overCloud;
        this.growth = growth;
        this.reasons = reasons.toArray(new String[0]);
    }

    /**
     * Returns the margins of a climb over a cloud, without a verdict.
     *
     * @param path the climb, which begins where and when the cloud was seen
     * @param cloud the cloud
     * @return margins and {@link Answer#NO_VERDICT}, or {@link Answer#CANNOT_BE_TOLD}
     * @accuracy 1e-5 m in the margins, of the air and the winds of the path
     */
    public static CloudTop along(ClimbPath path, CloudAhead cloud) {
        return new CloudCrossing(path, cloud).assess(Double.NaN);
    }

    /**
     * Returns what a climb makes of a cloud.
     *
     * @param path the climb, which begins where and when the cloud was seen
     * @param cloud the cloud
     * @param clearance true height wanted above its top, above 0
     * @return the answer with its margins
     * @throws IllegalArgumentException if the clearance is not above 0
     * @accuracy 1e-5 m in the margins, of the air and the winds of the path
     */
    public static CloudTop along(ClimbPath path, CloudAhead cloud, AltitudeChange clearance) {
        if (!(clearance.inMetres() > 0.0)) {
            throw new IllegalArgumentException(
                    "a clearance above a cloud must be above 0, but was " + clearance);
        }
        return new CloudCrossing(path, cloud).assess(clearance.inMetres());
    }

    /**
     * Returns what came of it.
     *
     * @return the answer, by the worst margin
     */
    public Answer answer() {
        return answer;
    }

    /**
     * Returns where the aeroplane is at the near edge of the cloud as given.
     *
     * @return above, inside, below or not known
     */
    public AtNearEdge atNearEdge() {
        return atNearEdge;
    }

    /**
     * Returns the margin at the near edge.
     *
     * @return the margin; empty where the climb has no known way to there
     */
    public Optional<Margin> nearEdge() {
        return Optional.ofNullable(nearEdge);
    }

    /**
     * Returns the margin over the cloud, from edge to edge.
     *
     * @return the margin, of which the least decides; over the part that the climb reaches, where
     *     it ends before; empty where it reaches none
     */
    public Optional<Margin> overCloud() {
        return Optional.ofNullable(overCloud);
    }

    /**
     * Returns by how much the top has grown where the margin is least.
     *
     * @return the growth, counted in the margins; empty where there are none
     */
    public Optional<AltitudeChange> growth() {
        return Optional.ofNullable(growth);
    }

    /**
     * Returns why, in words.
     *
     * @return sentences, at least one
     */
    public List<String> reasons() {
        return List.of(reasons);
    }

    /**
     * Returns the answer for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return answer + ": " + String.join("; ", reasons);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CloudTop that
                && answer == that.answer
                && atNearEdge == that.atNearEdge
                && Objects.equals(nearEdge, that.nearEdge)
                && Objects.equals(overCloud, that.overCloud)
                && Objects.equals(growth, that.growth)
                && Arrays.equals(reasons, that.reasons);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(reasons);
    }
}
