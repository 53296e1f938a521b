package org.climbwright.examples.benchmark;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * Times the library on the JDK that it is started with and writes what it found: {@code mvn -q
 * -Pbenchmarks test-compile exec:exec} from the root, some 8 minutes.
 */
@Command(
        name = "benchmarks",
        sortOptions = false,
        description = "Times the library against the same formulas by hand, on this JDK.")
public final class RecordSpeeds implements Callable<Integer> {
    private static final Path WHOLE = Path.of("BENCHMARKS.md");

    private static final String START_UP = "StartUp";

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // picocli reads it
    private boolean help;

    @Option(
            names = "--only",
            paramLabel = "REGEX",
            description =
                    "only benchmarks whose name has this in it, such as"
                            + " AirspeedBenchmark.MachFromCas or StartUp")
    private @Nullable Pattern only;

    @Option(names = "--quick", description = "a rough look, some 2 s a benchmark")
    private boolean quick;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "where to record it (default: BENCHMARKS.md for a whole run at full length,"
                            + " else nowhere)")
    private @Nullable Path out;

    private RecordSpeeds() {}

    /**
     * Runs the program.
     *
     * @param args the options
     */
    public static void main(String[] args) {
        System.exit(new CommandLine(new RecordSpeeds()).execute(args));
    }

    @Override
    public Integer call() throws Exception {
        int jdk = Runtime.version().feature();
        StringBuilder section = new StringBuilder(Machine.description());
        for (Class<?> question : Questions.alike()) {
            SameAnswers.check(question);
        }
        boolean isStartUp = only == null || only.matcher(START_UP).find();
        Speeds speeds = new Speeds();
        try {
            new Runner(plan().build()).run().forEach(speeds::add);
        } catch (NoBenchmarksException none) {
            if (!isStartUp) {
                System.err.println("no benchmark has " + only + " in its name");
                return 2;
            }
        }
        SpeedTables tables = new SpeedTables(speeds, jdk);
        section.append(tables.againstByHand())
                .append(tables.typedAgainstSi())
                .append(tables.units())
                .append(tables.cabin())
                .append(tables.profile());
        if (isStartUp) {
            int forks = quick ? 5 : 21;
            section.append(SpeedTables.startUp(StartUp.measure(forks), forks));
        }
        System.out.println("\n" + section);
        boolean isWhole = only == null && !quick;
        if (out != null || isWhole) {
            SpeedRecord.write(out == null ? WHOLE : out, jdk, section.toString());
        }
        return 0;
    }

    private ChainedOptionsBuilder plan() {
        String all = getClass().getPackageName().replace(".", "\\.") + "\\..*";
        TimeValue slice = TimeValue.milliseconds(quick ? 100 : 500);
        int slices = quick ? 3 : 5;
        return new OptionsBuilder()
                .include(only == null ? all : only.pattern())
                .mode(Mode.AverageTime)
                .timeUnit(TimeUnit.NANOSECONDS)
                .forks(1)
                .warmupTime(slice)
                .warmupIterations(slices)
                .measurementTime(slice)
                .measurementIterations(slices)
                .addProfiler(GCProfiler.class)
                .shouldFailOnError(true);
    }
}
