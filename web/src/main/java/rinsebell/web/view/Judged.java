package rinsebell.web.view;

import java.util.List;

/**
 * What would be answered to what is typed so far, if it were pressed now.
 *
 * @param title in a sentence
 * @param lines what it comes to, such as its weight
 * @param reasons what forbids it, or what to be careful about
 */
public record Judged(String title, List<String> lines, List<Answer.Reason> reasons) implements Form.Shown {
    @Override
    public String template() {
        return "part/judged.jte";
    }
}
