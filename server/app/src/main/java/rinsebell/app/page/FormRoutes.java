package rinsebell.app.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.board.LivePages;
import rinsebell.web.form.FieldError;
import rinsebell.web.form.Fields;
import rinsebell.web.form.FormPages;
import rinsebell.web.form.PageAsk;
import rinsebell.web.form.SheetPage;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Form;
import rinsebell.web.view.FormPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.View;

/** The pages on which something is typed, and those that list things. */
public final class FormRoutes implements Routes {
    private static final String PLAIN = "";
    private static final Set<String> OPEN_LISTS = Set.of("products/list", "salon/");

    private final LiveFloor live;
    private final Answers answers;
    private final ClientBook clients;
    private final FormPages pages = FormPages.all();

    public FormRoutes(LiveFloor live, Answers answers, ClientBook clients) {
        this.clients = clients;
        this.live = live;
        this.answers = answers;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        open(routes, "/welcome", "visits", PLAIN);
        open(routes, "/bowls", "bowls", "list");
        open(routes, "/bowls/mix", "bowls", PLAIN);
        open(routes, "/mixtures", "mixtures", PLAIN);
        open(routes, "/mixtures/weigh", "mixtures", "weigh");
        open(routes, "/recipes", "recipes", "list");
        open(routes, "/recipes/new", "recipes", PLAIN);
        open(routes, "/recipe-file", "recipe-file", PLAIN);
        open(routes, "/products", "products", "list");
        open(routes, "/products/new", "products", PLAIN);
        open(routes, "/setup", "salon", PLAIN);
        open(routes, "/staff", "staff", PLAIN);
        open(routes, "/policy", "policy", PLAIN);
        open(routes, "/times", "times", PLAIN);
        open(routes, "/day", "day", PLAIN);
        open(routes, "/clients", "clients", "list");
        routes.post("/clients/find", ctx -> found(ctx, "clients", "list", 0), Matter.HISTORY);
        routes.post(
                "/visits/{id}/client/find", ctx -> found(ctx, "visits", "client", known(ctx, "visits")), Matter.FLOOR);
        routes.get("/clients/{id}", ctx -> client(ctx, "card"), Matter.HISTORY);
        routes.get("/clients/{id}/erase", ctx -> client(ctx, "erase"), Matter.ERASING);
        routes.get("/day/{press}", ctx -> show(ctx, "day", ctx.pathParam("press"), 0), Matter.FLOOR);
        routes.get("/bells/{press}", ctx -> show(ctx, "bells", ctx.pathParam("press"), 0), Matter.SIGNAL);
        routes.get("/staff/{id}", ctx -> show(ctx, "staff", "change", known(ctx, "staff")), Matter.STAFF);
        routes.get("/bowls/{id}", ctx -> show(ctx, "bowls", "tag", known(ctx, "bowls")), Matter.FLOOR);
        routes.get("/recipes/{id}", ctx -> show(ctx, "recipes", "one", known(ctx, "recipes")), Matter.FLOOR);
        // What keeps hair and skin safe is never asked for a PIN, whatever else the rest of its kind may come to.
        for (var signal : List.of("discomfort", "rinse")) {
            routes.get(
                    "/visits/{id}/" + signal,
                    ctx -> show(ctx, "visits", signal, known(ctx, "visits")),
                    Matter.of("visits", signal));
        }
        for (var resource : List.of("visits", "bowls", "products", "recipes", "staff", "facts")) {
            routes.get(
                    "/" + resource + "/{id}/{press}",
                    ctx -> show(ctx, resource, ctx.pathParam("press"), known(ctx, resource)),
                    Matter.of(resource, PLAIN));
        }
        routes.post("/visits/preview", ctx -> preview(ctx, "visits", PLAIN, 0), Matter.FLOOR);
        routes.post("/products/preview", ctx -> preview(ctx, "products", PLAIN, 0), Matter.DIRECTIONS);
        routes.post(
                "/products/{id}/directions/preview", ctx -> preview(ctx, "products", "directions"), Matter.DIRECTIONS);
        routes.post("/mixtures/preview", ctx -> preview(ctx, "mixtures", PLAIN, 0), Matter.FLOOR);
        routes.post("/bowls/preview", ctx -> preview(ctx, "bowls", PLAIN, 0), Matter.FLOOR);
        routes.post("/visits/{id}/put-on/preview", ctx -> preview(ctx, "visits", "put-on"), Matter.FLOOR);
    }

