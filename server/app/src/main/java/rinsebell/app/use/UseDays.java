package rinsebell.app.use;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import rinsebell.app.lead.Days;
import rinsebell.floor.Floor;
import rinsebell.floor.TextId;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.salon.Salon;

/** Tells what was used on a day, and how that was on the days before. */
public final class UseDays {
    /** Four times each weekday. */
    private static final int DAYS = 28;

    private final Days days;
    private final Supplier<Salon> shelf;

    /**
     * A day's use and the floor that it was told on.
     *
     * @param texts labels and names
     */
    public record Told(UseReport report, Floor floor, Map<TextId, String> texts) {}

    /** @param shelf the salon as it is now, with all prices that were ever typed in */
    public UseDays(Days days, Supplier<Salon> shelf) {
        this.days = days;
        this.shelf = shelf;
    }

    /**
     * @param day not after today
     * @throws rinsebell.db.DatabaseAway if that can't be told just now
     * @throws rinsebell.app.door.ProblemException reports-busy when it would take too long until it is told
     */
    public Told of(LocalDate day) {
        var told = days.of(day);
        return new Told(UseReport.of(day, told.floor(), shelf.get()), told.floor(), told.texts());
    }

    /**
     * Several days that end with this one.
     *
     * @param day not after today
     * @throws rinsebell.db.DatabaseAway if that can't be told just now
     * @throws rinsebell.app.door.ProblemException reports-busy when it would take too long until it is told
     */
    public List<UseReport> until(LocalDate day) {
        var salon = shelf.get();
        var first = day.minusDays(DAYS - 1L);
        var bowls = days.withoutHeads(first, day);
        return IntStream.range(0, DAYS)
                .mapToObj(first::plusDays)
                .map(one -> UseReport.of(one, bowls, salon))
                .toList();
    }
}
