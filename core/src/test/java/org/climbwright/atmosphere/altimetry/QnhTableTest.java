package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Pressure, elevation and QNH of an aerodrome, against a table in 50-digit arithmetic")
class QnhTableTest {
    /** 1e-9 m, which the functions state. */
    private static final double FEET = 1e-9 / 0.3048;

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvFileSource(resources = "/atmosphere/qnh.csv", useHeadersInDisplayName = true)
    @DisplayName("follow from each other, each from the two others")
    void eachFromTheOthers(
            String elevationFeet,
            String pressureHpa,
            String qnhHpa,
            String reportedHpa,
            String qnhInHg,
            String reportedInHg,
            String pressureAltitudeFeet,
            String aboveElevationFeet) {
        double elevationM = UnitScale.FOOT.toSi(Double.parseDouble(elevationFeet));
        double pressurePa = UnitScale.HECTOPASCAL.toSi(Double.parseDouble(pressureHpa));
        double qnhPa = UnitScale.HECTOPASCAL.toSi(Double.parseDouble(qnhHpa));

        double qnh = Altimetry.qnh(pressurePa, elevationM);
        assertThat(UnitScale.HECTOPASCAL.fromSi(qnh)).is(computedAs(qnhHpa, 15));
        assertThat(UnitScale.INCH_OF_MERCURY.fromSi(qnh)).is(printedAs(qnhInHg, 10));
        assertThat(UnitScale.HECTOPASCAL.fromSi(Altimetry.qfe(qnhPa, elevationM)))
                .is(relativelyCloseTo(pressureHpa, 1e-12));
        assertThat(UnitScale.FOOT.fromSi(Altimetry.elevation(pressurePa, qnhPa)))
                .is(closeTo(elevationFeet, FEET));

        double altitudeM = StandardAir.altitudeFromPressure(pressurePa);
        // 12 digits of four before the point
        assertThat(UnitScale.FOOT.fromSi(altitudeM)).is(closeTo(pressureAltitudeFeet, 5e-9 + FEET));
        assertThat(UnitScale.FOOT.fromSi(Altimetry.pressureAltitude(elevationM, qnhPa)))
                .is(closeTo(pressureAltitudeFeet, 5e-9 + FEET));
        assertThat(UnitScale.FOOT.fromSi(Altimetry.altitudeOnQnh(altitudeM, qnhPa)))
                .is(closeTo(elevationFeet, FEET));
        assertThat(UnitScale.FOOT.fromSi(Altimetry.readingChange(qnhPa, 101325.0)))
                .is(closeTo(aboveElevationFeet, 5e-9 + FEET));
    }

    @ParameterizedTest(name = "{2} is {3}, {4} is {5}, and {8}")
    @CsvFileSource(resources = "/atmosphere/qnh.csv", useHeadersInDisplayName = true)
    @DisplayName("are reported rounded down, and the altimeter then reads so much too low")
    void reported(
            double elevationFeet,
            double pressureHpa,
            String qnhHpa,
            double reportedHpa,
            String qnhInHg,
            double reportedInHg,
            String pressureAltitudeFeet,
            String aboveElevationFeet,
            String underReadingFeet) {
        double qnhPa =
                Altimetry.qnh(
                        UnitScale.HECTOPASCAL.toSi(pressureHpa),
                        UnitScale.FOOT.toSi(elevationFeet));
        AltimeterSetting qnh = AltimeterSetting.ofHectopascals(qnhPa / 100.0);
        AltimeterSetting reported = qnh.roundedDownToHectopascal();
        assertThat(reported.inHectopascals()).isEqualTo(reportedHpa);
        assertThat(qnh.roundedDownToHundredthOfInch().inInchesOfMercury()).isEqualTo(reportedInHg);

        double tooLow = -Altimetry.readingChange(qnh, reported).inFeet();
        if (underReadingFeet.equals("0.0")) {
            assertThat(tooLow).is(closeTo("0.0", FEET));
        } else {
            assertThat(tooLow).isPositive().is(printedAs(underReadingFeet, 6));
            assertThat(Altimetry.missetting(reported, qnh).readsTooHighBy().inFeet())
                    .isEqualTo(-tooLow);
        }
    }

    @Test
    @DisplayName("are compared in 66 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/qnh.csv")).hasSize(66);
    }
}
