package rinsebell.app.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.desk.Answer;
import rinsebell.app.desk.Outcome;
import rinsebell.app.door.Caller;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Routes;
import rinsebell.app.page.Answers;
import rinsebell.app.page.FormBody;
import rinsebell.app.page.FormRoutes;
import rinsebell.app.page.LiveFloor;
import rinsebell.app.page.PageRoutes;
import rinsebell.app.page.Who;
import rinsebell.db.DatabaseAway;
import rinsebell.floor.Fact;
import rinsebell.floor.bowl.BowlId;
import rinsebell.web.board.LivePages;
import rinsebell.web.board.Moment;
import rinsebell.web.form.FieldError;
import rinsebell.web.form.Fields;
import rinsebell.web.form.Presses;
import rinsebell.web.form.SheetPage;
import rinsebell.web.view.AnswerPage;
import rinsebell.web.view.Form;
import rinsebell.web.view.FormPage;
import rinsebell.web.view.Nav;
import rinsebell.web.view.View;

/** Presses from pages: with script a part comes back, or where to go next; without it a page. */
public final class PressRoutes implements Routes {
    private static final Logger LOG = LoggerFactory.getLogger(PressRoutes.class);

    /** The script asks for parts by this header. */
    private static final String PART = "Rinsebell-Part";

    /** Tells the script where to go next. */
    private static final String NEXT = "Rinsebell-Next";

    /** Tells that a press was not sent at once, or not answered the first time: it happened when it was pressed. */
    private static final String AGAIN = "Rinsebell-Again";

    /** Tells what the salon's clock showed, as the screen knows it, when it sent the press: milliseconds since 1970. */
    private static final String SENT = "Rinsebell-Sent";

    /** Tells the script that the press counts, but that nobody knows for sure when it happened. */
    private static final String UNSURE = "Rinsebell-Unsure";

    /** The screens that live, and stay when something is pressed on them. */
    private static final Pattern LIVE = Pattern.compile("/|/basins|/desk|/bells|/pocket|/visits/\\d+");

    private final Pressing pressing;
    private final LiveFloor live;
    private final Answers answers;
    private final FormRoutes forms;

    public PressRoutes(Pressing pressing, LiveFloor live, Answers answers, FormRoutes forms) {
        this.forms = forms;
        this.pressing = pressing;
        this.live = live;
        this.answers = answers;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        addTo(routes, "", pressing.names(), this::press);
    }

    /** The addresses of all presses below a prefix. */
    static void addTo(RoutesConfig routes, String prefix, Set<Presses.Name> names, AtAddress handler) {
        for (var name : names) {
            routes.post(
                    prefix + Address.path(name),
                    ctx -> handler.press(ctx, Address.of(name, ctx)),
                    Matter.of(name.resource(), name.press()));
        }
    }

    @FunctionalInterface
    interface AtAddress {
        void press(Context ctx, Address address);
    }

    static boolean wantsPart(Context ctx) {
        return ctx.header(PART) != null;
    }

    /** The id that came with a form; a form without one is a press of its own each time. */
    public static String pressId(Context ctx, Fields typed) {
        return typed.first("press")
                .filter(Pressing::isId)
                .map(id -> Pressing.idOf(Caller.of(ctx), id))
                .orElseGet(() -> UUID.randomUUID().toString());
    }

    private void press(Context ctx, Address address) {
        var read = FormBody.read(ctx);
        var typed = ctx.header(AGAIN) == null ? read.without("age") : read.orElse(Fields.of("age", "unknown"));
        var sent = Objects.requireNonNullElse(ctx.header(SENT), "");
        var named = typed.without(Who.NAME);
        var salon = live.snapshot().floor().salon();
        var who = Caller.openedBy(ctx).or(() -> Who.of(ctx, typed, salon));
        who.ifPresent(person -> Who.keep(ctx, person, Caller.of(ctx), salon.policy()));
        if (who.isEmpty() && asksWho(ctx, address, named)) {
            again(ctx, address, named, 409, answers.who(ctx.path(), named, live.moment()));
            return;
        }
        var presser = new Pressing.Presser(Caller.of(ctx).code(), who.orElse(null));
        press(ctx, address, pressing.heldUp(sent).olderBy(named), pressId(ctx, typed), presser);
    }

