package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.climbwright.quantity.altitude.Height;

@Label("A report that was written from values")
class ReportRoundTripPropertyTest {
    /** As {@code Math.round} of a number that went through a unit and back. */
    private static final double ULPS = 1e-9;

    @Property
    @Label("says its day and time")
    void time(
            @ForAll @IntRange(min = 1, max = 31) int day,
            @ForAll @IntRange(max = 23) int hour,
            @ForAll @IntRange(max = 59) int minute) {
        SurfaceReport report =
                SurfaceReportReader.parse(format("LOWW %02d%02d%02dZ CAVOK", day, hour, minute));
        assertThat(report.dayOfMonth()).hasValue(day);
        assertThat(report.timeUtc()).hasValue(LocalTime.of(hour, minute));
    }

    @Property
    @Label("says its wind and gust")
    void wind(
            @ForAll @IntRange(min = 1, max = 36) int tens,
            @ForAll @IntRange(min = 1, max = 99) int speed,
            @ForAll @IntRange(max = 80) int more,
            @ForAll("windUnits") String unit) {
        SurfaceWind wind =
                Reports.reportOf(
                                format(
                                        "%03d%02dG%02d%s CAVOK",
                                        tens * 10, speed, speed + more, unit))
                        .wind()
                        .orElseThrow();
        double mps =
                switch (unit) {
                    case "KT" -> 1852.0 / 3600.0;
                    case "MPS" -> 1.0;
                    default -> 1.0 / 3.6;
                };
        assertThat(wind.direction().orElseThrow().inDegrees()).isEqualTo(tens * 10.0);
        assertThat(wind.speed().inMetresPerSecond()).isCloseTo(speed * mps, within(ULPS));
        assertThat(wind.gust().orElseThrow().inMetresPerSecond())
                .isCloseTo((speed + more) * mps, within(ULPS));
    }

    @Property
    @Label("says its visibility in metres, in the steps of the code")
    void visibility(@ForAll("metres") int metres) {
        Visibility visibility =
                Reports.reportOf(format("27005KT %04d BKN010", metres)).visibility().orElseThrow();
        assertThat(visibility.distance().inMetres()).isEqualTo(metres);
        assertThat(visibility.bound()).isEqualTo(Visibility.Bound.AS_TOLD);
    }

    @Property
    @Label("has no visibility in digits of no step, and no wind in degrees that are no tens")
    void noSteps(@ForAll("noMetres") int metres, @ForAll("noTens") int degrees) {
        SurfaceReport report = Reports.reportOf(format("%03d05KT %04d BKN010", degrees, metres));
        for (ReportElement element : List.of(ReportElement.WIND, ReportElement.VISIBILITY)) {
            assertThat(report.whyMissing(element).orElseThrow().cause())
                    .isEqualTo(Absence.Cause.NOT_USABLE);
        }
        assertThat(report.problems()).hasSize(2);
    }

    @Property
    @Label("says its visibility in sixteenths of a mile")
    void miles(
            @ForAll @IntRange(max = 20) int whole,
            @ForAll @IntRange(min = 1, max = 15) int sixteenths) {
        String before = whole == 0 ? "" : whole + " ";
        SurfaceReport report = Reports.reportOf("27005KT " + before + sixteenths + "/16SM BKN010");
        assertThat(report.visibility().orElseThrow().distance().inMetres())
                .isCloseTo((whole + sixteenths / 16.0) * 1609.344, within(ULPS));
        assertThat(report.problems()).isEmpty();
    }

    @Property
    @Label("says its layers of cloud, in their order")
    void cloud(@ForAll("layers") List<String> layers) {
        SurfaceReport report =
                Reports.reportOf("9999 " + String.join(" ", layers) + " 10/09 Q1013");
        assertThat(report.cloudLayers().stream().map(CloudLayer::toString)).isEqualTo(layers);
        assertThat(report.cloudLayers().stream().map(layer -> layer.base().map(Height::inFeet)))
                .isEqualTo(
                        layers.stream()
                                .map(layer -> layer.substring(3, 6))
                                .map(
                                        base ->
                                                base.equals("///")
                                                        ? Optional.<Double>empty()
                                                        : Optional.of(
                                                                Double.parseDouble(base) * 100.0))
                                .toList());
        assertThat(report.problems()).isEmpty();
    }

