package org.climbwright.examples.briefing;

import java.util.Locale;

/** A constant in words: its name as one says it. */
final class ConstantInWords {
    private ConstantInWords() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
