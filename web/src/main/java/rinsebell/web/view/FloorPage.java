package rinsebell.web.view;

import java.util.List;

/** The floor screen: every chair and every basin on one time axis. */
public record FloorPage(Shell shell, Axis axis, List<ChairRow> chairs, List<BasinRow> basins, Ears ears)
        implements View {
    @Override
    public String template() {
        return "floor.jte";
    }
}
