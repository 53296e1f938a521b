package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A recorded report says what a person reads in it")
class ReadByEyeTest {
    private static final String TABLE = "/sounding/surface/read-by-eye.csv";

    /** A number leaves a value as it came in; miles alone are divided out of metres here. */
    private static final double LAST_BITS = 1e-12;

    private static final double METRES_PER_MILE = 1609.344;

    private static final Map<String, Double> LARGEST = new TreeMap<>();
    private static Map<String, SurfaceReport> reports;

    @BeforeAll
    static void read() throws IOException {
        SurfaceReportReading reading = SurfaceReportReader.read(Reports.path());
        assertThat(reading.problems()).isEmpty();
        reports =
                reading.reports().stream()
                        .collect(Collectors.toMap(SurfaceReport::station, Function.identity()));
    }

    @AfterAll
    static void printLargestDifferences() {
        LARGEST.forEach(
                (quantity, difference) ->
                        System.out.println(
                                "largest difference, reports read by eye, "
                                        + quantity
                                        + ": "
                                        + difference));
    }

    @Test
    @DisplayName("in all 32 reports of the file, and ORIGIN.csv says whose they are")
    void counted() {
        assertThat(reports).hasSize(32);
        assertThat(Table.rows(TABLE)).hasSize(32);
        assertThat(Table.rows("/sounding/surface/ORIGIN.csv"))
                .singleElement()
                .asString()
                .startsWith(Reports.FILE);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("group by group")
    void saysTheSame(ArgumentsAccessor row) {
        SurfaceReport report = reports.get(row.getString(0));
        head(report, row);
        wind(report.wind(), row);
        visibility(report.visibility(), row);
        assertThat(report.presentWeather()).isEqualTo(list(row, 11, " "));
        assertThat(words(report.sky())).isEqualTo(text(row, 12));
        assertThat(report.cloudLayers().stream().map(ReadByEyeTest::words))
                .isEqualTo(list(row, 13, "; "));
        same(
                "vertical visibility, ft",
                report.verticalVisibility().map(Height::inFeet),
                text(row, 14));
        same(
                "temperature, degrees C",
                report.staticAirTemperature().map(t -> t.inCelsius()),
                text(row, 15));
        same("dew point, degrees C", report.dewPoint().map(t -> t.inCelsius()), text(row, 16));
        qnh(report.qnh().orElseThrow(), row);
        assertThat(report.otherGroups()).isEqualTo(list(row, 19, "; "));
        missing(report, list(row, 20, "; "));
        assertThat(text(row, 21)).isEqualTo("read by eye from the report");
    }

    private static void head(SurfaceReport report, ArgumentsAccessor row) {
        String[] time = text(row, 1).split(" ", -1);
        assertThat(report.dayOfMonth()).hasValue(Integer.parseInt(time[0]));
        assertThat(report.timeUtc()).hasValue(LocalTime.parse(time[1]));
        assertThat(report.isAutomatic() ? "yes" : "no").isEqualTo(text(row, 2));
        assertThat(report.isCorrected()).isFalse();
        assertThat(report.isNil()).isFalse();
        assertThat(report.problems()).isEmpty();
    }

    private static void wind(Optional<SurfaceWind> wind, ArgumentsAccessor row) {
        String from = text(row, 3);
        assertThat(wind.map(SurfaceWind::isCalm).orElse(false)).isEqualTo(from.equals("calm"));
        assertThat(wind.map(SurfaceWind::isVariable).orElse(false)).isFalse();
        same(
                "wind direction, degrees",
                wind.flatMap(SurfaceWind::direction).map(TrueDirection::inDegrees),
                from.equals("calm") ? "" : from);
        boolean knots = !text(row, 5).equals("m/s");
        same(
                "wind speed, " + (knots ? "kn" : "m/s"),
                wind.map(w -> knots ? w.speed().inKnots() : w.speed().inMetresPerSecond()),
                text(row, 4));
        same("gust, kn", wind.flatMap(SurfaceWind::gust).map(gust -> gust.inKnots()), text(row, 6));
        String[] range = (text(row, 7) + "- ").split("-", -1);
        same(
                "range of directions, degrees",
                wind.flatMap(SurfaceWind::rangeFrom).map(TrueDirection::inDegrees),
                range[0].strip());
        same(
                "range of directions, degrees",
                wind.flatMap(SurfaceWind::rangeTo).map(TrueDirection::inDegrees),
                range[1].strip());
    }

    private static void visibility(Optional<Visibility> visibility, ArgumentsAccessor row) {
        boolean miles = text(row, 9).equals("SM");
        same(
                "visibility, " + (miles ? "statute miles" : "km"),
                visibility.map(v -> v.distance().inMetres() / (miles ? METRES_PER_MILE : 1000.0)),
                text(row, 8));
        assertThat(visibility.map(v -> words(v.bound())).orElse("")).isEqualTo(text(row, 10));
    }

    private static String words(Visibility.Bound bound) {
        return switch (bound) {
            case AS_TOLD -> "";
            case OR_MORE -> "+";
            case LESS_THAN -> "<";
        };
    }

    private static void qnh(ReportedQnh qnh, ArgumentsAccessor row) {
        boolean inches = text(row, 18).equals("inHg");
        assertThat(qnh.unit() == ReportedQnh.Unit.INCH_OF_MERCURY).isEqualTo(inches);
        same(
                "QNH, " + text(row, 18),
                Optional.of(
                        inches
                                ? qnh.setting().inInchesOfMercury()
                                : qnh.setting().inHectopascals()),
                text(row, 17));
    }

    /** Elements without a value, and no others, have a reason. */
    private static void missing(SurfaceReport report, List<String> expected) {
        List<String> found =
                Arrays.stream(ReportElement.values())
                        .flatMap(element -> report.whyMissing(element).stream())
                        .filter(absence -> !isUsual(absence))
                        .map(ReadByEyeTest::words)
                        .toList();
        assertThat(found).isEqualTo(expected);
    }

    /** Most reports have no weather to tell, and see the sky. */
    private static boolean isUsual(Absence absence) {
        return absence.cause() == Absence.Cause.GROUP_ABSENT
                && (absence.element() == ReportElement.PRESENT_WEATHER
                        || absence.element() == ReportElement.VERTICAL_VISIBILITY);
    }

    private static String words(Absence absence) {
        return absence.element()
                + switch (absence.cause()) {
                    case GROUP_ABSENT -> " absent";
                    case REPORTED_MISSING -> " reported";
                    case NOT_USABLE -> " not usable";
                };
    }

    private static String words(Sky sky) {
        return switch (sky) {
            case LAYERS -> "layers";
            case OBSCURED -> "obscured";
            case CAVOK -> "CAVOK";
            case SKY_CLEAR -> "SKC";
            case CLEAR_BELOW_12000_FEET -> "CLR";
            case NO_SIGNIFICANT_CLOUD -> "NSC";
            case NO_CLOUD_DETECTED -> "NCD";
            case NOT_REPORTED -> "";
        };
    }

    private static String words(CloudLayer layer) {
        String amount =
                switch (layer.amount()) {
                    case FEW -> "FEW";
                    case SCATTERED -> "SCT";
                    case BROKEN -> "BKN";
                    case OVERCAST -> "OVC";
                    case NOT_OBSERVED -> "unknown";
                };
        String type =
                switch (layer.type()) {
                    case CUMULONIMBUS -> " CB";
                    case TOWERING_CUMULUS -> " TCU";
                    case NONE_TOLD -> "";
                    case NOT_OBSERVED -> " type unknown";
                };
        return amount + " " + (int) layer.base().orElseThrow().inFeet() + type;
    }

    private static void same(String quantity, Optional<Double> found, String expected) {
        assertThat(found.isPresent()).as(quantity).isEqualTo(!expected.isEmpty());
        if (found.isPresent()) {
            double difference = Math.abs(found.get() - Double.parseDouble(expected));
            LARGEST.merge(quantity, difference, Math::max);
            assertThat(difference).as(quantity).isLessThanOrEqualTo(LAST_BITS);
        }
    }

    private static String text(ArgumentsAccessor row, int column) {
        return Optional.ofNullable(row.getString(column)).orElse("");
    }

    private static List<String> list(ArgumentsAccessor row, int column, String between) {
        String text = text(row, column);
        return text.isEmpty() ? List.of() : List.of(text.split(between, -1));
    }
}
