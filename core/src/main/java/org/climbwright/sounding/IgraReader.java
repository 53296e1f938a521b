package org.climbwright.sounding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.climbwright.unit.UnitScale;
import org.jspecify.annotations.Nullable;

/** Reads IGRA version 2: ascents in fixed columns, as observed or with derived parameters. */
final class IgraReader {
    /** Derived lines are 150 columns wide and more, observed ones 51, and 71 with a header. */
    private static final int LONGEST_OBSERVED_LINE = 80;

    private final List<ReadingProblem> problems = new ArrayList<>();
    private final List<Sounding> soundings = new ArrayList<>();
    private final boolean derived;

    private @Nullable IgraAscent ascent;

    private IgraReader(boolean derived) {
        this.derived = derived;
    }

    static SoundingReading read(List<String> lines) {
        IgraReader reader = new IgraReader(isDerived(lines));
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                reader.take(new SourceLine(i + 1, lines.get(i), reader.problems));
            }
        }
        reader.endOfAscent();
        reader.problems.sort(Comparator.comparingInt(ReadingProblem::line));
        return new SoundingReading(reader.soundings, reader.problems);
    }

    /** Most lines decide, as one may have lost its end or its line break; else the header. */
    private static boolean isDerived(List<String> lines) {
        List<String> written = lines.stream().filter(line -> !line.isBlank()).toList();
        long wide = written.stream().filter(IgraReader::isWide).count();
        boolean underWideHeader =
                written.stream()
                        .filter(IgraHeader::isOne)
                        .findFirst()
                        .filter(IgraReader::isWide)
                        .isPresent();
        return 2 * wide > written.size() || (2 * wide == written.size() && underWideHeader);
    }

    private static boolean isWide(String line) {
        return line.length() > LONGEST_OBSERVED_LINE;
    }

    private void take(SourceLine line) {
        if (line.text().startsWith("#")) {
            endOfAscent();
            beginAscent(line);
        } else if (ascent == null) {
            line.unusable("line", "no ascent to belong to; level dropped");
        } else {
            FixedColumns columns = new FixedColumns(line);
            LevelCheck check = new LevelCheck(line);
            ascent.add(line, derived ? derived(columns, check) : observed(columns, check));
        }
    }

    private static LevelFields observed(FixedColumns columns, LevelCheck check) {
        Field press = columns.wholeNumber("PRESS", 10, 15);
        Field gph = columns.wholeNumber("GPH", 17, 21);
        Field temp = columns.wholeNumber("TEMP", 23, 27);
        Field dpdp = columns.wholeNumber("DPDP", 35, 39);
        Field wdir = columns.wholeNumber("WDIR", 41, 45);
        Field wspd = columns.wholeNumber("WSPD", 47, 51);
        double pressurePa = check.pressure(press, press.number());
        double heightM = check.height(gph, gph.number());
        double temperatureK = check.temperature(temp, UnitScale.CELSIUS.toSi(temp.number() / 10.0));
        double dewPointK =
                check.dewPoint(dpdp, temperatureK - dpdp.number() / 10.0, temperatureK, pressurePa);
        if (Double.isNaN(dewPointK) && !Double.isNaN(temperatureK)) {
            Field rh = columns.wholeNumber("RH", 29, 33);
            dewPointK =
                    check.dewPointOfHumidity(
                            rh,
                            UnitScale.PERCENT_RELATIVE_HUMIDITY.toSi(rh.number() / 10.0),
                            temperatureK,
                            pressurePa);
        }
        return new LevelFields(
                pressurePa,
                heightM,
                temperatureK,
                dewPointK,
                check.wind(wdir, wspd, wspd.number() / 10.0));
    }

    private static LevelFields derived(FixedColumns columns, LevelCheck check) {
        Field press = columns.wholeNumber("PRESS", 1, 7);
        Field repgph = columns.wholeNumber("REPGPH", 9, 15);
        Field temp = columns.wholeNumber("TEMP", 25, 31);
        Field vappress = columns.wholeNumber("VAPPRESS", 73, 79);
        Field uwnd = columns.wholeNumber("UWND", 113, 119);
        Field vwnd = columns.wholeNumber("VWND", 129, 135);
        double pressurePa = check.pressure(press, press.number());
        double heightM = check.height(repgph, repgph.number());
        double temperatureK = check.temperature(temp, temp.number() / 10.0);
        double vapourPressurePa = vappress.number() / 10.0;
        return new LevelFields(
                pressurePa,
                heightM,
                temperatureK,
                check.dewPointOfVapour(vappress, vapourPressurePa, temperatureK, pressurePa),
                check.wind(uwnd, uwnd.number() / 10.0, vwnd, vwnd.number() / 10.0));
    }

    private void beginAscent(SourceLine line) {
        if (IgraHeader.isOne(line.text())) {
            ascent = new IgraAscent(line, derived ? "REPGPH" : "GPH");
        } else {
            line.unusable("line", "not the header of an ascent; its levels dropped");
        }
    }

    private void endOfAscent() {
        if (ascent != null) {
            soundings.add(ascent.sounding());
        }
        ascent = null;
    }
}
