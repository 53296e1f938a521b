package org.climbwright.fitting;

import static org.climbwright.fitting.ChebyshevFit.DIGITS;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.climbwright.testing.FiftyDigits;

/**
 * The polynomials of the standard atmosphere: pressure by depth, altitude by pressure or density.
 */
final class AirPolynomials {
    private static final BigDecimal G0 = new BigDecimal("9.80665");
    private static final BigDecimal R = new BigDecimal("287.05287");
    private static final BigDecimal ONE = BigDecimal.ONE;
    private static final double NUDGE = 1.0003;
    private static final double TROPOSPHERE_DENSITY_NUDGE = 1.00005;
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** From the bottom up: name, bottom and top [m], lapse [K/m]. The lowest goes down to -5 km. */
    private static final List<Layer> LAYERS =
            List.of(
                    new Layer("troposphere", -5000, 11000, "-0.0065"),
                    new Layer("tropopause", 11000, 20000, "0"),
                    new Layer("lowerStratosphere", 20000, 32000, "0.001"),
                    new Layer("upperStratosphere", 32000, 47000, "0.0028"),
                    new Layer("stratopause", 47000, 51000, "0"),
                    new Layer("lowerMesosphere", 51000, 71000, "-0.0028"),
                    new Layer("upperMesosphere", 71000, 80000, "-0.002"));

    private AirPolynomials() {}

    static List<Printed> all() {
        List<Printed> all = new ArrayList<>();
        for (Layer layer : LAYERS) {
            all.add(
                    new Constant(
                            layer.name + "TopPa",
                            "Pressure at the top, " + layer.top + " m.",
                            layer.pressure(BigDecimal.ZERO)));
            all.add(
                    new Constant(
                            layer.name + "TopDensity",
                            "Density there [kg/m³].",
                            FiftyDigits.density(layer.top)));
            all.add(gain(layer, "", "pressure gains per metre [Pa/m]", layer::pressure));
            if (layer == LAYERS.get(0)) {
                all.add(gain(layer, "Density", "density gains per metre", layer::density));
            }
        }
        for (Layer layer : LAYERS) {
            addAltitude(
                    all,
                    layer,
                    "Pressure",
                    new Follower(
                            layer.pressurePower(),
                            FiftyDigits.pressure(layer.bottom),
                            FiftyDigits.pressure(layer.top),
                            G0,
                            NUDGE));
            addAltitude(
                    all,
                    layer,
                    "Density",
                    new Follower(
                            layer.densityPower(),
                            FiftyDigits.density(layer.bottom),
                            FiftyDigits.density(layer.top),
                            G0.add(R.multiply(layer.lapseKPerM())),
                            layer == LAYERS.get(0) ? TROPOSPHERE_DENSITY_NUDGE : NUDGE));
        }
        return all;
    }

    /**
     * What falls with altitude in a layer and the temperature with a power of it: pressure or
     * density.
     *
     * @param weight the acceleration by which it falls: gravity, for density with R L
     * @param nudge by which the middle is moved: found by trial, so that the altitudes of the ends
     *     of the layers and of mean sea level come out of the kernel to the last bit
     */
    private record Follower(
            BigDecimal power,
            BigDecimal atBottom,
            BigDecimal atTop,
            BigDecimal weight,
            double nudge) {
        /** A double near the middle by ratio. */
        BigDecimal centre() {
            BigDecimal middle = BigDecimalMath.sqrt(atBottom.multiply(atTop), DIGITS);
            return new BigDecimal(middle.round(new MathContext(5)).doubleValue() * nudge);
        }

        /** The temperature at the centre. */
        BigDecimal centreK(BigDecimal topK) {
            return topK.multiply(
                    BigDecimalMath.pow(centre().divide(atTop, DIGITS), power, DIGITS), DIGITS);
        }
    }

    /** The altitude of a pressure or a density. */
    private static void addAltitude(List<Printed> all, Layer layer, String of, Follower follower) {
        String name = layer.name + of;
        BigDecimal topK = FiftyDigits.temperature(layer.top);
        BigDecimal centreK = follower.centreK(topK);
        BigDecimal spanM =
                TWO.negate().multiply(R).multiply(centreK).divide(follower.weight, DIGITS);
        BigDecimal centreM =
                layer.isIsothermal()
                        ? BigDecimal.valueOf(layer.top)
                                .add(
                                        spanM.divide(TWO)
                                                .multiply(
                                                        FiftyDigits.log(
                                                                follower.centre()
                                                                        .divide(
                                                                                follower.atTop,
                                                                                DIGITS))))
                        : BigDecimal.valueOf(layer.top)
                                .add(centreK.subtract(topK).divide(layer.lapseKPerM(), DIGITS));
        all.add(new Constant(name + "Centre", of + " about which z is taken.", follower.centre()));
        all.add(new Constant(name + "CentreM", "The altitude there [m].", centreM));
        all.add(new Constant(name + "SpanM", "Altitude per z there [m].", spanM));
        if (!layer.isIsothermal()) {
            all.add(
                    new Constant(
                            name + "Power", "The power a of the temperature.", follower.power));
        }
        if (!layer.isIsothermal() || all.stream().noneMatch(one -> one.isNamed("isothermalBend"))) {
            // of the two isothermal layers the tropopause is the deeper and comes first
            all.add(
                    bend(
                            layer.isIsothermal() ? "isothermal" : name,
                            follower.power,
                            follower.atBottom.divide(follower.atTop, DIGITS)));
        }
    }

