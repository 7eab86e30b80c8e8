package rinsebell.web.form;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Mixture;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Span;
import rinsebell.floor.product.Zone;
import rinsebell.floor.unit.Percent;
import rinsebell.web.Codes;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.view.Form;
import rinsebell.web.view.TimesExample;

/** The form of a product's directions, every field of them, with its times shown while they are typed. */
final class DirectionsPage {
    private static final List<Integer> VOLUMES = List.of(10, 20, 30, 40);

    private final PageAsk ask;
    private final Optional<Directions> known;

    DirectionsPage(PageAsk ask) {
        this(ask, null);
    }

    /** @param known the edition that is revised; null for a new product */
    DirectionsPage(PageAsk ask, @Nullable Directions known) {
        this.ask = ask;
        this.known = Optional.ofNullable(known);
    }

    Form form(String key, String action) {
        var draft = new FormDraft(ask, key)
                .text("name", known.map(Directions::name).orElse(""))
                .choice("kind", Kind.class, known.map(Directions::kind).orElse(null));
        times(draft.group(ask.say("form.directions.times"))
                .preview(new Form.Preview(action + "/preview", ask.say("form.preview"), example())));
        limits(draft.group(ask.say("form.directions.limits")));
        mixing(draft.group(ask.say("form.directions.mixing")));
        pairings(draft.group(ask.say("form.directions.pairings")));
        checks(draft.group(ask.say("form.directions.checks")));
        contents(draft.group(ask.say("form.directions.contents")));
        return draft.form(action, "/products");
    }

    /** The times of what is typed, or else of the edition that is revised. */
    private TimesExample example() {
        return known.filter(stands -> !ask.isBack())
                .map(stands -> DirectionsPreview.of(ask, stands))
                .orElseGet(() -> DirectionsPreview.of(ask));
    }

    private void times(FormDraft draft) {
        var active = known.map(one -> one.times().active());
        var develops = known.map(one -> one.times().develops());
        draft.number("usableFor", minutes(active.map(Active::usableFor)))
                .choice("atEnd", Active.AtEnd.class, active.map(Active::atEnd).orElse(null))
                .choice(
                        "develops.counted",
                        Develops.Counted.class,
                        develops.map(Develops::counted).orElse(null));
        span(draft, "develops", develops.map(Develops::plain));
        draft.number("longestOn", minutes(known.map(one -> one.times().longestOn())));
    }

    private static void span(FormDraft draft, String field, Optional<Span> span) {
        draft.number(field + ".from", minutes(span.map(Span::from)));
        draft.number(field + ".to", minutes(span.map(Span::to)));
    }

    private void limits(FormDraft draft) {
        draft.choice("zone", Zone.class, known.map(one -> one.limits().zone()).orElse(null));
        for (var cover : Cover.values()) {
            var allowance = known.map(one -> one.limits().cover(cover));
            allowance(
                    draft.row(), "covers." + Codes.of(cover), ask.moment().say(cover), allowance, cover == Cover.OPEN);
        }
        for (var heat : Heat.values()) {
            var field = "heats." + Codes.of(heat);
            var name = ask.moment().say(heat);
            allowance(draft.row(), field, name, known.map(one -> one.limits().heat(heat)), false);
            var heated = known.flatMap(one -> Optional.ofNullable(one.times().develops()))
                    .flatMap(one -> Optional.ofNullable(one.heated().get(heat)));
            draft.number(field + ".from", ask.say("field.heated.from", name), minutes(heated.map(Span::from)))
                    .number(field + ".to", ask.say("field.heated.to", name), minutes(heated.map(Span::to)));
        }
    }

    private void allowance(
            FormDraft draft,
            String field,
            String name,
            Optional<rinsebell.floor.product.Allowance> known,
            boolean unlessKnown) {
        draft.yesNo(
                        field + ".allowed",
                        ask.say("field.allowed", name),
                        known.map(rinsebell.floor.product.Allowance::allowed).orElse(unlessKnown))
                .number(
                        field + ".upTo",
                        ask.say("field.upto", name),
                        minutes(known.map(rinsebell.floor.product.Allowance::upTo)));
    }

