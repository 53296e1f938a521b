package org.climbwright.cabin.dynamics;

/** How the temperature of the cabin's air goes while its pressure changes. */
public enum CabinAir {
    /** The air conditioning holds it: normal operation, and slow failures. */
    ISOTHERMAL,

    /**
     * No heat comes from walls and seats: near to a decompression of seconds, which it makes up to
     * 1.4 times as fast.
     */
    ADIABATIC
}
