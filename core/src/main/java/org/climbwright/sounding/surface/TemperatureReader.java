package org.climbwright.sounding.surface;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;
import org.jspecify.annotations.Nullable;

/** Temperature and dew point: whole degrees in the body, tenths in a remark of US reports. */
final class TemperatureReader implements GroupReader {
    private static final String NUMBER = "(M?\\d{2}|//?|XX|MM)?";
    private static final Pattern PAIR = Pattern.compile(NUMBER + "/" + NUMBER);
    private static final Pattern MISSING = Pattern.compile("/{5}|/{7}");

    /** Whatever has a number beside a slash, or a word of nothing on both sides; no QNH. */
    private static final Pattern LOOKS_SO =
            Pattern.compile("(?![QA])(?=.*\\d)([^/]{0,4}|//?)/([^/]{0,4}|//?)|(XX|MM)/(XX|MM)");

    private static final Set<String> UNKNOWN = Set.of("/", "//", "XX", "MM");

    private static final Pattern TENTHS = Pattern.compile("T([01]\\d{3})([01]\\d{3})?");
    private static final Pattern LOOKS_LIKE_TENTHS = Pattern.compile("T\\d{4}(\\d{4})?");

    /** Half a degree either way, since a half is rounded up by some, and what doubles add to it. */
    private static final double ROUNDING_C = 0.5 + 1e-9;

    private final Notes notes;
    private double temperatureC = Double.NaN;
    private double dewPointC = Double.NaN;
    private boolean tenthsTold;

    TemperatureReader(Notes notes) {
        this.notes = notes;
    }

    @Nullable StaticAirTemperature temperature() {
        return Double.isNaN(temperatureC) ? null : StaticAirTemperature.ofCelsius(temperatureC);
    }

    @Nullable DewPoint dewPoint() {
        return Double.isNaN(dewPointC) ? null : DewPoint.ofCelsius(dewPointC);
    }

    @Override
    public boolean take(Group group) {
        if (group.matches(MISSING)) {
            notes.reportedMissing(ReportElement.TEMPERATURE, group);
            notes.reportedMissing(ReportElement.DEW_POINT, group);
            return true;
        }
        if (!group.matches(LOOKS_SO)) {
            return false;
        }
        Matcher pair = PAIR.matcher(group.text());
        if (!Double.isNaN(dewPointC)) {
            notes.second(ReportElement.TEMPERATURE, group);
        } else if (notes.isSettled(ReportElement.TEMPERATURE, temperature(), group)) {
            return true;
        } else if (pair.matches()) {
            temperatureC = number(ReportElement.TEMPERATURE, group, pair.group(1));
            dewPointC = number(ReportElement.DEW_POINT, group, pair.group(2));
            if (dewPointC > temperatureC) {
                notes.notUsable(
                        group, "a dew point above the temperature", ReportElement.DEW_POINT);
                dewPointC = Double.NaN;
            }
        } else {
            notes.notUsable(
                    group,
                    "not a temperature and a dew point",
                    ReportElement.TEMPERATURE,
                    ReportElement.DEW_POINT);
        }
        return true;
    }

    private double number(ReportElement element, Group group, @Nullable String digits) {
        if (digits == null || UNKNOWN.contains(digits)) {
            notes.reportedMissing(element, group);
            return Double.NaN;
        }
        double celsius =
                digits.startsWith("M")
                        ? -Double.parseDouble(digits.substring(1)) // M00 is -0.0: tenths need it
                        : Double.parseDouble(digits);
        if (!MoistAir.coversWater(UnitScale.CELSIUS.toSi(celsius))) {
            notes.notUsable(group, "no " + element + " of the free air", element);
            return Double.NaN;
        }
        return celsius;
    }

    /** Takes the tenths of a remark where each of them rounds to what the body has. */
    void takeRemark(Group group) {
        if (tenthsTold || !group.matches(LOOKS_LIKE_TENTHS)) {
            return;
        }
        tenthsTold = true;
        Matcher tenths = TENTHS.matcher(group.text());
        if (!tenths.matches()) {
            notes.leftOut("temperature", group, "the digit of a sign must be 0 or 1; left out");
            return;
        }
        double temperature = celsius(tenths.group(1));
        String digits = tenths.group(2);
        double dewPoint = digits == null ? dewPointC : celsius(digits);
        if (Double.isNaN(temperatureC)) {
            notes.leftOut(
                    "temperature", group, "the body has no temperature to agree with; left out");
        } else if (digits != null && Double.isNaN(dewPointC)) {
            notes.leftOut("dew point", group, "the body has no dew point to agree with; left out");
        } else if (!roundsTo(temperatureC, temperature)
                || (digits != null && !roundsTo(dewPointC, dewPoint))) {
            notes.leftOut("temperature", group, "does not round to what the body has; left out");
        } else if (dewPoint > temperature) {
            notes.leftOut("dew point", group, "a dew point above the temperature; left out");
        } else {
            temperatureC = temperature;
            dewPointC = dewPoint;
        }
    }

    /** Whether tenths round to a whole degree; M00 is from -0.5 to 0, and 00 from 0 up. */
    private static boolean roundsTo(double wholeC, double tenthsC) {
        boolean below = Double.compare(wholeC, 0.0) < 0; // true of -0.0, which is M00
        boolean sameSide = wholeC != 0.0 || (below ? tenthsC <= 0.0 : tenthsC >= 0.0);
        return sameSide && Math.abs(tenthsC - wholeC) <= ROUNDING_C;
    }

    private static double celsius(String signAndTenths) {
        double celsius = Integer.parseInt(signAndTenths.substring(1)) / 10.0;
        return signAndTenths.charAt(0) == '1' ? -celsius : celsius;
    }
}
