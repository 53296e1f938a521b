package org.climbwright.working;

import java.util.List;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.icing.IcingRule;
import org.climbwright.path.ClimbState;
import org.climbwright.sounding.Sounding;

/**
 * Workings about ice: why total air temperature begins a protection and static air temperature ends
 * it, and where the levels of 0 °C of a sounding come from.
 *
 * <p>Limits of use: for study. The thresholds of an aeroplane are those of its flight manual; a
 * rule that is not met is not "no icing", and what the crew sees decides.
 */
public final class IcingWorking {
    private static final String TOTAL =
            "adiabatic flow of a perfect gas with a ratio of specific heats of 1.4, NACA Report"
                    + " 1135";

    private IcingWorking() {}

    /**
     * Shows what a rule for icing conditions makes of some points of a climb: cold enough by total
     * air temperature, and too cold by static.
     *
     * <p>Symbols: TATon and, where the rule has them, SATon and SAToff given, and Tn and Mn for the
     * n-th point; TATn found, and SATonn, the static air temperature at which the rule begins at
     * that Mach number.
     *
     * @param rule the rule, with a threshold of total air temperature
     * @param points the points, in order
     * @return the working
     * @throws IllegalArgumentException if the rule has no threshold of total air temperature
     * @throws org.climbwright.quantity.OutsideModelException if a temperature or speed is outside
     *     the range of {@link TotalTemperature}
     */
    public static Working totalOnStaticOff(IcingRule rule, List<ClimbState> points) {
        double onK =
                rule.warmestTotal()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "the working needs a rule with a threshold of total"
                                                        + " air temperature, but had "
                                                        + rule))
                        .inKelvins();
        Sheet sheet =
                new Sheet("Which temperature says that protection is due, and which that it ends?");
        sheet.given(
                "total air temperature of the rule, at or below",
                "TATon",
                onK,
                "K",
                Reading.celsius(onK),
                rule.basis());
        rule.warmestStatic()
                .ifPresent(
                        warmest ->
                                sheet.given(
                                        "static air temperature of the rule, at or below, which"
                                                + " suffices too",
                                        "SATon",
                                        warmest.inKelvins(),
                                        "K",
                                        Reading.celsius(warmest.inKelvins()),
                                        rule.basis()));
        rule.coldest()
                .ifPresent(
                        coldest ->
                                sheet.given(
                                        "static air temperature of the rule, not below",
                                        "SAToff",
                                        coldest.inKelvins(),
                                        "K",
                                        Reading.celsius(coldest.inKelvins()),
                                        rule.basis()));
        for (int i = 0; i < points.size(); i++) {
            given(sheet, i + 1, points.get(i));
        }
        for (int i = 0; i < points.size(); i++) {
            lines(sheet, i + 1, points.get(i), onK);
        }
        for (ClimbState point : points) {
            sheet.answer(answer(rule, onK, point));
        }
        sheet.answer(
                "A gauge of total air temperature decides when it begins, since that is what intake"
                        + " and wing feel; static air temperature decides when it is too cold for"
                        + " drops, since that is what the cloud has.");
        sheet.limit(
                "A rule that is not met is not \"no icing\"; colder than the rule speaks of, ice"
                        + " crystals are possible.");
        return sheet.working();
    }

    private static void given(Sheet sheet, int n, ClimbState point) {
        String level = Reading.feet(point.pressureAltitude().inMetres());
        double temperatureK = point.air().temperatureK();
        double mach = point.mach().number();
        sheet.given(
                "static air temperature at " + level,
                "T" + n,
                temperatureK,
                "K",
                Reading.celsius(temperatureK),
                "of the air of the climb");
        sheet.given("Mach number at " + level, "M" + n, mach, "", Reading.mach(mach), "");
    }

    private static void lines(Sheet sheet, int n, ClimbState point, double onK) {
        String level = Reading.feet(point.pressureAltitude().inMetres());
        String rise = "(1 + 0.2 · M" + n + "^2)";
        double totalK = point.totalAirTemperature().inKelvins();
        sheet.step(
                "Total air temperature at " + level,
                "TAT" + n,
                "T" + n + " · " + rise,
                totalK,
                "K",
                Reading.celsius(totalK),
                TOTAL);
        double staticOnK = TotalTemperature.staticFromMach(onK, point.mach().number(), 1.0);
        sheet.step(
                "Static air temperature with which the rule begins at that Mach number",
                "SATon" + n,
                "TATon / " + rise,
                staticOnK,
                "K",
                Reading.celsius(staticOnK),
                TOTAL);
    }

    private static String answer(IcingRule rule, double onK, ClimbState point) {
        double totalK = point.totalAirTemperature().inKelvins();
        double staticK = point.air().temperatureK();
        boolean isTotalCold = totalK <= onK;
        boolean isStaticCold =
                rule.warmestStatic().map(warmest -> staticK <= warmest.inKelvins()).orElse(false);
        String against =
                rule.warmestStatic()
                                .map(warmest -> ", " + than(staticK, warmest.inKelvins()))
                                .orElse("")
                        + rule.coldest()
                                .map(
                                        coldest ->
                                                (staticK < coldest.inKelvins()
                                                                ? ", below "
                                                                : ", not below ")
                                                        + Reading.celsius(coldest.inKelvins()))
                                .orElse("");
        return "At "
                + Reading.feet(point.pressureAltitude().inMetres())
                + " total air temperature is "
                + Reading.celsius(totalK)
                + ", "
                + than(totalK, onK)
                + ", and static "
                + Reading.celsius(staticK)
                + against
                + ": "
                + switch (rule.at(point)) {
                    case CONDITIONS -> "icing conditions by the rule.";
                    case NOT_KNOWN -> "cold enough, but whether there is moisture is not known.";
                    case COLDER_THAN_THE_RULE ->
                            "visible moisture colder than the rule speaks of, where ice crystals"
                                    + " are possible.";
                    case NOT_MET ->
                            isTotalCold || isStaticCold
                                    ? "the rule is not met, for want of visible moisture."
                                    : "the rule is not met.";
                };
    }

    private static String than(double kelvins, double warmestK) {
        return (kelvins <= warmestK ? "not above " : "above ") + Reading.celsius(warmestK);
    }

    /**
     * Shows where the levels of 0 °C of a sounding come from, and that there may be several.
     *
     * <p>Symbols, for the n-th level: pan, Tan, pbn, Tbn given, what is reported below and above
     * it; pn and Hpn found.
     *
     * @param sounding the sounding
     * @return the working
     * @throws IllegalStateException if fewer than two levels have pressure and temperature
     * @throws org.climbwright.quantity.OutsideModelException if a level of 0 °C is above 20,000 m
     */
    public static Working freezingLevels(Sounding sounding) {
        return SoundingIsotherms.working(sounding);
    }
}
