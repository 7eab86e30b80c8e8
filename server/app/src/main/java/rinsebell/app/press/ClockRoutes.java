package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import rinsebell.app.desk.Answer;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;

/** {@code POST /day/clock}: a person says that the wall clock, which was set, is right. */
public final class ClockRoutes implements Routes {
    private final Pressing pressing;
    private final ApiPresses programs;

    public ClockRoutes(Pressing pressing, ApiPresses programs) {
        this.pressing = pressing;
        this.programs = programs;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/day/clock", this::fromPage, Matter.SIGNAL);
        routes.post("/api/day/clock", this::fromProgram, Matter.SIGNAL);
    }

    private void fromPage(Context ctx) {
        var id = PressRoutes.pressId(ctx, FormBody.read(ctx));
        pressing.confirmClock(id, "").ifPresent(ClockRoutes::mustBeSaved);
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private static void mustBeSaved(Answer answer) {
        Pressing.throwProblem(answer);
        if (!(answer instanceof Answer.Decided)) {
            throw Problem.of(ProblemCode.NOT_SAVED).thrown();
        }
    }

    private void fromProgram(Context ctx) {
        FormBody.json(ctx);
        var answer = pressing.confirmClock(ApiPresses.pressId(ctx), "");
        programs.answered(
                ctx,
                answer.orElseThrow(() -> Problem.of(ProblemCode.CLOCK_AGREES).thrown()));
    }
}
