package rinsebell.web.view;

import java.util.List;

/**
 * What would be answered to what is typed so far, if it were pressed now.
 *
 * @param title in a sentence
 * @param reasons what forbids it, or what to be careful about
 */
public record Judged(String title, List<Answer.Reason> reasons) implements Form.Shown {
    @Override
    public String template() {
        return "part/judged.jte";
    }
}
