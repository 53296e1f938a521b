package org.climbwright.working;

/** A working as a page of Markdown; formulas stand as code, so that no sign of theirs is markup. */
final class MarkdownPage {
    private static final String UNITS =
            "Formulas take SI numbers: 1 ft is 0.3048 m, 1 NM is 1852 m, 1 kn is 1852/3600 m/s, 1"
                + " psi is 6894.757 Pa, and 0 °C is 273.15 K. Numbers are put in rounded to seven"
                + " digits, for reading; results come from unrounded ones.";

    private final Working working;
    private final StringBuilder text = new StringBuilder();

    MarkdownPage(Working working) {
        this.working = working;
    }

    String text() {
        text.append("# ").append(working.question()).append("\n\n## Given\n\n");
        text.append("| what | reading | symbol | in the formulas | counts from, or is from |\n");
        text.append("| --- | --- | --- | --- | --- |\n");
        working.inputs().forEach(this::input);
        text.append('\n').append(UNITS).append('\n');
        text.append("\n## Working\n");
        for (int i = 0; i < working.steps().size(); i++) {
            step(i + 1, working.steps().get(i));
        }
        text.append("\n## Answer\n\n");
        working.answer().forEach(this::line);
        text.append("\n## Limits of use\n\n");
        working.limits().forEach(this::line);
        return text.toString();
    }

    private void input(WorkingInput input) {
        text.append("| ").append(cell(input.name()));
        text.append(" | ").append(cell(input.reading()));
        text.append(" | `").append(input.symbol());
        text.append("` | ").append(number(input.value(), input.unit()));
        text.append(" | ").append(cell(input.datum())).append(" |\n");
    }

    private void step(int number, WorkingStep step) {
        String symbol = step.symbol();
        String indent = " ".repeat(String.valueOf(number).length() + 2);
        text.append('\n').append(number).append(". ").append(step.what()).append("\n\n");
        text.append(indent).append("```text\n");
        text.append(indent).append(symbol).append(" = ").append(step.formula()).append('\n');
        String numbers = working.numbersPutIn(step);
        if (!numbers.equals(step.formula())) {
            text.append(indent).append(" ".repeat(symbol.length()));
            text.append(" = ").append(numbers).append('\n');
        }
        text.append(indent).append(" ".repeat(symbol.length())).append(" = ");
        text.append(number(step.value(), step.unit())).append('\n');
        text.append(indent).append("```\n\n").append(indent);
        text.append("**`").append(symbol).append("` is ").append(step.reading()).append(".** ");
        text.append("Source: ").append(step.source()).append(".\n");
    }

    private void line(String sentence) {
        text.append("- ").append(sentence).append('\n');
    }

    private static String number(double value, String unit) {
        String number = FormulaText.rounded(value);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static String cell(String content) {
        return content.replace("|", "\\|");
    }
}
