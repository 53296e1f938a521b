package org.climbwright.examples.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.examples.benchmark.Speeds.Speed;

/** The tables of a run in Markdown. Ratios say more than nanoseconds, which drift. */
final class SpeedTables {
    private static final String NONE = "";

    private final Speeds speeds;
    private final int jdk;

    SpeedTables(Speeds speeds, int jdk) {
        this.speeds = speeds;
        this.jdk = jdk;
    }

    /** By hand against ours, one by one and over arrays. */
    String againstByHand() {
        Table table =
                new Table(
                        "Against the formula by hand [ns per element]",
                        "what|by hand|StrictMath|scalar|bulk|by hand / scalar|by hand / bulk"
                                + "|B per element|bar|aim|met");
        for (Class<?> question : Questions.AGAINST_BY_HAND) {
            Optional<Speed> hand = speeds.of(question, "byHand");
            Optional<Speed> strict = speeds.of(question, "strictMath");
            Optional<Speed> scalar = speeds.of(question, "scalar");
            Optional<Speed> bulk = speeds.of(question, "bulk");
            if (hand.or(() -> strict).or(() -> scalar).or(() -> bulk).isEmpty()) {
                continue;
            }
            Line line = Questions.line(question);
            Optional<Double> times = ratio(hand, bulk).or(() -> ratio(hand, scalar));
            table.row(
                    line.value(),
                    nanoseconds(hand),
                    nanoseconds(strict),
                    nanoseconds(scalar),
                    nanoseconds(bulk),
                    times(ratio(hand, scalar)),
                    times(ratio(hand, bulk)),
                    bytes(scalar) + (bulk.isEmpty() ? NONE : ", " + bytes(bulk)),
                    bound(bar(line), " ×, 0 B"),
                    bound(line.aim(), " ×"),
                    met(
                            times.map(
                                    ratio -> ratio >= bar(line) && isClean(bulk.or(() -> scalar))),
                            bar(line)));
        }
        return table.text();
    }

    /** The typed way against SI doubles. */
    String typedAgainstSi() {
        Table table =
                new Table(
                        "Values against SI doubles [ns per element]",
                        "what|SI doubles|values|values / SI|B per element|bar|met");
        for (Class<?> question : Questions.TYPED_AGAINST_SI) {
            Optional<Speed> si = speeds.of(question, "si");
            Optional<Speed> typed = speeds.of(question, "typed");
            if (si.or(() -> typed).isEmpty()) {
                continue;
            }
            Line line = Questions.line(question);
            Optional<Double> cost = ratio(typed, si);
            table.row(
                    line.value(),
                    nanoseconds(si),
                    nanoseconds(typed),
                    cost.map(ratio -> number("%.2f ×", ratio)).orElse(NONE),
                    bytes(typed),
                    number("≤ %.2f ×, 0 B", line.bar()),
                    met(cost.map(ratio -> ratio <= line.bar() && isClean(typed)), line.bar()));
        }
        return table.text();
    }

    /** Units of javax.measure at the edge. */
    String units() {
        Table table =
                new Table(
                        "Units of javax.measure, into a value or out of it [ns per call]",
                        "what|time|B per call|bar|aim|met");
        for (Class<?> question : Questions.UNITS) {
            Optional<Speed> speed = speeds.of(question, "typed");
            if (speed.isEmpty()) {
                continue;
            }
            Line line = Questions.line(question);
            table.row(
                    line.value(),
                    nanoseconds(speed),
                    bytes(speed),
                    bound(line.bar(), " ns"),
                    bound(line.aim(), " ns"),
                    met(speed.map(s -> s.nanoseconds() <= line.bar()), line.bar()));
        }
        return table.text();
    }

    /** A cabin in a loop. */
    String cabin() {
        Table table =
                new Table(
                        "A cabin stepped at 60 Hz through a climb, a failure after 20 of 25 minutes"
                                + " [ns per step]",
                        "what|time|B per step|bar|met");
        for (Class<?> question : Questions.CABIN) {
            Optional<Speed> speed = speeds.of(question, "stepped");
            if (speed.isEmpty()) {
                continue;
            }
            Line line = Questions.line(question);
            table.row(
                    line.value(),
                    nanoseconds(speed),
                    bytes(speed),
                    bound(line.bar(), " ns, 0 B"),
                    met(
                            speed.map(s -> s.nanoseconds() <= line.bar() && isClean(speed)),
                            line.bar()));
        }
        return table.text();
    }

