package org.climbwright.gradient.cloudtop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.climbwright.gradient.cloudtop.CloudTop.Answer;
import org.climbwright.gradient.cloudtop.CloudTop.AtNearEdge;
import org.climbwright.gradient.cloudtop.CloudTop.Margin;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.jspecify.annotations.Nullable;

/**
 * The margins of a climb over a cloud, searched between its edges by level, and by time where one
 * is held: the cloud grows on meanwhile.
 */
final class CloudCrossing {
    private static final double TOLERANCE_M = 1e-7;
    private static final double STEP_M = 100.0;

    private final ClimbPath path;
    private final CloudAhead cloud;
    private final double growthMps;
    private final ClimbState beginning;
    private final ClimbState end;
    private final boolean isAllKnown;
    private final List<String> reasons = new ArrayList<>();

    CloudCrossing(ClimbPath path, CloudAhead cloud) {
        this.path = path;
        this.cloud = cloud;
        this.growthMps = cloud.growth().inMetresPerSecond();
        this.beginning = path.at(path.bottom(), Side.BELOW);
        ClimbState top = path.at(path.top(), Side.ABOVE);
        this.isAllKnown = isKnown(top);
        this.end = isAllKnown ? top : lastKnown(path, beginning);
    }

    CloudTop assess(double clearanceM) {
        if (!isKnown(beginning)) {
            reasons.add("distance or true altitude is not known where the climb begins");
            return unknown();
        }
        double error = cloud.distanceError().inMetres();
        double near = cloud.nearEdge().inMetres();
        double far = cloud.farEdge().inMetres();
        double from = Math.max(0.0, near - error);
        double endM = distance(end);
        if (near < error) {
            reasons.add("within the error of its distance the cloud begins where the climb does");
        }
        if (from > endM) {
            reasons.add(cut(endM));
            return unknown();
        }
        Extremes whole = Extremes.of(this, state(from), state(far + error));
        Extremes given = near <= endM ? Extremes.of(this, state(near), state(far)) : whole;
        boolean isCut = far + error > endM;
        if (isCut) {
            reasons.add(cut(endM));
        }
        Margin overCloud = margin(given.least(), whole.least(), whole.most());
        Margin atEdge = null;
        AtNearEdge where = AtNearEdge.NOT_KNOWN;
        if (near <= endM) {
            Extremes edge = Extremes.of(this, state(from), state(near + error));
            double asGiven = margin(state(near));
            atEdge = margin(asGiven, edge.least(), edge.most());
            where = where(state(near), asGiven);
        }
        Answer answer = answer(whole.least(), isCut, clearanceM);
        ClimbState worst = whole.leastAt();
        reasons.add(
                "the least margin is "
                        + feet(whole.least())
                        + ", at "
                        + miles(distance(worst))
                        + ", true altitude "
                        + feet(trueAltitude(worst))
                        + (near <= endM ? "; for the cloud as given " + feet(given.least()) : ""));
        return new CloudTop(
                answer,
                where,
                atEdge,
                overCloud,
                AltitudeChange.ofMetres(growthMps * worst.timeS()),
                reasons);
    }

    private Answer answer(double least, boolean isCut, double clearanceM) {
        if (Double.isNaN(clearanceM)) {
            reasons.add("no clearance was given, and so there is no verdict");
            return isCut ? Answer.CANNOT_BE_TOLD : Answer.NO_VERDICT;
        }
        reasons.add("the clearance wanted is " + feet(clearanceM));
        if (least <= 0.0) {
            return Answer.DOES_NOT_TOP;
        }
        if (isCut) {
            return Answer.CANNOT_BE_TOLD;
        }
        return least >= clearanceM ? Answer.TOPS_BY_CLEARANCE : Answer.TOPS_BY_LESS;
    }

