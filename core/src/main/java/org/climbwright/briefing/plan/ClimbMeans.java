package org.climbwright.briefing.plan;

import java.util.Objects;
import java.util.function.Function;
import org.climbwright.path.ClimbRates;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.profile.ClimbProgramme;

/** By what an aeroplane climbs, as far as a briefing knows it. */
public sealed interface ClimbMeans {
    /**
     * A table of rates: a mass that stays, and no fuel.
     *
     * @param table the rates
     */
    record Rates(ClimbRates table) implements ClimbMeans {
        /**
         * Makes it of a table that is there.
         *
         * @param table see above
         */
        public Rates {
            Objects.requireNonNull(table, "table");
        }
    }

    /**
     * Thrust and drag: the climb is integrated, with fuel and what happens on the way.
     *
     * <pre>{@code
     * new ClimbMeans.Thrust(jet, speeds -> ClimbProgramme.of(speeds, 0.4))
     * }</pre>
     *
     * @param aeroplane drag, thrust, fuel flow and limits
     * @param programme how it is flown, made of the speeds by pressure altitude; restrictions and
     *     ice protection are those of the plan
     */
    record Thrust(Aeroplane aeroplane, Function<SpeedSchedule, ClimbProgramme> programme)
            implements ClimbMeans {
        /**
         * Makes it of parts that are all there.
         *
         * @param aeroplane see above
         * @param programme see above
         */
        public Thrust {
            Objects.requireNonNull(aeroplane, "aeroplane");
            Objects.requireNonNull(programme, "programme");
        }
    }
}
