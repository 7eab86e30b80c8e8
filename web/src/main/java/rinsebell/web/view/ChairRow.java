package rinsebell.web.view;

/**
 * One chair on the floor screen.
 *
 * @param chair its number as people say it
 * @param who the client's label; empty when the chair is free
 * @param staff the stylist, and who helps or where the client is just now
 * @param href the page to open: the chair's, or a welcome at this chair
 */
public record ChairRow(int chair, String who, String staff, Due due, Ribbon ribbon, String href) implements Fragment {
    @Override
    public String template() {
        return "part/chair-row.jte";
    }

    @Override
    public String id() {
        return "row-" + chair;
    }

    public boolean free() {
        return who.isEmpty();
    }
}
