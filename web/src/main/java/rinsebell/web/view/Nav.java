package rinsebell.web.view;

import java.util.Locale;

/** The places one can go to from every page. */
public enum Nav {
    FLOOR("/"),
    BASINS("/basins"),
    DESK("/desk"),
    POCKET("/pocket"),
    BOWLS("/bowls"),
    DAY("/day"),
    SETUP("/setup");

    private final String href;

    Nav(String href) {
        this.href = href;
    }

    public String href() {
        return href;
    }

    /** The bundle key of its name. */
    public String key() {
        return "nav." + name().toLowerCase(Locale.ROOT);
    }
}
