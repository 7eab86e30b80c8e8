package rinsebell.web.view;

/** What a link opens that was taken back, or never was one: it says nothing of any salon. */
public record LookClosedPage() implements View {
    @Override
    public String template() {
        return "look-closed.jte";
    }
}
