package org.climbwright.examples.briefing;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The set of units that an option asks for. */
final class UnitsOption implements ITypeConverter<UnitSet> {
    @Override
    public UnitSet convert(String option) {
        try {
            return UnitSet.named(option);
        } catch (IllegalArgumentException unknown) {
            throw new TypeConversionException(unknown.getMessage());
        }
    }

    /** The units to write in; refused where a format has units of its own in its names. */
    static UnitSet of(@Nullable UnitSet given, Main.Format format) {
        if (given != null && format == Main.Format.JSON) {
            throw new IllegalArgumentException(
                    "--units is for text and csv: the names in the JSON carry their units, so leave"
                            + " it out with --format json");
        }
        if (given != null && format == Main.Format.HTML) {
            throw new IllegalArgumentException(
                    "--units is for text and csv: the page is in feet and knots, so leave it out"
                            + " with --format html");
        }
        return given == null ? UnitSet.FEET_KNOTS : given;
    }
}
