package rinsebell.app.door;

/** Makes the page that tells a person what went wrong. */
@FunctionalInterface
public interface ProblemPage {

    /** The whole page, as HTML. */
    String with(String title, String detail);
}
