package org.climbwright.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The points at which a row is measured: each input on a grid, even in itself and in its logarithm,
 * with any others; all inputs at random; bounds and marks and the doubles beside them, in all
 * combinations. A coarser walk, of every so many steps, meets points of the full one only.
 */
final class Points {
    /** Steps of each grid, and random points. */
    static final int STEPS = 40_000;

    private static final long SEED = 20_260_101L;
    private static final int OTHERS = 3;

    private final Axis[] axes;
    private final int[] order;
    private final Consumer<double[]> visitor;

    private Points(List<Axis> axes, Consumer<double[]> visitor) {
        this.axes = axes.toArray(Axis[]::new);
        this.order = order(axes);
        this.visitor = visitor;
    }

    /** Visits the points, of the grids and the random ones every so many. */
    static void visit(List<Axis> axes, int stride, Consumer<double[]> visitor) {
        Points points = new Points(axes, visitor);
        for (int step = 0; step <= STEPS; step += stride) {
            for (int gridded = 0; gridded < axes.size(); gridded++) {
                points.visitStep(step, gridded, false);
                if (axes.get(gridded).hasLogarithm()) {
                    points.visitStep(step, gridded, true);
                }
            }
            points.visitStep(step, axes.size(), false);
        }
        points.visitMarks(new double[axes.size()], 0);
    }

    /** The inputs that stand alone first, so that the others can follow from them. */
    private static int[] order(List<Axis> axes) {
        List<Integer> order = new ArrayList<>();
        for (boolean following : new boolean[] {false, true}) {
            for (int i = 0; i < axes.size(); i++) {
                if (axes.get(i).isFollowing() == following) {
                    order.add(i);
                }
            }
        }
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    private void visitStep(int step, int gridded, boolean logarithmic) {
        double[] in = new double[axes.length];
        Chance chance = new Chance(SEED + 8L * step + 2L * gridded + (logarithmic ? 1 : 0));
        for (int i : order) {
            if (i != gridded) {
                in[i] = any(axes[i], in, chance);
            } else if (logarithmic) {
                in[i] = axes[i].logarithmic(in, step / (double) STEPS);
            } else {
                in[i] = axes[i].even(in, step / (double) STEPS);
            }
        }
        visitor.accept(in);
    }

    private void visitMarks(double[] in, int depth) {
        if (depth == order.length) {
            visitor.accept(in.clone());
            return;
        }
        int i = order[depth];
        for (double value : axes[i].besideMarks(in)) {
            in[i] = value;
            visitMarks(in, depth + 1);
        }
        if (order.length > 1) {
            Chance chance = new Chance(SEED + Double.hashCode(in[order[0]]) + depth);
            for (int other = 0; other < OTHERS; other++) {
                in[i] = any(axes[i], in, chance);
                visitMarks(in, depth + 1);
            }
        }
    }

    /** Half of the points even in the input, half in its logarithm if that means something. */
    private static double any(Axis axis, double[] in, Chance chance) {
        boolean logarithmic = chance.next() < 0.5 && axis.hasLogarithm();
        double share = chance.next();
        return logarithmic ? axis.logarithmic(in, share) : axis.even(in, share);
    }
}