    @Property
    @Label("says its temperature and its dew point to the degree")
    void temperatures(
            @ForAll @IntRange(min = -70, max = 58) int temperature,
            @ForAll @IntRange(max = 28) int spread) {
        int dewPoint = temperature - spread;
        SurfaceReport report =
                Reports.reportOf("CAVOK " + code(temperature) + "/" + code(dewPoint) + " Q1013");
        assertThat(report.staticAirTemperature().orElseThrow().inCelsius()).isEqualTo(temperature);
        assertThat(report.dewPoint().orElseThrow().inCelsius()).isEqualTo(dewPoint);
        assertThat(report.problems()).isEmpty();
    }

    @Property
    @Label("says its temperature and its dew point to the tenth, where the body has them rounded")
    void tenths(
            @ForAll @IntRange(min = -600, max = 500) int temperature,
            @ForAll @IntRange(max = 300) int spread) {
        int dewPoint = temperature - spread;
        SurfaceReport report =
                Reports.reportOf(
                        "10SM CLR "
                                + roundedCode(temperature)
                                + "/"
                                + roundedCode(dewPoint)
                                + " A2992 RMK AO2 T"
                                + tenthsCode(temperature)
                                + tenthsCode(dewPoint));
        assertThat(report.staticAirTemperature().orElseThrow().inCelsius())
                .isEqualTo(temperature / 10.0);
        assertThat(report.dewPoint().orElseThrow().inCelsius()).isEqualTo(dewPoint / 10.0);
        assertThat(report.problems()).isEmpty();
    }

    @Property
    @Label("keeps its whole degrees where its tenths have the other sign")
    void otherSign(@ForAll @IntRange(min = 1, max = 5) int tenths, @ForAll boolean below) {
        String body = below ? "M00" : "00";
        String remark = tenthsCode(below ? tenths : -tenths);
        SurfaceReport report =
                Reports.reportOf("10SM CLR " + body + "/M10 A2992 RMK T" + remark + "1100");
        assertThat(report.staticAirTemperature().orElseThrow().inCelsius()).isEqualTo(0.0);
        assertThat(report.problems()).hasSize(1);
    }

    @Property
    @Label("says its QNH in the unit that it came in")
    void qnh(
            @ForAll @IntRange(min = 850, max = 1100) int hectopascals,
            @ForAll @IntRange(min = 2511, max = 3248) int hundredths) {
        ReportedQnh metric =
                Reports.reportOf(format("CAVOK Q%04d", hectopascals)).qnh().orElseThrow();
        assertThat(metric.setting().inHectopascals()).isEqualTo(hectopascals);
        assertThat(metric.unit()).isEqualTo(ReportedQnh.Unit.HECTOPASCAL);
        ReportedQnh inches = Reports.reportOf(format("10SM A%04d", hundredths)).qnh().orElseThrow();
        assertThat(inches.setting().inInchesOfMercury()).isEqualTo(hundredths / 100.0);
        assertThat(inches.unit()).isEqualTo(ReportedQnh.Unit.INCH_OF_MERCURY);
    }

    @Property
    @Label("says of one exact QNH, rounded down to both units, that the two agree")
    void bothUnits(@ForAll("exactQnhs") double hectopascals) {
        int whole = (int) Math.floor(hectopascals);
        int hundredths = (int) Math.floor(hectopascals / 33.86388640341 * 100.0);
        SurfaceReport report = Reports.reportOf(format("CAVOK Q%04d A%04d", whole, hundredths));
        assertThat(report.qnh().orElseThrow().setting().inHectopascals()).isEqualTo(whole);
        assertThat(report.problems()).isEmpty();
        // more than both roundings away: 1 hPa and 0.34 hPa
        SurfaceReport other = Reports.reportOf(format("CAVOK Q%04d A%04d", whole, hundredths + 5));
        assertThat(other.problems()).hasSize(1);
    }

