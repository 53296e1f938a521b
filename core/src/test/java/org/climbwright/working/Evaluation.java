package org.climbwright.working;

import java.util.Map;

/**
 * A formula of a working, worked out from its text alone: no function of the library is asked.
 *
 * <p>With each number goes a bound of its error, by the rules of running error analysis: what the
 * parts are off, taken through the operation, and a rounding for the operation itself. Tolerances
 * come from there and are not chosen.
 */
final class Evaluation {
    /** A number, and how far it may be from the true one. */
    record Bounded(double value, double error) {
        Bounded rounded() {
            return new Bounded(value, error + 2.0 * Math.ulp(value));
        }
    }

    private final String text;
    private final Map<String, Bounded> symbols;
    private final double literalError;
    private int at;

    private Evaluation(String text, Map<String, Bounded> symbols, double literalError) {
        this.text = text.replace(" ", "");
        this.symbols = symbols;
        this.literalError = literalError;
    }

    /** The formula with the numbers of its symbols. */
    static Bounded of(String formula, Map<String, Bounded> symbols) {
        return new Evaluation(formula, symbols, 0x1p-52).all();
    }

    /** A line of numbers alone, which were rounded to so much of themselves. */
    static Bounded ofNumbers(String line, double relativeError) {
        return new Evaluation(line, Map.of(), relativeError).all();
    }

    private Bounded all() {
        Bounded sum = sum();
        if (at != text.length()) {
            throw new IllegalArgumentException("not read: " + text.substring(at) + " of " + text);
        }
        return sum;
    }

    private boolean has(char sign) {
        if (at < text.length() && text.charAt(at) == sign) {
            at++;
            return true;
        }
        return false;
    }

    private void need(char sign) {
        if (!has(sign)) {
            throw new IllegalArgumentException("no " + sign + " at " + at + " of " + text);
        }
    }

    private Bounded sum() {
        Bounded left = product();
        while (true) {
            if (has('+')) {
                left = plus(left, product());
            } else if (has('-')) {
                left = plus(left, negative(product()));
            } else {
                return left;
            }
        }
    }

    private Bounded product() {
        Bounded left = power();
        while (true) {
            if (has('·')) {
                left = times(left, power());
            } else if (has('/')) {
                left = over(left, power());
            } else {
                return left;
            }
        }
    }

    private Bounded power() {
        Bounded base = part();
        return has('^') ? raised(base, part()) : base;
    }

    private Bounded part() {
        if (has('-')) {
            return negative(part());
        }
        if (has('(')) {
            Bounded inside = sum();
            need(')');
            return inside;
        }
        if (has('√')) {
            Bounded square = part();
            double root = Math.sqrt(square.value());
            return new Bounded(root, square.error() / root).rounded();
        }
        return Character.isDigit(text.charAt(at)) ? number() : word();
    }

    private Bounded number() {
        int from = at;
        while (at < text.length()
                && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        double value = Double.parseDouble(text.substring(from, at));
        return new Bounded(value, literalError * value);
    }

    private Bounded word() {
        int from = at;
        while (at < text.length() && Character.isLetterOrDigit(text.charAt(at))) {
            at++;
        }
        String word = text.substring(from, at);
        switch (word) {
            case "ln":
                Bounded of = part();
                return new Bounded(StrictMath.log(of.value()), of.error() / of.value()).rounded();
            case "exp":
                Bounded to = part();
                double power = StrictMath.exp(to.value());
                return new Bounded(power, power * to.error()).rounded();
            default:
                if (!symbols.containsKey(word)) {
                    throw new IllegalArgumentException("no value for " + word + " of " + text);
                }
                return symbols.get(word);
        }
    }

    private static Bounded negative(Bounded a) {
        return new Bounded(-a.value(), a.error());
    }

    private static Bounded plus(Bounded a, Bounded b) {
        return new Bounded(a.value() + b.value(), a.error() + b.error()).rounded();
    }

    private static Bounded times(Bounded a, Bounded b) {
        double error = Math.abs(a.value()) * b.error() + Math.abs(b.value()) * a.error();
        return new Bounded(a.value() * b.value(), error + a.error() * b.error()).rounded();
    }

    private static Bounded over(Bounded a, Bounded b) {
        double quotient = a.value() / b.value();
        double error = (a.error() + Math.abs(quotient) * b.error()) / Math.abs(b.value());
        return new Bounded(quotient, error).rounded();
    }

    private static Bounded raised(Bounded a, Bounded b) {
        double power = StrictMath.pow(a.value(), b.value());
        double size = Math.abs(a.value());
        double ofBase = Math.abs(b.value()) * StrictMath.pow(size, b.value() - 1.0) * a.error();
        // a negative number or nothing has whole powers only, which are exact
        double ofPower = a.value() > 0.0 ? Math.abs(power * StrictMath.log(size)) * b.error() : 0.0;
        return new Bounded(power, ofBase + ofPower).rounded();
    }
}
