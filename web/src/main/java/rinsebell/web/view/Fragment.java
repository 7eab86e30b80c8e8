package rinsebell.web.view;

/** A part of a page that the feed can replace while the page stays open. */
public interface Fragment extends View {
    /** The id of the one root element that its template makes; the same for as long as its subject exists. */
    String id();
}
