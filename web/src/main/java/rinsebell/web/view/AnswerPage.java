package rinsebell.web.view;

/** What came of a press, for a browser without script whose press was refused. */
public record AnswerPage(Shell shell) implements View {
    @Override
    public String template() {
        return "answer-page.jte";
    }
}
