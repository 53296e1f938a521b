package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.climbwright.atmosphere.Wind;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;

/** Reads a CSV profile: one ascent, a header of known names, rows in any order. */
final class ProfileReader {
    /** A column by our own name and by the one that the University of Wyoming's service writes. */
    private enum Column {
        PRESSURE("pressure_hpa", "pressure_hPa"),
        HEIGHT("geopotential_height_m", "geopotential height_m"),
        TEMPERATURE("temperature_c", "temperature_C"),
        DEW_POINT("dewpoint_c", "dew point temperature_C"),
        WIND_DIRECTION("wind_from_deg", "wind direction_degree"),
        WIND_SPEED("wind_speed_mps", "wind speed_m/s");

        private final String name;
        private final String other;

        Column(String name, String other) {
            this.name = name;
            this.other = other;
        }
    }

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,20})?([eE][+-]?\\d{1,2})?");

    private final List<ReadingProblem> problems = new ArrayList<>();
    private final List<RawLevel> levels = new ArrayList<>();
    private final Map<Column, Integer> position = new EnumMap<>(Column.class);
    private int columns;

    static SoundingReading read(List<String> lines) {
        ProfileReader reader = new ProfileReader();
        int header = 0;
        while (header < lines.size() && isSkipped(lines.get(header))) {
            header++;
        }
        if (header == lines.size() || !reader.readHeader(header + 1, lines.get(header))) {
            return new SoundingReading(List.of(), reader.problemsOrEmptyFile());
        }
        for (int i = header + 1; i < lines.size(); i++) {
            if (!isSkipped(lines.get(i))) {
                reader.readRow(i + 1, lines.get(i));
            }
        }
        SoundingAssembly assembly =
                new SoundingAssembly(reader.problems, Column.PRESSURE.name, Column.HEIGHT.name);
        Sounding sounding = assembly.inAnyOrder("", "", reader.levels);
        reader.problems.sort(Comparator.comparingInt(ReadingProblem::line));
        return new SoundingReading(List.of(sounding), reader.problems);
    }

    private static boolean isSkipped(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    private List<ReadingProblem> problemsOrEmptyFile() {
        return problems.isEmpty()
                ? List.of(new ReadingProblem(1, "line", "", "no header line; nothing read"))
                : problems;
    }

    private boolean readHeader(int number, String line) {
        String[] names = line.split(",", -1);
        columns = names.length;
        for (Column column : Column.values()) {
            List<String> trimmed = Arrays.stream(names).map(String::trim).toList();
            int at = Math.max(trimmed.indexOf(column.name), trimmed.indexOf(column.other));
            if (at < 0) {
                problems.add(
                        new ReadingProblem(
                                number,
                                column.name,
                                line.trim(),
                                "the header has no such column; nothing read"));
            }
            position.put(column, at);
        }
        return problems.isEmpty();
    }

    private void readRow(int number, String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != columns) {
            problems.add(
                    new ReadingProblem(
                            number,
                            "line",
                            line.trim(),
                            String.format(
                                    Locale.ROOT,
                                    "%d fields where the header has %d; level dropped",
                                    cells.length,
                                    columns)));
            return;
        }
        LevelCheck check =
                new LevelCheck(
                        (field, value, reason) ->
                                problems.add(
                                        new ReadingProblem(
                                                number,
                                                field,
                                                Double.toString(value),
                                                reason + "; taken as missing")));
        double temperature =
                check.temperature(Column.TEMPERATURE.name, cell(number, cells, Column.TEMPERATURE));
        double dewPoint =
                check.temperature(Column.DEW_POINT.name, cell(number, cells, Column.DEW_POINT));
        double direction =
                check.direction(
                        Column.WIND_DIRECTION.name, cell(number, cells, Column.WIND_DIRECTION));
        double speed = check.speed(Column.WIND_SPEED.name, cell(number, cells, Column.WIND_SPEED));
        double pressure =
                check.pressure(Column.PRESSURE.name, cell(number, cells, Column.PRESSURE) * 100.0);
        double height = check.height(Column.HEIGHT.name, cell(number, cells, Column.HEIGHT));
        if (Double.isNaN(pressure) && Double.isNaN(height)) {
            problems.add(
                    new ReadingProblem(
                            number,
                            "line",
                            line.trim(),
                            "neither pressure nor height; level dropped"));
            return;
        }
        boolean windy = !Double.isNaN(direction) && !Double.isNaN(speed);
        Wind wind =
                windy
                        ? Wind.from(
                                TrueDirection.ofDegrees(direction),
                                WindSpeed.ofMetresPerSecond(speed))
                        : Wind.ofComponents(0.0, 0.0);
        levels.add(
                new RawLevel(
                        number,
                        line.trim(),
                        SoundingLevel.ofSi(
                                pressure,
                                height,
                                temperature,
                                check.dewPoint(Column.DEW_POINT.name, dewPoint, temperature),
                                windy ? wind.eastwardMps() : Double.NaN,
                                windy ? wind.northwardMps() : Double.NaN)));
    }

    private double cell(int number, String[] cells, Column column) {
        String text = cells[position.getOrDefault(column, 0)].trim();
        if (text.isEmpty()) {
            return Double.NaN;
        }
        if (!NUMBER.matcher(text).matches()) {
            problems.add(
                    new ReadingProblem(
                            number, column.name, text, "not a number; taken as missing"));
            return Double.NaN;
        }
        return Double.parseDouble(text);
    }
}
