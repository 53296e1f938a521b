package org.climbwright.profile;

/** What depends on the flight and ends a leg where it happens. */
enum Guard {
    /** Nothing. */
    NONE,
    /** The engine passes from one of its limits to another. */
    BEND,
    /** The rate has fallen to the least. */
    LEAST_RATE,
    /** The rate has fallen to the one to be reported. */
    LOW_RATE,
    /** The speed is there that was changed to. */
    SPEED_REACHED,
    /** Thrust is no longer enough for the rate held. */
    THRUST_SHORT,
    /** Thrust is reduced for a rate, and none is left to take away. */
    THRUST_GONE,
    /** The rate to be held is there again. */
    RATE_AGAIN,
    /** Speed gives, and has come to its upper bound. */
    FASTEST,
    /** Speed gives, and has come to its lower bound. */
    SLOWEST
}
