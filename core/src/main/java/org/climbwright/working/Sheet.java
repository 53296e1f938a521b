package org.climbwright.working;

import java.util.ArrayList;
import java.util.List;

/** A working being written, line by line. */
final class Sheet {
    private static final String FOR_STUDY =
            "For study, not for use in flight: the flight manual, the operator's procedures, local"
                    + " regulations and licensed practice decide.";

    private final String question;
    private final List<WorkingInput> inputs = new ArrayList<>();
    private final List<WorkingStep> steps = new ArrayList<>();
    private final List<String> answer = new ArrayList<>();
    private final List<String> limits = new ArrayList<>();

    Sheet(String question) {
        this.question = question;
    }

    void given(
            String name, String symbol, double value, String unit, String reading, String datum) {
        inputs.add(new WorkingInput(name, symbol, value, unit, reading, datum));
    }

    void step(
            String what,
            String symbol,
            String formula,
            double value,
            String unit,
            String reading,
            String source) {
        steps.add(new WorkingStep(what, symbol, formula, value, unit, reading, source));
    }

    void answer(String sentence) {
        answer.add(sentence);
    }

    void limit(String sentence) {
        limits.add(sentence);
    }

    Working working() {
        limits.add(FOR_STUDY);
        return new Working(question, inputs, steps, answer, limits);
    }
}