    /** The gain of pressure or density per depth below the top of a layer. */
    private static Polynomial gain(
            Layer layer, String of, String gains, UnaryOperator<BigDecimal> byDepth) {
        BigDecimal depth = BigDecimal.valueOf(layer.top - layer.bottom);
        BigDecimal atTop = byDepth.apply(BigDecimal.ZERO);
        return new Polynomial(
                        layer.name + of + "Gain",
                        "What the " + gains + " to x metres below " + layer.top + " m",
                        BigDecimal.ZERO,
                        depth,
                        depth.divide(TWO),
                        x -> byDepth.apply(x).subtract(atTop).divide(x, DIGITS))
                .withHead()
                .weighedBy(x -> x.divide(byDepth.apply(x), DIGITS));
    }

    /** How tanh(a atanh z) / (a z) differs from 1, by z². */
    private static Polynomial bend(String name, BigDecimal power, BigDecimal ratio) {
        BigDecimal root = BigDecimalMath.sqrt(ratio, DIGITS);
        BigDecimal largest = root.subtract(ONE).divide(root.add(ONE), DIGITS).pow(2, DIGITS);
        String tangent = power.signum() == 0 ? "atanh(z) / z" : "tanh(a atanh z) / (a z)";
        return new Polynomial(
                        name + "Bend",
                        "What " + tangent + " exceeds 1, over z²",
                        BigDecimal.ZERO,
                        // wider than the layer, so that the rounded centre does no harm
                        largest.multiply(new BigDecimal("1.001")),
                        BigDecimal.ZERO,
                        bend(power))
                .weighedBy(UnaryOperator.identity());
    }

    private static UnaryOperator<BigDecimal> bend(BigDecimal power) {
        return square -> {
            BigDecimal z = BigDecimalMath.sqrt(square, DIGITS);
            BigDecimal angle = BigDecimalMath.atanh(z, DIGITS);
            BigDecimal bent =
                    power.signum() == 0
                            ? angle.divide(z, DIGITS)
                            : BigDecimalMath.tanh(power.multiply(angle, DIGITS), DIGITS)
                                    .divide(power.multiply(z, DIGITS), DIGITS);
            return bent.subtract(ONE).divide(square, DIGITS);
        };
    }

    private record Layer(String name, int bottom, int top, String lapse) {
        BigDecimal lapseKPerM() {
            return new BigDecimal(lapse);
        }

        boolean isIsothermal() {
            return lapseKPerM().signum() == 0;
        }

        BigDecimal pressure(BigDecimal depth) {
            BigDecimal atTop = FiftyDigits.pressure(top);
            BigDecimal topK = FiftyDigits.temperature(top);
            if (isIsothermal()) {
                return atTop.multiply(
                        FiftyDigits.exp(G0.multiply(depth).divide(R.multiply(topK), DIGITS)));
            }
            BigDecimal ratio =
                    ONE.subtract(lapseKPerM().multiply(depth).divide(topK, DIGITS), DIGITS);
            BigDecimal power = G0.divide(R.multiply(lapseKPerM()), DIGITS).negate();
            return atTop.multiply(BigDecimalMath.pow(ratio, power, DIGITS), DIGITS);
        }

        BigDecimal density(BigDecimal depth) {
            BigDecimal topK = FiftyDigits.temperature(top);
            BigDecimal temperatureK = topK.subtract(lapseKPerM().multiply(depth));
            return pressure(depth).divide(R.multiply(temperatureK), DIGITS);
        }

        /** With which the temperature follows the pressure. */
        BigDecimal pressurePower() {
            return R.multiply(lapseKPerM()).divide(G0, DIGITS).negate();
        }

        /** With which the temperature follows the density. */
        BigDecimal densityPower() {
            BigDecimal lapseR = R.multiply(lapseKPerM());
            return lapseR.divide(G0.add(lapseR), DIGITS).negate();
        }
    }
}
