package org.climbwright.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

@DisplayName("The POM of who uses the library")
class ConsumerPomTest {
    private static final Path CONSUMER = Path.of("consumer", "pom.xml");
    private static final Path CORE = Path.of("..", "core", "pom.xml");

    @Test
    @DisplayName("asks for the core as it is built here, and for its Java")
    void asksForTheCore() throws Exception {
        String dependency = "/project/dependencies/dependency/";
        assertThat(ask(CONSUMER, dependency + "groupId"))
                .isEqualTo(ask(CORE, "/project/parent/groupId"));
        assertThat(ask(CONSUMER, dependency + "artifactId"))
                .isEqualTo(ask(CORE, "/project/artifactId"));
        assertThat(ask(CONSUMER, dependency + "version"))
                .isEqualTo(ask(CORE, "/project/parent/version"));
        String release = "/project/properties/maven.compiler.release";
        assertThat(ask(CONSUMER, release)).isEqualTo(ask(Path.of("..", "pom.xml"), release));
    }

    @Test
    @DisplayName("has the dependency that the README shows")
    void asTheReadme() throws IOException {
        String pom = Files.readString(CONSUMER);
        int begin = pom.indexOf("    <dependency>");
        int end = pom.indexOf("  </dependencies>");
        assertThat(Files.readString(Path.of("..", "README.md")))
                .contains(
                        "```xml\n"
                                + pom.substring(begin, end).stripTrailing().stripIndent()
                                + "\n```");
    }

    private static String ask(Path file, String path) throws Exception {
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        String answer = XPathFactory.newInstance().newXPath().evaluate(path, document);
        assertThat(answer).as(path).isNotEmpty();
        return answer;
    }
}
