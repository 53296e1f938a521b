package org.climbwright.ledger;

/**
 * Random numbers that are the same everywhere and for ever, each from its place in the sequence.
 *
 * @source S. Vigna's public-domain splitmix64.c, from memory
 */
final class Chance {
    private long state;

    Chance(long seed) {
        state = mixed(seed);
    }

    /** The next number from 0 to below 1. */
    double next() {
        return (nextLong() >>> 11) * 0x1.0p-53;
    }

    long nextLong() {
        state += 0x9e3779b97f4a7c15L;
        return mixed(state);
    }

    private static long mixed(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
