package rinsebell.floor.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.rule.MixtureRules;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;

/**
 * What there is to say of a bowl before anything of it is poured: for the head as it is now, or for nobody yet.
 *
 * @param offScalp when it keeps off the scalp; in the order of harm, cautions among them
 * @param onScalp when it touches the scalp
 * @param hangsOnReason whether something else would be said, had it another reason
 */
public record Judgement(List<Reason> offScalp, List<Reason> onScalp, boolean hangsOnReason) {
    public Judgement {
        offScalp = List.copyOf(offScalp);
        onScalp = List.copyOf(onScalp);
    }

    /**
     * @param whom the visit it is for; null for nobody yet
     * @param portions at least one
     * @param at when it would be mixed and put on
     */
    public static Judgement of(
            Floor floor, @Nullable VisitId whom, List<Portion> portions, BowlReason reason, Instant at) {
        var judging = new Judging(floor, whom, portions, at);
        var onScalp = judging.on(Zone.ON_SCALP, reason);
        var hangs = Arrays.stream(BowlReason.values())
                .anyMatch(other -> !judging.on(Zone.ON_SCALP, other).equals(onScalp));
        return new Judgement(judging.on(Zone.OFF_SCALP, reason), onScalp, hangs);
    }

    private record Judging(Floor floor, @Nullable VisitId whom, List<Portion> portions, Instant at) {
        List<Reason> on(Zone zone, BowlReason reason) {
            var found = new ArrayList<>(new Mix(List.of(), reason, whom).restrictions(floor, portions, at));
            found.addAll(head().map(visit -> onHead(visit, zone, reason)).orElseGet(() -> onNobody(zone)));
            return found.stream().distinct().sorted().toList();
        }

        private Optional<Visit> head() {
            return Optional.ofNullable(whom).flatMap(floor::visit);
        }

        private List<Reason> onNobody(Zone zone) {
            return zone == Zone.ON_SCALP ? MixtureRules.judgeOnScalp(portions, floor.salon()) : List.of();
        }

        private List<Reason> onHead(Visit visit, Zone zone, BowlReason reason) {
            var seq = floor.lastSeq() + 1;
            var mixed = new DayEvent.Mixed(portions, reason, visit.id());
            var day = Stream.day(floor.salon().dayOf(at));
            var next = floor.with(List.of(new Fact(seq, day, at, at, null, mixed)));
            var head = next.visit(visit.id()).orElse(visit);
            return new Restrictions(next, head)
                    .against(new Restrictions.Putting(new BowlId(seq), zone, Cover.OPEN, at));
        }
    }
}
