package rinsebell.web.view;

import java.util.List;

/**
 * What is to be weighed, what is really in it, and what there is to say of it.
 *
 * @param shown the grams in one word, to be sent along; empty where they are not known
 * @param title in a sentence; what is still missing, while something is
 * @param rows portion by portion; empty while they are not known
 * @param lines the total, how near the scale comes, and the strengths with how they were reckoned
 * @param verdicts off the scalp and on it
 */
public record MixtureSheet(String shown, String title, List<Row> rows, List<String> lines, List<Verdict> verdicts)
        implements Form.Shown {
    /**
     * One portion.
     *
     * @param parts of it, such as "60"
     * @param grams what the scale should show, such as "45.5 g"
     */
    public record Row(String name, String parts, String grams) {}

    /** What is said of the mixture in one zone. */
    public record Verdict(String title, Urgency urgency, List<Answer.Reason> reasons) {}

    /** What speaks against it, and nothing else. */
    public MixtureSheet verdictsAlone() {
        return new MixtureSheet("", "", List.of(), List.of(), verdicts);
    }

    /** All but what speaks against it. */
    public MixtureSheet withoutVerdicts() {
        return new MixtureSheet(shown, title, rows, lines, List.of());
    }

    @Override
    public String template() {
        return "part/mixture-sheet.jte";
    }
}
