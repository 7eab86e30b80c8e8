package rinsebell.web.view;

import java.time.Instant;
import java.util.List;

/** The floor's time axis: clock times at ten-minute steps, in the same seconds as the ribbons below it. */
public record Axis(Instant epoch, List<Tick> ticks) implements Fragment {
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
        return new Ribbon("", epoch, null, List.of());
    }
}
