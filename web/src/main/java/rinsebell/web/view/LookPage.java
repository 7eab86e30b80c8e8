package rinsebell.web.view;

import java.util.List;

/**
 * What a link that may look in opens: when chairs are free, and nothing of anybody.
 *
 * @param asOf of when it is, in a sentence
 * @param lost what is said once the server does not answer any more
 * @param doubt why the time may not be right; empty where it is
 * @param waiting how many wait, in a sentence
 */
public record LookPage(String title, String asOf, String lost, String doubt, List<Row> rows, String waiting)
        implements View {

    /**
     * One chair.
     *
     * @param likely when it is likely free, in a few words
     * @param latest by when almost surely; empty where it is free, or nobody can say
     */
    public record Row(String chair, String likely, String latest) {}

    @Override
    public String template() {
        return "look.jte";
    }
}
