package rinsebell.web.view;

/**
 * What surrounds every page.
 *
 * @param salon the salon's name
 * @param title of this page, for the window and for screen readers
 * @param board the feed's board that keeps this page live; empty for a page that stands still, such as a form
 */
public record Shell(String salon, String title, Nav here, Look look, String board, BellStrip bells) {
    public boolean live() {
        return !board.isEmpty();
    }
}
