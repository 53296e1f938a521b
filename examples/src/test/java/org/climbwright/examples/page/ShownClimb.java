package org.climbwright.examples.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.examples.briefing.Program;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReader;

/** A climb whose page is tested: its JSON report and the page of it. */
record ShownClimb(String name, String json, String page) {
    private static final Path SCENARIOS =
            Path.of("src/main/resources/org/climbwright/examples/briefing");
    private static final Path SOUNDINGS = Path.of("../core/src/test/resources/sounding");
    private static final String AIR = "norman-january-20.csv";
    private static final String SHALLOW =
            "pressure_hpa,geopotential_height_m,temperature_c,dewpoint_c,wind_from_deg,wind_speed_mps\n"
                + "1000,100,10,8,270,5\n"
                + "500,5600,-20,-30,300,30\n";
    private static final String NO_WIND_BELOW = SHALLOW.replace("270,5", ",");

    /** Briefed once for all tests. */
    private static final List<ShownClimb> ALL = briefed();

    /** The bundled climb, another kind of it, other air, what can be missing, what can be more. */
    static List<ShownClimb> all() {
        return ALL;
    }

    static ShownClimb bundled() {
        return ALL.get(0);
    }

    private static List<ShownClimb> briefed() {
        try {
            List<ShownClimb> all = new ArrayList<>();
            all.add(of("the bundled scenario"));
            String byRates = SCENARIOS.resolve("by-rates.toml").toString();
            all.add(of("a climb by a table of rates", "--scenario", byRates));
            for (String air :
                    List.of(
                            "v82332_manaus_tropical.csv",
                            "v40582_kuwait_desert.csv",
                            "v24266_verkhoyansk_arctic.csv",
                            "w72357_oun_20110522_capped.csv")) {
                all.add(through(SOUNDINGS.resolve(air)));
            }
            Path folder = Files.createTempDirectory("shown");
            Path shallow = Files.writeString(folder.resolve("shallow.csv"), SHALLOW);
            all.add(of("a climb that ends with its air", "--sounding", shallow.toString()));
            Path still = Files.writeString(folder.resolve("no-wind.csv"), NO_WIND_BELOW);
            all.add(of("a climb whose distance is not known", "--sounding", still.toString()));
            Files.copy(SCENARIOS.resolve(AIR), folder.resolve(AIR));
            String full = Files.readString(SCENARIOS.resolve("scenario.toml"));
            Path little = Files.writeString(folder.resolve("little.toml"), little(full));
            all.add(of("a climb of little", "--scenario", little.toString()));
            Path much = Files.writeString(folder.resolve("much.toml"), much(full));
            all.add(of("a climb of much", "--scenario", much.toString()));
            delete(folder);
            return List.copyOf(all);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The bundled scenario without its cabin, restrictions, level-off and cloud. */
    private static String little(String scenario) {
        return scenario.replaceAll("(?ms)^\\[(cabin|restrictions|level_off|cloud)].*?(?=^\\[)", "");
    }

    /** With all that its programme can hold, restrictions of speed, and names that are long. */
    private static String much(String scenario) {
        return scenario.replaceAll("(?m)^# (rough_air|held_rates|held_levels|reduced_thrust)", "$1")
                .replace(
                        "    [\"BIRCH (invented)\"",
                        """
                        ["ELDER with a long name (invented)", "8 NM", "not above", "240 kn"],
                        ["ROWAN with a long name (invented)", "90 NM", "at", "FL300", "300 ft"],
                        ["BIRCH (invented)\"\
                        """);
    }

    private static ShownClimb through(Path file) throws IOException {
        Sounding sounding = SoundingReader.read(file).soundings().get(0);
        Atmosphere air = sounding.atmosphere();
        double lowest = air.geopotentialAltitude(air.range().highest());
        String elevation = GeopotentialAltitude.ofMetres(lowest + 0.01).text();
        String name = file.getFileName().toString();
        return of(name, "--sounding", file.toString(), "--elevation", elevation);
    }

    private static ShownClimb of(String name, String... options) {
        return new ShownClimb(name, written("json", options), written("html", options));
    }

    private static String written(String format, String... options) {
        String[] args =
                Stream.concat(Stream.of("--format", format), Stream.of(options))
                        .toArray(String[]::new);
        Program run = Program.run(args);
        if (run.code() != 0) {
            throw new IllegalStateException(run.err());
        }
        return run.out();
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    @Override
    public String toString() {
        return name;
    }
}
