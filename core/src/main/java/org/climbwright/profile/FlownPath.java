package org.climbwright.profile;

import java.util.Arrays;
import org.climbwright.numeric.BracketingSolver;

/**
 * What an integration leaves behind: the state between its steps, and how it changes at both ends
 * of each.
 *
 * <p>A step goes up, by level, or stays at a level and goes by time.
 */
final class FlownPath {
    private static final int FIRST_SIZE = 192;

    // state between the steps: one more than steps
    private double[] level = new double[FIRST_SIZE + 1];
    private double[] time = new double[FIRST_SIZE + 1];
    private double[] distance = new double[FIRST_SIZE + 1];
    private double[] mass = new double[FIRST_SIZE + 1];
    private double[] airspeed = new double[FIRST_SIZE + 1];

    /** Changes by level, or by time, at both ends of a step: time, distance, mass, airspeed. */
    private double[] slopes = new double[FIRST_SIZE * 2 * Stepper.SIZE];

    private int[] stretch = new int[FIRST_SIZE];
    private Leg[] leg = new Leg[FIRST_SIZE];
    private boolean[] isBend = new boolean[FIRST_SIZE + 1];
    private int steps;

    // what happened, at the state between steps of that number
    private ProfileEvent.Kind[] kinds = new ProfileEvent.Kind[32];
    private String[] texts = new String[32];
    private int[] nodes = new int[32];
    private int events;

    void begin(double levelM, double massKg, double tasMps, boolean isWindKnown) {
        level[0] = levelM;
        mass[0] = massKg;
        airspeed[0] = tasMps;
        distance[0] = isWindKnown ? 0.0 : Double.NaN;
    }

    void add(
            int inStretch,
            Leg flown,
            double levelM,
            double[] state,
            double[] slopesBefore,
            double[] slopesAfter) {
        if (steps == stretch.length) {
            grow();
        }
        stretch[steps] = inStretch;
        leg[steps] = flown;
        System.arraycopy(slopesBefore, 0, slopes, steps * 2 * Stepper.SIZE, Stepper.SIZE);
        System.arraycopy(slopesAfter, 0, slopes, (steps * 2 + 1) * Stepper.SIZE, Stepper.SIZE);
        steps++;
        level[steps] = levelM;
        time[steps] = state[Stepper.TIME];
        distance[steps] = state[Stepper.DISTANCE];
        mass[steps] = state[Stepper.MASS];
        airspeed[steps] = state[Stepper.AIRSPEED];
    }

    private void grow() {
        int size = 2 * steps;
        level = Arrays.copyOf(level, size + 1);
        time = Arrays.copyOf(time, size + 1);
        distance = Arrays.copyOf(distance, size + 1);
        mass = Arrays.copyOf(mass, size + 1);
        airspeed = Arrays.copyOf(airspeed, size + 1);
        slopes = Arrays.copyOf(slopes, size * 2 * Stepper.SIZE);
        stretch = Arrays.copyOf(stretch, size);
        leg = Arrays.copyOf(leg, size);
        isBend = Arrays.copyOf(isBend, size + 1);
    }

    /** Puts the distance where it is now to what it is meant to be. */
    void meetDistance(double metres) {
        distance[steps] = metres;
    }

    /** Says that the climb bends where it is now. */
    void bend() {
        isBend[steps] = true;
    }

    void event(ProfileEvent.Kind kind, String text) {
        if (events == kinds.length) {
            kinds = Arrays.copyOf(kinds, 2 * events);
            texts = Arrays.copyOf(texts, 2 * events);
            nodes = Arrays.copyOf(nodes, 2 * events);
        }
        kinds[events] = kind;
        texts[events] = text;
        nodes[events] = steps;
        events++;
    }

    int steps() {
        return steps;
    }

    int events() {
        return events;
    }

    ProfileEvent.Kind kind(int event) {
        return kinds[event];
    }

    String text(int event) {
        return texts[event];
    }

    int nodeOf(int event) {
        return nodes[event];
    }

    double levelM(int node) {
        return level[node];
    }

    double timeS(int node) {
        return time[node];
    }

    double distanceM(int node) {
        return distance[node];
    }

    double massKg(int node) {
        return mass[node];
    }

    double tasMps(int node) {
        return airspeed[node];
    }

    boolean isLevel(int step) {
        return level[step] == level[step + 1];
    }

