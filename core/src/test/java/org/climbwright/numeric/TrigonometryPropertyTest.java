package org.climbwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.FiftyDigits.DIGITS;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.testing.Agreement;

@Label("Sine, cosine and tangent")
class TrigonometryPropertyTest {
    private static final double ULP = 0x1p-52;

    @Property(tries = 2000)
    @Label("are those of 50-digit arithmetic, over many turns")
    void many(@ForAll @DoubleRange(min = -100.0, max = 100.0) @Scale(12) double angle) {
        agree(angle);
    }

    @Property(tries = 1000)
    @Label("are so for the small angles of a climb")
    void small(@ForAll @DoubleRange(min = -0.5, max = 0.5) @Scale(15) double angle) {
        agree(angle);
    }

    private static void agree(double angle) {
        BigDecimal exact = new BigDecimal(angle);
        BigDecimal sine = BigDecimalMath.sin(exact, DIGITS);
        BigDecimal cosine = BigDecimalMath.cos(exact, DIGITS);
        if (angle != 0.0) {
            assertThat(Agreement.relativeError(Trigonometry.sin(angle), sine))
                    .isLessThan(2.0 * ULP);
            assertThat(
                            Agreement.relativeError(
                                    Trigonometry.tan(angle), sine.divide(cosine, DIGITS)))
                    .isLessThan(3.0 * ULP);
        }
        assertThat(Agreement.relativeError(Trigonometry.cos(angle), cosine)).isLessThan(2.0 * ULP);
    }
}
