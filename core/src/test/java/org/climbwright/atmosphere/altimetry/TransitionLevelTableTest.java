package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.altimetry.TransitionLevel.MinimumLayer;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The transition level, as printed")
class TransitionLevelTableTest {
    @ParameterizedTest(name = "{0}: {4}")
    @CsvFileSource(resources = "/atmosphere/transition-level.csv", useHeadersInDisplayName = true)
    @DisplayName("belongs to each whole hectopascal of its band, with the layer of the table")
    void agreesWithTheTable(
            String id,
            int lowHpa,
            int highHpa,
            double transitionAltitudeFeet,
            double flightLevel,
            String layerAtLowFeet,
            String layerAtHighFeet) {
        AltitudeOnQnh altitude = AltitudeOnQnh.ofFeet(transitionAltitudeFeet);
        PressureAltitude level = PressureAltitude.ofFlightLevel(flightLevel);
        boolean thick = id.startsWith("TL-AU");
        MinimumLayer minimum = thick ? MinimumLayer.ONE_THOUSAND_FEET : MinimumLayer.NONE;
        // 1032 hPa stands in two bands; by the rule it belongs to the upper, whose level is lower
        int last = lowHpa == 1014 ? highHpa - 1 : highHpa;
        for (int hectopascal = lowHpa; hectopascal <= last; hectopascal++) {
            TransitionLevel ours =
                    TransitionLevel.above(altitude, hectopascals(hectopascal), minimum);
            assertThat(ours.level()).as(hectopascal + " hPa").isEqualTo(level);
            assertThat(ours.layer()).isEqualTo(layer(level, altitude, hectopascal));
            assertThat(ours.layer().inFeet())
                    .isBetween(thick ? 1000.0 : 0.0, thick ? 1500.0 : 500.0);
        }
        int digits = thick ? 6 : 5;
        assertThat(layer(level, altitude, lowHpa).inFeet()).is(printedAs(layerAtLowFeet, digits));
        assertThat(layer(level, altitude, highHpa).inFeet()).is(printedAs(layerAtHighFeet, digits));
    }

    private static AltitudeChange layer(
            PressureAltitude level, AltitudeOnQnh altitude, int hectopascal) {
        return level.minus(Altimetry.pressureAltitude(altitude, hectopascals(hectopascal)));
    }

    private static AltimeterSetting hectopascals(int hectopascal) {
        return AltimeterSetting.ofHectopascals(hectopascal);
    }

    @Test
    @DisplayName("is compared in 25 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/transition-level.csv")).hasSize(25);
    }
}