    private AtNearEdge where(ClimbState atEdge, double marginM) {
        if (marginM > 0.0) {
            return AtNearEdge.ABOVE;
        }
        if (trueAltitude(atEdge) < cloud.base().inMetres()) {
            double far = Math.min(cloud.farEdge().inMetres(), distance(end));
            reasons.add(
                    trueAltitude(state(far)) < cloud.base().inMetres()
                            ? "at the near edge the aeroplane is below the base"
                            : "at the near edge the aeroplane is below the base, and it enters the"
                                    + " cloud from beneath before the far edge");
            return AtNearEdge.BELOW;
        }
        reasons.add("the cloud is entered: at its near edge the aeroplane is between base and top");
        return AtNearEdge.INSIDE;
    }

    private CloudTop unknown() {
        @Nullable Margin none = null;
        return new CloudTop(Answer.CANNOT_BE_TOLD, AtNearEdge.NOT_KNOWN, none, none, null, reasons);
    }

    private String cut(double endDistanceM) {
        String distance = miles(endDistanceM);
        return isAllKnown
                ? "the climb ends before the end of the cloud, after "
                        + distance
                        + ": "
                        + path.endsBecause()
                        + "; what comes after is not looked at"
                : "from "
                        + distance
                        + " on the wind or the true altitude is not known, and so no margin";
    }

    private static Margin margin(double asGiven, double least, double most) {
        return new Margin(
                AltitudeChange.ofMetres(asGiven),
                AltitudeChange.ofMetres(least),
                AltitudeChange.ofMetres(most));
    }

    double margin(ClimbState state) {
        return trueAltitude(state) - cloud.topM(state.timeS());
    }

    /** By how much the climb is faster than the top grows [m/s]: where it is 0, a margin turns. */
    double gain(double levelM, Side side) {
        return path.at(PressureAltitude.ofMetres(levelM), side).geometricRate().inMetresPerSecond()
                - growthMps;
    }

    /** Two levels, and between them all at which the margin may turn. */
    List<Double> points(double fromM, double toM) {
        List<Double> points = new ArrayList<>();
        points.add(fromM);
        for (double bend : path.bendsM()) {
            if (bend > fromM && bend < toM) {
                divide(points, bend);
            }
        }
        divide(points, toM);
        return points;
    }

    private static void divide(List<Double> points, double next) {
        double last = points.get(points.size() - 1);
        int parts = (int) Math.ceil((next - last) / STEP_M);
        for (int i = 1; i < parts; i++) {
            points.add(last + (next - last) * i / parts);
        }
        points.add(next);
    }

    ClimbState at(double levelM, Side side) {
        return path.at(PressureAltitude.ofMetres(levelM), side);
    }

    /** The aeroplane over a distance; before and beyond what is known, at the end of that. */
    private ClimbState state(double distanceM) {
        if (distanceM <= 0.0) {
            return beginning;
        }
        return distanceM < distance(end)
                ? path.over(GroundDistance.ofMetres(distanceM)).orElse(end)
                : end;
    }

    private static boolean isKnown(ClimbState state) {
        return state.distance().isPresent() && state.air().geometricAltitude().isPresent();
    }

    private static ClimbState lastKnown(ClimbPath path, ClimbState beginning) {
        double known = path.bottom().inMetres();
        ClimbState last = beginning;
        double unknown = path.top().inMetres();
        while (unknown - known > TOLERANCE_M) {
            double middle = 0.5 * (known + unknown);
            ClimbState there = path.at(PressureAltitude.ofMetres(middle), Side.BELOW);
            if (isKnown(there)) {
                known = middle;
                last = there;
            } else {
                unknown = middle;
            }
        }
        return last;
    }

    private static double distance(ClimbState state) {
        return state.distance().orElseThrow().inMetres();
    }

    private static double trueAltitude(ClimbState state) {
        return state.air().geometricAltitude().map(GeometricAltitude::inMetres).orElseThrow();
    }

    private static String feet(double metres) {
        return String.format(Locale.ROOT, "%.0f ft", AltitudeChange.ofMetres(metres).inFeet());
    }

    private static String miles(double metres) {
        return String.format(
                Locale.ROOT, "%.1f NM", GroundDistance.ofMetres(metres).inNauticalMiles());
    }
}
