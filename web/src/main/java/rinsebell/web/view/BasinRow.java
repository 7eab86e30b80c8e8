package rinsebell.web.view;

/**
 * One basin on the floor screen, on the chairs' time axis.
 *
 * @param letter the basin's letter
 * @param state such as "free 14:50–15:02" or "out of order"
 */
public record BasinRow(String letter, String state, Urgency urgency, Ribbon ribbon) implements Fragment {
    @Override
    public String template() {
        return "part/basin-row.jte";
    }

    @Override
    public String id() {
        return "basin-" + letter;
    }
}
