package rinsebell.floor.command;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
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
        var anyway = new Mix(List.of(), reason, whom).restrictions(floor, portions, at);
        return Optional.ofNullable(whom)
                .flatMap(floor::visit)
                .map(head -> new OnHead(floor, head, portions, at, anyway).judgement(reason))
                .orElseGet(() -> ofNobody(floor, portions, anyway));
    }

    private static Judgement ofNobody(Floor floor, List<Portion> portions, List<Reason> anyway) {
        var onScalp = MixtureRules.judgeOnScalp(portions, floor.salon());
        return new Judgement(together(anyway, List.of()), together(anyway, onScalp), false);
    }

    private static List<Reason> together(List<Reason> anyway, List<Reason> more) {
        return Stream.concat(anyway.stream(), more.stream()).distinct().sorted().toList();
    }

    /** @param anyway what there is to say wherever it goes, and for whatever reason */
    private record OnHead(Floor floor, Visit head, List<Portion> portions, Instant at, List<Reason> anyway) {
        Judgement judgement(BowlReason reason) {
            var onScalp = on(Zone.ON_SCALP, reason);
            var hangs = !on(Zone.ON_SCALP, other(reason)).equals(onScalp);
            return new Judgement(on(Zone.OFF_SCALP, reason), onScalp, hangs);
        }

        /** Only another round is judged by rules of its own: to all other reasons the same is said. */
        private static BowlReason other(BowlReason reason) {
            return reason == BowlReason.ANOTHER_ROUND ? BowlReason.FIRST : BowlReason.ANOTHER_ROUND;
        }

        private List<Reason> on(Zone zone, BowlReason reason) {
            return together(anyway, put(zone, reason));
        }

        private List<Reason> put(Zone zone, BowlReason reason) {
            var seq = floor.lastSeq() + 1;
            var mixed = new DayEvent.Mixed(portions, reason, head.id());
            var day = rinsebell.floor.Stream.day(floor.salon().dayOf(at));
            var next = floor.with(List.of(new Fact(seq, day, at, at, null, mixed)));
            return new Restrictions(next, next.visit(head.id()).orElse(head))
                    .against(new Restrictions.Putting(new BowlId(seq), zone, Cover.OPEN, at));
        }
    }
}
