package org.climbwright.examples.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window that shows one page at a time from a file. */
final class Browser implements AutoCloseable {
    private static final File CHROMIUM = new File("/usr/bin/chromium");
    private static final File DRIVER = new File("/usr/bin/chromedriver");
    private static final ObjectMapper JSON = new ObjectMapper();
    // A browser newer than the driver's library is no trouble here, and a warning at each start.
    private static final Logger LOGGER = Logger.getLogger("org.openqa.selenium");

    static {
        LOGGER.setLevel(Level.SEVERE);
    }

    private final ChromeDriver driver;
    private final Path file;

    Browser() {
        if (!CHROMIUM.canExecute() || !DRIVER.canExecute()) {
            throw new IllegalStateException(
                    "the tests of the page need "
                            + CHROMIUM
                            + " and "
                            + DRIVER
                            + ": apt-get install chromium chromium-driver");
        }
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM);
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync");
        // The driver is named, so that nothing is looked for on the network.
        driver =
                new ChromeDriver(
                        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER).build(),
                        options);
        try {
            file = Files.createTempFile("page", ".html");
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a page on a screen so many pixels wide, and forgets what was logged before. */
    void open(String page, int width) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
        messages();
        requests();
        try {
            Files.writeString(file, page);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        driver.get(file.toUri().toString());
    }

    /** Runs a script and returns what it returns, as JSON. */
    JsonNode ask(String script) {
        Object answer = driver.executeScript("return JSON.stringify((() => {" + script + "})())");
        try {
            return JSON.readTree(String.valueOf(answer));
        } catch (IOException malformed) {
            throw new UncheckedIOException(malformed);
        }
    }

    /** What the console has said since the last call. */
    List<String> messages() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** The addresses asked for since the last call, without the page's own file. */
    List<String> requests() {
        List<String> addresses = new ArrayList<>();
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE).getAll()) {
            try {
                JsonNode message = JSON.readTree(entry.getMessage()).get("message");
                if (message.get("method").textValue().equals("Network.requestWillBeSent")) {
                    addresses.add(message.at("/params/request/url").textValue());
                }
            } catch (IOException malformed) {
                throw new UncheckedIOException(malformed);
            }
        }
        addresses.removeIf(address -> address.equals(file.toUri().toString()));
        return addresses;
    }

    /** The page as a printer gets it. */
    byte[] print() {
        Map<String, Object> printed =
                driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        return Base64.getDecoder().decode((String) printed.get("data"));
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        Files.deleteIfExists(file);
    }
}
