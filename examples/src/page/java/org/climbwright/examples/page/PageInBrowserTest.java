package org.climbwright.examples.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

@DisplayName("The page of a briefing, in a browser,")
class PageInBrowserTest {
    private static final List<Integer> WIDTHS = List.of(360, 768, 1280, 1920);
    private static final String OVERLAPS =
            """
            const boxes = [...document.querySelectorAll('#climb text')]
                .map((text) => [text.textContent, text.getBoundingClientRect()]);
            const frame = document.querySelector('#climb svg').getBoundingClientRect();
            const found = boxes.filter(([, box]) => box.left < frame.left || box.right > frame.right
                || box.top < frame.top || box.bottom > frame.bottom).map(([words]) => 'cut: ' + words);
            boxes.forEach(([one, a], i) => boxes.slice(0, i).forEach(([other, b]) => {
              // a pixel of the box above and below a line of text is empty
              if (a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 2 && b.top < a.bottom - 2) {
                found.push(one + ' on ' + other);
              }
            }));
            return found;
            """;

    private static Browser browser;

    @BeforeAll
    static void start() {
        browser = new Browser();
    }

    @AfterAll
    static void stop() throws Exception {
        browser.close();
    }

    static List<ShownClimb> climbs() {
        return ShownClimb.all();
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName(
            "opens in every width without a complaint, a request, a sideways scroll or a label on"
                    + " another")
    void everyWidth(ShownClimb climb) {
        for (int width : WIDTHS) {
            browser.open(climb.page(), width);
            for (String against : List.of("distance", "time")) {
                browser.ask(
                        "const choice = document.querySelector('input[value=%s]');"
                                        .formatted(against)
                                + "if (!choice.disabled) choice.click(); return 0");
                String at = climb + " at " + width + " px against " + against;
                assertThat(browser.ask(OVERLAPS)).as(at).isEmpty();
                assertThat(browser.ask("return document.documentElement.scrollWidth").intValue())
                        .as(at)
                        .isLessThanOrEqualTo(width);
            }
            assertThat(browser.messages()).as(climb + " at " + width).isEmpty();
            assertThat(browser.requests()).as(climb + " at " + width).isEmpty();
        }
    }

    @Test
    @DisplayName("would show a request, a complaint and an overlap if there were one")
    void wouldShow() {
        String page =
                "<img src='http://localhost:9/x.png'><script>console.error('told')</script>"
                        + "<div id=climb><svg><text y=20>a</text><text y=20>b</text></svg></div>";
        browser.open(page, 1280);
        assertThat(browser.ask(OVERLAPS)).hasSize(1);
        assertThat(browser.requests()).containsExactly("http://localhost:9/x.png");
        assertThat(browser.messages()).anyMatch(message -> message.contains("told"));
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("has a caption, headings of columns and a heading of each row in every table")
    void tables(ShownClimb climb) {
        browser.open(climb.page(), 1280);
        JsonNode tables =
                browser.ask(
                        """
                        return [...document.querySelectorAll('table')].map((table) => ({
                          caption: table.caption ? table.caption.textContent : '',
                          heads: table.querySelectorAll('thead th[scope=col]').length,
                          rows: [...table.tBodies[0].rows].map((row) =>
                            [row.cells.length, row.querySelectorAll('th[scope=row]').length])}))
                        """);
        assertThat(tables.size()).isGreaterThan(2);
        for (JsonNode table : tables) {
            assertThat(table.get("caption").textValue()).isNotBlank();
            assertThat(table.get("rows")).isNotEmpty();
            for (JsonNode row : table.get("rows")) {
                assertThat(row.get(0)).as(table + "").isEqualTo(table.get("heads"));
                assertThat(row.get(1).intValue()).isEqualTo(1);
            }
        }
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("has in its picture each number of what by when, once")
    void numbers(ShownClimb climb) throws Exception {
        browser.open(climb.page(), 1280);
        List<String> told = new ArrayList<>();
        for (JsonNode row : new ObjectMapper().readTree(climb.json()).get("whatByWhen")) {
            told.add(row.get("number") + " " + row.get("kind").textValue());
        }
        JsonNode table =
                browser.ask(
                        """
                        return [...document.querySelectorAll('#what-by-when tbody tr')].map((row) =>
                          row.cells[0].textContent + ' ' + row.cells[1].textContent.split(':')[0].toLowerCase())
                        """);
        JsonNode picture =
                browser.ask(
                        """
                        return [...document.querySelectorAll('#climb .badge')].map((badge) =>
                          badge.textContent + ' ' + badge.getAttribute('class').split(' ')[1])
                        """);
        assertThat(texts(table)).containsExactlyElementsOf(told);
        assertThat(texts(picture)).containsExactlyInAnyOrderElementsOf(told);
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName(
            "tells what is due by the point by which to act, and where it comes if that is later")
    void due(ShownClimb climb) throws Exception {
        browser.open(climb.page(), 1280);
        List<String> told = new ArrayList<>();
        for (JsonNode row : new ObjectMapper().readTree(climb.json()).get("whatByWhen")) {
            boolean hasLatest = !row.get("latest").isNull();
            JsonNode by = hasLatest ? row.get("latest") : row;
            String comesAt = hasLatest ? row.get("altitudeText").textValue() + "," : "";
            told.add(by.get("altitudeText").textValue() + " | " + comesAt);
        }
        JsonNode shown =
                browser.ask(
                        """
                        return [...document.querySelectorAll('#what-by-when tbody tr')].map((row) =>
                          (row.cells[2].textContent + ' | ' + row.cells[5].textContent.replace(/,.*/, ','))
                            .replaceAll('\\u00a0', ' '))
                        """);
        assertThat(texts(shown)).containsExactlyElementsOf(told);
        assertThat(browser.ask("return document.body.innerText").textValue())
                .doesNotContainPattern("(?i)\\b(gates?|verdict|latest|bound by)\\b");
    }

    @Test
    @DisplayName("says that the picture scrolls sideways where it does, and only there")
    void sideways() {
        for (int width : WIDTHS) {
            browser.open(ShownClimb.bundled().page(), width);
            JsonNode told =
                    browser.ask(
                            """
                            const box = document.querySelector('#picture-box');
                            return [box.scrollWidth > box.clientWidth,
                              document.querySelector('#sideways').checkVisibility()];
                            """);
            assertThat(told.get(1)).as(width + " px").isEqualTo(told.get(0));
            assertThat(told.get(0).booleanValue()).as(width + " px").isEqualTo(width < 920);
        }
    }

    @Test
    @DisplayName(
            "shows what it was made from in full, and prints it without lines of comment alone")
    void madeFrom() {
        browser.open(ShownClimb.bundled().page(), 1280);
        String shown = "return document.querySelector('#ground pre').innerText";
        String comment = "# A climb to brief.";
        assertThat(browser.ask(shown).textValue()).contains(comment).contains("[aerodrome]");
        browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        try {
            assertThat(browser.ask(shown).textValue())
                    .doesNotContain(comment)
                    .contains("[aerodrome]");
        } finally {
            browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        }
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("reads at the cursor, moved by keys, exactly the figures of the JSON")
    void readsByKeys(ShownClimb climb) throws Exception {
        browser.open(climb.page(), 1280);
        JsonNode path = new ObjectMapper().readTree(climb.json()).get("path");
        int last = path.get("timeS").size() - 1;
        WebElement picture = browser.driver().findElement(By.id("climb"));
        picture.sendKeys(Keys.HOME);
        for (int i = 0; i <= last; i++) {
            assertThat(readout()).as("sample " + i).isEqualTo(Readout.of(path, i));
            picture.sendKeys(Keys.ARROW_RIGHT);
        }
        assertThat(readout()).as("after the last").isEqualTo(Readout.of(path, last));
        picture.sendKeys(Keys.ARROW_LEFT);
        assertThat(readout()).isEqualTo(Readout.of(path, last - 1));
        picture.sendKeys(Keys.HOME, Keys.PAGE_UP);
        assertThat(readout()).isEqualTo(Readout.of(path, 5));
        picture.sendKeys(Keys.END);
        assertThat(readout()).isEqualTo(Readout.of(path, last));
        assertThat(picture.getDomAttribute("aria-valuetext").replace('\u00a0', ' '))
                .isEqualTo(browser.driver().findElement(By.id("point")).getText());
        assertThat(browser.driver().findElement(By.id("point")).getDomAttribute("aria-live"))
                .isEqualTo("polite");
    }

    @Test
    @DisplayName("reads at the cursor, moved by a pointer, the sample nearest to it")
    void readsByPointer() throws Exception {
        ShownClimb climb = ShownClimb.bundled();
        browser.open(climb.page(), 1280);
        JsonNode path = new ObjectMapper().readTree(climb.json()).get("path");
        WebElement picture = browser.driver().findElement(By.id("climb"));
        double reached = 0.0;
        for (int part : List.of(-200, -50, 100)) {
            new Actions(browser.driver()).moveToElement(picture, part, 20).perform();
            int sample = Integer.parseInt(picture.getDomAttribute("aria-valuenow"));
            assertThat(readout()).isEqualTo(Readout.of(path, sample));
            JsonNode dot =
                    browser.ask(
                            """
                            const dot = document.querySelector('#climb .cursor circle').getBoundingClientRect();
                            return (dot.left + dot.right) / 2;
                            """);
            double pointed = picture.getRect().x + picture.getRect().width / 2.0 + part;
            // samples are some 20 s apart, which is fewer pixels than that
            assertThat(Math.abs(dot.doubleValue() - pointed)).isLessThan(20.0);
            assertThat(path.get("distanceNm").get(sample).doubleValue()).isGreaterThan(reached);
            reached = path.get("distanceNm").get(sample).doubleValue();
        }
    }

    @Test
    @DisplayName("keeps the cursor in view on a narrow screen")
    void keepsInView() {
        browser.open(ShownClimb.bundled().page(), 360);
        WebElement picture = browser.driver().findElement(By.id("climb"));
        for (Keys key : List.of(Keys.HOME, Keys.END, Keys.PAGE_UP, Keys.HOME)) {
            picture.sendKeys(key);
            double left =
                    browser.ask(
                                    "return document.querySelector('#climb .cursor circle')"
                                            + ".getBoundingClientRect().left")
                            .doubleValue();
            assertThat(left).as(key.name()).isBetween(0.0, 350.0);
        }
    }

    @Test
    @DisplayName("keeps its place on the climb when altitude is shown against time")
    void againstTime() {
        browser.open(ShownClimb.bundled().page(), 1280);
        WebElement picture = browser.driver().findElement(By.id("climb"));
        picture.sendKeys(Keys.HOME, Keys.PAGE_UP, Keys.PAGE_UP);
        JsonNode before = readout();
        String titles =
                "return [...document.querySelectorAll('#climb .axes .title')].map((t) =>"
                        + " t.textContent)";
        assertThat(texts(browser.ask(titles))).containsExactly("distance, NM", "time, min");
        browser.driver().findElement(By.cssSelector("input[value=time]")).click();
        assertThat(texts(browser.ask(titles))).containsExactly("time, min", "distance, NM");
        assertThat(readout()).isEqualTo(before);
    }

    @Test
    @DisplayName("is gone through by the Tab key from the top, with the picture before the tables")
    void focusOrder() {
        browser.open(ShownClimb.bundled().page(), 1280);
        List<String> stops = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            stops.add(
                    browser.ask(
                                    "const at = document.activeElement;return at.id || at.name ||"
                                            + " at.className || at.tagName")
                            .textValue());
        }
        assertThat(stops).containsExactly("skip", "against", "climb", "SUMMARY", "SUMMARY");
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("climbs")
    @DisplayName("prints on several sheets of A4")
    void prints(ShownClimb climb) {
        browser.open(climb.page(), 1280);
        byte[] printed = browser.print();
        String text = new String(printed, StandardCharsets.ISO_8859_1);
        assertThat(text).startsWith("%PDF-");
        assertThat(Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(text).results().count())
                .isBetween(3L, 14L);
        assertThat(Pattern.compile("/MediaBox\\s*\\[0 0 59[45][.\\d]* 84[12]").matcher(text).find())
                .isTrue();
        assertThat(printed.length).isGreaterThan(50_000);
    }

    private static JsonNode readout() {
        return browser.ask(
                """
                return Object.fromEntries([...document.querySelectorAll('#values div')].map((pair) =>
                  [pair.children[0].textContent, pair.children[1].textContent.replaceAll('\\u00a0', ' ')]))
                """);
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(text -> texts.add(text.textValue()));
        return texts;
    }
}
