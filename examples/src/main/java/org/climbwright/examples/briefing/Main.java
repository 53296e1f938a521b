package org.climbwright.examples.briefing;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.examples.page.BriefingPage;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.ReadingProblem;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReading;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Briefs a climb: {@code mvn -q compile exec:java} from the root runs the bundled scenario. */
@Command(
        name = "briefing",
        sortOptions = false,
        description =
                "Briefs a climb through an observed sounding. For study, not for use in flight.")
public final class Main implements Callable<Integer> {
    private static final int DONE = 0;
    private static final int REFUSED = 2;

    /** How the briefing is written. */
    enum Format {
        TEXT,
        CSV,
        JSON,
        HTML
    }

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // picocli reads it
    private boolean help;

    @Option(
            names = "--format",
            defaultValue = "text",
            paramLabel = "text|csv|json|html",
            description =
                    "how to write it (default: ${DEFAULT-VALUE}); csv has the climb line by line,"
                            + " numbers in full")
    private Format format = Format.TEXT;

    @Option(
            names = "--units",
            paramLabel = "feet-knots|metric",
            converter = UnitsOption.class,
            description =
                    "the units of text and csv (default: feet-knots); not for json, whose names"
                            + " carry the units")
    private @Nullable UnitSet units;

    @Option(names = "--schema", description = "print the JSON Schema of --format json, and end")
    private boolean schema;

    @Option(
            names = "--scenario",
            paramLabel = "FILE",
            description = "the climb, in TOML (default: the bundled, invented one)")
    private @Nullable Path scenario;

    @Option(
            names = "--sounding",
            paramLabel = "FILE",
            description =
                    "the air, IGRA 2 text, a Wyoming listing or a CSV profile (default: the"
                            + " scenario's)")
    private @Nullable Path sounding;

    @Option(
            names = "--launch",
            paramLabel = "TIME",
            description = "which ascent of the file, as 2010-06-01T00, or the beginning of it")
    private @Nullable String launch;

    @Option(
            names = "--elevation",
            paramLabel = "ALTITUDE",
            description = "the aerodrome's elevation instead of the scenario's, as \"874 m\"")
    private @Nullable String elevation;

    @Option(
            names = "--report",
            paramLabel = "TEXT",
            description =
                    "the aerodrome's weather report (METAR): its QNH, and its air below the"
                            + " sounding")
    private @Nullable String report;

    private final PrintStream out;
    private final PrintStream err;

    Main(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Runs the program; leaves the JVM with the exit code when the briefing was refused.
     *
     * @param args the options
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, args);
        if (code != DONE) {
            System.exit(code);
        }
    }

    static int run(PrintStream out, PrintStream err, String... args) {
        CommandLine commandLine = new CommandLine(new Main(out, err));
        commandLine.setCaseInsensitiveEnumValuesAllowed(true);
        commandLine.setParameterExceptionHandler(
                (refused, given) -> {
                    err.println(refused.getMessage());
                    return REFUSED;
                });
        commandLine.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        commandLine.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        return commandLine.execute(args);
    }

    /**
     * Writes the briefing that the options ask for.
     *
     * @return 0 when done, 2 when the input was refused
     */
    @Override
    public Integer call() {
        try {
            if (schema) {
                out.print(JsonReport.schema());
                out.flush();
                return DONE;
            }
            UnitSet set = UnitsOption.of(units, format);
            ScenarioFile file =
                    scenario == null ? ScenarioFile.bundled() : ScenarioFile.read(scenario);
            SoundingReading reading =
                    sounding == null ? file.sounding() : SoundingFile.read(sounding);
            for (ReadingProblem problem : reading.problems()) {
                err.println("sounding: " + problem);
            }
            Sounding air = chosen(reading);
            String name = sounding == null ? file.soundingTold() : sounding.getFileName() + "";
            String told = (name + " " + air.station() + " " + air.launch()).trim();
            ClimbPlan plan = plan(file);
            if (report != null) {
                ReportedAir below = ReportedAir.of(report, err);
                air = below.under(air, plan.aerodrome());
                plan = plan.withAerodrome(below.on(plan.aerodrome()));
                told = told + ", below it the report " + below.name();
            }
            ClimbBriefing briefing = ClimbBriefing.of(plan, air);
            out.print(
                    switch (format) {
                        case TEXT -> TextReport.of(file.title(), told, briefing, set);
                        case CSV -> CsvReport.of(briefing, set);
                        case JSON -> json(file, told, briefing);
                        case HTML -> BriefingPage.of(file.title(), json(file, told, briefing));
                    });
            out.flush();
            return DONE;
        } catch (IOException | IllegalArgumentException | IllegalStateException refused) {
            err.println(refused.getMessage());
            return REFUSED;
        }
    }

    /** With what it was made from: what options changed, and the scenario in full. */
    private String json(ScenarioFile file, String told, ClimbBriefing briefing) {
        List<String> input = new ArrayList<>();
        input.add("# air: " + told);
        if (elevation != null) {
            input.add("# elevation by option: " + elevation);
        }
        if (report != null) {
            input.add("# report by option: " + report);
        }
        input.addAll(file.lines());
        return JsonReport.of(file.title(), told, briefing, input);
    }

    private ClimbPlan plan(ScenarioFile file) {
        ClimbPlan plan = file.plan();
        if (elevation == null) {
            return plan;
        }
        try {
            GeopotentialAltitude other = GeopotentialAltitude.parse(elevation);
            return plan.withAerodrome(plan.aerodrome().withElevation(other));
        } catch (IllegalArgumentException refused) {
            throw new IllegalArgumentException("--elevation: " + refused.getMessage(), refused);
        }
    }

    private Sounding chosen(SoundingReading reading) {
        if (launch == null && reading.soundings().size() > 1) {
            throw new IllegalArgumentException(
                    "the sounding holds "
                            + reading.soundings().size()
                            + " ascents, choose one with --launch: "
                            + reading.soundings().stream().map(Sounding::launch).toList());
        }
        return reading.launchedAt(launch == null ? "" : launch);
    }
}
