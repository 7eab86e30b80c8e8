package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.visit.ClientId;

/** {@code GET /api/recipes}: what is kept; {@code /api/recipe-file}: the same as a file to take elsewhere. */
public final class RecipeRoutes implements Routes {
    static final String SCHEMA = "/api/recipe-file/schema";
    private static final String SOURCE = "/rinsebell/app/recipe-file.schema.json";

    private final LiveFloor live;
    private final String schema = Resource.text(SOURCE);

    public RecipeRoutes(LiveFloor live) {
        this.live = live;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/recipes", this::all, Matter.FLOOR);
        routes.get("/api/recipes/{id}", this::one, Matter.FLOOR);
        routes.get("/api/recipe-file", this::download, Matter.DIRECTIONS);
        routes.get(
                SCHEMA,
                ctx -> ctx.contentType("application/schema+json; charset=utf-8").result(schema),
                Matter.FLOOR);
    }

    private void all(Context ctx) {
        var moment = live.moment();
        ctx.json(ofWhom(ctx, moment.floor().salon()).stream()
                .map(recipe -> RecipeJson.of(recipe, moment))
                .toList());
    }

    private void one(Context ctx) {
        var moment = live.moment();
        var recipe = known(moment.floor().salon(), Numbered.at(ctx, "id"));
        ctx.json(RecipeJson.of(recipe, moment));
    }

    private static KeptRecipe known(Salon salon, long id) {
        return salon.recipe(new RecipeId(id)).orElseThrow(Numbered::nowhere);
    }

    /** The house's recipes, or a client's, or one of them. */
    private void download(Context ctx) {
        var moment = live.moment();
        ctx.header("Content-Disposition", "attachment; filename=\"rinsebell-recipes.json\"");
        ctx.json(RecipeFileJson.of(asked(ctx, moment.floor().salon()), moment));
    }

    private static List<KeptRecipe> asked(Context ctx, Salon salon) {
        var recipe = ctx.queryParam("recipe");
        if (recipe != null) {
            return List.of(known(salon, number(recipe)));
        }
        return ofWhom(ctx, salon);
    }

    private static List<KeptRecipe> ofWhom(Context ctx, Salon salon) {
        var client = ctx.queryParam("client");
        return salon.recipesOf(client == null ? null : new ClientId(number(client)));
    }

    private static long number(String typed) {
        return Numbered.number(typed).orElseThrow(Numbered::nowhere);
    }
}
