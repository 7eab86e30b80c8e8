package rinsebell.floor.command;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rinsebell.floor.Asked;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Intent;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.visit.Visit;

/** Gathers what speaks against a command, all of it, and decides. */
final class Verdict {
    /** Nothing of a salon day is typed in further back than this; it catches a wrong day, not a slow hand. */
    static final Duration LONGEST_BACK = Duration.ofHours(12);

    private final Asked asked;
    private final List<Reason> impossible = new ArrayList<>();
    private final List<Reason> restrictions = new ArrayList<>();
    private final List<Reason> cautions = new ArrayList<>();

    Verdict(Asked asked) {
        this.asked = asked;
    }

    Verdict objections(List<Reason> reasons) {
        impossible.addAll(reasons);
        return this;
    }

    Verdict unless(boolean holds, ReasonCode code, Object... args) {
        if (!holds) {
            impossible.add(Reason.of(code, args));
        }
        return this;
    }

    /** Restrictions and cautions, as they come. */
    Verdict restrictions(List<Reason> reasons) {
        reasons.forEach(reason -> (reason.code().isCaution() ? cautions : restrictions).add(reason));
        return this;
    }

    /** What happened before a client left can still be written down. */
    Verdict whileHere(Visit head) {
        var left = head.stay().leftAt();
        if (left != null && !head.isOpen()) {
            unless(!asked.happened().isAfter(left), ReasonCode.VISIT_OVER, left);
        }
        return this;
    }

    /** A typed instant lies between the earliest at which it can have happened, and now. */
    Verdict between(Instant earliest) {
        var at = asked.happened();
        unless(!at.isAfter(asked.now()), ReasonCode.IN_THE_FUTURE);
        return unless(!at.isBefore(earliest), ReasonCode.TOO_EARLY, earliest);
    }

    Verdict withinTheDay() {
        return between(asked.now().minus(LONGEST_BACK));
    }

    /** Refused when impossible, or when it is only a plan and something forbids it. */
    Decision decide(Supplier<List<Draft>> drafts) {
        if (!impossible.isEmpty()) {
            return new Decision.Refused(distinct(impossible));
        }
        if (!restrictions.isEmpty() && asked.intent() == Intent.PLAN) {
            restrictions.addAll(cautions);
            return new Decision.Refused(distinct(restrictions));
        }
        return new Decision.Accepted(drafts.get(), distinct(cautions));
    }

    private static List<Reason> distinct(List<Reason> reasons) {
        return reasons.stream().distinct().sorted().toList();
    }

    /** The refusal for something that nobody knows of. */
    static Decision notKnown() {
        return Decision.refused(Reason.of(ReasonCode.NOT_KNOWN));
    }

    static <T> Decision orNotKnown(Optional<T> what, java.util.function.Function<T, Decision> then) {
        return what.map(then).orElseGet(Verdict::notKnown);
    }
}
