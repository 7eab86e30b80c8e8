package rinsebell.web.access;

import rinsebell.web.view.View;

/**
 * The one page that a stranger sees. It says nothing of the salon.
 *
 * @param problem what is wrong with the code that was typed; empty for nothing
 * @param code of an invitation that stands; empty to ask for one
 * @param told what the device will be, with such a code
 */
public record JoinPage(String problem, String code, String told) implements View {
    public boolean isInvited() {
        return !code.isEmpty();
    }

    @Override
    public String template() {
        return "form/join.jte";
    }
}
