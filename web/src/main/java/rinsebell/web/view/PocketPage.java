package rinsebell.web.view;

import java.util.List;

/**
 * "My clients" on a phone.
 *
 * @param people who may be chosen, each as a press that opens their page; the chosen one is the main one
 */
public record PocketPage(Shell shell, List<Press> people, HeadList mine) implements View {
    @Override
    public String template() {
        return "pocket.jte";
    }
}
