package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.climbwright.unit.UnitScale;

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

        /** Where its name stands in a header, from 0; negative if it does not. */
        int placeIn(List<String> names) {
            return Math.max(names.indexOf(name), names.indexOf(other));
        }
    }

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,20})?([eE][+-]?\\d{1,2})?");

    private final List<ReadingProblem> problems = new ArrayList<>();
    private final SoundingAssembly assembly =
            new SoundingAssembly(Column.PRESSURE.name, Column.HEIGHT.name);
    private final Map<Column, Integer> position = new EnumMap<>(Column.class);
    private int columns;

    static SoundingReading read(List<String> lines) {
        ProfileReader reader = new ProfileReader();
        int header = 0;
        while (header < lines.size() && isSkipped(lines.get(header))) {
            header++;
        }
        if (header == lines.size()) {
            return new SoundingReading(
                    List.of(),
                    List.of(new ReadingProblem(1, "line", "", "no header line; nothing read")));
        }
        reader.readHeader(new SourceLine(header + 1, lines.get(header), reader.problems));
        if (!reader.problems.isEmpty()) {
            return new SoundingReading(List.of(), reader.problems);
        }
        for (int i = header + 1; i < lines.size(); i++) {
            if (!isSkipped(lines.get(i))) {
                reader.readRow(new SourceLine(i + 1, lines.get(i), reader.problems));
            }
        }
        Sounding sounding = reader.assembly.inAnyOrder();
        reader.problems.sort(Comparator.comparingInt(ReadingProblem::line));
        return new SoundingReading(List.of(sounding), reader.problems);
    }

    private static boolean isSkipped(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    private void readHeader(SourceLine line) {
        List<String> names = Arrays.stream(cells(line)).map(String::trim).toList();
        columns = names.size();
        if (Arrays.stream(Column.values()).noneMatch(column -> column.placeIn(names) >= 0)) {
            line.unusable("line", "no header line of a known format; nothing read");
            return;
        }
        for (Column column : Column.values()) {
            int at = column.placeIn(names);
            if (at < 0) {
                line.unusable(column.name, "the header has no such column; nothing read");
            }
            position.put(column, at);
        }
    }

    private void readRow(SourceLine line) {
        String[] cells = cells(line);
        if (cells.length == columns) {
            assembly.add(line, fields(line, cells));
        } else {
            line.unusable(
                    "line",
                    cells.length + " fields where the header has " + columns + "; level dropped");
        }
    }

    private LevelFields fields(SourceLine line, String[] cells) {
        Field pressure = field(line, cells, Column.PRESSURE);
        Field height = field(line, cells, Column.HEIGHT);
        Field temperature = field(line, cells, Column.TEMPERATURE);
        Field dewPoint = field(line, cells, Column.DEW_POINT);
        Field direction = field(line, cells, Column.WIND_DIRECTION);
        Field speed = field(line, cells, Column.WIND_SPEED);
        LevelCheck check = new LevelCheck(line);
        double pressurePa = check.pressure(pressure, UnitScale.HECTOPASCAL.toSi(pressure.number()));
        double heightM = check.height(height, height.number());
        double temperatureK =
                check.temperature(temperature, UnitScale.CELSIUS.toSi(temperature.number()));
        double dewPointK = UnitScale.CELSIUS.toSi(dewPoint.number());
        return new LevelFields(
                pressurePa,
                heightM,
                temperatureK,
                check.dewPoint(dewPoint, dewPointK, temperatureK, pressurePa),
                check.wind(direction, speed, speed.number()));
    }

    private Field field(SourceLine line, String[] cells, Column column) {
        String text = cells[position.getOrDefault(column, 0)].trim();
        if (text.isEmpty()) {
            return new Field(column.name, text, Double.NaN);
        }
        double number =
                NUMBER.matcher(text).matches()
                        ? Double.parseDouble(text)
                        : line.missing(column.name, text, "not a number");
        return new Field(column.name, text, number);
    }

    private static String[] cells(SourceLine line) {
        return line.text().split(",", -1);
    }
}
