package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.icing.accretion.Inputs.number;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Kinetic heating")
class KineticHeatingTableTest {
    private static final String TABLE = "/icing/accretion/kinetic-heating.csv";
    private static final double KNOT = 1852.0 / 3600.0;

    @ParameterizedTest(name = "{0}, {1}: {2} {3}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is that of the examples, dry and wet")
    void agreesWithTheExample(
            String example, String inputs, String value, String unit, String other, String src) {
        if (example.startsWith("ARR")) {
            double t = kelvin(number(inputs, "t0"));
            double v = number(inputs, "V") * 0.3048;
            double r = KineticHeating.LAMINAR_RECOVERY;
            double wet = KineticHeating.wetTemperature(t, v, 101_325.0, r);
            assertThat(fahrenheit(wet)).isCloseTo(Double.parseDouble(value), within(0.3));
            double ratio = Double.parseDouble(other.substring(other.lastIndexOf(' ') + 1));
            double dry = KineticHeating.dryTemperature(t, v, r);
            assertThat((wet - t) / (dry - t)).isCloseTo(ratio, within(0.0151));
        } else if (example.startsWith("ADS-4")) {
            double wet =
                    KineticHeating.wetTemperature(
                            kelvin(20.0),
                            300.0 * KNOT,
                            StandardAir.pressureFromAltitude(3048.0),
                            KineticHeating.localRecovery(0.0, KineticHeating.LAMINAR_RECOVERY));
            assertThat(fahrenheit(wet)).is(printedAs(value));
        } else {
            double t = number(inputs, "SAT") + 273.15;
            double v = number(inputs, "TAS") * KNOT;
            assertThat(KineticHeating.dryTemperature(t, v, 1.0) - 273.15).is(printedAs(value));
            // "with recovery factor 0.85: -3.00 C; 0.90: -2.59 C"
            assertThat(KineticHeating.dryTemperature(t, v, 0.85) - 273.15)
                    .is(printedAs(between(other, "0.85: ")));
            assertThat(KineticHeating.dryTemperature(t, v, 0.90) - 273.15)
                    .is(printedAs(between(other, "0.90: ")));
        }
    }

    private static String between(String text, String before) {
        int from = text.indexOf(before) + before.length();
        return text.substring(from, text.indexOf(" C", from));
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit + 459.67) * 5.0 / 9.0;
    }

    private static double fahrenheit(double kelvin) {
        return kelvin * 9.0 / 5.0 - 459.67;
    }

    @Test
    @DisplayName("is compared in 6 rows")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(6);
    }
}
