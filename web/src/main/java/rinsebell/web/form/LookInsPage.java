package rinsebell.web.form;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.web.view.Field;
import rinsebell.web.view.QrCode;
import rinsebell.web.view.Shell;
import rinsebell.web.view.View;

/**
 * The links that look in, and what makes another. Its form is sent plainly, by no script: a script would keep it and send
 * it later, when nobody stands there to read the link, which is shown once.
 *
 * @param fresh what was just made; null for nothing
 * @param out the links that are out
 * @param name for whom another is
 */
public record LookInsPage(Shell shell, @Nullable Fresh fresh, SheetPage.Part out, Field name) implements View {

    /**
     * A link with its key, which is not known any more once this was shown.
     *
     * @param local what is wrong with an address that only this machine has; empty for nothing
     * @param code whose link opens the page
     * @param calendar the address of the same for a calendar
     */
    public record Fresh(String title, String local, QrCode code, String calendar) {}

    public Optional<Fresh> made() {
        return Optional.ofNullable(fresh);
    }

    @Override
    public String template() {
        return "form/look-ins.jte";
    }
}
