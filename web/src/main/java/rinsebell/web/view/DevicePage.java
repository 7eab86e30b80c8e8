package rinsebell.web.view;

import java.util.List;

/**
 * What this device rings for and how; the choices are kept in its browser.
 *
 * @param choices for whom it may ring
 */
public record DevicePage(Shell shell, List<Choice> choices, Ears ears) implements View {
    /** @param code what the script keeps; empty for "as the page it shows" */
    public record Choice(String code, String label) {}

    @Override
    public String template() {
        return "device.jte";
    }
}
