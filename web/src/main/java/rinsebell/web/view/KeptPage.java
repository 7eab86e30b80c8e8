package rinsebell.web.view;

/** What a device shows in place of a screen that it has not kept, while the server does not answer. */
public record KeptPage() implements View {
    @Override
    public String template() {
        return "kept.jte";
    }
}
