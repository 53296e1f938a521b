package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.climbwright.sounding.surface.Reports.reportOf;

import java.util.List;
import java.util.Locale;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;
import org.climbwright.sounding.Soundings;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A report under an ascent")
class AscentFitTest {
    private static final double NO = Double.NaN;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/sounding/qnh.csv", useHeadersInDisplayName = true)
    @DisplayName("fits where it is that of its lowest level, rounded as reports are in either unit")
    void recorded(String name, double heightM, double pressureHpa, double qnhHpa) {
        Sounding sounding = Soundings.profile(name);
        double celsius =
                sounding.levels().stream()
                        .flatMap(level -> level.staticAirTemperature().stream())
                        .mapToDouble(StaticAirTemperature::inCelsius)
                        .findFirst()
                        .orElseThrow();
        long whole = Math.round(celsius);
        String temperature = String.format(whole < 0 ? "M%02d" : "%02d", Math.abs(whole));
        for (String qnh :
                List.of(digits("Q", qnhHpa), digits("A", qnhHpa / 33.86388640341 * 100))) {
            Sounding joined =
                    reportOf("27010KT CAVOK " + temperature + "/ " + qnh)
                            .joinedWith(sounding, GeopotentialAltitude.ofMetres(heightM));
            assertThat(joined.levels()).hasSizeGreaterThan(1);
        }
    }

    private static String digits(String letter, double exact) {
        return letter + String.format(Locale.ROOT, "%04d", (int) exact);
    }

    // 29.271 m/K times the mean temperature times the logarithm of the pressures: 49 m and 73 m
    @ParameterizedTest(name = "{1} under {0}")
    @CsvSource({
        "v72376_flagstaff_highelev, METAR KFLG 081200Z 27010KT CAVOK 05/M02 Q1020, 2181,"
                + " 'is 4\\d\\.\\d m thick .*, but 0\\.2 m by'",
        "v24266_verkhoyansk_arctic, UEBB 081200Z CAVOK M50/ Q1000, 0,"
                + " 'is 7\\d\\.\\d m thick .*, but 137\\.7 m by'"
    })
    @DisplayName("is refused where its elevation or its QNH is another, with both thicknesses")
    void impossible(String sounding, String report, double elevationM, String thicknesses) {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                SurfaceReportReader.parse(report)
                                        .joinedWith(
                                                Soundings.profile(sounding),
                                                GeopotentialAltitude.ofMetres(elevationM)))
                .withMessageMatching(
                        "the air above the aerodrome at "
                                + elevationM
                                + " m "
                                + thicknesses
                                + " the height of that: not the same elevation, QNH or weather");
    }

    // QNH 1000 at 0 m and 17 degC: ln(1000/990) times 8493 m is 85.4 m; the tolerance is 8.5 m for
    // the QNH, 4.3 m for the level, 1 m for heights, 0.9 m for the temperatures: 14.6 m
    @ParameterizedTest(name = "{0} m: {1}")
    @CsvSource({"70.7, false", "70.9, true", "85.4, true", "99.9, true", "100.1, false"})
    @DisplayName("may be off by its QNH's step, half a hectopascal, a metre and 1 %")
    void tolerance(double heightM, boolean fits) {
        fits("Q1000", level(990, heightM, 17), fits);
    }

    // the same in inches: 29.53 inHg is 1000.001 hPa, its step 0.339 hPa or 2.9 m: 9.0 m
    @ParameterizedTest(name = "{0} m: {1}")
    @CsvSource({"76.2, false", "76.4, true", "85.4, true", "94.3, true", "94.5, false"})
    @DisplayName("may be off by less where its QNH came in inches")
    void toleranceInInches(double heightM, boolean fits) {
        fits("A2953", level(990, heightM, 17), fits);
    }

    private static void fits(String qnh, SoundingLevel level, boolean fits) {
        SurfaceReport report = reportOf("27010KT CAVOK 17/ " + qnh);
        Sounding sounding = Sounding.of("", "", List.of(level));
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(0);
        if (fits) {
            assertThat(report.joinedWith(sounding, elevation).levels()).endsWith(level);
        } else {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> report.joinedWith(sounding, elevation));
        }
    }

    @Test
    @DisplayName("is held against the first height, by the temperatures of the levels up to it")
    void levelsWithoutHeight() {
        SurfaceReport report = reportOf("27010KT CAVOK 17/ Q1000");
        // 8493 m to 900 hPa at 17 degC are 895 m; 40 K colder from 990 hPa on they are 783 m
        Sounding cold = Sounding.of("", "", List.of(level(990, NO, -23), level(900, 783, -23)));
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(0);
        assertThat(report.joinedWith(cold, elevation).levels()).hasSize(3);
        Sounding warm = Sounding.of("", "", List.of(level(990, NO, -23), level(900, 895, -23)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> report.joinedWith(warm, elevation))
                .withMessageContaining("895.0 m by the height");
    }

    @Test
    @DisplayName("is held against no height where no temperature reaches up to it")
    void noTemperature() {
        SurfaceReport report = reportOf("27010KT CAVOK 17/ Q1000");
        Sounding sounding = Sounding.of("", "", List.of(level(990, NO, 17), level(900, 500, NO)));
        assertThat(report.joinedWith(sounding, GeopotentialAltitude.ofMetres(0)).levels())
                .hasSize(3);
    }

    private static SoundingLevel level(double hpa, double metres, double celsius) {
        return SoundingLevel.ofSi(hpa * 100.0, metres, celsius + 273.15, NO, NO, NO);
    }
}
