package org.climbwright.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.climbwright.working.Evaluation.Bounded;

/** What holds of every working: its formulas give its results, and its page shows all of it. */
final class WorkingCheck {
    /** Seven digits: half a unit of the last, of a number that begins with 1. */
    private static final double SEVEN_DIGITS = 0.5e-6;

    /** What the functions state of their own: 1e-9 m of an altitude, 1 ns of a time, 1e-9 ft. */
    private static final Map<String, Double> STATED =
            Map.of("m", 1e-9, "s", 1e-9, "ft/NM", 1e-9, "ft/min", 1e-9);

    private WorkingCheck() {}

    static void holds(Working working) {
        formulasGiveTheResults(working);
        numbersGiveTheResults(working);
        pageShowsAll(working);
    }

    /** To the error of their own roundings, and of what the function states. */
    static void formulasGiveTheResults(Working working) {
        Map<String, Bounded> known = new HashMap<>();
        working.inputs().forEach(input -> known.put(input.symbol(), exactly(input.value())));
        for (WorkingStep step : working.steps()) {
            Bounded found = Evaluation.of(step.formula(), known);
            double stated = STATED.getOrDefault(step.unit(), 0.0) + 8.0 * Math.ulp(step.value());
            double tolerance = found.error() + stated;
            assertThat(step.value())
                    .as("%s = %s of %s", step.symbol(), step.formula(), working.question())
                    .isCloseTo(found.value(), within(tolerance));
            known.put(step.symbol(), new Bounded(step.value(), tolerance));
        }
    }

    private static Bounded exactly(double value) {
        return new Bounded(value, 0.0);
    }

    /** What stands on the page, worked out by hand, gives what stands under it. */
    private static void numbersGiveTheResults(Working working) {
        for (WorkingStep step : working.steps()) {
            String numbers = working.numbersPutIn(step);
            Bounded found = Evaluation.ofNumbers(numbers, SEVEN_DIGITS);
            double stated = STATED.getOrDefault(step.unit(), 0.0);
            assertThat(step.value())
                    .as("%s = %s of %s", step.symbol(), numbers, working.question())
                    .isCloseTo(
                            found.value(),
                            within(found.error() + stated + SEVEN_DIGITS * Math.abs(step.value())));
        }
    }

    /** The formula itself where it has nothing but numbers. */
    private static String numbersLine(Working working, WorkingStep step) {
        return " = " + working.numbersPutIn(step) + "\n";
    }

    private static void pageShowsAll(Working working) {
        String page = working.toMarkdown();
        assertThat(page).startsWith("# " + working.question() + "\n").doesNotContain("NaN");
        for (WorkingInput input : working.inputs()) {
            assertThat(page)
                    .contains(
                            "| "
                                    + input.name()
                                    + " | "
                                    + input.reading()
                                    + " | `"
                                    + input.symbol()
                                    + "` | "
                                    + FormulaText.rounded(input.value()));
        }
        int from = page.indexOf("## Working");
        for (WorkingStep step : working.steps()) {
            for (String part :
                    new String[] {
                        step.what(),
                        step.symbol() + " = " + step.formula() + "\n",
                        numbersLine(working, step),
                        " = " + FormulaText.rounded(step.value()),
                        step.reading(),
                        "Source: " + step.source()
                    }) {
                int next = page.indexOf(part, from);
                assertThat(next).as(part).isGreaterThanOrEqualTo(from);
                from = next;
            }
            assertThat(step.source()).isNotBlank();
        }
        working.answer().forEach(line -> assertThat(page).contains("- " + line + "\n"));
        working.limits().forEach(line -> assertThat(page).contains("- " + line + "\n"));
        assertThat(working.answer()).isNotEmpty();
        assertThat(working.limits()).anyMatch(line -> line.contains("not for use in flight"));
    }
}
