package rinsebell.web.access;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.view.Field;
import rinsebell.web.view.Press.Hidden;
import rinsebell.web.view.QrCode;
import rinsebell.web.view.Shell;
import rinsebell.web.view.Table;
import rinsebell.web.view.View;

/**
 * A page whose forms are sent plainly, by no script: a script would keep what was typed and send it later, and a PIN or an
 * invitation is for now.
 *
 * @param intro what this is for
 * @param notice what went wrong, or what to do first; empty for nothing
 * @param shown what is shown once; null for nothing
 * @param parts what there is
 * @param table null for none
 */
public record PlainPage(
        Shell shell,
        String intro,
        String notice,
        @Nullable Shown shown,
        List<Part> parts,
        @Nullable Table table,
        List<Sent> forms)
        implements View {

    /**
     * What is shown once.
     *
     * @param code for a device to read; null where none can
     * @param text as it is typed
     */
    public record Shown(
            String title, String detail, @Nullable QrCode code, String text) {
        public Optional<QrCode> drawn() {
            return Optional.ofNullable(code);
        }
    }

    /**
     * A form.
     *
     * @param title empty for none
     * @param carried what it sends besides
     */
    public record Sent(String title, String action, List<Field> fields, List<Hidden> carried, String submit) {}

    public Optional<Shown> once() {
        return Optional.ofNullable(shown);
    }

    public Optional<Table> rights() {
        return Optional.ofNullable(table);
    }

    @Override
    public String template() {
        return "form/plain.jte";
    }
}
