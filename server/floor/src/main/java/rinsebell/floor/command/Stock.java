package rinsebell.floor.command;

import java.util.List;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.product.Directions;
import rinsebell.floor.salon.SalonEvent;

/**
 * Puts several products on the shelf at once; one of the same name that stands there already is left as it is.
 *
 * @param products each with the first edition of its directions
 */
public record Stock(List<Directions> products) implements Command {
    public Stock {
        products = List.copyOf(products);
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        return new Verdict(asked)
                .decide(() -> products.stream()
                        .filter(directions -> !isThere(floor, directions))
                        .map(directions ->
                                new Draft(Stream.SALON, asked.now(), new SalonEvent.ProductEntered(directions)))
                        .toList());
    }

    private static boolean isThere(Floor floor, Directions directions) {
        return floor.salon().products().stream()
                .anyMatch(product -> product.directions().name().equals(directions.name()));
    }
}
