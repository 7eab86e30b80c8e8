package rinsebell.web.view;

import java.util.List;

/**
 * What does not fit at the basins, a sentence each.
 *
 * @param sentences the worst first; none where everything fits
 */
public record Troubles(List<String> sentences) implements Fragment {
    public Troubles {
        sentences = List.copyOf(sentences);
    }

    @Override
    public String template() {
        return "part/troubles.jte";
    }

    @Override
    public String id() {
        return "troubles";
    }
}
