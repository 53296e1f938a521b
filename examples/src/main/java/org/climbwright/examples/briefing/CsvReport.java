package org.climbwright.examples.briefing;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.ClimbEvent;
import org.climbwright.quantity.path.Mass;

/**
 * The climb of a briefing line by line, as comma-separated values.
 *
 * @source RFC 4180: a header line, CRLF, quotes where a comma, a quote or a line break is in a
 *     field
 */
final class CsvReport {
    private CsvReport() {}

    static String of(ClimbBriefing briefing, UnitSet units) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(header(units));
            for (BriefingLevel level : briefing.levels()) {
                csv.writeRecord(row(briefing, level, units));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible); // it writes to memory
        }
        return text.toString();
    }

    private static List<String> header(UnitSet units) {
        return Stream.concat(
                        ClimbColumn.ALL.stream().map(column -> column.inFull(units)),
                        Stream.of(
                                "mass [" + units.mass().label() + "]",
                                "fuel [" + units.mass().label() + "]",
                                "events"))
                .toList();
    }

    private static List<String> row(ClimbBriefing briefing, BriefingLevel level, UnitSet units) {
        Stream<String> figures =
                ClimbColumn.ALL.stream()
                        .map(column -> column.figure(level, units).map(FullNumber::of).orElse(""));
        return Stream.concat(
                        figures,
                        Stream.of(
                                FullNumber.of(level.state().mass().inKilograms()),
                                briefing.fuelTo(level.state())
                                        .map(Mass::inKilograms)
                                        .map(FullNumber::of)
                                        .orElse(""),
                                level.events().stream()
                                        .map(ClimbEvent::text)
                                        .collect(Collectors.joining("; "))))
                .toList();
    }
}
