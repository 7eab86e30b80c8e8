package rinsebell.web.view;

import java.util.List;

/**
 * Heads in the order in which they need somebody.
 *
 * @param none what stands there when the list is empty
 */
public record HeadList(String id, String title, List<HeadCard> cards, String none) implements Fragment {
    @Override
    public String template() {
        return "part/head-list.jte";
    }
}
