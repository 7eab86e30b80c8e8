package rinsebell.web.view;

import java.util.List;

/**
 * Every bell, most urgent first.
 *
 * @param none what stands there when there is none
 */
public record BellList(List<Bell> bells, String none) implements Fragment {
    @Override
    public String template() {
        return "part/bell-list.jte";
    }

    @Override
    public String id() {
        return "bell-list";
    }
}