    /** A whole climb, integrated. */
    String profile() {
        Table table =
                new Table(
                        "A climb of the invented jet to FL350 through a sounding [µs per climb]",
                        "what|own integration|Dormand and Prince|ratio|B per climb|bar|aim|met");
        for (Class<?> question : Questions.PROFILE) {
            Optional<Speed> own = speeds.of(question, "own");
            Optional<Speed> adaptive = speeds.of(question, "adaptive");
            if (own.or(() -> adaptive).isEmpty()) {
                continue;
            }
            Line line = Questions.line(question);
            table.row(
                    line.value(),
                    microseconds(own),
                    microseconds(adaptive),
                    times(ratio(adaptive, own)),
                    bytes(own),
                    bound(line.bar(), " µs"),
                    bound(line.aim(), " µs"),
                    met(own.map(s -> s.nanoseconds() <= 1e3 * line.bar()), line.bar()));
        }
        return table.text();
    }

    private static String microseconds(Optional<Speed> speed) {
        return speed.map(s -> number("%.1f", s.nanoseconds() / 1e3)).orElse(NONE);
    }

    /** What a first use adds to the start of a JVM. */
    static String startUp(List<StartUp.Timing> timings, int forks) {
        Table table =
                new Table(
                        number("Start-up, medians of %d JVMs each [ms]", forks),
                        "what|whole JVM|over an empty main|first use by its own clock|bar|met");
        double empty = timings.get(0).wallMs();
        for (StartUp.Timing timing : timings) {
            boolean isSi = timing.program().equals(StartUp.SI_DOUBLES);
            double over = timing.wallMs() - empty;
            table.row(
                    timing.program(),
                    number("%.1f", timing.wallMs()),
                    number("%.1f", over),
                    number("%.1f", timing.firstUseMs()),
                    isSi ? bound(StartUp.BAR_MS, " ms") : NONE,
                    isSi ? met(Optional.of(over <= StartUp.BAR_MS), StartUp.BAR_MS) : NONE);
        }
        return table.text();
    }

    private double bar(Line line) {
        return jdk < 25 && !Double.isNaN(line.barBefore25()) ? line.barBefore25() : line.bar();
    }

    private static Optional<Double> ratio(Optional<Speed> of, Optional<Speed> to) {
        return of.flatMap(one -> to.map(other -> one.nanoseconds() / other.nanoseconds()));
    }

    /** True if it makes no garbage; the profiler tells a fraction of a byte of its own. */
    private static boolean isClean(Optional<Speed> speed) {
        return speed.map(s -> s.bytes() < 0.5).orElse(false);
    }

    private static String nanoseconds(Optional<Speed> speed) {
        return speed.map(s -> number(s.nanoseconds() < 10.0 ? "%.2f" : "%.1f", s.nanoseconds()))
                .orElse(NONE);
    }

    private static String bytes(Optional<Speed> speed) {
        return speed.map(s -> number("%.0f", s.bytes())).orElse(NONE);
    }

    private static String times(Optional<Double> ratio) {
        return ratio.map(
                        times ->
                                number(
                                        times < 1.0
                                                ? "%.2f ×"
                                                : times < 100.0 ? "%.1f ×" : "%.0f ×",
                                        times))
                .orElse(NONE);
    }

    private static String bound(double bound, String unit) {
        return Double.isNaN(bound)
                ? NONE
                : (bound == Math.rint(bound) ? number("%.0f", bound) : Double.toString(bound))
                        .concat(unit);
    }

    private static String met(Optional<Boolean> met, double bar) {
        return Double.isNaN(bar) ? NONE : met.map(yes -> yes ? "yes" : "**no**").orElse(NONE);
    }

    private static String number(String format, Object number) {
        return String.format(Locale.ROOT, format, number);
    }

    /** A table that is grown row by row, and nothing at all as long as it has none. */
    private static final class Table {
        private final String head;
        private final StringBuilder rows = new StringBuilder(1000);

        Table(String title, String columns) {
            String rule = columns.replaceAll("[^|]+", "---");
            this.head = String.join("\n", "", "### " + title, "", line(columns), line(rule), "");
        }

        void row(String... cells) {
            rows.append(line(String.join("|", cells))).append('\n');
        }

        String text() {
            return rows.length() == 0 ? "" : head + rows;
        }

        private static String line(String cells) {
            return "| " + cells.replace("|", " | ") + " |";
        }
    }
}
