package rinsebell.app.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.app.door.Routes;
import rinsebell.app.page.LiveFloor;
import rinsebell.db.Rebuild;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.visit.VisitId;

/** Everything that programs can read under {@code /api}. */
public final class ReadRoutes implements Routes {

    private final LiveFloor live;
    private final @Nullable Rebuild rebuilt;

    /** @param rebuilt how the tables were made again the last time; null for never */
    public ReadRoutes(LiveFloor live, @Nullable Rebuild rebuilt) {
        this.rebuilt = rebuilt;
        this.live = live;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/floor", ctx -> ctx.json(FloorJson.of(live.moment(), rebuilt)), Matter.FLOOR);
        routes.get("/api/bells", ctx -> ctx.json(BellJson.all(live.moment())), Matter.FLOOR);
        routes.get("/api/salon", ctx -> ctx.json(SalonJson.of(live.moment())), Matter.FLOOR);
        routes.get(
                "/api/policy",
                ctx -> ctx.json(PolicyJson.of(live.moment().floor().salon().policy())),
                Matter.HOUSE);
        routes.get("/api/visits", this::visits, Matter.FLOOR);
        routes.get("/api/visits/{id}", this::visit, Matter.FLOOR);
        routes.get("/api/bowls", this::bowls, Matter.FLOOR);
        routes.get("/api/bowls/{id}", this::bowl, Matter.FLOOR);
        routes.get("/api/products", this::products, Matter.FLOOR);
        routes.get("/api/products/{id}", this::product, Matter.FLOOR);
        routes.get("/api/log", this::log, Matter.FLOOR);
    }

    private void visits(Context ctx) {
        var moment = live.moment();
        ctx.json(moment.floor().visits().stream()
                .map(visit -> VisitJson.of(visit, moment))
                .toList());
    }

    private void visit(Context ctx) {
        var moment = live.moment();
        found(ctx, moment.floor().visit(new VisitId(Numbered.at(ctx, "id"))).map(visit -> VisitJson.of(visit, moment)));
    }

    private void bowls(Context ctx) {
        var floor = live.moment().floor();
        ctx.json(floor.day().bowls().stream()
                .map(bowl -> BowlJson.of(bowl, floor))
                .toList());
    }

    private void bowl(Context ctx) {
        var floor = live.moment().floor();
        found(ctx, floor.bowl(new BowlId(Numbered.at(ctx, "id"))).map(bowl -> BowlJson.of(bowl, floor)));
    }

    private void products(Context ctx) {
        ctx.json(live.moment().floor().salon().products().stream()
                .map(ProductJson::of)
                .toList());
    }

    private void product(Context ctx) {
        var salon = live.moment().floor().salon();
        found(ctx, salon.product(new ProductId(Numbered.at(ctx, "id"))).map(ProductJson::of));
    }

    /** The facts of the live floor; of one visit where one is named. */
    private void log(Context ctx) {
        var moment = live.moment();
        var stream = ctx.queryParam("visit");
        ctx.json(moment.floor().facts().stream()
                .filter(fact -> stream == null || FactJson.stream(fact.stream()).equals("visit-" + stream))
                .map(fact -> FactJson.of(fact, moment))
                .toList());
    }

    private static void found(Context ctx, Optional<?> thing) {
        ctx.json(thing.orElseThrow(Numbered::nowhere));
    }
}
