package org.climbwright.working;

import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How a figure came about: a question, what is given, the steps with their formulas, and the
 * answer.
 *
 * <pre>{@code
 * Working working = AirspeedWorking.casToMachAndTas(
 *         CalibratedAirspeed.ofKnots(290), PressureAltitude.ofFeet(30000), Atmosphere.standard());
 * working.value("M")                      // 0.7664…
 * working.value("TAS")                    // 232.37…, m/s
 * working.steps().get(3).formula()        // "√(5 · ((qc / p + 1)^(2 / 7) - 1))"
 * }</pre>
 *
 * <p>Numbers are put into a formula rounded for reading, to seven digits; the result is the
 * unrounded answer of the library's function, and {@link #value} gives it to the last bit. A
 * formula may name only what is given or was found in a step before.
 *
 * <p>Limits of use: for study. A working shows how a figure follows from what was given, not that
 * this was right, nor that the figure may be used; the flight manual, the operator's procedures,
 * local regulations and licensed practice decide.
 *
 * @param question what is asked
 * @param inputs what is given
 * @param steps the steps, in order
 * @param answer the answer, in sentences
 * @param limits what the answer must not be used for, and what it leaves out
 */
public record Working(
        String question,
        List<WorkingInput> inputs,
        List<WorkingStep> steps,
        List<String> answer,
        List<String> limits)
        implements Serializable {
    /**
     * Makes a working, such as one of a reader's own.
     *
     * @param question see above
     * @param inputs see above
     * @param steps see above
     * @param answer see above
     * @param limits see above
     * @throws IllegalArgumentException if two lines have one symbol, or a formula names a symbol
     *     that no line before it has
     */
    public Working {
        Objects.requireNonNull(question, "question");
        inputs = List.copyOf(inputs);
        steps = List.copyOf(steps);
        answer = List.copyOf(answer);
        limits = List.copyOf(limits);
        Map<String, Double> known = new HashMap<>();
        for (WorkingInput input : inputs) {
            know(known, input.symbol(), input.value());
        }
        for (WorkingStep step : steps) {
            for (String symbol : FormulaText.symbols(step.formula())) {
                if (!known.containsKey(symbol)) {
                    throw new IllegalArgumentException(
                            "the formula of "
                                    + step.symbol()
                                    + " names "
                                    + symbol
                                    + ", which is neither given nor found before");
                }
            }
            know(known, step.symbol(), step.value());
        }
    }

    private static void know(Map<String, Double> known, String symbol, double value) {
        if (known.put(symbol, value) != null) {
            throw new IllegalArgumentException(
                    "each symbol of a working must stand for one thing, but "
                            + symbol
                            + " for two");
        }
    }

    /**
     * Returns the number behind a symbol, to the last bit.
     *
     * @param symbol the symbol of an input or of a step
     * @return its number, in the unit of its line: SI, where the line names no other unit
     * @throws IllegalArgumentException if no line has that symbol
     */
    public double value(String symbol) {
        Double value = values().get(Objects.requireNonNull(symbol, "symbol"));
        if (value == null) {
            throw new IllegalArgumentException("no line of this working has the symbol " + symbol);
        }
        return value;
    }

    private Map<String, Double> values() {
        Map<String, Double> values = new HashMap<>();
        inputs.forEach(input -> values.put(input.symbol(), input.value()));
        steps.forEach(step -> values.put(step.symbol(), step.value()));
        return values;
    }

    /**
     * Returns the formula of a step with the numbers put in.
     *
     * @param step a step of this working
     * @return the right side, numbers rounded for reading, negative ones in brackets
     * @throws IllegalArgumentException if it is not a step of this working
     */
    public String numbersPutIn(WorkingStep step) {
        if (!steps.contains(Objects.requireNonNull(step, "step"))) {
            throw new IllegalArgumentException(
                    "numbers are put into the steps of a working itself, but " + step + " is none");
        }
        return FormulaText.withNumbers(step.formula(), values());
    }

    /**
     * Returns the working as a page.
     *
     * @return Markdown with tables; may change between versions
     */
    public String toMarkdown() {
        return new MarkdownPage(this).text();
    }

    /**
     * Returns question and answer for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return question + " " + String.join(" ", answer);
    }
}
