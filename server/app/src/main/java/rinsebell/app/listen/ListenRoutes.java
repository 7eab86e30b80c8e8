package rinsebell.app.listen;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.web.Codes;
import rinsebell.web.board.EarCode;
import rinsebell.web.board.Listening;
import rinsebell.web.form.Fields;

/** {@code POST /listening}: a page says for whom it listens, and whether it can be heard. */
public final class ListenRoutes implements Routes {
    private static final String PAGE = "[A-Za-z0-9]{8,64}";

    private final Listeners listeners;
    private final Runnable changed;

    /** @param changed draws the screens again; it must only leave word */
    public ListenRoutes(Listeners listeners, Runnable changed) {
        this.listeners = listeners;
        this.changed = changed;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/listening", this::listening, Matter.SIGNAL);
    }

    private void listening(Context ctx) {
        var said = FormBody.read(ctx);
        var page = said.first("tab").filter(id -> id.matches(PAGE));
        var listening = read(said);
        if (page.isEmpty() || listening.isEmpty()) {
            throw Problem.of(ProblemCode.UNREADABLE_BODY).thrown();
        }
        if (listeners.heard(page.get(), listening.get())) {
            changed.run();
        }
        ctx.status(204);
    }

    private static Optional<Listening> read(Fields said) {
        var state = said.first("state").flatMap(code -> Codes.choice(Listening.State.class, code));
        var checked = said.first("checked").map(Boolean::parseBoolean).orElse(false);
        return said.first("ear")
                .flatMap(EarCode::read)
                .flatMap(ear -> state.map(how -> new Listening(ear, how, checked)));
    }
}
