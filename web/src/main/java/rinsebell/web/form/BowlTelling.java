package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.clock.Terms;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Visit;
import rinsebell.web.board.EditionTelling;
import rinsebell.web.board.LeftTelling;
import rinsebell.web.board.LimitsTelling;
import rinsebell.web.view.BowlPage;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.QrCode;
import rinsebell.web.view.Rule;

/** Tells of one bowl what has to stand on it. */
final class BowlTelling {
    /** What labels are printed on. */
    private enum Paper {
        /** Endless, 62 mm wide. */
        ROLL,
        A4;

        String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final PageAsk ask;
    private final Bowl bowl;
    private final Terms terms;

    BowlTelling(PageAsk ask, Bowl bowl) {
        this.ask = ask;
        this.bowl = bowl;
        this.terms = Terms.of(bowl, ask.salon());
    }

    BowlPage page(List<Press> presses) {
        var tag = tag();
        return new BowlPage(
                ask.shell(tag.name(), Nav.BOWLS),
                tag,
                presses,
                ask.say(bowl.isThrownAway() ? "left.title" : "left.ask"),
                left(),
                papers());
    }

    private List<Press> left() {
        var weigh =
                Press.opens(ask.say("left.weigh"), "", LeftPages.at(bowl.id().value()));
        return Stream.concat(LeftPages.presses(ask, bowl.id().value()).stream(), Stream.of(weigh))
                .toList();
    }

    private String address() {
        return "/bowls/" + bowl.id().value();
    }

    private List<BowlPage.Paper> papers() {
        var chosen = ask.typed().first("paper").orElse(Paper.ROLL.code());
        return Arrays.stream(Paper.values())
                .map(paper -> new BowlPage.Paper(
                        ask.say("bowl.paper." + paper.code()),
                        address() + "?paper=" + paper.code(),
                        paper.code().equals(chosen),
                        paper.code()))
                .toList();
    }

    private BowlPage.Tag tag() {
        var moment = ask.moment();
        var visit = BowlPages.whom(ask, bowl);
        return new BowlPage.Tag(
                visit.map(Visit::place).map(moment::place).orElse(""),
                visit.map(moment::label).orElse(ask.say("choice.nobody")),
                moment.bowl(java.util.Optional.of(bowl)),
                bowl.portions().stream().map(this::portion).toList(),
                ask.say("bowl.mixed", moment.clock(bowl.mixedAt())),
                usable(),
                rules(),
                Stream.of("caution.leaflet", "caution.eyes", "bowl.caution.closed")
                        .map(ask::say)
                        .toList(),
                QrCode.of(ask.site() + address()));
    }

    private String portion(Portion portion) {
        return ask.say(
                "bowl.portion",
                portion.grams().amount().stripTrailingZeros().toPlainString(),
                ask.salon()
                        .product(portion.product())
                        .map(product -> product.directions(portion.edition()).name())
                        .orElse(""));
    }

    private String usable() {
        var left = bowl.left();
        return bowl.isThrownAway()
                ? ask.say("bowl.thrown_away") + (left == null ? "" : ", " + LeftTelling.say(ask.moment(), left))
                : terms.usableUntil(bowl.mixedAt())
                        .map(end -> ask.say("bowl.usable", ask.moment().clock(end)))
                        .orElse("");
    }

    private List<String> rules() {
        if (!terms.known()) {
            return List.of(ask.say("rule.unknown"));
        }
        var rules = new ArrayList<String>();
        if (terms.limits().zone() == Zone.OFF_SCALP) {
            rules.add(ask.say("bowl.off_scalp"));
        }
        new LimitsTelling(ask.moment())
                .forbidden(terms.limits()).stream().map(Rule::text).forEach(rules::add);
        rules.addAll(new EditionTelling(ask.moment()).stricter(bowl));
        return rules;
    }
}
