package org.climbwright.path;

/**
 * From which side a level is looked at, where speed or rate jumps there; or time, where the level
 * is held.
 */
public enum Side {
    /** As the climb arrives at the level, from below. */
    BELOW,
    /** As the climb leaves the level, upwards. */
    ABOVE
}