    /**
     * Whether somebody must say who they are before it counts. Nothing that keeps hair and skin safe waits for that; nor does
     * what was pressed a while ago, when nobody may stand there any more; nor what is pressed at the server itself.
     */
    private boolean asksWho(Context ctx, Address address, Fields typed) {
        return Caller.of(ctx).isDevice()
                && Matter.of(address.resource(), address.press()) == Matter.FLOOR
                && ctx.header(AGAIN) == null
                && typed.first("by").filter(text -> !text.isBlank()).isEmpty()
                && !live.snapshot().floor().salon().working().isEmpty();
    }

    void press(Context ctx, Address address, Fields typed, String id) {
        press(ctx, address, typed, id, new Pressing.Presser(Caller.of(ctx).code(), null));
    }

    private void press(Context ctx, Address address, Fields typed, String id, Pressing.Presser presser) {
        Pressing.Result result;
        try {
            result = pressing.press(address, typed, id, presser);
        } catch (DatabaseAway e) {
            LOG.error("a press names a record that can't be read: {}", e.getMessage());
            notSaved(ctx, address, typed, false);
            return;
        }
        if (result instanceof Pressing.Wrong wrong) {
            wrong(ctx, address, typed, wrong.errors());
        } else if (result instanceof Pressing.Asked asked) {
            answered(ctx, address, typed, asked);
        }
    }

    /** The form comes back as it was, with what is wrong beside each field. */
    void wrong(Context ctx, Address address, Fields typed, List<FieldError> errors) {
        var moment = live.moment();
        var answer = answers.wrong(errors, moment);
        var page = forms.again(
                ctx, address.resource(), address.press(), address.id(), new FormRoutes.Typed(typed, errors, answer));
        ctx.status(422);
        if (!wantsPart(ctx)) {
            page.ifPresentOrElse(view -> ctx.html(live.page(view, moment)), () -> answer(ctx, 422, answer));
            return;
        }
        var form = page.flatMap(view -> form(view, ctx.path())).map(view -> live.part(view, moment));
        ctx.html(form.orElse("") + live.part(answer, moment));
    }

    /** The form of a page that sends to this address. */
    private static Optional<Form> form(View page, String address) {
        var forms = page instanceof FormPage one
                ? List.of(one.form())
                : page instanceof SheetPage sheet ? sheet.forms() : List.<Form>of();
        return forms.stream().filter(form -> form.action().equals(address)).findFirst();
    }

    private void answered(Context ctx, Address address, Fields typed, Pressing.Asked asked) {
        var moment = live.moment();
        var answer = asked.answer();
        if (answer instanceof Answer.OtherPress) {
            again(ctx, address, typed, 422, answers.reused(moment));
            return;
        }
        Pressing.throwProblem(answer);
        if (answer instanceof Answer.NotKnown) {
            answer(askedAgain(ctx), 503, answers.notKnown(moment));
            return;
        }
        if (!(answer instanceof Answer.Decided decided)) {
            var rings = answer instanceof Answer.NotSaved notSaved && notSaved.rings();
            notSaved(ctx, address, typed, rings);
            return;
        }
        if (!decided.outcome().accepted()) {
            var sent = new Answers.Sent(ctx.path(), typed, asked.about());
            again(ctx, address, typed, 409, answers.refused(decided.outcome(), sent, moment));
            return;
        }
        accepted(ctx, address, decided.outcome(), moment);
    }

    /** Whoever typed something finds it again, and can send it when there is room. */
    void notSaved(Context ctx, Address address, Fields typed, boolean rings) {
        again(ctx, address, typed, 503, answers.notSaved(rings, live.moment()));
    }

    /** The script sends the same press again, as it does without an answer. */
    static Context askedAgain(Context ctx) {
        return ctx.header("Retry-After", "1");
    }

    /** A script keeps the form as it stands; for a browser without one it comes back with what was typed. */
    private void again(Context ctx, Address address, Fields typed, int status, rinsebell.web.view.Answer answer) {
        if (wantsPart(ctx)) {
            answer(ctx, status, answer);
            return;
        }
        page(ctx, address, typed, answer)
                .ifPresentOrElse(
                        view -> ctx.status(status).html(live.page(view, live.moment())),
                        () -> answer(ctx, status, holding(ctx, typed, answer)));
    }