    int stretch(int step) {
        return stretch[step];
    }

    Leg leg(int step) {
        return leg[step];
    }

    /** The levels at which it bends, rising, without the ends. */
    double[] bendsM() {
        double[] bends = new double[steps + 1];
        int count = 0;
        for (int node = 1; node < steps; node++) {
            boolean isInside = level[node] > level[0] && level[node] < level[steps];
            if (isBend[node] && isInside && (count == 0 || bends[count - 1] < level[node])) {
                bends[count++] = level[node];
            }
        }
        return Arrays.copyOf(bends, count);
    }

    /** The levels that it stays at for a time, rising, the ends included. */
    double[] heldLevelsM() {
        double[] held = new double[steps];
        int count = 0;
        for (int step = 0; step < steps; step++) {
            boolean isKnown = count > 0 && held[count - 1] == level[step];
            if (isLevel(step) && !isKnown && time[step + 1] > time[step]) {
                held[count++] = level[step];
            }
        }
        return Arrays.copyOf(held, count);
    }

    /** The climbing step that a level lies in; -1 if no step climbs. */
    int stepAt(double levelM, boolean fromAbove) {
        int found = Arrays.binarySearch(level, 0, steps + 1, levelM);
        int step = found < 0 ? -found - 2 : found;
        if (found >= 0) {
            // several states may stand at one level
            while (step > 0 && level[step - 1] == levelM) {
                step--;
            }
            if (fromAbove) {
                while (step < steps && level[step + 1] == levelM) {
                    step++;
                }
            } else {
                step--;
            }
        }
        step = Math.max(0, Math.min(steps - 1, step));
        return step >= 0 && step < steps ? climbing(step) : -1;
    }

    /** At the ends of a climb there is one side only. */
    private int climbing(int step) {
        int up = step;
        while (up < steps && isLevel(up)) {
            up++;
        }
        if (up < steps) {
            return up;
        }
        int down = step;
        while (down >= 0 && isLevel(down)) {
            down--;
        }
        return down;
    }

    int stepOfTime(double seconds) {
        return stepOf(time, seconds);
    }

    int stepOfDistance(double metres) {
        return stepOf(distance, metres);
    }

    private int stepOf(double[] rising, double value) {
        int found = Arrays.binarySearch(rising, 0, steps + 1, value);
        int step = found < 0 ? -found - 2 : found;
        return Math.max(0, Math.min(steps - 1, step));
    }

    double timeIn(int step, double levelM) {
        return between(step, Stepper.TIME, time, level, levelM);
    }

    double distanceIn(int step, double x) {
        return between(step, Stepper.DISTANCE, distance, isLevel(step) ? time : level, x);
    }

    double massIn(int step, double x) {
        return between(step, Stepper.MASS, mass, isLevel(step) ? time : level, x);
    }

    double tasIn(int step, double x) {
        return between(step, Stepper.AIRSPEED, airspeed, isLevel(step) ? time : level, x);
    }

    /** The level of a climbing step at a time; the cubic rises with the level. */
    double levelOfTime(int step, double seconds) {
        return rootIn(step, Stepper.TIME, time, level, seconds);
    }

    double levelOfDistance(int step, double metres) {
        return rootIn(step, Stepper.DISTANCE, distance, level, metres);
    }

    /** The time of a level step at a distance. */
    double timeOfDistance(int step, double metres) {
        return rootIn(step, Stepper.DISTANCE, distance, time, metres);
    }

    private double rootIn(int step, int which, double[] values, double[] places, double wanted) {
        if (wanted <= values[step]) {
            return places[step];
        }
        if (wanted >= values[step + 1]) {
            return places[step + 1];
        }
        return BracketingSolver.solve(
                place -> between(step, which, values, places, place) - wanted,
                places[step],
                places[step + 1],
                1e-9);
    }

    /** The cubic through the states at both ends, with the changes there. */
    private double between(int step, int which, double[] values, double[] places, double at) {
        double from = places[step];
        double length = places[step + 1] - from;
        double x = (at - from) / length;
        double before = slopes[step * 2 * Stepper.SIZE + which] * length;
        double after = slopes[(step * 2 + 1) * Stepper.SIZE + which] * length;
        double rise = values[step + 1] - values[step];
        double bow = before - rise;
        double stern = after - rise;
        double y = 1.0 - x;
        return values[step] + x * rise + x * y * (y * bow - x * stern);
    }
}
