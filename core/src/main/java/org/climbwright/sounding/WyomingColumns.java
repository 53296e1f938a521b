package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.climbwright.unit.UnitScale;

/** The columns of a listing, seven characters each, as its rows of names and of units tell them. */
final class WyomingColumns {
    /** What is read, in the format's own words; of the two speeds a listing has one. */
    private enum Column {
        PRES("hPa"),
        HGHT("m"),
        TEMP("C"),
        DWPT("C"),
        DRCT("deg"),
        SKNT("knot"),
        SPED("m/s");

        private final String unit;

        Column(String unit) {
            this.unit = unit;
        }

        boolean isSpeed() {
            return this == SKNT || this == SPED;
        }

        boolean hasUnit(String told) {
            return told.equals(unit)
                    || (isSpeed() && (told.equals(SKNT.unit) || told.equals(SPED.unit)));
        }
    }

    private static final int WIDTH = 7;
    private static final int COLUMNS = 11;

    /** So many of its names or units make a row one, though others of it may be damaged. */
    private static final int ENOUGH = 4;

    private final Map<Column, Integer> position = new EnumMap<>(Column.class);
    private final Column speed;
    private UnitScale speedUnit;

    /** The columns that a row of names tells; what it lacks is noted, and missing in each level. */
    WyomingColumns(SourceLine names) {
        List<String> fields = fields(names.text());
        speed = fields.contains(Column.SPED.name()) ? Column.SPED : Column.SKNT;
        speedUnit = speedUnit(speed.unit);
        for (Column column : Column.values()) {
            int at = fields.indexOf(column.name());
            if (at >= 0) {
                position.put(column, at);
            } else if (!column.isSpeed() || column == speed) {
                names.unusable(column.name(), "the header has no such column; column not read");
            }
        }
    }

    static boolean areNamedIn(String line) {
        List<String> fields = fields(line);
        int names = 0;
        for (Column column : Column.values()) {
            names += fields.contains(column.name()) ? 1 : 0;
        }
        return names >= ENOUGH;
    }

    /** Whether a line is the row of units, though some of it may be damaged. */
    boolean haveUnitsIn(String line) {
        List<String> fields = fields(line);
        return position.entrySet().stream()
                        .filter(entry -> entry.getKey().hasUnit(fields.get(entry.getValue())))
                        .count()
                >= ENOUGH;
    }

    /** Takes the row of units; a column in another unit than the format's is not read. */
    void takeUnits(SourceLine units) {
        List<String> fields = fields(units.text());
        new EnumMap<>(position)
                .forEach(
                        (column, at) -> {
                            String unit = fields.get(at);
                            if (!column.hasUnit(unit)) {
                                units.note(column.name(), unit, "not its unit; column not read");
                                position.remove(column);
                            } else if (column.isSpeed()) {
                                speedUnit = speedUnit(unit);
                            }
                        });
    }

    private static UnitScale speedUnit(String unit) {
        return unit.equals(Column.SPED.unit) ? UnitScale.METRE_PER_SECOND : UnitScale.KNOT;
    }

    /** What a row of numbers says of its level. */
    LevelFields level(SourceLine line) {
        FixedColumns columns = new FixedColumns(line, withBlanks(line.text()));
        Field pres = field(columns, Column.PRES);
        Field hght = field(columns, Column.HGHT);
        Field temp = field(columns, Column.TEMP);
        Field dwpt = field(columns, Column.DWPT);
        Field drct = field(columns, Column.DRCT);
        Field wind = field(columns, speed);
        LevelCheck check = new LevelCheck(line);
        double pressurePa = check.pressure(pres, UnitScale.HECTOPASCAL.toSi(pres.number()));
        double heightM = check.height(hght, hght.number());
        double temperatureK = check.temperature(temp, UnitScale.CELSIUS.toSi(temp.number()));
        double dewPointK = UnitScale.CELSIUS.toSi(dwpt.number());
        return new LevelFields(
                pressurePa,
                heightM,
                temperatureK,
                check.dewPoint(dwpt, dewPointK, temperatureK, pressurePa),
                check.wind(drct, wind, speedUnit.toSi(wind.number())));
    }

    private Field field(FixedColumns line, Column column) {
        Integer at = position.get(column);
        // A column is as wide as its longest number and the blank before it.
        return at == null
                ? new Field(column.name(), "", Double.NaN)
                : line.decimalOrBlank(column.name(), WIDTH * at + 2, WIDTH * (at + 1));
    }

    /** A level below the ground has pressure and height only; an editor may have cut its blanks. */
    private static String withBlanks(String line) {
        String text = line.stripTrailing();
        return text.length() == 2 * WIDTH ? text + " ".repeat(COLUMNS * WIDTH) : line;
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        for (int first = 0; first < COLUMNS * WIDTH; first += WIDTH) {
            int end = line.length();
            fields.add(line.substring(Math.min(first, end), Math.min(first + WIDTH, end)).trim());
        }
        return fields;
    }
}
