package org.climbwright.gradient.procedure;

/** The figures of a rule by the number of engines. */
final class Engines {
    private Engines() {}

    static double choose(int engines, double two, double three, double four) {
        return switch (engines) {
            case 2 -> two;
            case 3 -> three;
            case 4 -> four;
            default ->
                    throw new IllegalArgumentException(
                            "number of engines must be from 2 to 4, but was " + engines);
        };
    }
}
