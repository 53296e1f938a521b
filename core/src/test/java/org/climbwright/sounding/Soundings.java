package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The recorded soundings that these tests read; ORIGIN.csv beside them says whose they are. */
public final class Soundings {
    /** One ascent each, as a CSV profile. */
    static final List<String> PROFILES =
            List.of(
                    "i70026_barrow_20100601",
                    "v01028_bjornoya_three_zero",
                    "v11035_vienna_winter",
                    "v24266_verkhoyansk_arctic",
                    "v40582_kuwait_desert",
                    "v72376_flagstaff_highelev",
                    "v72659_aberdeen_warmnose",
                    "v82332_manaus_tropical",
                    "v91408_koror_tropical",
                    "w72357_oun_20110522_capped",
                    "w72357_oun_jan20_inversion",
                    "w72681_boise_20101209");

    /** A profile with the other column names, and columns that are not read. */
    static final String OTHER_NAMES = "82244_20120101_00Z_no_station_info.csv";

    /** Listings, each with the profile that was made of it. */
    static final Map<String, String> LISTINGS =
            Map.of(
                    "20110522_OUN_12Z.txt", "w72357_oun_20110522_capped",
                    "jan20_sounding.txt", "w72357_oun_jan20_inversion");

    /** Not a file: both listings on a web page. */
    static final String PAGE = "a page of listings";

    static final String IGRA_DATA = "USM00070026-data.txt";
    static final String IGRA_DERIVED = "USM00070026-drvd.txt";

    private Soundings() {}

    /** Every recorded file. */
    static List<String> files() {
        return Stream.of(
                        PROFILES.stream().map(name -> name + ".csv"),
                        Stream.of(OTHER_NAMES, IGRA_DATA, IGRA_DERIVED),
                        LISTINGS.keySet().stream().sorted())
                .flatMap(names -> names)
                .toList();
    }

    /** Every recorded ascent that has levels. */
    public static List<Sounding> ascents() {
        List<Sounding> ascents = new ArrayList<>();
        for (String file : files()) {
            for (Sounding sounding : read(file).soundings()) {
                if (!sounding.levels().isEmpty()) {
                    ascents.add(sounding);
                }
            }
        }
        return ascents;
    }

    static SoundingReading read(String file) {
        try {
            return SoundingReader.read(path(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> lines(String file) {
        if (file.equals(PAGE)) {
            return page();
        }
        try {
            return Files.readAllLines(path(file), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> page() {
        List<String> page = new ArrayList<>();
        page.add("<HTML>");
        page.add("<TITLE>Upper air soundings</TITLE>");
        page.add("<BODY BGCOLOR=\"white\">");
        for (String file : List.of("20110522_OUN_12Z.txt", "jan20_sounding.txt")) {
            List<String> lines = new ArrayList<>(Soundings.lines(file));
            if (WyomingTitle.isOne(lines.get(0))) {
                page.add("<H2>" + lines.remove(0) + "</H2>");
            }
            page.add("<PRE>");
            page.addAll(lines);
            page.add("</PRE><H3>Station information and sounding indices</H3><PRE>");
            page.add("                         Station identifier: OUN");
            page.add("                           Observation time: 110522/1200");
            page.add("                          Station elevation: 345.0");
            page.add("</PRE>");
            page.add("<P>Description of the <A HREF=\"columns.html\">data columns</A>.");
        }
        page.add("</BODY></HTML>");
        return page;
    }

    /** The one ascent of a profile in which nothing is wrong. */
    public static Sounding profile(String name) {
        SoundingReading reading = read(name + ".csv");
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings()).hasSize(1);
        return reading.soundings().get(0);
    }

    /** The levels that make the air: those with pressure and temperature. */
    static List<SoundingLevel> levelsOfAir(Sounding sounding) {
        return sounding.levels().stream()
                .filter(level -> level.staticPressure().isPresent())
                .filter(level -> level.staticAirTemperature().isPresent())
                .toList();
    }

    private static Path path(String file) {
        try {
            return Path.of(Soundings.class.getResource("/sounding/" + file).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
