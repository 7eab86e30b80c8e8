package rinsebell.floor.bell;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.HeatSpan;

/**
 * What is on a head although it is forbidden: it was done anyway, was written down, and rings. Several reasons of one kind
 * are one bell; each of them has to be seen.
 */
final class ForbiddenBells {
    private ForbiddenBells() {}

    static void addTo(List<Bell> found, Head head, Floor floor) {
        var restrictions = new Restrictions(floor, head.visit());
        var bells = new LinkedHashMap<BellKey, Bell>();
        for (var application : head.visit().onHair()) {
            restrictions.brokenBy(application).stream()
                    .map(reason -> broken(head, application, reason))
                    .forEach(bell -> bells.merge(bell.key(), bell, Bell::and));
            restrictions.gatePassedBy(application).stream()
                    .map(reason -> gate(head, application, reason))
                    .forEach(bell -> bells.merge(bell.key(), bell, Bell::and));
        }
        found.addAll(bells.values());
    }

    private static Bell broken(Head head, Application application, Reason reason) {
        var id = application.id().value();
        if (reason.code() == ReasonCode.COVER_NOT_ALLOWED) {
            var cover = application.cover();
            return bell(head, BellKind.FORBIDDEN_COVER, id, cover.seq(), cover.from(), reason);
        }
        if (reason.code() == ReasonCode.HEAT_NOT_ALLOWED) {
            var anchor = head.visit().heat().map(HeatSpan::seq).orElse(id);
            var from = head.visit().heat().map(HeatSpan::from).orElse(application.firstOn());
            return bell(
                    head,
                    BellKind.FORBIDDEN_HEAT,
                    head.subject(),
                    anchor,
                    Instants.later(from, application.firstOn()),
                    reason);
        }
        return bell(head, kind(reason.code()), id, id, application.firstOn(), reason);
    }

    private static BellKind kind(ReasonCode code) {
        return switch (code) {
            case NO_CHEMICAL_ON_SCALP_TODAY,
                    OFF_SCALP_PRODUCT,
                    ROUND_OFF_SCALP_ONLY,
                    NEVER_ON_SCALP_TOGETHER,
                    STRENGTH_NOT_ON_SCALP -> BellKind.FORBIDDEN_ZONE;
            default -> BellKind.FORBIDDEN_MIXTURE;
        };
    }

    private static Bell gate(Head head, Application application, Reason reason) {
        var id = application.id().value();
        return reason.code() == ReasonCode.GATE_OPEN
                ? head.bell(BellKind.GATE_OPEN, head.subject(), head.subject(), reason, open(head, application))
                : bell(head, BellKind.PASSED_GATE, id, id, application.firstOn(), reason);
    }

    /** The questions are the same for all that is on: it rings since the first of it. */
    private static Stage open(Head head, Application application) {
        var first = head.visit().onHair().stream()
                .map(Application::firstOn)
                .min(Instant::compareTo)
                .orElse(application.firstOn());
        return Head.stage(first, Stage.Step.DUE, Priority.LOW);
    }

    private static Bell bell(Head head, BellKind kind, long subject, long anchor, Instant from, Reason reason) {
        return head.bell(kind, subject, anchor, reason, Head.stage(from, Stage.Step.DUE, Priority.HIGH));
    }
}
