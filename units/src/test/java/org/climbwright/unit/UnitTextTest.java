package org.climbwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The text of a number with its unit")
class UnitTextTest {
    private static final Pattern ESCAPE = Pattern.compile("\\\\u([0-9A-F]{4})");

    /** Makes {@code \\u00A0} of a table into the character, which would be invisible there. */
    private static String unescaped(String text) {
        return ESCAPE.matcher(text)
                .replaceAll(found -> Character.toString(Integer.parseInt(found.group(1), 16)));
    }

    private static void underLocale(String language, Runnable check) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(language));
        try {
            check.run();
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest(name = "\"{0}\" is {2}")
    @CsvFileSource(resources = "/unit/accepted-texts.csv", useHeadersInDisplayName = true)
    @DisplayName("is read as the number it stands for:")
    void isRead(String text, QuantityKind kind, double si) {
        // The multiplication or addition of UnitScale.toSi may cost the last bit.
        assertEquals(si, UnitText.parse("value", text, kind), Math.ulp(si));
    }

    @ParameterizedTest(name = "\"{0}\": {3} at {2}")
    @CsvFileSource(resources = "/unit/refused-texts.csv", useHeadersInDisplayName = true)
    @DisplayName("is refused, and the place and what should stand there are told:")
    void isRefused(String escaped, QuantityKind kind, int position, String expected, String found) {
        String text = unescaped(escaped);
        assertThatExceptionOfType(UnitTextException.class)
                .isThrownBy(() -> UnitText.parse("pressure altitude", text, kind))
                .satisfies(
                        refused -> {
                            assertThat(refused.text()).isEqualTo(text);
                            assertThat(refused.position()).isEqualTo(position);
                            assertThat(refused.expected()).isEqualTo(expected);
                        })
                .withMessage(
                        "cannot read \"%s\" as pressure altitude: expected %s at character %d,"
                                + " but found %s",
                        text, expected, position + 1, unescaped(found));
    }

    @ParameterizedTest(name = "\"{0}\" with \"{1}\": {3} at {2}")
    @CsvFileSource(resources = "/unit/refused-prefixed-texts.csv", useHeadersInDisplayName = true)
    @DisplayName("is refused where a prefix should stand and a number behind it:")
    void prefixedIsRefused(
            String escaped, String prefix, int position, String expected, String found) {
        String text = unescaped(escaped);
        assertThatExceptionOfType(UnitTextException.class)
                .isThrownBy(() -> UnitText.parsePrefixed("value", prefix, text))
                .satisfies(
                        refused -> {
                            assertThat(refused.text()).isEqualTo(text);
                            assertThat(refused.position()).isEqualTo(position);
                            assertThat(refused.expected()).isEqualTo(expected);
                        })
                .withMessage(
                        "cannot read \"%s\" as value: expected %s at character %d, but found %s",
                        text, expected, position + 1, unescaped(found));
    }

    @ParameterizedTest(name = "\"{1}\" after {0} is {2}")
    @CsvSource({
        "FL, FL350, 350",
        "FL, FL035, 35",
        "FL, FL-5, -5",
        "FL, FL75.5, 75.5",
        "M, M0.78, 0.78",
        "M, M1e-1, 0.1",
        "M, M+0.8, 0.8"
    })
    @DisplayName("may have a prefix in place of a unit:")
    void prefixedIsRead(String prefix, String text, double number) {
        assertThat(UnitText.parsePrefixed("value", prefix, text)).isEqualTo(number);
    }

    @ParameterizedTest(name = "{0} {1} is \"{2}\"")
    @CsvSource({
        "35000, FOOT, 35000 ft",
        "-12.5, CELSIUS, -12.5 °C",
        "29.92, INCH_OF_MERCURY, 29.92 inHg",
        "0, KNOT, 0 kn",
        "-0.0, KNOT, 0 kn",
        "1e20, METRE, 100000000000000000000 m",
        "1e-7, METRE, 0.0000001 m",
        "3.3, PERCENT_GRADIENT, 3.3 %",
        "0.125, KILOGRAM_PER_SECOND, 0.125 kg/s"
    })
    @DisplayName("is written short, without exponent, separator or needless zero:")
    void isWritten(double number, UnitScale scale, String text) {
        assertThat(UnitText.format(scale.toSi(number), scale)).isEqualTo(text);
    }

    @Test
    @DisplayName("is in SI where no number of the other unit reads back as the same")
    void isInSiWhereItMustBe() {
        // More feet than a double holds; a part of a hectopascal and of a degree that none holds.
        assertThat(UnitText.format(Double.MAX_VALUE, UnitScale.FOOT)).endsWith("0 m");
        assertThat(UnitText.format(4.9e-324, UnitScale.HECTOPASCAL)).endsWith(" Pa");
        assertThat(UnitText.format(0.001234567890123, UnitScale.CELSIUS))
                .isEqualTo("0.001234567890123 K");
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("is read with the label of every unit there is:")
    void everyLabelIsRead(UnitScale scale) {
        String text = "0.1 " + scale.label();

        assertThat(UnitText.parse("value", text, scale.kind())).isEqualTo(scale.toSi(0.1));
        assertThat(UnitText.unit("value", text, scale.kind())).isEqualTo(scale);
        assertThat(UnitText.format(scale.toSi(0.1), scale)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "fr-FR", "tr-TR", "ar-EG", "hi-IN-u-nu-deva"})
    @DisplayName("is the same in every language:")
    void isBlindToTheLocale(String language) {
        underLocale(
                language,
                () -> {
                    double si = UnitScale.INCH_OF_MERCURY.toSi(29.92);
                    assertThat(UnitText.format(si, UnitScale.INCH_OF_MERCURY))
                            .isEqualTo("29.92 inHg");
                    assertThat(UnitText.parse("QNH", "29.92 inHg", QuantityKind.PRESSURE))
                            .isEqualTo(si);
                    assertThat(UnitText.number(1234567.125)).isEqualTo("1234567.125");
                    assertThatExceptionOfType(UnitTextException.class)
                            .isThrownBy(
                                    () -> UnitText.parse("height", "1,5 m", QuantityKind.LENGTH))
                            .withMessageContaining("at character 2, but found ','");
                });
        // The same under a test's own default would show nothing: the languages do differ.
        assertThat(String.format(Locale.GERMANY, "%.1f", 1.5)).isEqualTo("1,5");
    }

    @Test
    @DisplayName("cannot be null")
    void notNull() {
        assertThatNullPointerException()
                .isThrownBy(() -> UnitText.parse("value", null, QuantityKind.LENGTH))
                .withMessage("text");
        assertThatNullPointerException()
                .isThrownBy(() -> UnitText.parsePrefixed("value", "FL", null))
                .withMessage("text");
    }
}