    private rinsebell.web.view.Answer holding(Context ctx, Fields typed, rinsebell.web.view.Answer answer) {
        return answer.presses().isEmpty() ? answers.holding(answer, ctx.path(), typed, live.moment()) : answer;
    }

    /** Empty also when it shows records that can't be read just now. */
    private Optional<View> page(Context ctx, Address address, Fields typed, rinsebell.web.view.Answer answer) {
        var kept = new FormRoutes.Typed(typed, List.of(), answer);
        try {
            return forms.again(ctx, address.resource(), address.press(), address.id(), kept);
        } catch (DatabaseAway e) {
            return Optional.empty();
        }
    }

    private void accepted(Context ctx, Address address, Outcome outcome, Moment moment) {
        if (outcome.facts().stream()
                .flatMap(seq -> moment.floor().fact(seq).stream())
                .anyMatch(Fact::unsure)) {
            ctx.header(UNSURE, "true");
        }
        var stays = isAnsweredInPlace(ctx, address);
        if (wantsPart(ctx) && stays) {
            answer(ctx, 200, answers.done(outcome.facts(), outcome.reasons(), moment));
            return;
        }
        var next = stays ? PageRoutes.from(ctx).orElseThrow() : next(address, outcome, moment);
        var to = Answers.told(next, outcome.facts());
        go(ctx, to);
    }

    /** Leads to another page: the script by a header, a browser without it by itself. */
    public static void go(Context ctx, String to) {
        if (wantsPart(ctx)) {
            ctx.header(NEXT, to).status(204);
        } else {
            ctx.redirect(to, io.javalin.http.HttpStatus.SEE_OTHER);
        }
    }

    /**
     * Whoever presses on a live screen goes on looking at it, but for discomfort: what to do first stands on the head's
     * own page.
     */
    private static boolean isAnsweredInPlace(Context ctx, Address address) {
        var from = PageRoutes.from(ctx).map(page -> page.replaceFirst("[?].*$", ""));
        return from.filter(page -> LIVE.matcher(page).matches())
                .filter(page -> !address.press().equals("discomfort") || page.equals("/visits/" + address.id()))
                .isPresent();
    }

    /** Where to go after a press: to the head it was about, or to the page of its kind. */
    private static String next(Address address, Outcome outcome, Moment moment) {
        return switch (address.resource()) {
            case "visits" ->
                "/visits/" + (address.id() > 0 ? address.id() : outcome.facts().get(0));
            case "bowls" -> headOfBowl(outcome, moment).orElse("/bowls");
            case "mixtures" ->
                headOfBowl(outcome, moment).orElse("/bowls/" + outcome.facts().get(0));
            case "facts", "bells" -> about(outcome, moment).orElse("/day");
            case "products", "shelf" -> "/products";
            case "recipes" ->
                "/recipes/" + (address.id() > 0 ? address.id() : outcome.facts().get(0));
            case "recipe-file" -> "/recipes";
            case "day" -> "/day";
            default -> "/setup";
        };
    }

    /** Whoever mixes for somebody goes on with that head. */
    private static Optional<String> headOfBowl(Outcome outcome, Moment moment) {
        return outcome.facts().stream()
                .findFirst()
                .flatMap(seq -> moment.floor().bowl(new BowlId(seq)))
                .flatMap(bowl -> Optional.ofNullable(bowl.forVisit()))
                .map(visit -> "/visits/" + visit.value());
    }

    private static Optional<String> about(Outcome outcome, Moment moment) {
        return outcome.facts().stream()
                .findFirst()
                .flatMap(moment.floor()::fact)
                .map(fact -> fact.stream())
                .filter(rinsebell.floor.Stream.OfVisit.class::isInstance)
                .map(stream -> "/visits/"
                        + ((rinsebell.floor.Stream.OfVisit) stream).visit().value());
    }

    private void answer(Context ctx, int status, rinsebell.web.view.Answer answer) {
        var moment = live.moment();
        ctx.status(status);
        if (wantsPart(ctx)) {
            ctx.html(live.part(answer, moment));
            return;
        }
        var shell = new LivePages(moment, null, answer).still(moment.say("answer.title"), Nav.FLOOR);
        ctx.html(live.page(new AnswerPage(shell), moment));
    }
}
