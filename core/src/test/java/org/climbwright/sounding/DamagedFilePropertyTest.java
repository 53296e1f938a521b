package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** 10,000 cases in all, over listings, both kinds of profiles and both kinds of IGRA files. */
@Label("A recorded file that was damaged")
class DamagedFilePropertyTest {
    @Property(tries = 4000, edgeCases = EdgeCasesMode.NONE)
    @Label("in some characters, words or lines, is read; only what a line holds comes out of it")
    void damaged(@ForAll("files") String file, @ForAll("damages") List<Damage> damages) {
        String text = String.join("\n", Soundings.lines(file));
        for (Damage damage : damages) {
            text = damage.to(text);
        }
        isReadAsItStands(text);
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("by a cut anywhere is read up to there")
    void cut(@ForAll("files") String file, @ForAll("shares") double share) {
        String text = String.join("\n", Soundings.lines(file));
        isReadAsItStands(text.substring(0, (int) (share * text.length())));
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("by a cut, in fixed columns, gives no part of a number for a number")
    void cutNumber(@ForAll("inColumns") String file, @ForAll("shares") double share) {
        String text = String.join("\n", Soundings.lines(file));
        List<Sounding> whole = SoundingReader.read(text.lines().toList()).soundings();
        String rest = text.substring(0, (int) (share * text.length()));
        List<Sounding> cut = SoundingReader.read(rest.lines().toList()).soundings();
        for (int i = 0; i < cut.size(); i++) {
            List<SoundingLevel> levels = whole.get(i).levels();
            for (SoundingLevel level : cut.get(i).levels()) {
                // A level whose depression was cut off has the dew point of its relative humidity.
                boolean anyDewPoint = file.equals(Soundings.IGRA_DATA);
                assertThat(levels.stream().anyMatch(one -> isPartOf(level, one, anyDewPoint)))
                        .as("a level of the whole file that holds the %s", level)
                        .isTrue();
            }
        }
    }

    /** Every number of a level is the other's. */
    private static boolean isPartOf(SoundingLevel level, SoundingLevel whole, boolean anyDewPoint) {
        return isPartOf(level.pressurePa(), whole.pressurePa())
                && isPartOf(level.geopotentialAltitudeM(), whole.geopotentialAltitudeM())
                && isPartOf(level.temperatureK(), whole.temperatureK())
                && (anyDewPoint || isPartOf(level.dewPointK(), whole.dewPointK()))
                && isPartOf(level.eastwardMps(), whole.eastwardMps())
                && isPartOf(level.northwardMps(), whole.northwardMps());
    }

    private static boolean isPartOf(double number, double whole) {
        return Double.isNaN(number) || number == whole;
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("by a shuffle of its lines is read")
    void shuffled(@ForAll("files") String file, @ForAll long seed) {
        List<String> lines = Soundings.lines(file);
        Collections.shuffle(lines, new Random(seed));
        isReadAsItStands(String.join("\n", lines));
    }

    @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
    @Label("all over, every few bytes, is read")
    void noisy(@ForAll("files") String file, @ForAll("noise") int oneIn, @ForAll long seed) {
        StringBuilder text = new StringBuilder(String.join("\n", Soundings.lines(file)));
        Random random = new Random(seed);
        for (int i = random.nextInt(oneIn); i < text.length(); i += 1 + random.nextInt(2 * oneIn)) {
            text.setCharAt(i, (char) random.nextInt(256));
        }
        isReadAsItStands(text.toString());
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("to nothing but noise is read")
    void onlyNoise(@ForAll("noises") String text) {
        isReadAsItStands(text);
    }

    private static void isReadAsItStands(String text) {
        List<String> lines = text.lines().toList();
        SoundingReading reading = SoundingReader.read(lines);
        for (ReadingProblem problem : reading.problems()) {
            assertThat(problem.line()).isBetween(1, Math.max(1, lines.size()));
            assertThat(problem.reason()).isNotBlank();
        }
        assertThat(reading.problems().stream().map(ReadingProblem::line)).isSorted();
        LineWitness witness = new LineWitness(lines);
        for (Sounding sounding : reading.soundings()) {
            for (SoundingLevel level : sounding.levels()) {
                assertThat(witness.holds(level)).as("a line that holds the %s", level).isTrue();
            }
            Questions.ask(sounding);
        }
    }

    /** One thing that happens to a text, at a share of its length. */
    record Damage(Kind kind, double where, double size, char character) {
        enum Kind {
            OVERWRITE,
            INSERT,
            DELETE,
            REPEAT,
            SWAP_LINES
        }

        String to(String text) {
            int at = (int) (where * text.length());
            int end = Math.min(text.length(), at + (int) (size * size * 200.0));
            String piece = text.substring(at, end);
            return switch (kind) {
                case OVERWRITE ->
                        text.substring(0, at)
                                + character
                                + text.substring(Math.min(text.length(), at + 1));
                case INSERT -> text.substring(0, at) + character + text.substring(at);
                case DELETE -> text.substring(0, at) + text.substring(end);
                case REPEAT -> text.substring(0, end) + piece + text.substring(end);
                case SWAP_LINES -> swapped(text, where, size);
            };
        }

        private static String swapped(String text, double one, double other) {
            List<String> lines = new ArrayList<>(text.lines().toList());
            if (lines.isEmpty()) {
                return text;
            }
            Collections.swap(lines, (int) (one * lines.size()), (int) (other * lines.size()));
            return String.join("\n", lines);
        }
    }

    @Provide
    Arbitrary<String> files() {
        return Arbitraries.oneOf(
                Arbitraries.of(Soundings.PROFILES).map(name -> name + ".csv"),
                Arbitraries.of(Soundings.OTHER_NAMES),
                inColumns());
    }

    @Provide
    Arbitrary<String> inColumns() {
        return Arbitraries.oneOf(
                Arbitraries.of(Soundings.LISTINGS.keySet()),
                Arbitraries.of(Soundings.PAGE),
                Arbitraries.of(Soundings.IGRA_DATA),
                Arbitraries.of(Soundings.IGRA_DERIVED));
    }

    @Provide
    Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(0.0, true, 1.0, false);
    }

    @Provide
    Arbitrary<Integer> noise() {
        return Arbitraries.of(10, 100, 1000);
    }

    @Provide
    Arbitrary<List<Damage>> damages() {
        Arbitrary<Character> character =
                Arbitraries.frequencyOf(
                        Tuple.of(4, Arbitraries.of('0', '1', '9', '-', '.', 'e')),
                        Tuple.of(2, Arbitraries.of(' ', ',', '#', '\n', '\r', '\t')),
                        Tuple.of(1, Arbitraries.chars().range('\0', '\u00FF')));
        return Combinators.combine(Arbitraries.of(Damage.Kind.class), shares(), shares(), character)
                .as(Damage::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(12);
    }

    @Provide
    Arbitrary<String> noises() {
        return Arbitraries.strings()
                .withChars("#USM00070026 -9,.\n\r8E+eN<PRESHGTMDWK>")
                .withCharRange('\0', '\u00FF')
                .ofMaxLength(400);
    }
}
