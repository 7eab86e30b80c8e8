package rinsebell.app.desk;

import java.util.List;

/**
 * What a press was answered, as it is kept to be given again.
 *
 * @param accepted whether it counts
 * @param facts the numbers of the facts it wrote; none when it was refused
 * @param reasons why it was refused, or what to be careful about
 * @param canBeFact whether "already done" is an answer to the refusal
 */
public record Outcome(boolean accepted, List<Long> facts, List<Said> reasons, boolean canBeFact) {
    public Outcome {
        facts = List.copyOf(facts);
        reasons = List.copyOf(reasons);
    }

    /**
     * A reason in words.
     *
     * @param code the reason's code
     * @param basis where it comes from
     * @param text for people
     */
    public record Said(String code, String basis, String text) {}
}
