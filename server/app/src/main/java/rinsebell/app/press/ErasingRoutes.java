package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.function.Supplier;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.app.privacy.Erasing;
import rinsebell.floor.salon.Policy.Keeping;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.form.ClientForms;

/** Erases the record of somebody who comes no more, or asks for it; a page asks once more before it sends this. */
public final class ErasingRoutes implements Routes {
    /** Until when copies from before may hold what was erased. */
    private static final String COPIES_UNTIL = "Rinsebell-Copies-Until";

    private final Erasing erasing;
    private final Supplier<Instant> now;
    private final ApiPresses programs;

    /** @param now the salon's time */
    public ErasingRoutes(Erasing erasing, Supplier<Instant> now, ApiPresses programs) {
        this.erasing = erasing;
        this.now = now;
        this.programs = programs;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/clients/{id}/erase", this::fromPage, Matter.ERASING);
        routes.post("/api/clients/{id}/erase", this::fromProgram, Matter.ERASING);
    }

    private void fromPage(Context ctx) {
        FormBody.read(ctx);
        erase(new ClientId(Numbered.at(ctx, "id")));
        PressRoutes.go(ctx, "/clients?erased=now");
    }

    private void fromProgram(Context ctx) {
        ApiPresses.pressId(ctx);
        var errors = ClientForms.nothingElse(FormBody.json(ctx));
        if (!errors.isEmpty()) {
            throw programs.wrong(errors);
        }
        erase(new ClientId(Numbered.at(ctx, "id")));
        ctx.header(COPIES_UNTIL, now.get().plus(Keeping.COPIES).toString()).status(204);
    }

    private void erase(ClientId client) {
        if (erasing.isHere(client)) {
            throw Problem.of(ProblemCode.CLIENT_IS_HERE).thrown();
        }
        if (erasing.erase(client).isEmpty()) {
            throw Numbered.nowhere();
        }
    }
}
