package org.climbwright.sounding.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.WindSpeed;

/**
 * Whether a text holds what a report made of it, found without the reader: each value is written in
 * the code again, and must then be a word of the text in front of its forecast and its remarks.
 */
final class ReportWitness {
    /** Words, or what they begin with, behind which nothing was observed; no list of the reader. */
    private static final List<String> FORECASTS =
            List.of(
                    "BECMG",
                    "FCST",
                    "FORECAST",
                    "GRADU",
                    "INTER",
                    "NOSIG",
                    "OUTLOOK",
                    "PROB",
                    "RAPID",
                    "TEMPO",
                    "TREND",
                    "TTF");

    private static final Pattern DISTANCE =
            Pattern.compile("(?<![0-9/])(?:([0-9]+)\\s+)?([0-9]+)(?:/([0-9]+))?(SM|KM)");

    private final String body;
    private final List<String> words = new ArrayList<>();
    private final List<String> allWords;

    ReportWitness(String text) {
        String report = text.split("=", 2)[0];
        allWords = Arrays.asList(report.strip().split("[\\s\\x1C-\\x1F]+"));
        for (String word : allWords) {
            // a station may have any letters, such as FM5L
            if (!words.isEmpty() && isBehindObservation(word)) {
                break;
            }
            words.add(word);
        }
        body = String.join(" ", words);
    }

    private static boolean isBehindObservation(String word) {
        if (word.equals("RMK") || word.equals("RMKS")) {
            return true;
        }
        boolean isTime = word.startsWith("FM") || word.startsWith("AT") || word.startsWith("TL");
        return FORECASTS.stream().anyMatch(word::startsWith)
                || (isTime && (word.length() == 2 || Character.isDigit(word.charAt(2))));
    }

    /** The first thing of a report that no word explains; empty when each has its word. */
    String unexplained(SurfaceReport report) {
        List<String> unexplained = new ArrayList<>();
        need(unexplained, "station", words.contains(report.station()));
        report.timeUtc()
                .ifPresent(
                        time ->
                                need(
                                        unexplained,
                                        "time",
                                        begins(
                                                digits(2, report.dayOfMonth().orElse(0))
                                                        + digits(2, time.getHour())
                                                        + digits(2, time.getMinute()))));
        report.wind().ifPresent(wind -> need(unexplained, "wind", holds(wind)));
        report.visibility().ifPresent(v -> need(unexplained, "visibility", holds(v)));
        need(unexplained, "weather", words.containsAll(report.presentWeather()));
        for (CloudLayer layer : report.cloudLayers()) {
            need(unexplained, "layer", holds(layer));
        }
        report.verticalVisibility()
                .ifPresent(
                        height ->
                                need(
                                        unexplained,
                                        "vertical visibility",
                                        words.contains("VV" + hundreds(height))));
        report.staticAirTemperature()
                .ifPresent(t -> need(unexplained, "temperature", temperature(t.inCelsius())));
        report.dewPoint().ifPresent(t -> need(unexplained, "dew point", dewPoint(t.inCelsius())));
        report.qnh().ifPresent(qnh -> need(unexplained, "QNH", holds(qnh)));
        for (String other : report.otherGroups()) {
            need(unexplained, "other group", (" " + body + " ").contains(" " + other + " "));
        }
        need(unexplained, "sky", holds(report.sky()));
        return String.join(", ", unexplained);
    }

    private static void need(List<String> unexplained, String what, boolean explained) {
        if (!explained) {
            unexplained.add(what);
        }
    }

    private boolean begins(String beginning) {
        return words.stream().anyMatch(word -> word.startsWith(beginning));
    }

    private boolean holds(SurfaceWind wind) {
        String from = wind.direction().map(ReportWitness::degrees).orElse("(...)");
        String group =
                from
                        + speed(wind.speed(), wind.isSpeedMoreThan())
                        + wind.gust()
                                .map(gust -> "G" + speed(gust, wind.isGustMoreThan()))
                                .orElse("(G//)?")
                        + "(KT|MPS|KMH)";
        String range =
                wind.rangeFrom().map(ReportWitness::degrees).orElse("")
                        + wind.rangeTo().map(to -> "V" + degrees(to)).orElse("");
        return words.stream().anyMatch(word -> word.matches(group))
                && (range.isEmpty() || words.contains(range));
    }

    private static String degrees(TrueDirection direction) {
        return digits(3, Math.round(direction.inDegrees()));
    }

    /** The speed as a number of any of the three units. */
    private static String speed(WindSpeed speed, boolean moreThan) {
        double mps = speed.inMetresPerSecond();
        return (moreThan ? "P" : "")
                + "0?("
                + digits(2, Math.round(mps))
                + "|"
                + digits(2, Math.round(mps * 3.6))
                + "|"
                + digits(2, Math.round(mps * 3600.0 / 1852.0))
                + ")";
    }

