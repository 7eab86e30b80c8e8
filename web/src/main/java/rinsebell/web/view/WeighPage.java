package rinsebell.web.view;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One portion at a time, large enough to be read from beside a scale.
 *
 * @param state what was chosen and weighed so far; it goes along in each address
 * @param said what became of the plan; may be empty
 * @param pour what comes next; null when the bowl is right
 * @param portions what lies in the bowl, and what should
 * @param sheet what is in it, and what speaks against it
 * @param isRecordable whether something of each portion lies in the bowl
 * @param back where the mixture can be changed
 */
public record WeighPage(
        Shell shell,
        String title,
        List<Press.Hidden> state,
        String said,
        @Nullable Pour pour,
        List<Portion> portions,
        MixtureSheet sheet,
        boolean isRecordable,
        String back)
        implements View {

    /**
     * What comes next.
     *
     * @param which such as "2 of 3: powder"
     * @param grams what the scale should show then, in figures alone
     * @param more what is still missing of one of which some lies there; may be empty
     * @param field the name under which the weight is sent
     * @param step by how much a nudge changes it
     * @param shows what was typed, or what it should be
     * @param problem what is wrong with it; empty when nothing is
     */
    public record Pour(
            String which, String grams, String more, String field, String step, String shows, String problem) {}

    /**
     * A portion of the bowl.
     *
     * @param lies what lies in the bowl; empty when nothing does
     * @param again where it is weighed again; empty when it is not yet
     */
    public record Portion(String name, String wanted, String lies, String again) {}

    public Optional<Pour> pouring() {
        return Optional.ofNullable(pour);
    }

    /** What forbids the bowl stands above everything: nothing is poured before it is read. */
    public boolean isRefused() {
        return !sheet.verdicts().isEmpty()
                && sheet.verdicts().stream().allMatch(verdict -> verdict.urgency() == Urgency.HIGH);
    }

    @Override
    public String template() {
        return "form/weigh.jte";
    }
}
