package org.climbwright.icing.accretion;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers of a cell such as {@code "T=-4 F; d=20 um"}. */
final class Inputs {
    private Inputs() {}

    static double number(String cell, String letter) {
        Matcher matcher =
                Pattern.compile("(?:^|[ ;(])" + Pattern.quote(letter) + "[= ](-?[0-9.]+)")
                        .matcher(cell);
        if (!matcher.find()) {
            throw new AssertionError("no " + letter + " in " + cell);
        }
        return Double.parseDouble(matcher.group(1));
    }
}
