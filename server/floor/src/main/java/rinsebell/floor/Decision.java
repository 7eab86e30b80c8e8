package rinsebell.floor;

import java.util.List;

/** What the floor answers to a command. */
public sealed interface Decision {
    /**
     * It is so.
     *
     * @param drafts the facts to write down, in their order; the first gets the number after the floor's last
     * @param cautions what to be careful about
     */
    record Accepted(List<Draft> drafts, List<Reason> cautions) implements Decision {
        public Accepted {
            drafts = List.copyOf(drafts);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * It is not.
     *
     * @param reasons all of them, in the order of harm; never empty
     */
    record Refused(List<Reason> reasons) implements Decision {
        public Refused {
            reasons = reasons.stream().sorted().toList();
        }

        /** Whether "already done" is an answer: everything that refuses it is a restriction. */
        public boolean canBeFact() {
            return reasons.stream()
                    .allMatch(reason ->
                            reason.code().isRestriction() || reason.code().isCaution());
        }
    }

    static Decision accepted(Draft... drafts) {
        return new Accepted(List.of(drafts), List.of());
    }

    static Decision refused(Reason... reasons) {
        return new Refused(List.of(reasons));
    }
}
