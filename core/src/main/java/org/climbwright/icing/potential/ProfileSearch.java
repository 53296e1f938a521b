package org.climbwright.icing.potential;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleToIntFunction;
import java.util.function.IntUnaryOperator;
import org.climbwright.atmosphere.Atmosphere;

/**
 * Cuts a profile, from the ground up, where a condition changes.
 *
 * <p>Between two bends of the air at least nine points are asked, and one every 80 m or so; where
 * two neighbours differ the pressure between is found by halving. A layer thinner than that, in air
 * that does not say where it bends, may be missed.
 */
final class ProfileSearch {
    private static final int LEAST_PARTS = 8;

    /** Some 20 km: no cloud of water is higher, and air at 50 km may be warm again. */
    private static final double END_OF_WEATHER_PA = 5000.0;

    /** The widest step, in ln p. */
    private static final double WIDEST = 0.01;

    /** How far inside a stretch its ends are looked at, as a share of it. */
    private static final double INSIDE = 1e-9;

    /** How near a change is found, as a share of the pressure: 1e-8 m. */
    private static final double TOLERANCE = 1e-12;

    /**
     * A part of the profile that is all the same.
     *
     * @param state what it is, the searcher's number
     * @param bottomPa static pressure at its lower edge [Pa]
     * @param topPa static pressure at its upper edge [Pa]
     */
    record Stretch(int state, double bottomPa, double topPa) {}

    private final DoubleToIntFunction stateAt;
    private final List<Stretch> found = new ArrayList<>();

    private ProfileSearch(DoubleToIntFunction stateAt) {
        this.stateAt = stateAt;
    }

    /** The air from its highest pressure up to where weather ends, in stretches that touch. */
    static List<Stretch> of(Atmosphere air, DoubleToIntFunction stateAt) {
        return of(air, air.range().highest(), topPa(air), stateAt);
    }

    /** Where a search through all of the air ends. */
    static double topPa(Atmosphere air) {
        double top = Math.max(air.range().lowest(), END_OF_WEATHER_PA);
        return Math.min(air.range().highest(), top);
    }

    /** The air between two pressures, the lower edge first. */
    static List<Stretch> of(
            Atmosphere air, double bottomPa, double topPa, DoubleToIntFunction stateAt) {
        ProfileSearch search = new ProfileSearch(stateAt);
        double[] bends = air.bendsPa().clone();
        Arrays.sort(bends);
        double below = bottomPa;
        for (int i = bends.length - 1; i >= 0; i--) {
            if (bends[i] < below && bends[i] > topPa) {
                search.stretch(below, bends[i]);
                below = bends[i];
            }
        }
        search.stretch(below, topPa);
        return List.copyOf(search.found);
    }

    /** The same stretches by another number, neighbours of one number joined. */
    static List<Stretch> joined(List<Stretch> stretches, IntUnaryOperator state) {
        ProfileSearch joined = new ProfileSearch(pressurePa -> 0);
        for (Stretch stretch : stretches) {
            joined.take(state.applyAsInt(stretch.state), stretch.bottomPa, stretch.topPa);
        }
        return List.copyOf(joined.found);
    }

    private void stretch(double bottomPa, double topPa) {
        // The ends are looked at from just inside, where the air is that of this stretch alone.
        int parts =
                Math.max(LEAST_PARTS, (int) Math.ceil(StrictMath.log(bottomPa / topPa) / WIDEST));
        double from = bottomPa;
        double before = between(bottomPa, topPa, INSIDE);
        for (int part = 1; part <= parts; part++) {
            boolean isLast = part == parts;
            double here = between(bottomPa, topPa, isLast ? 1.0 - INSIDE : (double) part / parts);
            int state = stateAt.applyAsInt(here);
            int stateBefore = stateAt.applyAsInt(before);
            while (stateBefore != state) {
                double edge = edge(before, here, stateBefore);
                take(stateBefore, from, edge);
                from = edge;
                before = edge;
                stateBefore = stateAt.applyAsInt(edge);
            }
            double end = isLast ? topPa : here;
            take(state, from, end);
            from = end;
            before = here;
        }
    }

    private static double between(double bottomPa, double topPa, double share) {
        double pressure = bottomPa * StrictMath.exp(share * StrictMath.log(topPa / bottomPa));
        return Math.max(topPa, Math.min(bottomPa, pressure));
    }

    /** The first pressure found at which the state is another, near to one where it is not. */
    private double edge(double before, double here, int state) {
        double low = before;
        double high = here;
        while (low - high > TOLERANCE * low) {
            double middle = 0.5 * (low + high);
            if (stateAt.applyAsInt(middle) == state) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private void take(int state, double bottomPa, double topPa) {
        int last = found.size() - 1;
        if (last >= 0 && found.get(last).state == state) {
            found.set(last, new Stretch(state, found.get(last).bottomPa, topPa));
        } else {
            found.add(new Stretch(state, bottomPa, topPa));
        }
    }
}
