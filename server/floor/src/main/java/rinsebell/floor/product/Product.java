package rinsebell.floor.product;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A product of the salon with every edition of its directions.
 *
 * @param id its name in facts
 * @param editions oldest first; edition numbers count from 1
 * @param withdrawn whether it is no longer offered for new bowls
 * @param prices what a tub of it holds and costs, oldest first; none until somebody types one in
 */
public record Product(ProductId id, List<Directions> editions, boolean withdrawn, List<Price> prices) {
    public Product {
        editions = List.copyOf(editions);
        prices = List.copyOf(prices);
    }

    /** @param from since when it counts */
    public record Price(Instant from, Tub tub) {}

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
        return new Product(id, all, withdrawn, prices);
    }

    public Product withdraw(boolean gone) {
        return new Product(id, editions, gone, prices);
    }

    /**
     * What a tub held and cost at an instant. Before the first price was typed in that one counts: a salon that begins to
     * type prices wants to see what it used this morning.
     */
    public Optional<Tub> tubAt(Instant at) {
        var until = prices.stream().filter(price -> !price.from().isAfter(at)).reduce((one, later) -> later);
        return until.or(() -> prices.stream().findFirst()).map(Price::tub);
    }

    /** The newest. */
    public Optional<Tub> tub() {
        return prices.isEmpty()
                ? Optional.empty()
                : Optional.of(prices.get(prices.size() - 1).tub());
    }

    /** @param since what was typed since then is put right by this, and counts from the same instant */
    public Product priced(Price next, Instant since) {
        var before = prices.stream().filter(one -> one.from().isBefore(since));
        var from = prices.stream()
                .map(Price::from)
                .filter(one -> !one.isBefore(since))
                .findFirst();
        var all = Stream.concat(before, Stream.of(new Price(from.orElse(next.from()), next.tub())));
        return new Product(id, editions, withdrawn, all.toList());
    }
}
