package rinsebell.web.board;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.rule.WhileOn;
import rinsebell.floor.visit.ApplicationId;
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
                .flatMap(this::broken)
                .forEach(all::add);
        head.whileOn().ifPresent(on -> rules(on, all));
        return new ChairPanel.Rules(all, moment.say("rules.source"), cautions());
    }

    /** The prohibitions alone, in short. */
    List<String> forbidden() {
        return rules().all().stream()
                .filter(rule -> rule.kind() != Rule.Kind.ALLOWED)
                .map(Rule::text)
                .toList();
    }

    private void rules(WhileOn on, List<Rule> all) {
        if (!on.known()) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, moment.say("rule.unknown"), ""));
            return;
        }
        var limits = on.limits();
        if (limits.zone() == Zone.OFF_SCALP) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, offScalp(), ""));
        } else if (on.anotherRound()) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, offScalp(), moment.say("rule.off_scalp.lightened_today")));
        }
        var told = new LimitsTelling(moment);
        all.addAll(told.forbidden(limits));
        overHeat(all);
        all.addAll(told.allowed(limits, stillFine()));
    }

    /** Where something else on this head may stay on the scalp, what may not is named. */
    private String offScalp() {
        var off = head.timing.timings().stream().filter(this::isOffScalp).toList();
        var some = off.size() < head.timing.timings().size();
        return some && !off.isEmpty()
                ? moment.say(
                        "rule.off_scalp.of",
                        moment.listed(
                                "list.and",
                                off.stream()
                                        .map(timing -> head.brief(timing.application()))
                                        .toList()))
                : moment.say("rule.off_scalp");
    }

    private boolean isOffScalp(Timing timing) {
        return timing.terms().limits().zone() == Zone.OFF_SCALP
                || new Restrictions(moment.floor(), head.visit).isAnotherRound(timing.application());
    }

    /** A heat that is past its allowed time is not fine any more, until it is off. */
    private void overHeat(List<Rule> all) {
        var heats = new HeatTelling(head);
        for (var heat : Heat.values()) {
            heats.overSince(heat)
                    .map(since ->
                            moment.say("rule.heat.over", LimitsTelling.capital(moment.say(heat)), moment.clock(since)))
                    .ifPresent(words -> all.add(new Rule(Rule.Kind.FORBIDDEN, words, "")));
        }
    }

    private Set<Heat> stillFine() {
        var fine = EnumSet.allOf(Heat.class);
        fine.removeIf(heat -> new HeatTelling(head).overSince(heat).isPresent());
        return fine;
    }

    private static boolean isBroken(BellKind kind) {
        return switch (kind) {
            case FORBIDDEN_HEAT, FORBIDDEN_COVER, FORBIDDEN_ZONE, FORBIDDEN_MIXTURE, PASSED_GATE -> true;
            default -> false;
        };
    }

    /** A passed gate says each answer that refuses it; what must not be where it is, or mixed as it is, says by what rule. */
    private Stream<Rule> broken(Bell bell) {
        var since = moment.say("rule.since", moment.clock(bell.since()));
        return switch (bell.kind()) {
            case PASSED_GATE -> passedGate(bell).map(text -> new Rule(Rule.Kind.BROKEN, text, since));
            case FORBIDDEN_ZONE, FORBIDDEN_MIXTURE ->
                Stream.of(new Rule(Rule.Kind.BROKEN, head.bells.what(bell), why(bell, since)));
            default -> Stream.of(new Rule(Rule.Kind.BROKEN, head.bells.what(bell), since));
        };
    }

    private Stream<String> passedGate(Bell bell) {
        var gate = new GateTelling(moment, head.visit);
        return head.visit.application(new ApplicationId(bell.key().subject())).stream()
                .flatMap(application -> new Restrictions(moment.floor(), head.visit).gatePassedBy(application).stream())
                .filter(reason -> reason.code() != ReasonCode.GATE_OPEN)
                .map(gate::takeOff);
    }

    private String why(Bell bell, String since) {
        return bell.reasons().stream()
                .findFirst()
                .map(reason -> moment.say("rule.why", ReasonTelling.rule(reason, moment), since))
                .orElse(since);
    }

    /** What fits: before anything goes on, what comes first; while it is on, what to mind. */
    private List<String> cautions() {
        var keys = head.timing.isAnythingOn()
                ? List.of("caution.leaflet", "caution.eyes", "caution.burning", "caution.air", "caution.law")
                : List.of(
                        "caution.leaflet",
                        "caution.skin_test",
                        "caution.strand_test",
                        "caution.scalp",
                        "caution.heat",
                        "caution.eyes",
                        "caution.air",
                        "caution.law");
        return Stream.concat(stricter(), keys.stream().map(moment::say)).toList();
    }

    /** Of what is on, mixed by directions that are stricter now. */
    private Stream<String> stricter() {
        var told = new EditionTelling(moment);
        return head.timing.timings().stream()
                .flatMap(timing -> moment.floor().bowl(timing.application().bowl()).stream())
                .flatMap(bowl -> told.stricter(bowl).stream())
                .distinct();
    }
}
