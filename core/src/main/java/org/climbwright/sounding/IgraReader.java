package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.Wind;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;
import org.jspecify.annotations.Nullable;

/** Reads IGRA version 2: ascents in fixed columns, as observed or with derived parameters. */
final class IgraReader {
    /** Derived lines are 150 columns wide, observed ones 51. */
    private static final int LONGEST_OBSERVED_LINE = 80;

    private final List<ReadingProblem> problems = new ArrayList<>();
    private final List<Sounding> soundings = new ArrayList<>();
    private final boolean derived;

    private @Nullable IgraHeader header;
    private int headerLine;
    private int read;
    private final List<RawLevel> levels = new ArrayList<>();

    private IgraReader(boolean derived) {
        this.derived = derived;
    }

    static SoundingReading read(List<String> lines) {
        boolean derived =
                lines.stream()
                        .anyMatch(
                                line ->
                                        !line.startsWith("#")
                                                && line.length() > LONGEST_OBSERVED_LINE);
        IgraReader reader = new IgraReader(derived);
        for (int i = 0; i < lines.size(); i++) {
            reader.take(i + 1, lines.get(i));
        }
        reader.endOfAscent();
        reader.problems.sort(Comparator.comparingInt(ReadingProblem::line));
        return new SoundingReading(reader.soundings, reader.problems);
    }

    private void take(int number, String line) {
        if (line.startsWith("#")) {
            endOfAscent();
            if (IgraHeader.isOne(line)) {
                header = IgraHeader.parse(line);
                headerLine = number;
            } else {
                problem(number, line, "not the header of an ascent; its levels dropped");
            }
        } else if (header != null) {
            read++;
            takeLevel(number, line);
        } else if (!line.isBlank()) {
            problem(number, line, "no ascent to belong to; level dropped");
        }
    }

    private void takeLevel(int number, String line) {
        int before = problems.size();
        FixedColumns columns = new FixedColumns(number, line, problems);
        LevelCheck check =
                new LevelCheck(
                        (field, value, reason) ->
                                columns.problem(field, Double.toString(value), reason));
        Fields fields = derived ? derived(columns, check) : observed(columns, check);
        if (Double.isNaN(fields.pressurePa()) && Double.isNaN(fields.heightM())) {
            if (problems.size() == before) {
                problem(number, line, "neither pressure nor height; level dropped");
            } else {
                problem(number, line, "no pressure and no height left; level dropped");
            }
            return;
        }
        levels.add(
                new RawLevel(
                        number,
                        line.trim(),
                        SoundingLevel.ofSi(
                                fields.pressurePa(),
                                fields.heightM(),
                                fields.temperatureK(),
                                fields.dewPointK(),
                                fields.wind() == null ? Double.NaN : fields.wind().eastwardMps(),
                                fields.wind() == null
                                        ? Double.NaN
                                        : fields.wind().northwardMps())));
    }

    /** The fields of one line in SI; NaN and null for what is missing. */
    private record Fields(
            double pressurePa,
            double heightM,
            double temperatureK,
            double dewPointK,
            @Nullable Wind wind) {}

    private static Fields observed(FixedColumns columns, LevelCheck check) {
        double temperature = check.temperature("TEMP", columns.number("TEMP", 23, 27) / 10.0);
        double depression = columns.number("DPDP", 35, 39) / 10.0;
        double direction = check.direction("WDIR", columns.number("WDIR", 41, 45));
        double speed = check.speed("WSPD", columns.number("WSPD", 47, 51) / 10.0);
        return new Fields(
                check.pressure("PRESS", columns.number("PRESS", 10, 15)),
                check.height("GPH", columns.number("GPH", 17, 21)),
                temperature,
                check.dewPoint("DPDP", temperature - depression, temperature),
                Double.isNaN(direction) || Double.isNaN(speed)
                        ? null
                        : Wind.from(
                                TrueDirection.ofDegrees(direction),
                                WindSpeed.ofMetresPerSecond(speed)));
    }

    private static Fields derived(FixedColumns columns, LevelCheck check) {
        double temperature =
                check.temperature("TEMP", columns.number("TEMP", 25, 31) / 10.0 - 273.15);
        double vapourPressurePa = columns.number("VAPPRESS", 73, 79) / 10.0;
        double east = columns.number("UWND", 113, 119) / 10.0;
        double north = columns.number("VWND", 129, 135) / 10.0;
        double speed = check.speed("UWND", StrictMath.hypot(east, north));
        return new Fields(
                check.pressure("PRESS", columns.number("PRESS", 1, 7)),
                check.height("REPGPH", columns.number("REPGPH", 9, 15)),
                temperature,
                check.dewPoint("VAPPRESS", dewPoint(vapourPressurePa), temperature),
                Double.isNaN(speed) ? null : Wind.ofComponents(east, north));
    }

    private static double dewPoint(double vapourPressurePa) {
        return MoistAir.coversVapourPressure(vapourPressurePa)
                ? MoistAir.dewPoint(vapourPressurePa)
                : Double.NaN;
    }

    private void endOfAscent() {
        IgraHeader ascent = header;
        if (ascent != null) {
            if (read != ascent.levels()) {
                problem(
                        headerLine,
                        ascent.station() + " " + ascent.launch(),
                        ascent.levels() + " levels announced, but " + read + " found");
            }
            SoundingAssembly assembly =
                    derived
                            ? new SoundingAssembly(problems, "PRESS", "REPGPH")
                            : new SoundingAssembly(problems, "PRESS", "GPH");
            soundings.add(assembly.inOrderOfFlight(ascent.station(), ascent.launch(), levels));
        }
        header = null;
        read = 0;
        levels.clear();
    }

    private void problem(int number, String text, String reason) {
        problems.add(new ReadingProblem(number, "line", text.trim(), reason));
    }
}
