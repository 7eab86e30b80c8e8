package rinsebell.web.view;

/** The front desk's screen. */
public record DeskPage(Shell shell, Troubles troubles, DeskBoard board) implements View {
    @Override
    public String template() {
        return "desk.jte";
    }
}
