package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.unit.UnitScale;

/**
 * QNH as a report gives it, with the unit that it came in: the unit tells how coarse it is.
 *
 * <p>Limits of use: an altimeter is set to what the controller, the aeronautical information and
 * the operator's procedures say, not to a figure read by a program.
 *
 * @param setting the setting
 * @param unit the unit of the report
 * @accuracy rounded down: the exact QNH is up to 1 hPa (27 ft near the sea) or 0.01 inHg (9 ft)
 *     more
 * @source WMO-No. 306, Manual on Codes, FM 15 METAR, regulation 15.12 (from memory); Federal
 *     Meteorological Handbook No. 1 for inches (from memory); that inches are cut after hundredths:
 *     AFMAN 15-111, 12 March 2019, 6.9.11
 */
public record ReportedQnh(AltimeterSetting setting, Unit unit) implements Serializable {

    /** The units of reports. */
    public enum Unit {
        /** A whole hectopascal: Q1009. */
        HECTOPASCAL(UnitScale.HECTOPASCAL.toSi(1.0)),
        /** A hundredth of an inch of mercury: A2980. */
        INCH_OF_MERCURY(UnitScale.INCH_OF_MERCURY.toSi(0.01));

        private final double stepPa;

        Unit(double stepPa) {
            this.stepPa = stepPa;
        }

        double stepPa() {
            return stepPa;
        }
    }

    /**
     * Makes a QNH of parts that are there.
     *
     * @param setting the setting
     * @param unit the unit of the report
     */
    public ReportedQnh {
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(unit, "unit");
    }

    private static final Pattern GROUP = Pattern.compile("([QA])(\\d{4})");

    /** Far below a step, far above the last bit: neighbouring steps only touch. */
    private static final double TOUCH_PA = 1e-3;

    /**
     * Returns the QNH that a group of a report tells.
     *
     * @param text the group, {@code "Q1009"} or {@code "A2980"}
     * @return the QNH
     * @throws IllegalArgumentException if the text is no such group, or the setting is outside 850
     *     to 1100 hPa
     */
    public static ReportedQnh parse(String text) {
        Matcher group = GROUP.matcher(text);
        if (!group.matches()) {
            throw new IllegalArgumentException("not a QNH: \"" + text + "\"");
        }
        int digits = Integer.parseInt(group.group(2));
        return group.group(1).equals("Q")
                ? new ReportedQnh(AltimeterSetting.ofHectopascals(digits), Unit.HECTOPASCAL)
                : new ReportedQnh(
                        AltimeterSetting.ofInchesOfMercury(digits / 100.0), Unit.INCH_OF_MERCURY);
    }

    /**
     * Tells whether two groups can come from one exact QNH, each rounded down to its own step.
     *
     * @param other the other
     * @return true if some exact QNH is reported as both
     */
    public boolean agreesWith(ReportedQnh other) {
        double above = other.setting.inPascals() - setting.inPascals();
        return above < unit.stepPa - TOUCH_PA && -above < other.unit.stepPa - TOUCH_PA;
    }

    /**
     * Returns the setting in the unit of the report, for reading.
     *
     * @return a text such as {@code "29.8 inHg"}; may change between versions
     */
    @Override
    public String toString() {
        return switch (unit) {
            case HECTOPASCAL -> setting.inHectopascals() + " hPa";
            case INCH_OF_MERCURY -> setting.inInchesOfMercury() + " inHg";
        };
    }
}