    private void mixing(FormDraft draft) {
        var mixtures = known.map(one -> one.mixing().mixtures()).orElse(List.of());
        for (var i = 0; i < MixingForm.MOST_MIXTURES; i++) {
            mixture(draft, "mixtures." + i, i < mixtures.size() ? mixtures.get(i) : null);
        }
        strengths(draft, "strengths", known.map(one -> one.mixing().strengths()).orElse(java.util.Set.of()));
        strengths(
                draft,
                "strengthsOnScalp",
                known.map(one -> one.mixing().strengthsOnScalp()).orElse(java.util.Set.of()));
    }

    private static void mixture(FormDraft draft, String row, @Nullable Mixture mixture) {
        draft.text(row + ".name", mixture == null ? "" : mixture.name())
                .number(
                        row + ".developerPer60",
                        mixture == null ? "" : mixture.developerPer60().amount().toPlainString())
                .number(
                        row + ".extraPer60",
                        mixture == null ? "" : mixture.extraPer60().amount().toPlainString());
    }

    /** The usual strengths, and whatever else these directions name. */
    private void strengths(FormDraft draft, String field, Collection<Percent> chosen) {
        var usual = VOLUMES.stream()
                .map(volumes -> new Choice(plain(Percent.ofVolumes(volumes)), ask.say("choice.volumes", volumes)));
        var others = chosen.stream()
                .filter(percent -> VOLUMES.stream()
                        .noneMatch(volumes -> Percent.ofVolumes(volumes).equals(percent)))
                .map(percent -> new Choice(plain(percent), percent.toString()));
        draft.some(
                field,
                Stream.concat(usual, others).toList(),
                chosen.stream().map(DirectionsPage::plain).toList());
    }

    private static String plain(Percent percent) {
        return percent.value().toPlainString();
    }

    private void pairings(FormDraft draft) {
        for (var kind : Kind.values()) {
            var field = "pairings." + Codes.of(kind);
            var pairing = known.flatMap(one -> one.mixing().pairings().stream()
                    .filter(pair -> pair.with() == kind)
                    .findFirst());
            draft.choice(
                            field + ".rule",
                            ask.moment().say(kind),
                            Pairing.Rule.class,
                            pairing.map(Pairing::rule).orElse(null))
                    .number(
                            field + ".atMostPer60",
                            ask.say("field.atmostper60", ask.moment().say(kind)),
                            pairing.flatMap(Pairing::limit)
                                    .map(grams -> grams.amount().toPlainString())
                                    .orElse(""));
        }
    }

    private void checks(FormDraft draft) {
        var checks = known.map(Directions::checks);
        draft.number("checks.strandEvery", minutes(checks.map(one -> one.strandEvery())))
                .number("checks.strandEveryHeated", minutes(checks.map(one -> one.strandEveryHeated())))
                .number("checks.scalpEvery", minutes(checks.map(one -> one.scalpEvery())))
                .number("checks.scalpEveryHeated", minutes(checks.map(one -> one.scalpEveryHeated())));
    }

    private void contents(FormDraft draft) {
        var contents = known.map(Directions::contents);
        draft.yesNo("dye", ask.say("field.dye"), contents.map(one -> one.dye()).orElse(null))
                .number(
                        "peroxide",
                        contents.map(one -> one.peroxide())
                                .map(DirectionsPage::plain)
                                .orElse(""))
                .number(
                        "ammonia",
                        contents.map(one -> one.ammonia())
                                .map(DirectionsPage::plain)
                                .orElse(""));
    }

    private static String minutes(Optional<Duration> time) {
        return time.map(SalonPages::minutes).orElse("");
    }
}
