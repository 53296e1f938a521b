package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.ByteBuffer;
import java.util.stream.Stream;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A value written to a stream of objects")
class SerializationTest {
    static Stream<ValueType<?>> withAFloor() {
        return ValueCatalogue.all().filter(ValueType::hasFloor);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.climbwright.quantity.ValueCatalogue#all")
    @DisplayName("is read back as the same value")
    <T extends Scalar<T>> void isReadBack(ValueType<T> type) throws Exception {
        assertThat(read(written(type.highValue()))).isEqualTo(type.highValue());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("org.climbwright.quantity.ValueCatalogue#all")
    @DisplayName("is refused when somebody made it a NaN meanwhile")
    <T extends Scalar<T>> void isRefusedAsNaN(ValueType<T> type) throws IOException {
        byte[] forged = with(written(type.highValue()), type.highValue().si(), Double.NaN);

        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> read(forged))
                .withMessageStartingWith(type.term() + " must be ")
                .withMessageContaining("but was NaN")
                .withCauseInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("withAFloor")
    @DisplayName("is refused when somebody put it below its lowest meanwhile")
    <T extends Scalar<T>> void isRefusedBelowItsLowest(ValueType<T> type) throws IOException {
        double forgedSi = type.lowestSi() - 1.0;
        byte[] forged = with(written(type.highValue()), type.highValue().si(), forgedSi);

        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> read(forged))
                .withMessageContaining("but was " + forgedSi);
    }

    @Test
    @DisplayName("is taken when the number put in can be: the forgery reaches the number")
    void theForgeryWorks() throws Exception {
        byte[] forged = with(written(StaticPressure.ofPascals(101325.0)), 101325.0, 22632.0);

        assertThat(read(forged)).isEqualTo(StaticPressure.ofPascals(22632.0));
    }

    @Test
    @DisplayName("says what is wrong with a pressure below zero")
    void tellsWhatIsWrong() throws IOException {
        byte[] forged = with(written(StaticPressure.ofPascals(101325.0)), 101325.0, -5.0);

        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> read(forged))
                .withMessage(
                        "static pressure must be a finite number, at least 0.0 Pa, but was -5.0"
                                + " Pa");
    }

    @Test
    @DisplayName("is refused as -0.0, which would be a second zero")
    void isRefusedAsNegativeZero() throws IOException {
        byte[] forged = with(written(StaticPressure.ofPascals(101325.0)), 101325.0, -0.0);

        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> read(forged))
                .withMessage("a value never holds -0.0");
    }

    @Test
    @DisplayName("is refused above its highest too")
    void isRefusedAboveItsHighest() throws IOException {
        byte[] forged = with(written(AltimeterSetting.standard()), 101325.0, 120000.0);

        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> read(forged))
                .withMessage(
                        "altimeter setting must be from 85000.0 to 110000.0 Pa,"
                                + " but was 120000.0 Pa");
    }

    private static byte[] written(Object value) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        return bytes.toByteArray();
    }

    private static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            return in.readObject();
        }
    }

    private static byte[] with(byte[] stream, double number, double forged) {
        byte[] copy = stream.clone();
        ByteBuffer buffer = ByteBuffer.wrap(copy);
        int places = 0;
        for (int at = 0; at + Double.BYTES <= copy.length; at++) {
            if (buffer.getLong(at) == Double.doubleToLongBits(number)) {
                buffer.putDouble(at, forged);
                places++;
            }
        }
        assertThat(places).as("places in the stream that hold the number").isEqualTo(1);
        return copy;
    }
}
