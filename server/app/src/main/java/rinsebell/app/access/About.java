package rinsebell.app.access;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Optional;
import java.util.function.Supplier;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Numbered;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.salon.RecipeId;
import rinsebell.floor.visit.VisitId;

/** What a request is about, where its route alone does not tell: who sits in a chair is the floor's, who has gone is not. */
final class About {
    private static final String BOARD_OF_VISIT = "visit-";

    private final Supplier<Floor> floor;

    /** @param floor as it is now */
    About(Supplier<Floor> floor) {
        this.floor = floor;
    }

    /** @param said what its route says of itself */
    Matter of(Context ctx, Matter said) {
        if (said == Matter.SIGNAL) {
            return isOver(board(ctx)) ? Matter.CORRECTIONS : said;
        }
        return said == Matter.FLOOR ? ofFloor(ctx) : said;
    }

    private Matter ofFloor(Context ctx) {
        String[] parts = ctx.path().replaceFirst("^/api", "").split("/", -1);
        Optional<Long> number = parts.length > 2 ? Numbered.number(parts[2]) : Optional.empty();
        boolean isOver = number.isPresent()
                && switch (parts[1]) {
                    case "visits" -> isOver(new VisitId(number.get()));
                    case "facts" ->
                        floor.get()
                                .fact(number.get())
                                .map(Fact::stream)
                                .filter(this::isOver)
                                .isPresent();
                    default -> false;
                };
        if (isOver) {
            return Matter.CORRECTIONS;
        }
        if (parts[1].equals("visits") && isFinding(ctx)) {
            return Matter.FINDING;
        }
        return isOfSomebodyAway(ctx, parts[1], number) ? Matter.HISTORY : Matter.FLOOR;
    }

    private static boolean isFinding(Context ctx) {
        boolean opens = ctx.method() == HandlerType.GET && ctx.path().endsWith("/client");
        return opens || ctx.path().endsWith("/client/find");
    }

    /** A record that is named in the address, and a recipe that was kept for somebody who is not here. */
    private boolean isOfSomebodyAway(Context ctx, String resource, Optional<Long> number) {
        boolean named = ctx.method() == HandlerType.GET
                && Optional.ofNullable(ctx.queryParam("client"))
                        .flatMap(Numbered::number)
                        .isPresent();
        return named
                || resource.equals("recipes")
                        && number.map(RecipeId::new)
                                .flatMap(floor.get().salon()::recipe)
                                .flatMap(recipe -> recipe.owner())
                                .filter(client -> !floor.get().isHere(client))
                                .isPresent();
    }

    private static Optional<VisitId> board(Context ctx) {
        return Optional.ofNullable(ctx.queryParam("board"))
                .filter(board -> board.startsWith(BOARD_OF_VISIT))
                .flatMap(board -> Numbered.number(board.substring(BOARD_OF_VISIT.length())))
                .map(VisitId::new);
    }

    private boolean isOver(Optional<VisitId> visit) {
        return visit.filter(this::isOver).isPresent();
    }

    private boolean isOver(Stream stream) {
        return stream instanceof Stream.OfVisit of && isOver(of.visit());
    }

    private boolean isOver(VisitId id) {
        return floor.get().visit(id).filter(visit -> !visit.isOpen()).isPresent();
    }
}
