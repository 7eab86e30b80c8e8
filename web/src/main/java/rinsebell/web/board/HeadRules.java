package rinsebell.web.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Zone;
import rinsebell.web.view.ChairPanel;
import rinsebell.web.view.Rule;

/** What this head must not get while this is on, and what is fine. */
final class HeadRules {
    private final HeadTelling head;
    private final Moment moment;

    HeadRules(HeadTelling head) {
        this.head = head;
        this.moment = head.moment;
    }

    ChairPanel.Rules rules() {
        var all = new ArrayList<Rule>();
        moment.ringing(head.visit).stream()
                .filter(bell -> isBroken(bell.kind()))
                .map(this::broken)
                .forEach(all::add);
        if (head.timing.isAnythingOn()) {
            rules(all);
        }
        return new ChairPanel.Rules(all, moment.say("rules.source"), cautions());
    }

    /** The prohibitions alone, in short. */
    List<String> forbidden() {
        return rules().all().stream()
                .filter(rule -> rule.kind() != Rule.Kind.ALLOWED)
                .map(Rule::text)
                .toList();
    }

    private void rules(List<Rule> all) {
        if (head.timing.timings().stream().anyMatch(timing -> !timing.terms().known())) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, moment.say("rule.unknown"), ""));
            return;
        }
        var limits = head.timing.timings().stream()
                .map(Timing::terms)
                .map(terms -> terms.limits())
                .reduce(Limits.FREE, Limits::and);
        if (limits.zone() == Zone.OFF_SCALP) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, moment.say("rule.off_scalp"), ""));
        }
        Arrays.stream(Heat.values()).forEach(heat -> all.add(rule("rule.heat", heat, limits.heat(heat))));
        Arrays.stream(Cover.values())
                .filter(cover -> cover != Cover.OPEN)
                .forEach(cover -> all.add(rule("rule.cover", cover, limits.cover(cover))));
        all.sort((one, other) -> rank(one) - rank(other));
    }

    private static int rank(Rule rule) {
        return switch (rule.kind()) {
            case BROKEN -> 0;
            case FORBIDDEN -> 1;
            case ALLOWED -> 2;
        };
    }

    private Rule rule(String key, Enum<?> what, Allowance allowance) {
        var words = moment.say(what);
        if (!allowance.allowed()) {
            return new Rule(Rule.Kind.FORBIDDEN, moment.say(key + ".no", words), "");
        }
        var longest = allowance.upTo();
        var text = longest == null
                ? moment.say(key + ".yes", words)
                : moment.say(key + ".up_to", words, longest.toMinutes());
        return new Rule(Rule.Kind.ALLOWED, text, "");
    }

    private static boolean isBroken(BellKind kind) {
        return switch (kind) {
            case FORBIDDEN_HEAT, FORBIDDEN_COVER, FORBIDDEN_ZONE, FORBIDDEN_MIXTURE, PASSED_GATE -> true;
            default -> false;
        };
    }

    private Rule broken(Bell bell) {
        return new Rule(Rule.Kind.BROKEN, head.bells.what(bell), moment.say("rule.since", moment.clock(bell.since())));
    }

    private List<String> cautions() {
        return List.of(
                moment.say("caution.leaflet"),
                moment.say("caution.eyes"),
                moment.say("caution.burning"),
                moment.say("caution.air"),
                moment.say("caution.law"));
    }
}
