package org.climbwright.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.climbwright.examples.shell.Explore.column;
import static org.climbwright.examples.shell.Explore.isa;
import static org.climbwright.examples.shell.Explore.table;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A table of a function")
class TableTest {
    @Test
    @DisplayName("lines its numbers up, five digits of the largest")
    void linesUp() {
        assertThat(table("x", 0, 1, 0.25, column("square", x -> x * x), column("root", Math::sqrt)))
                .hasToString(
                        """
                        5 rows
                           x  square    root
                        0.00  0.0000  0.0000
                        0.25  0.0625  0.5000
                        0.50  0.2500  0.7071
                        0.75  0.5625  0.8660
                        1.00  1.0000  1.0000\
                        """);
    }

    @Test
    @DisplayName("leaves out what a function refuses, and says why below")
    void refuses() {
        assertThat(table("FL", 2000, 3000, 1000, fl -> isa("FL" + fl).pressurePa()))
                .asString()
                .matches(
                        "(?s)2 rows\n  FL +value\n2000 +[0-9.]+\n3000 +-\n"
                                + "value at 3000.0: pressure altitude must be from -5000.0 to"
                                + " 80000.0 m, but was 91440.0 m: .*");
    }

    @Test
    @DisplayName("has rows: steps go up, and there are no more than a thousand")
    void rows() {
        for (double[] asked : new double[][] {{0, 1, 0}, {0, 1, -1}, {1, 0, 1}, {0, 1, 1e-6}}) {
            assertThatThrownBy(() -> table("x", asked[0], asked[1], asked[2], x -> x))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("has 1 to 1000 rows, but was asked for " + asked[0]);
        }
        assertThat(table("x", 0, 0.3, 0.1, x -> x).column(0)).hasSize(4);
    }
}
