package rinsebell.web.form;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.web.view.Form;
import rinsebell.web.view.Press;
import rinsebell.web.view.Shell;
import rinsebell.web.view.View;

/**
 * A page that lists things with what can be pressed about each: bowls, products, staff, the log of a day.
 *
 * @param intro what this is for; may be empty
 * @param search narrows the lists down; null for none
 * @param forms typed in below the lists
 * @param below what stands below the forms
 */
public record SheetPage(
        Shell shell,
        String title,
        String intro,
        @Nullable Search search,
        List<Part> parts,
        List<Form> forms,
        List<Part> below)
        implements View {
    public SheetPage(Shell shell, String title, String intro, List<Part> parts, List<Form> forms) {
        this(shell, title, intro, null, parts, forms, List.of());
    }

    public Optional<Search> searching() {
        return Optional.ofNullable(search);
    }

    @Override
    public String template() {
        return "form/sheet.jte";
    }

    /**
     * Letters that narrow down what is listed.
     *
     * @param address to which they are sent; answered with the page itself
     * @param letters typed so far
     * @param submit what is pressed to search
     */
    public record Search(String address, String label, String letters, String submit) {}

    /**
     * Rows that belong together.
     *
     * @param title may be empty
     * @param presses about the whole of it
     */
    public record Part(String title, List<Row> rows, List<Press> presses) {}

    /**
     * One line.
     *
     * @param time when; may be empty
     * @param what in one phrase
     * @param detail quieter; may be empty
     * @param gone it no longer counts
     */
    public record Row(String time, String what, String detail, boolean gone, List<Press> presses) {}
}
