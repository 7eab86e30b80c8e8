package rinsebell.web.privacy;

import java.util.List;
import java.util.Locale;
import rinsebell.floor.salon.Policy.Keeping;
import rinsebell.web.board.Moment;

/** What is kept about people, each with the matters under which it is seen, in the order of the page. */
public enum Kept {
    LABEL(Time.TEXTS, "matter.floor", "matter.reports"),
    GATE(Time.LOG, "matter.floor", "matter.history"),
    LOOKS(Time.LOG, "matter.floor", "matter.history"),
    BOWLS(Time.LOG, "matter.floor", "matter.history", "matter.reports"),
    RECORD(Time.RECORDS, "matter.history"),
    RECIPES(Time.RECORDS, "matter.floor"),
    STAFF(Time.HOUSE, "matter.floor", "matter.staff"),
    SOUNDED(Time.SOUNDINGS, "matter.reports"),
    TRAIL(Time.TRAIL, "matter.trail"),
    DEVICES(Time.DEVICES, "matter.devices");

    private enum Time {
        TEXTS,
        RECORDS,
        LOG,
        HOUSE,
        SOUNDINGS,
        TRAIL,
        DEVICES
    }

    private final Time time;
    private final List<String> matters;

    Kept(Time time, String... matters) {
        this.time = time;
        this.matters = List.of(matters);
    }

    /** The bundle keys of the matters under which it is seen. */
    public List<String> matters() {
        return matters;
    }

    String what(Moment moment) {
        return moment.say(key());
    }

    String why(Moment moment) {
        return moment.say(key() + ".why");
    }

    /** How long, by the salon's own numbers. */
    String time(Moment moment, Keeping keeping, PrivacyTelling.Times times) {
        return switch (time) {
            case TEXTS -> moment.say("privacy.time.texts", keeping.textDays());
            case RECORDS -> moment.say("privacy.time.records", keeping.recordMonths());
            case SOUNDINGS ->
                moment.say("privacy.time.soundings", times.soundings().toDays());
            case TRAIL -> moment.say("privacy.time.soundings", times.trail().toDays());
            case LOG -> moment.say("privacy.time.log");
            case HOUSE -> moment.say("privacy.time.house");
            case DEVICES -> moment.say("privacy.time.devices");
        };
    }

    private String key() {
        return "privacy.kept." + name().toLowerCase(Locale.ROOT);
    }
}
