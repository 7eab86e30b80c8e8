package rinsebell.floor.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.clock.Terms;
import rinsebell.floor.product.Zone;
import rinsebell.floor.rule.GateRules;
import rinsebell.floor.rule.MixtureRules;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/**
 * Mixes a bowl: its active life begins.
 *
 * @param weighed what is in it; none when the recipe is not known
 * @param reason why
 * @param forVisit whom for; null for nobody yet
 */
public record Mix(
        List<Weighed> weighed, BowlReason reason, @Nullable VisitId forVisit) implements Command {
    public Mix {
        weighed = List.copyOf(weighed);
    }

    /** What is to be minded of a bowl that is mixed, as it was said when it was. */
    public static List<Reason> cautions(Floor floor, Bowl bowl) {
        return new Mix(List.of(), bowl.reason(), bowl.forVisit())
                .restrictions(floor, bowl.portions(), bowl.mixedAt()).stream()
                        .filter(reason -> reason.code().isCaution())
                        .toList();
    }

    List<Reason> restrictions(Floor floor, List<Portion> portions, Instant at) {
        var all = new ArrayList<>(MixtureRules.judge(portions, floor.salon()));
        Optional.ofNullable(forVisit).flatMap(floor::visit).ifPresent(visit -> {
            all.addAll(gate(floor, visit, portions, at));
            all.addAll(Forecast.of(floor, visit, portions, at));
        });
        return all;
    }

    /** Who must not get what is weighed, wherever it would go; a question still open can be answered meanwhile. */
    private static List<Reason> gate(Floor floor, Visit visit, List<Portion> portions, Instant at) {
        var terms = Terms.of(portions, floor.salon());
        return GateRules.judgePlan(visit.gate(), terms, Zone.OFF_SCALP, at, floor.salon()).stream()
                .filter(reason -> reason.code() != ReasonCode.GATE_OPEN)
                .toList();
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        var portions = Weighed.portions(weighed, floor.salon());
        return new Verdict(asked)
                .unless(floor.salon().isSetUp(), ReasonCode.SALON_NOT_SET_UP)
                .unless(portions.size() == weighed.size(), ReasonCode.NOT_KNOWN)
                .unless(forVisit == null || floor.visit(forVisit).isPresent(), ReasonCode.NOT_KNOWN)
                .restrictions(restrictions(floor, portions, asked.happened()))
                .withinTheDay()
                .decide(() -> List.of(new Draft(
                        Stream.day(floor.salon().dayOf(asked.now())),
                        asked.happened(),
                        new DayEvent.Mixed(portions, reason, forVisit))));
    }
}
