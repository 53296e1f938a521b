package org.climbwright.examples.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The page of a briefing")
class BriefingPageTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern INLINED =
            Pattern.compile(
                    "<script type=\"application/json\" id=\"briefing\">(.*?)</script>",
                    Pattern.DOTALL);

    static List<ShownClimb> climbs() {
        return ShownClimb.all();
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("carries the JSON report, figure for figure")
    void carriesTheReport(ShownClimb climb) throws Exception {
        assertThat(inlined(climb.page())).isEqualTo(JSON.readTree(climb.json()));
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("is smaller than 400 kB")
    void size(ShownClimb climb) {
        assertThat(climb.page().getBytes(java.nio.charset.StandardCharsets.UTF_8).length)
                .isBetween(100_000, 400_000);
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("names no address but that of a licence and of SVG, and loads no other file")
    void loadsNothing(ShownClimb climb) {
        String page = climb.page();
        assertThat(Pattern.compile("https?://[^\\s\"')]*").matcher(page).results())
                .extracting(found -> found.group())
                .containsOnly("https://github.com/leeoniya/uPlot", "http://www.w3.org/2000/svg");
        assertThat(page).doesNotContain("@import").doesNotContain("<link").doesNotContain("src=");
        assertThat(page).contains("default-src 'none'");
        assertThat(page).contains("The MIT License").doesNotContain("{{");
    }

    @Test
    @DisplayName("keeps a title and a text from ending its script or beginning an element")
    void hostileTexts() throws Exception {
        String hostile = "</script><!--<b>\"&\\u0041 $1";
        String page =
                BriefingPage.of(hostile, JSON.writeValueAsString(java.util.Map.of("a", hostile)));
        assertThat(inlined(page).get("a").textValue()).isEqualTo(hostile);
        assertThat(page).contains("<h1>&lt;/script>&lt;!--&lt;b>&quot;&amp;\\u0041 $1</h1>");
    }

    private static JsonNode inlined(String page) throws Exception {
        Matcher inlined = INLINED.matcher(page);
        assertThat(inlined.find()).isTrue();
        return JSON.readTree(inlined.group(1));
    }
}
