package rinsebell.web.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.mix.Composition;
import rinsebell.floor.product.Contents;
import rinsebell.floor.product.Product;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Percent;

/** Tells what is really in a bowl, each figure with how it was reckoned. What a leaflet does not say is not known. */
final class CompositionTelling {
    private final PageAsk ask;
    private final Composition composition;

    CompositionTelling(PageAsk ask, List<Weighed> weighed) {
        this.ask = ask;
        this.composition = new Composition(
                weighed.stream().flatMap(one -> part(ask, one).stream()).toList());
    }

    private static Optional<Composition.Part> part(PageAsk ask, Weighed weighed) {
        return ask.salon()
                .product(weighed.product())
                .map(Product::directions)
                .map(directions -> new Composition.Part(directions.contents(), weighed.grams()));
    }

    /** What all of it weighs is the first thing to compare with the scale. */
    String weight() {
        return ask.say("judged.weight", total());
    }

    List<String> strengths() {
        return List.of(peroxide(), ammonia());
    }

    private String peroxide() {
        return composition
                .peroxide()
                .map(share -> ask.say(
                        "mixture.peroxide",
                        share.plain(2),
                        share.dividedBy(Fraction.of(Percent.ofVolumes(1).value()))
                                .plain(1),
                        reckoning(Contents::peroxide)))
                .orElse(ask.say("mixture.peroxide.unknown"));
    }

    private String ammonia() {
        return composition
                .ammonia()
                .map(share -> ask.say("mixture.ammonia", share.plain(2), reckoning(Contents::ammonia)))
                .orElse(ask.say("mixture.ammonia.unknown"));
    }

    /** Such as "60 g × 6 % of 120 g". */
    private String reckoning(Function<Contents, @Nullable Percent> of) {
        var terms = composition.parts().stream()
                .flatMap(part -> term(part, of.apply(part.contents())))
                .collect(Collectors.joining(" + "));
        return terms.isEmpty() ? ask.say("mixture.none") : ask.say("mixture.terms", terms, total());
    }

    private Stream<String> term(Composition.Part part, @Nullable Percent strength) {
        return strength == null || strength.value().signum() == 0
                ? Stream.empty()
                : Stream.of(ask.say(
                        "mixture.term",
                        part.grams().amount().toPlainString(),
                        strength.value().toPlainString()));
    }

    private String total() {
        return composition.total().plain(2);
    }
}
