package rinsebell.web.view;

import java.util.List;
import java.util.Optional;

/**
 * What directions mean on a clock, by an example.
 *
 * @param title what is shown
 * @param ribbon its times; none while the directions name no end
 * @param lines the same in words
 */
public record TimesExample(String title, Optional<Ribbon> ribbon, List<String> lines) implements Form.Shown {
    @Override
    public String template() {
        return "part/example.jte";
    }
}
