package rinsebell.web.view;

import java.util.List;

/**
 * "My clients" on a phone.
 *
 * @param people who may be chosen, each as a press that opens their page; the chosen one is the main one
 */
public record PocketPage(Shell shell, List<Press> people, HeadList mine) implements View {
    /** Whether one person is chosen: then their clients come before the choice of others. The first is everybody. */
    public boolean isChosen() {
        return people.stream().skip(1).anyMatch(press -> press.weight() == Press.Weight.MAIN);
    }

    @Override
    public String template() {
        return "pocket.jte";
    }
}