    @Property
    @Label("says the same with its groups on lines of their own")
    void lines(@ForAll("recorded") String text) {
        String broken =
                Arrays.stream(text.split(" ", -1)).collect(Collectors.joining("\n  ", "", "="));
        SurfaceReport report = SurfaceReportReader.read(broken.lines().toList()).reports().get(0);
        SurfaceReport unbroken = SurfaceReportReader.parse(text);
        assertThat(report.wind()).isEqualTo(unbroken.wind());
        assertThat(report.visibility()).isEqualTo(unbroken.visibility());
        assertThat(report.cloudLayers()).isEqualTo(unbroken.cloudLayers());
        assertThat(report.staticAirTemperature()).isEqualTo(unbroken.staticAirTemperature());
        assertThat(report.qnh()).isEqualTo(unbroken.qnh());
        assertThat(report.otherGroups()).isEqualTo(unbroken.otherGroups());
        assertThat(report.problems()).isEmpty();
    }

    private static String code(int celsius) {
        return format(celsius < 0 ? "M%02d" : "%02d", Math.abs(celsius));
    }

    private static String tenthsCode(int tenths) {
        return format(tenths < 0 ? "1%03d" : "0%03d", Math.abs(tenths));
    }

    /** What is below zero and rounds to it is M00. */
    private static String roundedCode(int tenths) {
        int celsius = rounded(tenths);
        return celsius == 0 && tenths < 0 ? "M00" : code(celsius);
    }

    /** A half goes up, as in the example of AFMAN 15-111, remark 30: -1.5 is M01. */
    private static int rounded(int tenths) {
        return Math.floorDiv(tenths + 5, 10);
    }

    private static String format(String pattern, Object... numbers) {
        return String.format(Locale.ROOT, pattern, numbers);
    }

    /** Steps that the code has: 50 m below 800 m, 100 m to 5000 m, 1000 m above. */
    @Provide
    Arbitrary<Integer> metres() {
        return Arbitraries.oneOf(
                Arbitraries.integers().between(1, 15).map(step -> step * 50),
                Arbitraries.integers().between(8, 50).map(step -> step * 100),
                Arbitraries.integers().between(5, 9).map(step -> step * 1000));
    }

    @Provide
    Arbitrary<Integer> noMetres() {
        return Arbitraries.oneOf(
                Arbitraries.integers().between(1, 799).filter(metres -> metres % 50 != 0),
                Arbitraries.integers().between(801, 9998).filter(metres -> metres % 100 != 0));
    }

    @Provide
    Arbitrary<Integer> noTens() {
        return Arbitraries.integers().between(1, 359).filter(degrees -> degrees % 10 != 0);
    }

    @Provide
    Arbitrary<String> windUnits() {
        return Arbitraries.of("KT", "MPS", "KMH");
    }

    @Provide
    Arbitrary<String> recorded() {
        return Arbitraries.of(Reports.lines());
    }

    @Provide
    Arbitrary<Double> exactQnhs() {
        return Arbitraries.doubles().between(860.0, 1090.0);
    }

    @Provide
    Arbitrary<List<String>> layers() {
        Arbitrary<String> base =
                Arbitraries.integers().between(0, 999).map(feet -> format("%03d", feet));
        return Combinators.combine(
                        Arbitraries.of("FEW", "SCT", "BKN", "OVC"),
                        Arbitraries.oneOf(base, Arbitraries.just("///")),
                        Arbitraries.of("", "CB", "TCU", "///"))
                .as((amount, height, type) -> amount + height + type)
                .list()
                .ofMinSize(1)
                .ofMaxSize(5);
    }
}
