package org.climbwright.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.DryAir;
import org.climbwright.atmosphere.Geopotential;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.path.GroundTrack;

/**
 * Measures every function of doubles of standard air, dry air, geopotential altitude, airspeeds,
 * temperatures and crossovers against 50-digit arithmetic, and writes down the largest errors: for
 * machines as accuracy.csv, for people as ACCURACY.md. {@code AccuracyLedgerTest} holds them.
 */
final class AccuracyLedger {
    static final String CSV = "/ledger/accuracy.csv";
    static final String PAGE = "ACCURACY.md";

    /** All functions of doubles in these have a row. */
    static final List<Class<?>> ROOMS =
            List.of(
                    StandardAir.class,
                    DryAir.class,
                    Geopotential.class,
                    AirspeedConversion.class,
                    Crossover.class,
                    TotalTemperature.class,
                    VerticalRates.class,
                    GroundTrack.class);

    private AccuracyLedger() {}

    /** Those functions: public, static, of doubles alone, a double. */
    static List<Method> functions() {
        return ROOMS.stream()
                .flatMap(room -> Arrays.stream(room.getMethods()))
                .filter(method -> Modifier.isStatic(method.getModifiers()))
                .filter(method -> method.getReturnType() == double.class)
                .filter(
                        method ->
                                Arrays.stream(method.getParameterTypes())
                                        .allMatch(type -> type == double.class))
                .toList();
    }

    /** All rows, those of one function together. */
    static List<Row> rows() {
        return Stream.of(
                        AtmosphereRows.rows(),
                        TubeRows.rows(),
                        AirspeedRows.rows(),
                        TemperatureRows.rows(),
                        PathRows.rows())
                .flatMap(List::stream)
                .collect(Collectors.groupingBy(Row::name, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .flatMap(List::stream)
                .toList();
    }

    /** The entries on every so many points; 1 for all, which takes some minutes. */
    static List<Entry> measure(int stride) {
        return rows().parallelStream().flatMap(row -> row.measure(stride).stream()).toList();
    }

    /** Measures anew; the argument is the folder of the module. */
    public static void main(String[] arguments) throws IOException {
        Path module = Path.of(arguments[0]);
        long begin = System.nanoTime();
        List<Entry> entries = measure(1);
        String csv =
                entries.stream()
                        .map(Entry::line)
                        .collect(Collectors.joining("\n", csvHead(), "\n"));
        Files.writeString(module.resolve("src/test/resources" + CSV), csv, UTF_8);
        Files.writeString(module.resolve(PAGE), LedgerPage.text(entries), UTF_8);
        System.out.printf(
                "measured in %d s; above the bar: %s%n",
                (System.nanoTime() - begin) / 1_000_000_000L,
                entries.stream().filter(Entry::isAboveBar).map(Entry::key).toList());
    }

    private static String csvHead() {
        return """
        # The largest errors against 50-digit arithmetic, measured by AccuracyLedger.
        # Written by that program: see ACCURACY.md for how to make it anew.
        """
                + Entry.HEAD
                + "\n";
    }
}
