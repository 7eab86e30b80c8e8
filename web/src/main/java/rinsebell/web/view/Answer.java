package rinsebell.web.view;

import java.util.List;

/**
 * What a screen says after a press.
 *
 * @param text such as "Put on 14:22"
 * @param reasons why it was refused, one each; empty when it was not
 * @param presses undo and change, or "not done" and "already done", or "try again"
 */
public record Answer(Kind kind, String text, List<Reason> reasons, List<Press> presses) implements Fragment {
    public enum Kind {
        /** Recorded. */
        DONE("calm"),
        /** Taken as a plan and refused; people say whether it was done all the same. */
        REFUSED("medium"),
        /** Not recorded, and whatever was on the screen still holds. */
        NOT_SAVED("high");

        private final String css;

        Kind(String css) {
            this.css = css;
        }

        public String css() {
            return css;
        }
    }

    /**
     * One reason of a refusal.
     *
     * @param rule what the rule says
     * @param source where it comes from: directions, house policy, gate or law
     */
    public record Reason(String rule, String why, String source) {}

    @Override
    public String template() {
        return "part/answer.jte";
    }

    @Override
    public String id() {
        return "answer";
    }
}
