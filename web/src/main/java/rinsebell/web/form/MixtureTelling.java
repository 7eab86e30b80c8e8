package rinsebell.web.form;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.command.Judgement;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Product;
import rinsebell.floor.product.ProductId;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Fraction;
import rinsebell.web.board.ReasonTelling;
import rinsebell.web.board.SafeStartTelling;
import rinsebell.web.view.MixtureSheet;
import rinsebell.web.view.Urgency;

/** Tells what is to be weighed for a bowl, what is really in it, and what speaks against it. */
final class MixtureTelling {
    /** What is said of a bowl hardly hangs on its size: until that is known, it is this. */
    private static final Fields SOME = Fields.of("grams", "120");

    private final PageAsk ask;
    private final Optional<Reckoned> reckoned;
    private final List<FieldError> errors;
    private final Optional<Judgement> judgement;

    MixtureTelling(PageAsk ask) {
        this.ask = ask;
        var entries = entries(ask.typed());
        this.reckoned = MixtureForm.reckoned(entries);
        this.errors = entries.errors();
        this.judgement = reckoned.map(this::judged);
    }

    private Entries entries(Fields typed) {
        return new Entries(ask.target(), typed);
    }

    /** What is to be weighed; empty while something but a weight is missing or wrong. */
    Optional<Reckoned> reckoned() {
        return errors.stream().allMatch(error -> error.field().startsWith("weighed.")) ? reckoned : Optional.empty();
    }

    /** What is wrong but for what is only missing. */
    List<FieldError> wrong() {
        return errors.stream().filter(error -> error.code() != Fault.MISSING).toList();
    }

    /** Whether something else would be said, had the bowl another reason. */
    boolean hangsOnReason() {
        return judgement
                .or(() ->
                        MixtureForm.reckoned(entries(ask.typed().orElse(SOME))).map(this::judged))
                .filter(Judgement::hangsOnReason)
                .isPresent();
    }

    MixtureSheet sheet() {
        return reckoned().map(this::sheet).orElseGet(this::missing);
    }

    /** The same without the portions. */
    MixtureSheet lying() {
        var sheet = sheet();
        return new MixtureSheet("", "", List.of(), sheet.lines(), sheet.verdicts());
    }

    private MixtureSheet missing() {
        var words = new FaultWords(ask.moment().words());
        return new MixtureSheet(
                "",
                wrong().isEmpty()
                        ? ask.say("mixture.later")
                        : wrong().stream().map(words::say).collect(Collectors.joining(" ")),
                List.of(),
                List.of(),
                List.of());
    }

    private MixtureSheet sheet(Reckoned one) {
        var verdict = judgement.orElseThrow();
        var rows = one.portions().mapToObj(i -> row(one, i)).toList();
        var composition = new CompositionTelling(ask, one.weighed());
        var error = error(one);
        var lines = Stream.of(
                        Stream.of(SafeStartTelling.ofMixing(ask.moment(), one.visit(), portions(one))),
                        Stream.of(composition.weight()),
                        error.stream(),
                        composition.strengths().stream())
                .flatMap(line -> line)
                .filter(line -> !line.isEmpty())
                .toList();
        return new MixtureSheet(one.shown(), ask.say("mixture.reckoned"), rows, lines, verdicts(ask, verdict));
    }

    /** How well the bowl is what it should be: as the scale can show it, or as it lies; empty where it is just that. */
    private Optional<String> error(Reckoned one) {
        var errors = one.errors();
        var worst = one.portions()
                .boxed()
                .max(Comparator.comparing((Integer i) -> errors.get(i).abs()).thenComparing(errors::get))
                .orElseThrow();
        var off = errors.get(worst).times(Fraction.of(100));
        var key = one.isWeighed() ? off.signum() < 0 ? "mixture.under" : "mixture.over" : "mixture.error";
        return Optional.of(off.abs().plain(1))
                .filter(percent -> !percent.equals("0"))
                .map(percent ->
                        ask.say(key, percent, directions(one.product(worst)).name()));
    }

    private Judgement judged(Reckoned one) {
        return Judgement.of(
                ask.moment().floor(),
                one.visit(),
                portions(one),
                one.reason(),
                ask.moment().now());
    }

    private List<Portion> portions(Reckoned one) {
        return Weighed.portions(one.weighed(), ask.salon());
    }

    private Directions directions(ProductId product) {
        return ask.salon().product(product).map(Product::directions).orElseThrow();
    }

    private MixtureSheet.Row row(Reckoned one, int i) {
        var share = one.recipe().shares().get(i);
        return new MixtureSheet.Row(
                directions(share.product()).name(),
                share.parts().plain(2),
                ask.say("mixture.g", one.plan().grams().get(i).plain(2)));
    }

    static List<MixtureSheet.Verdict> verdicts(PageAsk ask, Judgement judgement) {
        return List.of(
                verdict(ask, Zone.OFF_SCALP, judgement.offScalp()), verdict(ask, Zone.ON_SCALP, judgement.onScalp()));
    }

    private static MixtureSheet.Verdict verdict(PageAsk ask, Zone zone, List<Reason> reasons) {
        var against = reasons.stream()
                .map(Reason::code)
                .filter(code -> !code.isCaution())
                .toList();
        // What is not answered yet can be answered while it is mixed; it must be before anything goes on.
        var isOpen = !against.isEmpty() && against.stream().allMatch(code -> code == ReasonCode.GATE_OPEN);
        var how = isOpen ? "open" : !against.isEmpty() ? "refused" : reasons.isEmpty() ? "free" : "careful";
        return new MixtureSheet.Verdict(
                ask.say("mixture." + how, ask.moment().say(zone)),
                isOpen ? Urgency.MEDIUM : against.isEmpty() ? Urgency.CALM : Urgency.HIGH,
                reasons.stream()
                        .map(reason -> ReasonTelling.told(reason, ask.moment()))
                        .toList());
    }
}
