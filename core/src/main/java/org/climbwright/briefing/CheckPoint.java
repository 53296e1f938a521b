package org.climbwright.briefing;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.cabin.CabinState;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.path.Mass;

/**
 * A line of the check card: what the figures should read at a point of the climb, to be held
 * against what is seen.
 *
 * @param name what the point is called
 * @param state the climb there
 * @param toleranceS by how much the time there changes with the most that was flown again of 1,000
 *     kg more, air 10 K warmer and 20 kn more on the nose, each alone [s]; empty where the plan has
 *     a table of rates, or none of those climbs gets there
 * @param cabin the cabin there; empty where it is not under pressure
 * @param fuel the fuel from the beginning; empty where the plan has a table of rates
 */
public record CheckPoint(
        String name,
        ClimbState state,
        OptionalDouble toleranceS,
        Optional<CabinState> cabin,
        Optional<Mass> fuel) {
    /**
     * Returns the line for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return name
                + ": "
                + state
                + (toleranceS.isPresent()
                        ? String.format(Locale.ROOT, " ± %.0f s", toleranceS.getAsDouble())
                        : "")
                + cabin.map(read -> ", " + read).orElse("")
                + fuel.map(mass -> String.format(Locale.ROOT, ", fuel %.0f kg", mass.inKilograms()))
                        .orElse("");
    }
}
