package rinsebell.web.view;

import java.util.List;

/**
 * Who would be rung for just now, and whether a device would.
 *
 * @param rows one for each person or crowd
 */
public record Ears(String title, List<Row> rows) implements Fragment {
    public Ears {
        rows = List.copyOf(rows);
    }

    /**
     * @param who such as "assistants"
     * @param told such as "2 devices", or that there is none
     * @param missing whether nothing would be heard
     */
    public record Row(String who, String told, boolean missing) {}

    @Override
    public String template() {
        return "part/ears.jte";
    }

    @Override
    public String id() {
        return "ears";
    }
}
