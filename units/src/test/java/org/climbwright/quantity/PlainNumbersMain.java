package org.climbwright.quantity;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;

/**
 * Does with plain numbers all that a value can do, refusals too; for a virtual machine of its own.
 *
 * <p>Each argument is {@code class#ofFeet#inFeet#1000.0}: this door of this class is used as well.
 */
public final class PlainNumbersMain {
    private PlainNumbersMain() {}

    public static void main(String[] doors) throws Throwable {
        PressureAltitude low = PressureAltitude.ofMetres(3048.0);
        PressureAltitude high = PressureAltitude.ofFeet(35000.0);
        AltitudeChange climb = high.minus(low);
        boolean right =
                high.equals(low.plus(climb))
                        && low.equals(high.minus(climb))
                        && high.equals(PressureAltitude.parse("FL350"))
                        && high.equals(PressureAltitude.ofFlightLevel(350.0))
                        && high.hashCode() == PressureAltitude.parse(high.text()).hashCode()
                        && high.compareTo(low) > 0
                        && high.isCloseTo(low, climb)
                        && climb.plus(climb).minus(climb).equals(climb.times(1.0))
                        && StaticAirTemperature.ofCelsius(15.0)
                                .plus(TemperatureDifference.ofKelvins(10.0))
                                .equals(StaticAirTemperature.parse("25 °C"));
        System.out.println(right + " " + high + " " + high.text() + " " + high.inFeet());
        System.out.println(refusal(() -> PressureAltitude.ofFeet(Double.NaN)));
        System.out.println(refusal(() -> GeometricAltitude.parse("FL350")));
        ModelRange range = new ModelRange("pressure altitude", 0.0, 80000.0, "m", "it ends there");
        System.out.println(refusal(() -> range.check(90000.0)));
        int used = 0;
        for (String door : doors) {
            use(door.split("#"));
            used++;
        }
        System.out.println(used + " doors");
    }

    private static void use(String[] door) throws Throwable {
        // Handles, because reflection would resolve every signature of the class.
        MethodHandles.Lookup lookup = MethodHandles.publicLookup();
        Class<?> type = Class.forName(door[0]);
        double number = Double.parseDouble(door[3]);
        MethodHandle in =
                lookup.findStatic(type, door[1], MethodType.methodType(type, double.class));
        MethodHandle out = lookup.findVirtual(type, door[2], MethodType.methodType(double.class));
        MethodHandle parse =
                lookup.findStatic(type, "parse", MethodType.methodType(type, String.class));
        Scalar<?> value = (Scalar<?>) in.invoke(number);
        boolean right =
                (double) out.invoke(value) == number
                        && value.equals(parse.invoke(value.text()))
                        && !value.toString().isEmpty()
                        && refusal(
                                        () -> {
                                            try {
                                                in.invoke(Double.NaN);
                                            } catch (RuntimeException refused) {
                                                throw refused;
                                            } catch (Throwable other) {
                                                throw new AssertionError(other);
                                            }
                                        })
                                .contains("NaN");
        if (!right) {
            throw new AssertionError(String.join("#", door));
        }
    }

    private static String refusal(Runnable mistake) {
        try {
            mistake.run();
        } catch (IllegalArgumentException refused) {
            return refused.getClass().getSimpleName() + ": " + refused.getMessage();
        }
        throw new AssertionError("not refused");
    }
}
