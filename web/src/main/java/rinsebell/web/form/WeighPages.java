package rinsebell.web.form;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rinsebell.floor.mix.Target;
import rinsebell.floor.product.Product;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press.Hidden;
import rinsebell.web.view.WeighPage;

/** Beside the scale: portion after portion, until all that was reckoned lies in the bowl. */
final class WeighPages {
    private static final String BENCH = "/mixtures";

    /** What goes along from page to page. */
    private static final Pattern STATE =
            Pattern.compile("products\\.\\d+\\.(product|per60)|weighed\\.\\d+\\.grams|mixture|developer"
                    + "|otherDeveloper|strength|extraPer60|of|grams|step|reason|visit|by|note|minutesAgo");

    private final PageAsk ask;
    private final MixtureTelling telling;
    private final Reckoned bowl;

    private WeighPages(PageAsk ask, MixtureTelling telling, Reckoned bowl) {
        this.ask = ask;
        this.telling = telling;
        this.bowl = bowl;
    }

    /** Empty where what was chosen does not come to a bowl. */
    static Optional<WeighPage> page(PageAsk ask) {
        var telling = new MixtureTelling(ask);
        return telling.reckoned().map(bowl -> new WeighPages(ask, telling, bowl).page());
    }

    private WeighPage page() {
        var title = ask.say("weigh.title");
        var next = bowl.next();
        var pour = next.isPresent() ? pour(next.getAsInt()) : null;
        return new WeighPage(
                ask.shell(title, Nav.BOWLS),
                title,
                state().toList(),
                grown(),
                pour,
                bowl.portions().mapToObj(this::portion).toList(),
                telling.lying(),
                bowl.isWeighed(),
                address(BENCH, state()));
    }

    private Stream<Hidden> state() {
        return ask.typed().names().stream()
                .filter(name -> STATE.matcher(name).matches())
                .flatMap(name -> ask.typed().first(name).stream()
                        .filter(value -> !value.isBlank())
                        .map(value -> new Hidden(name, value)));
    }

    private static String address(String path, Stream<Hidden> state) {
        return path + "?"
                + Fields.of(state.flatMap(one -> Stream.of(one.name(), one.value()))
                                .toArray(String[]::new))
                        .query();
    }

    /** What became of what was wanted. */
    private String grown() {
        var wanted = Fraction.sum(bowl.pouring().wanted().stream().map(Target::grams));
        var steps = Fraction.of(bowl.pouring().step().amount())
                .times(Fraction.of(bowl.recipe().shares().size()));
        var by = bowl.plan().total().minus(wanted);
        by = by.abs().compareTo(steps) < 0 ? Fraction.ZERO : by;
        return by.signum() > 0 ? ask.say("weigh.grown") : by.signum() < 0 ? ask.say("weigh.shrunk") : "";
    }

    private WeighPage.Pour pour(int i) {
        var wanted = plain(bowl.planned(i));
        var field = field(i);
        var more = bowl.lies(i)
                .map(lies ->
                        ask.say("weigh.more", plain(lies), plain(bowl.missing(i).orElse(Grams.NONE))))
                .orElse("");
        return new WeighPage.Pour(
                ask.say("weigh.of", i + 1, bowl.recipe().shares().size(), name(i)),
                wanted,
                more,
                field,
                plain(bowl.pouring().step()),
                problem(field).isEmpty() ? wanted : ask.value(field, ""),
                problem(field));
    }

    private static String plain(Grams grams) {
        return grams.amount().stripTrailingZeros().toPlainString();
    }

    private static String field(int i) {
        return "weighed." + i + ".grams";
    }

    private String problem(String field) {
        return telling.wrong().stream()
                .filter(error -> error.field().equals(field))
                .map(error -> new FaultWords(ask.moment().words()).say(error))
                .findFirst()
                .orElse("");
    }

    private WeighPage.Portion portion(int i) {
        var field = field(i);
        var lies = bowl.lies(i).map(grams -> ask.say("mixture.g", plain(grams)));
        return new WeighPage.Portion(
                name(i),
                ask.say("mixture.g", plain(bowl.planned(i))),
                lies.orElse(""),
                lies.map(any -> address(
                                BENCH + "/weigh",
                                state().filter(one -> !one.name().equals(field))))
                        .orElse(""));
    }

    private String name(int i) {
        return ask.salon()
                .product(bowl.product(i))
                .map(Product::directions)
                .orElseThrow()
                .name();
    }
}
