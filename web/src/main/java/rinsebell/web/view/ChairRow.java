package rinsebell.web.view;

/**
 * One chair on the floor screen, or a client elsewhere who has something on.
 *
 * @param tile what the row is called
 * @param who the client's label; empty when the chair is free
 * @param staff the stylist, and who helps or where the client is just now
 * @param href the page to open: the client's, or a welcome at this chair
 */
public record ChairRow(String id, Tile tile, String who, String staff, Due due, Ribbon ribbon, String href)
        implements Fragment {

    /**
     * What a row is called.
     *
     * @param text a chair's number, or the word for another place
     * @param isChair whether it is a chair's number
     */
    public record Tile(String text, boolean isChair) {
        public static Tile chair(int number) {
            return new Tile(String.valueOf(number), true);
        }

        public static Tile bench(String word) {
            return new Tile(word, false);
        }
    }

    @Override
    public String template() {
        return "part/chair-row.jte";
    }

    public boolean free() {
        return who.isEmpty();
    }
}
