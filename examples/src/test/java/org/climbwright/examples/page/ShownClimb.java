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
    private static final String SHALLOW =
            "pressure_hpa,geopotential_height_m,temperature_c,dewpoint_c,wind_from_deg,wind_speed_mps\n"
                + "1000,100,10,8,270,5\n"
                + "500,5600,-20,-30,300,30\n";
    private static final String NO_WIND_BELOW = SHALLOW.replace("270,5", ",");

    static ShownClimb bundled() {
        return of("the bundled scenario");
    }

    /** The bundled climb, another kind of it, other air, and what can be missing. */
    static List<ShownClimb> all() {
        try {
            List<ShownClimb> all = new ArrayList<>();
            all.add(bundled());
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
            all.add(of("a climb of little", "--scenario", bare(folder).toString()));
            delete(folder);
            return all;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The bundled scenario without its cabin, restrictions, level-off and cloud. */
    private static Path bare(Path folder) throws IOException {
        String air = "norman-january-20.csv";
        Files.copy(SCENARIOS.resolve(air), folder.resolve(air));
        String full = Files.readString(SCENARIOS.resolve("scenario.toml"));
        String less =
                full.replaceAll("(?ms)^\\[(cabin|restrictions|level_off|cloud)].*?(?=^\\[)", "");
        return Files.writeString(folder.resolve("bare.toml"), less);
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
