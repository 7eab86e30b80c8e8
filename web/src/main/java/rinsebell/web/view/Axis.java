package rinsebell.web.view;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A time axis: clock times at equal steps, in the same seconds as the ribbons below it.
 *
 * @param whole the stretch to show whole; none for one that pans as time goes on
 */
public record Axis(Instant epoch, Ribbon.@Nullable Reach whole, List<Tick> ticks) implements Fragment {
    @Override
    public String template() {
        return "part/axis.jte";
    }

    public record Tick(long at, String clock) {}

    @Override
    public String id() {
        return "axis";
    }

    /** The empty drawing whose seconds the axis shares. */
    public Ribbon ribbon() {
        return new Ribbon("", epoch, whole, List.of());
    }
}
