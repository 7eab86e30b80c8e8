package rinsebell.web.view;

/**
 * What a person sees when a request could not be answered as asked.
 *
 * @param title what happened, in a few words
 * @param detail what was kept and what to do
 */
public record ProblemPage(String title, String detail) implements View {
    @Override
    public String template() {
        return "problem.jte";
    }
}
