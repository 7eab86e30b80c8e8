package rinsebell.web.board;

import java.util.Locale;

/** What somebody can do at a head next. Its words are those of its press. */
enum Act {
    STRAND,
    SCALP,
    RINSE,
    FOILS_OUT,
    LAST_ON,
    HEAT_OFF,
    COVER,
    GATE,
    PUT_ON,
    THROW_AWAY,
    MIX,
    ALREADY_ON,
    TOWEL_DRIED,
    LIFT,
    STOP,
    LEAVE,
    MORE;

    /** The bundle key of what it is called. */
    String key() {
        return "press." + name().toLowerCase(Locale.ROOT);
    }

    /** What the address of its press ends with. */
    String address() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
