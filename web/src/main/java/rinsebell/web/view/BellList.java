package rinsebell.web.view;

import java.util.List;

/**
 * Every bell, most urgent first.
 *
 * @param gone those that rang and are gone, and that nobody has seen
 * @param goneTitle what stands above those
 * @param none what stands there when there is none
 */
public record BellList(List<Bell> bells, String goneTitle, List<Bell> gone, String none) implements Fragment {
    @Override
    public String template() {
        return "part/bell-list.jte";
    }

    @Override
    public String id() {
        return "bell-list";
    }
}