    private void client(Context ctx, String page) {
        var id = Numbered.at(ctx, "id");
        if (clients.card(new ClientId(id)).isEmpty()) {
            throw Numbered.nowhere();
        }
        show(ctx, "clients", page, id);
    }

    private void open(RoutesConfig routes, String path, String resource, String press) {
        routes.get(path, ctx -> show(ctx, resource, press, 0), matter(resource, press));
    }

    /** The shelf and the way to everything else are for anybody who works here. */
    private static Matter matter(String resource, String press) {
        return OPEN_LISTS.contains(resource + "/" + press) ? Matter.FLOOR : Matter.of(resource, press);
    }

    private void show(Context ctx, String resource, String press, long id) {
        show(ctx, resource, press, id, Fields.of(ctx.queryParamMap()));
    }

    /** A page of what was looked for. */
    private void found(Context ctx, String resource, String press, long id) {
        show(ctx, resource, press, id, FormBody.read(ctx));
    }

    private void show(Context ctx, String resource, String press, long id, Fields fields) {
        var page = pages.find(resource, press).orElseThrow(Numbered::nowhere);
        ctx.header("Cache-Control", "no-store");
        var ask = ask(ctx, id, new Typed(fields, List.of(), null));
        ctx.html(live.page(page.page(ask), ask.moment()));
    }

    private void preview(Context ctx, String resource, String press) {
        preview(ctx, resource, press, known(ctx, resource));
    }

    /** What the typed values come to: a part while it is typed, the page again for browsers without script. */
    private void preview(Context ctx, String resource, String press, long id) {
        var page = pages.find(resource, press).orElseThrow(Numbered::nowhere);
        var ask = ask(ctx, id, new Typed(FormBody.read(ctx), List.of(), null));
        var view = page.page(ask);
        var shown = forms(view).flatMap(form -> form.shown().stream()).findFirst();
        if (ctx.header("HX-Request") != null && shown.isPresent()) {
            ctx.html(live.part(shown.get(), ask.moment()));
        } else {
            ctx.html(live.page(view, ask.moment()));
        }
    }

    private static Stream<Form> forms(View view) {
        return view instanceof FormPage page
                ? Stream.of(page.form())
                : view instanceof SheetPage sheet ? sheet.forms().stream() : Stream.empty();
    }

    /** The page that a press came from, with everything that was typed and all that is wrong with it. */
    public Optional<View> again(Context ctx, String resource, String press, long id, Typed typed) {
        return pages.find(resource, press).map(page -> page.page(ask(ctx, id, typed)));
    }

    /**
     * What a page is filled with: what came back, or what its address says beforehand.
     *
     * @param fields everything that was typed
     * @param errors all that is wrong with it
     * @param answer what is said above it; null for what the last press led to
     */
    public record Typed(
            Fields fields,
            List<FieldError> errors,
            @Nullable Answer answer) {}

    private PageAsk ask(Context ctx, long id, Typed typed) {
        var moment = live.moment();
        var said = typed.answer() == null ? answers.of(ctx, moment).orElse(null) : typed.answer();
        var look = Objects.requireNonNullElse(PageRoutes.look(ctx), Look.LIGHT);
        var bells = new LivePages(moment, look, said).still("", Nav.DAY).bells();
        return new PageAsk(moment, id, typed.fields(), typed.errors(), look, bells, said, site(ctx), clients);
    }

    /** The door lets only names in under which this server is known. */
    private static String site(Context ctx) {
        return ctx.scheme() + "://" + ctx.host();
    }

    /** The number in the address, if this floor has such a thing: a form about nothing would only be refused later. */
    private long known(Context ctx, String resource) {
        var id = Numbered.at(ctx, "id");
        if (!has(live.snapshot().floor(), resource, id)) {
            throw Numbered.nowhere();
        }
        return id;
    }

    private static boolean has(Floor floor, String resource, long id) {
        return switch (resource) {
            case "visits" -> floor.visit(new VisitId(id)).isPresent();
            case "bowls" -> floor.bowl(new BowlId(id)).isPresent();
            case "products" -> floor.salon().product(new ProductId(id)).isPresent();
            case "recipes" -> floor.salon().recipe(new RecipeId(id)).isPresent();
            case "staff" -> floor.salon().staffMember(new StaffId(id)).isPresent();
            default -> floor.fact(id).isPresent();
        };
    }
}
