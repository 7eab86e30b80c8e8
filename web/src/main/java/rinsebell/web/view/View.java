package rinsebell.web.view;

/** What one template shows. */
public interface View {
    /** The template that shows it, relative to the template folder. */
    String template();
}