    private boolean holds(Visibility visibility) {
        double metres = visibility.distance().inMetres();
        String four = digits(4, Math.round(metres));
        boolean inMetres =
                switch (visibility.bound()) {
                    case AS_TOLD -> words.contains(four) || words.contains(four + "NDV");
                    case OR_MORE ->
                            metres == 10000.0
                                    && words.stream().anyMatch(w -> w.matches("9999(NDV)?|CAVOK"));
                    case LESS_THAN ->
                            metres == 50.0 && words.stream().anyMatch(w -> w.matches("0000(NDV)?"));
                };
        return inMetres || inMilesOrKilometres(metres);
    }

    private boolean inMilesOrKilometres(double metres) {
        Matcher distance = DISTANCE.matcher(body);
        while (distance.find()) {
            double unit = distance.group(4).equals("SM") ? 1609.344 : 1000.0;
            double last = Double.parseDouble(distance.group(2));
            double below = distance.group(3) == null ? 1.0 : Double.parseDouble(distance.group(3));
            double whole = distance.group(1) == null ? 0.0 : Double.parseDouble(distance.group(1));
            // the word before may belong to something else
            if (Math.abs(metres - (whole + last / below) * unit) < 1e-6
                    || Math.abs(metres - last / below * unit) < 1e-6) {
                return true;
            }
        }
        return false;
    }

    private boolean holds(CloudLayer layer) {
        String amount =
                switch (layer.amount()) {
                    case FEW -> "FEW";
                    case SCATTERED -> "SCT";
                    case BROKEN -> "BKN";
                    case OVERCAST -> "OVC";
                    case NOT_OBSERVED -> "///";
                };
        String type =
                switch (layer.type()) {
                    case CUMULONIMBUS -> "CB";
                    case TOWERING_CUMULUS -> "TCU";
                    case NONE_TOLD -> "";
                    case NOT_OBSERVED -> "///";
                };
        String base = layer.base().map(ReportWitness::hundreds).orElse("///");
        return words.contains(amount + base + type)
                || ((amount + base).equals("//////") && words.contains("///" + type));
    }

    private static String hundreds(Height height) {
        return digits(3, Math.round(height.inFeet() / 100.0));
    }

    private boolean holds(Sky sky) {
        return switch (sky) {
            case CAVOK -> words.contains("CAVOK");
            case SKY_CLEAR -> words.contains("SKC");
            case CLEAR_BELOW_12000_FEET -> words.contains("CLR");
            case NO_SIGNIFICANT_CLOUD -> words.contains("NSC");
            case NO_CLOUD_DETECTED -> words.contains("NCD");
            case OBSCURED -> begins("VV");
            case LAYERS, NOT_REPORTED -> true;
        };
    }

    private boolean temperature(double celsius) {
        return words.stream().anyMatch(word -> word.matches(whole(celsius) + "/.*"))
                || allWords.stream().anyMatch(word -> word.matches("T" + tenths(celsius) + ".*"));
    }

    private boolean dewPoint(double celsius) {
        return words.stream().anyMatch(word -> word.matches(".*/" + whole(celsius)))
                || allWords.stream().anyMatch(word -> word.matches("T.*" + tenths(celsius)));
    }

    /** Zero may be told as below zero, rounded. */
    private static String whole(double celsius) {
        if (celsius != Math.rint(celsius)) {
            return "no whole degree";
        }
        String digits = digits(2, Math.round(Math.abs(celsius)));
        return celsius == 0.0 ? "M?" + digits : celsius < 0.0 ? "M" + digits : digits;
    }

    private static String tenths(double celsius) {
        String digits = digits(3, Math.round(Math.abs(celsius) * 10.0));
        return celsius == 0.0 ? "[01]" + digits : (celsius < 0.0 ? "1" : "0") + digits;
    }

    private boolean holds(ReportedQnh qnh) {
        return switch (qnh.unit()) {
            case HECTOPASCAL -> {
                String group = "Q" + digits(4, Math.round(qnh.setting().inHectopascals()));
                yield words.stream().anyMatch(w -> w.equals(group) || w.startsWith(group + "/"));
            }
            case INCH_OF_MERCURY -> {
                String number = digits(4, Math.round(qnh.setting().inInchesOfMercury() * 100));
                String shared = "Q.{4}/A?" + number.substring(0, 2) + "[.]?" + number.substring(2);
                yield words.contains("A" + number)
                        || words.stream().anyMatch(w -> w.matches(shared));
            }
        };
    }

    private static String digits(int count, long number) {
        return String.format(Locale.ROOT, "%0" + count + "d", number);
    }
}
