package org.climbwright.examples.briefing;

import java.util.Locale;

/** The names of constants as words. */
final class Words {
    private Words() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
