package rinsebell.web.access;

import rinsebell.web.view.View;

/**
 * The one page that a stranger sees. It says nothing of the salon.
 *
 * @param problem what is wrong with the code that was typed; empty for nothing
 * @param code of an invitation that stands; empty to ask for one
 * @param told what the device will be, with such a code
 * @param isPlain whether others can read along
 * @param mayPlain whether a device may come in all the same
 */
public record JoinPage(String problem, String code, String told, boolean isPlain, boolean mayPlain) implements View {
    /** Asks for a code. */
    public static final JoinPage ASKING = wrong("");

    public static JoinPage invited(String code, String told) {
        return new JoinPage("", code, told, false, true);
    }

    public static JoinPage wrong(String problem) {
        return new JoinPage(problem, "", "", false, true);
    }

    /** The same, as it came over plain HTTP. */
    public JoinPage plainly(boolean may) {
        return new JoinPage(problem, code, told, true, may);
    }

    public boolean isInvited() {
        return !code.isEmpty();
    }

    @Override
    public String template() {
        return "form/join.jte";
    }
}
