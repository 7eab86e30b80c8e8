package rinsebell.floor.command;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rinsebell.floor.Asked;
import rinsebell.floor.BellAnswer;
import rinsebell.floor.Command;
import rinsebell.floor.Correction;
import rinsebell.floor.Decision;
import rinsebell.floor.Draft;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;

/**
 * Says that something did not happen. What hangs on it goes with it, all or none, once somebody has seen the list.
 *
 * @param seq the number of its fact
 * @param along the numbers of the facts that somebody agreed to withdraw along with it
 */
public record WithdrawFact(long seq, Set<Long> along) implements Command {
    public WithdrawFact {
        along = Set.copyOf(along);
    }

    @Override
    public Decision decide(Floor floor, Asked asked) {
        var fact = floor.fact(seq).filter(known -> floor.stands(known));
        return Verdict.orNotKnown(fact, known -> decide(floor, known, asked));
    }

    private Decision decide(Floor floor, Fact fact, Asked asked) {
        var effect = Effect.of(floor, fact);
        if (!fact.canBeCorrected() || (effect.comesBack() && !floor.hasWhatItHangsOn(effect.fact()))) {
            return Decision.refused(Reason.of(ReasonCode.CANNOT_BE_CORRECTED));
        }
        var others = effect.comesBack()
                ? Set.<Long>of()
                : new TreeSet<>(floor.hangingOn(effect.fact().seq()));
        var toAgree = others.stream().filter(other -> !isQuiet(floor, other)).toList();
        if (!along.containsAll(toAgree)) {
            return Decision.refused(Reason.of(ReasonCode.OTHERS_HANG_ON_IT, toAgree.toArray()));
        }
        var drafts = Stream.concat(Stream.of(seq), others.stream())
                .flatMap(number -> floor.fact(number).stream())
                .map(gone -> new Draft(gone.stream(), asked.now(), new Correction.Withdrawn(gone.seq())))
                .toList();
        return new Decision.Accepted(drafts, List.of());
    }

    /**
     * What becomes of the fact at the bottom when a withdrawal of a withdrawal, and so on, is withdrawn.
     *
     * @param fact the one at the bottom, which is no withdrawal
     * @param comesBack whether it stands again; otherwise it goes
     */
    private record Effect(Fact fact, boolean comesBack) {
        static Effect of(Floor floor, Fact withdrawn) {
            if (withdrawn.event() instanceof Correction.Withdrawn withdrawal) {
                return floor.fact(withdrawal.of())
                        .map(below -> Effect.of(floor, below).turned())
                        .orElse(new Effect(withdrawn, false));
            }
            return new Effect(withdrawn, false);
        }

        private Effect turned() {
            return new Effect(fact, !comesBack);
        }
    }

    /** An acknowledgement goes along without asking: it says nothing about a head. */
    private static boolean isQuiet(Floor floor, long seq) {
        return floor.fact(seq)
                .filter(fact -> fact.event() instanceof BellAnswer)
                .isPresent();
    }
}
