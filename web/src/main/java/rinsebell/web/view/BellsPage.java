package rinsebell.web.view;

/** The page of all bells. */
public record BellsPage(Shell shell, BellList list) implements View {
    @Override
    public String template() {
        return "bells-page.jte";
    }
}
