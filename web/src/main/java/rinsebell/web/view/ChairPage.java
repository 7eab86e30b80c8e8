package rinsebell.web.view;

/** The page of one chair. */
public record ChairPage(Shell shell, ChairPanel panel) implements View {
    @Override
    public String template() {
        return "chair.jte";
    }
}
