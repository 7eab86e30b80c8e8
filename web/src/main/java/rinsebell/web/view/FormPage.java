package rinsebell.web.view;

/** A page with one form. */
public record FormPage(Shell shell, Form form) implements View {
    @Override
    public String template() {
        return "form.jte";
    }
}
