package rinsebell.web.board;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rinsebell.web.view.LeadPage;

/** Tells which day a page shows, and the way to others. */
public final class DaysTelling {
    private static final DateTimeFormatter TOLD = DateTimeFormatter.ofPattern("EEEE d MMM", Locale.UK);

    private DaysTelling() {}

    public static LeadPage.Days of(Moment moment, LocalDate day, LeadPage.At at) {
        var today = moment.floor().salon().dayOf(moment.now());
        return new LeadPage.Days(
                day.toString(),
                TOLD.format(day),
                day.minusDays(1).toString(),
                day.isBefore(today) ? day.plusDays(1).toString() : null,
                today.toString(),
                at);
    }
}
