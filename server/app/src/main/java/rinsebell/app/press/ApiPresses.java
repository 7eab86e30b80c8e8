package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rinsebell.app.desk.Answer;
import rinsebell.app.desk.Outcome;
import rinsebell.app.door.Caller;
import rinsebell.app.door.FieldProblem;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.Answers;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.LiveFloor;
import rinsebell.web.form.FieldError;

/** Presses from programs: JSON in, JSON out, under {@code /api}. */
public final class ApiPresses implements Routes {
    private final Pressing pressing;
    private final LiveFloor live;

    public ApiPresses(Pressing pressing, LiveFloor live) {
        this.pressing = pressing;
        this.live = live;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        PressRoutes.addTo(routes, "/api", pressing.names(), this::press);
    }

    private void press(Context ctx, Address address) {
        var presser = new Pressing.Presser(Caller.of(ctx).code(), null);
        var result = pressing.press(address, FormBody.json(ctx), pressId(ctx), presser);
        if (result instanceof Pressing.Wrong wrong) {
            throw wrong(wrong.errors());
        }
        answered(ctx, ((Pressing.Asked) result).answer());
    }

    /** Everything that is wrong with the fields, as one problem. */
    RuntimeException wrong(List<FieldError> errors) {
        return new Problem(ProblemCode.FIELDS, fields(errors)).thrown();
    }

    static String pressId(Context ctx) {
        var id = Optional.ofNullable(ctx.header("Idempotency-Key"))
                .orElseThrow(() -> Problem.of(ProblemCode.PRESS_ID_MISSING).thrown());
        if (!Pressing.isId(id)) {
            throw Problem.of(ProblemCode.PRESS_ID_UNREADABLE).thrown();
        }
        return Pressing.idOf(Caller.of(ctx), id);
    }

    private List<FieldProblem> fields(List<FieldError> errors) {
        var moment = live.moment();
        return errors.stream()
                .map(error -> new FieldProblem(
                        error.field(),
                        error.code().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        Answers.says(error, moment)))
                .toList();
    }

    void answered(Context ctx, Answer answer) {
        Pressing.throwProblem(answer);
        if (answer instanceof Answer.NotKnown) {
            PressRoutes.askedAgain(ctx);
            throw Problem.of(ProblemCode.NOT_KNOWN_YET).thrown();
        }
        if (!(answer instanceof Answer.Decided decided)) {
            var rings = answer instanceof Answer.NotSaved notSaved && notSaved.rings();
            throw Problem.of(rings ? ProblemCode.NOT_SAVED_BUT_RINGS : ProblemCode.NOT_SAVED)
                    .thrown();
        }
        var outcome = decided.outcome();
        if (outcome.accepted()) {
            ctx.status(201).json(new Accepted(outcome.facts(), outcome.reasons()));
        } else {
            ctx.status(409).json(refusal(outcome)).contentType("application/problem+json");
        }
    }

    /** @param cautions what to be careful about */
    record Accepted(List<Long> facts, List<Outcome.Said> cautions) {}

    /** A refusal as problem details (RFC 9457). */
    record Refusal(
            String type,
            String title,
            int status,
            String detail,
            String code,
            boolean canBeFact,
            List<Outcome.Said> reasons) {}

    private Refusal refusal(Outcome outcome) {
        var worst = outcome.reasons().get(0);
        return new Refusal(
                "urn:rinsebell:problem:refused",
                live.moment().say("answer.refused"),
                409,
                worst.text(),
                worst.code(),
                outcome.canBeFact(),
                outcome.reasons());
    }
}
