package org.climbwright.cabin.dynamics;

import java.io.Serializable;
import org.climbwright.quantity.ModelRange;

/**
 * What goes wrong with a cabin. Several can come together; areas are effective ones.
 *
 * <p>Limits of use: for study and simulation. What a crew does about it is in the operator's
 * checklists and memory items.
 */
public sealed interface CabinFailure extends Serializable {
    /**
     * The air conditioning feeds less, or nothing.
     *
     * @param remainingShare what is left of the hull's inflow, 0 to 1
     */
    record InflowLost(double remainingShare) implements CabinFailure {
        private static final ModelRange SHARE =
                new ModelRange("share of the inflow left", 0.0, 1.0, "", "0 is all lost");

        /**
         * Makes the failure.
         *
         * @param remainingShare what is left of the hull's inflow, 0 to 1
         * @throws org.climbwright.quantity.OutsideModelException if the share is out of range
         */
        public InflowLost {
            SHARE.check(remainingShare);
        }

        /** All inflow lost. */
        public InflowLost() {
            this(0.0);
        }
    }

    /**
     * The outflow valve is stuck at an opening, such as fully open or shut; also where a crew sets
     * it by hand.
     *
     * @param areaM2 effective area at which it stays [m²], 0 to 10
     */
    record ValveStuck(double areaM2) implements CabinFailure {
        private static final ModelRange AREA =
                new ModelRange("area of the stuck valve", 0.0, 10.0, "m²", "0 is shut");

        /**
         * Makes the failure.
         *
         * @param areaM2 effective area at which it stays [m²], 0 to 10
         * @throws org.climbwright.quantity.OutsideModelException if the area is out of range
         */
        public ValveStuck {
            AREA.check(areaM2);
        }
    }

    /** The controller stops, and the outflow valve stays where it is. */
    record ControllerStopped() implements CabinFailure {}

    /**
     * A hole in the hull.
     *
     * @param areaM2 its effective area [m²], 0 to 1000
     */
    record Hole(double areaM2) implements CabinFailure {
        private static final ModelRange AREA =
                new ModelRange("area of the hole", 0.0, 1000.0, "m²", "0 is none");

        /**
         * Makes the failure.
         *
         * @param areaM2 its effective area [m²], 0 to 1000
         * @throws org.climbwright.quantity.OutsideModelException if the area is out of range
         */
        public Hole {
            AREA.check(areaM2);
        }
    }

    /**
     * The leaks grow, such as at a door seal.
     *
     * @param areaM2 what is added to the hull's leaks [m²], 0 to 1
     */
    record ExcessLeak(double areaM2) implements CabinFailure {
        private static final ModelRange AREA =
                new ModelRange("area added to the leaks", 0.0, 1.0, "m²", "more is a hole");

        /**
         * Makes the failure.
         *
         * @param areaM2 what is added to the hull's leaks [m²], 0 to 1
         * @throws org.climbwright.quantity.OutsideModelException if the area is out of range
         */
        public ExcessLeak {
            AREA.check(areaM2);
        }
    }
}
