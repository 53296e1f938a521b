package org.climbwright.examples.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The page of a briefing: a template with the styles, the scripts and the JSON written into it.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The page shows the figures of
 * the JSON, with their limits; the flight manual, the operator's procedures, local regulations and
 * licensed practice decide.
 */
public final class BriefingPage {
    private static final String CHARTS = "/META-INF/resources/webjars/uplot/1.6.30/";
    private static final List<String> SCRIPTS =
            List.of(
                    "words.js",
                    "drawing.js",
                    "frame.js",
                    "picture.js",
                    "charts.js",
                    "tables.js",
                    "page.js");
    private static final Pattern PLACE = Pattern.compile("\\{\\{(\\w+)}}");
    // JSON has no raw line end within a text, so what follows one is only indentation.
    private static final Pattern INDENTATION = Pattern.compile("\\R\\s*");

    private BriefingPage() {}

    /**
     * Returns the page as HTML.
     *
     * @param title what the briefing is called, as plain text
     * @param json the briefing as the JSON report writes it
     * @return the page, complete in itself
     */
    public static String of(String title, String json) {
        Map<String, String> parts =
                Map.of(
                        "title",
                        escaped(title),
                        "styles",
                        text(CHARTS + "dist/uPlot.min.css") + text("page.css"),
                        "briefing",
                        inlined(json),
                        "scripts",
                        licence()
                                + text("fine.js")
                                + text(CHARTS + "dist/uPlot.iife.min.js")
                                + SCRIPTS.stream()
                                        .map(BriefingPage::text)
                                        .collect(Collectors.joining()));
        return PLACE.matcher(text("page.html"))
                .replaceAll(place -> Matcher.quoteReplacement(parts.get(place.group(1))));
    }

    /** A script element ends at the first {@code </script}, even within a text of JSON. */
    private static String inlined(String json) {
        return INDENTATION.matcher(json.strip()).replaceAll("").replace("<", "\\u003c");
    }

    private static String licence() {
        return "/*!\n" + text(CHARTS + "LICENSE") + "*/\n";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }

    private static String text(String resource) {
        try (InputStream in = BriefingPage.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the page lacks its part " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
