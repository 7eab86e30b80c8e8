package rinsebell.web.view;

import java.util.Locale;

/** Light for tablets and phones in daylight, dark for the wall; a device may choose the other. */
public enum Look {
    LIGHT,
    DARK;

    public String css() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Look other() {
        return this == LIGHT ? DARK : LIGHT;
    }
}
