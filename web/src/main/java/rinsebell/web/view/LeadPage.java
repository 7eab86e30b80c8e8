package rinsebell.web.view;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a day came to, for the colour lead.
 *
 * @param intro which hours it tells of, or that there is nothing to tell
 * @param caution what the figures do not show
 */
public record LeadPage(Shell shell, String intro, String caution, Days days, List<Part> parts) implements View {
    @Override
    public String template() {
        return "lead.jte";
    }

    /**
     * Which day, and the way to others; dates as ISO 8601 has them.
     *
     * @param day shown
     * @param told the same for people, such as "Saturday 21 Nov"
     * @param earlier the day before
     * @param later the day after; null where that has not begun
     * @param today the latest that there is
     * @param at where the same is told of other days
     */
    public record Days(
            String day,
            String told,
            String earlier,
            @Nullable String later,
            String today,
            At at) {
        public Optional<String> next() {
            return Optional.ofNullable(later);
        }
    }

    /**
     * Where something is told of days.
     *
     * @param page its address, without the day
     * @param table the address of the same for a spreadsheet, without the day
     * @param other what else is told of this day
     */
    public record At(String page, String table, Press other) {}

    /**
     * What is told of one person, or of one thing.
     *
     * @param id of the part, unlike any other on the page
     */
    public record Part(
            String id,
            String title,
            List<Table> tables,
            @Nullable Plot plot) {
        public Optional<Plot> drawing() {
            return Optional.ofNullable(plot);
        }
    }
}
