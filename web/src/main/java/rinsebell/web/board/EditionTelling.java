package rinsebell.web.board;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.Stricter;

/** Tells where newer directions are stricter than those by which a bowl was mixed, and goes on running. */
public final class EditionTelling {
    private final Moment moment;

    public EditionTelling(Moment moment) {
        this.moment = moment;
    }

    /** A sentence for each product of which that is so. */
    public List<String> stricter(Bowl bowl) {
        return bowl.portions().stream().flatMap(this::stricter).toList();
    }

    private Stream<String> stricter(Portion portion) {
        return moment.floor().salon().product(portion.product()).stream()
                .flatMap(product -> stricter(product, portion.edition()));
    }

    private Stream<String> stricter(Product product, int edition) {
        var found = Stricter.than(product.directions(edition), product.directions()).stream()
                .map(moment::say)
                .toList();
        return found.isEmpty()
                ? Stream.empty()
                : Stream.of(moment.say(
                        "edition.stricter", product.directions().name(), edition, moment.listed("list.and", found)));
    }
}
