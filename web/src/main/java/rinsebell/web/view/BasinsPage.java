package rinsebell.web.view;

import java.util.List;

/** The basin screen: whom to rinse now and next, and what each basin is doing. */
public record BasinsPage(Shell shell, Axis axis, Troubles troubles, HeadList next, List<BasinRow> basins)
        implements View {
    @Override
    public String template() {
        return "basins.jte";
    }
}
