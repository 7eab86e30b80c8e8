package rinsebell.floor.product;

import java.util.ArrayList;
import java.util.List;

/**
 * A product of the salon with every edition of its directions.
 *
 * @param id its name in facts
 * @param editions oldest first; edition numbers count from 1
 * @param withdrawn whether it is no longer offered for new bowls
 */
public record Product(ProductId id, List<Directions> editions, boolean withdrawn) {
    public Product {
        editions = List.copyOf(editions);
    }

    public int edition() {
        return editions.size();
    }

    public Directions directions() {
        return editions.get(editions.size() - 1);
    }

    /** The directions of an edition; the newest when there is no such edition. */
    public Directions directions(int edition) {
        return edition >= 1 && edition <= editions.size() ? editions.get(edition - 1) : directions();
    }

    public Product revised(Directions next) {
        var all = new ArrayList<>(editions);
        all.add(next);
        return new Product(id, all, withdrawn);
    }

    public Product withdraw(boolean gone) {
        return new Product(id, editions, gone);
    }
}
