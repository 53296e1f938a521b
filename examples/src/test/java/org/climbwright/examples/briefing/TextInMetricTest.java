package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The briefing as text in metric units")
class TextInMetricTest {
    private static Program run;

    @BeforeAll
    static void run() {
        run = Program.run("--units", "metric");
    }

    @Test
    @DisplayName("says in its heading what stays in feet, knots, nautical miles and psi")
    void heading() {
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("elevation 366 m, QNH 1018.90 hPa")
                .contains("Climb to  10668 m pressure altitude")
                .contains("Speeds    463 km/h below 3048 m QNH, then 537 km/h, then M0.76\n")
                .contains(
                        "Units     metric; what is told in words stays in feet, knots, NM and psi:")
                .containsPattern("Top       10668 m after 18:\\d\\d and 20\\d.\\d km");
        assertThat(Program.run().out()).doesNotContain("Units  ");
    }

    @Test
    @DisplayName("fits 100 columns")
    void width() {
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    @DisplayName("has no foot, knot, nautical mile or psi in the head of a column")
    void heads() {
        List<String> heads =
                run.out()
                        .lines()
                        .filter(
                                line ->
                                        line.matches(
                                                ".*(min:s|altimeter|differ|point +what|at m$).*| "
                                                        + " alt m.*"))
                        .filter(line -> !line.contains("transition altitude"))
                        .toList();
        assertThat(heads).hasSizeGreaterThanOrEqualTo(7);
        assertThat(heads)
                .allSatisfy(head -> assertThat(head).doesNotContainPattern("\\b(ft|kn|NM|psi)\\b"));
    }

    @Test
    @DisplayName("has the same climb: 10,000 ft are 3048 m, 250 kn are 463 km/h")
    void climb() {
        assertThat(run.out())
                .containsPattern("\n {4}3048 +- +3092 .* 3:1\\d +24\\.\\d\n")
                .contains(" alt m  QNH m  alt m     °C dev K     °C km/h");
    }

    @Test
    @DisplayName("shows metres on the altimeter, with QNH where it is on QNH")
    void altimeter() {
        assertThat(run.out()).contains("366 m QNH ").containsPattern("top of climb +10668 m ");
        assertThat(run.out()).doesNotContainPattern("min:s.*\n.*FL\\d");
    }
}
